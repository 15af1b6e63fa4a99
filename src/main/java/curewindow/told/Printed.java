package curewindow.told;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a customer was told when cards were handed over.
 *
 * @param dates what the cards say of holds
 * @param visit the day for which the shop asked when it handed over the last of them, by its own
 *     calendar
 */
public record Printed(List<PrintedDate> dates, Optional<LocalDate> visit) {

  /** No card was handed over. */
  public static final Printed NOTHING = new Printed(List.of(), Optional.empty());

  /** Copies the list. */
  public Printed {
    dates = List.copyOf(dates);
    Objects.requireNonNull(visit, "visit");
  }
}
