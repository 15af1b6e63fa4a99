package curewindow.why;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What of an explanation is shown, and how.
 *
 * @param holds ids of the holds that are drawn, in place of all dates; empty for all dates with the
 *     one that matters most drawn
 * @param every whether each date is drawn
 * @param plain whether only ASCII characters are used
 */
public record ExplanationChoice(List<String> holds, boolean every, boolean plain) {

  /** All dates, the one that matters most drawn. */
  public static final ExplanationChoice USUAL = new ExplanationChoice(List.of(), false, false);

  /** Copies the list. */
  public ExplanationChoice {
    holds = List.copyOf(Objects.requireNonNull(holds, "holds"));
  }

  /** The drawn hold, where one alone is asked for. */
  boolean shows(String hold) {
    return holds.isEmpty() || holds.contains(hold);
  }

  boolean draws(String hold, Optional<String> first) {
    return every || holds.contains(hold) || holds.isEmpty() && first.equals(Optional.of(hold));
  }
}
