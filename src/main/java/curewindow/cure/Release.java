package curewindow.cure;

import java.time.Instant;
import java.util.Objects;

/**
 * When a hold ends, and why then.
 *
 * @param hold the hold's id
 * @param kind what the hold asks of the customer
 * @param end the published end
 * @param likely the median time at which the need is met, not rounded, never before the floor and
 *     never after the look-by
 * @param because what decides the published end
 * @param becauseLikely what decides {@code likely}
 */
public record Release(
    String hold, HoldKind kind, End end, Instant likely, Because because, Because becauseLikely) {

  /** Refuses missing parts. */
  public Release {
    Objects.requireNonNull(hold, "hold");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(end, "end");
    Objects.requireNonNull(likely, "likely");
    Objects.requireNonNull(because, "because");
    Objects.requireNonNull(becauseLikely, "becauseLikely");
  }

  /** The published end of a hold. */
  public sealed interface End {
    /**
     * The instant shown to people.
     *
     * @return a whole hour between 8:00 and 20:00 where the car is
     */
    Instant at();
  }

  /**
   * The hold ends in nine of ten weathers by this time.
   *
   * @param at a whole hour between 8:00 and 20:00 where the car is
   */
  public record SafeBy(Instant at) implements End {}

  /**
   * The weather may not be enough before the look-by: the shop wants to see the car.
   *
   * @param at the look-by, a whole hour between 8:00 and 20:00 where the car is
   */
  public record AskUs(Instant at) implements End {}
}
