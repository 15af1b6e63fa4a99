package curewindow.cure;

import java.time.Instant;
import java.util.Objects;

/**
 * One time that a car is in the shop. All the while it stands at the bay's air.
 *
 * @param in when it comes
 * @param pickup when it leaves, not before it comes
 */
public record Stay(Instant in, Instant pickup) {

  /** Refuses missing parts and a pickup before the car comes. */
  public Stay {
    Objects.requireNonNull(in, "in");
    Objects.requireNonNull(pickup, "pickup");
    if (pickup.isBefore(in)) {
      throw new IllegalArgumentException("pickup " + pickup + " is before in " + in);
    }
  }

  /**
   * Whether the car is in the shop at a time.
   *
   * @param at the time
   * @return true from {@code in} to {@code pickup}, both included
   */
  public boolean has(Instant at) {
    return !at.isBefore(in) && !at.isAfter(pickup);
  }
}
