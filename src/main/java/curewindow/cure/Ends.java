package curewindow.cure;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * When a hold ends in each of the equally likely weathers, not rounded.
 *
 * @param met the ends before the limit, earliest first
 * @param open in how many weathers the need is not met by the limit
 * @param safeRank the number, from 1, of the end that nine of ten weathers keep
 */
public record Ends(List<Instant> met, int open, int safeRank) {

  private static final int NINE_IN_TEN = 90;

  /** Refuses a negative count, no weathers at all, a number beyond them, and times out of order. */
  public Ends {
    met = List.copyOf(met);
    if (open < 0 || met.size() + open == 0) {
      throw new IllegalArgumentException("open " + open + " with " + met.size() + " ends");
    }
    if (safeRank < 1 || safeRank > met.size() + open) {
      throw new IllegalArgumentException("safe rank " + safeRank + " of " + (met.size() + open));
    }
    for (int i = 1; i < met.size(); i++) {
      if (met.get(i).isBefore(met.get(i - 1))) {
        throw new IllegalArgumentException("the ends are out of order at " + met.get(i));
      }
    }
  }

  /**
   * How many weathers there are.
   *
   * @return one or more
   */
  public int weathers() {
    return met.size() + open;
  }

  /**
   * The end that a share of the weathers keeps: with n weathers number percent x n / 100 in order,
   * rounded up; for 90 percent the one that is published.
   *
   * @param percent 1 to 100
   * @return the end, or empty where it comes after the limit
   */
  public Optional<Instant> by(int percent) {
    if (percent < 1 || percent > 100) {
      throw new IllegalArgumentException("percent " + percent + " is not within 1 to 100");
    }
    int number = percent == NINE_IN_TEN ? safeRank : (percent * weathers() + 99) / 100;
    return number <= met.size() ? Optional.of(met.get(number - 1)) : Optional.empty();
  }
}
