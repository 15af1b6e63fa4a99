package curewindow.shop;

import java.time.LocalTime;
import java.util.Objects;

/**
 * A stretch of a day in which the shop is open.
 *
 * @param from opening time
 * @param to closing time, after the opening time
 */
public record OpenHours(LocalTime from, LocalTime to) {

  /** Refuses missing parts. */
  public OpenHours {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    if (!to.isAfter(from)) {
      throw new IllegalArgumentException("closing time " + to + " is not after " + from);
    }
  }
}
