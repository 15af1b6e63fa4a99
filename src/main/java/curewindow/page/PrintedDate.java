package curewindow.page;

import java.time.Instant;
import java.util.Objects;

/**
 * A date that stands on a card of a job.
 *
 * @param hold the hold's id
 * @param at the date
 * @param ask whether the card says to ask the shop then, rather than that the hold is over
 * @param slowed whether the weather measured since is what made the date of today later
 */
public record PrintedDate(String hold, Instant at, boolean ask, boolean slowed) {

  /** Refuses missing parts. */
  public PrintedDate {
    Objects.requireNonNull(hold, "hold");
    Objects.requireNonNull(at, "at");
  }

  /**
   * The same date with what made today's later.
   *
   * @param weather whether it was the weather measured since
   * @return the date
   */
  public PrintedDate slowed(boolean weather) {
    return new PrintedDate(hold, at, ask, weather);
  }
}
