package curewindow.tally;

import java.util.Objects;
import java.util.OptionalInt;

/**
 * How often something is after a change, for each 100 times before it. Which of the events come
 * after it, given how many there are in all, is a share; its exact interval gives that of the
 * ratio.
 *
 * @param before how often it was
 * @param after how often it is
 */
public record RateRatio(Rate before, Rate after) {

  private static final double HUNDRED = 100;

  /** Refuses missing parts. */
  public RateRatio {
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(after, "after");
  }

  /** What can be said of a change. */
  public enum Verdict {
    /** There are too few to tell. */
    TOO_FEW("too-few"),
    /** It is less often than before. */
    FEWER("fewer"),
    /** It is more often than before. */
    MORE("more"),
    /** It may be either. */
    UNSURE("unsure");

    private final String id;

    Verdict(String id) {
      this.id = id;
    }

    /**
     * The name used in data.
     *
     * @return lower case
     */
    public String id() {
      return id;
    }
  }

  /**
   * What can be said.
   *
   * @return fewer or more only where the exact interval, 19 times in 20, says so
   */
  public Verdict verdict() {
    if (!before.isEnough() || !after.isEnough()) {
      return Verdict.TOO_FEW;
    }
    return exactHigh() < 1 ? Verdict.FEWER : exactLow() > 1 ? Verdict.MORE : Verdict.UNSURE;
  }

  /**
   * How often it is.
   *
   * @return for each 100 times before, rounded; empty where there was none before, or nothing to
   *     compare
   */
  public OptionalInt percent() {
    boolean known = before.events() > 0 && before.of() > 0 && after.of() > 0;
    return known
        ? OptionalInt.of((int) Math.round(HUNDRED * after.events() / before.events() * exposure()))
        : OptionalInt.empty();
  }

  /**
   * The lower end of the exact interval, 19 times in 20.
   *
   * @return for each 100 times before, rounded down; empty where there is nothing to compare
   */
  public OptionalInt low() {
    return whole(Math.floor(HUNDRED * exactLow()));
  }

  /**
   * The upper end of the exact interval, 19 times in 20.
   *
   * @return for each 100 times before, rounded up; empty where there is none, as there was nothing
   *     before
   */
  public OptionalInt high() {
    return whole(Math.ceil(HUNDRED * exactHigh()));
  }

  private static OptionalInt whole(double number) {
    return Double.isFinite(number) ? OptionalInt.of((int) number) : OptionalInt.empty();
  }

  double exactLow() {
    return ratio(Exact.shareLow(after.events(), all()));
  }

  double exactHigh() {
    return ratio(Exact.shareHigh(after.events(), all()));
  }

  private int all() {
    return before.events() + after.events();
  }

  /** Odds of the share, as often as the one thing goes into the other. */
  private double ratio(double share) {
    return share / (1 - share) * exposure();
  }

  private double exposure() {
    return (double) before.of() / after.of();
  }
}
