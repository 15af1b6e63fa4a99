package curewindow.shop;

import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;

/**
 * Something found on the car before the work.
 *
 * @param kind what was found
 * @param spots ids of the spots it was found on; may be empty
 * @param since for old film: the year it was fitted
 * @param text a note for the customer; may be empty
 */
public record Finding(FindingKind kind, List<String> spots, OptionalInt since, String text) {

  /** Refuses missing parts. */
  public Finding {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(since, "since");
    Objects.requireNonNull(text, "text");
    spots = List.copyOf(spots);
  }
}
