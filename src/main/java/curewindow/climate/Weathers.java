package curewindow.climate;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;

/**
 * The weathers a place may have: equally likely years, from which dates are taken as quantiles.
 *
 * @param standardOffset the offset of the years' local standard time
 * @param years one or more years
 * @param real whether the years happened, so that the year to come is one more of their kind; made
 *     years stand for all that may come
 */
public record Weathers(ZoneOffset standardOffset, List<WeatherYear> years, boolean real) {

  /** Refuses an empty list. */
  public Weathers {
    Objects.requireNonNull(standardOffset, "standardOffset");
    years = List.copyOf(years);
    if (years.isEmpty()) {
      throw new IllegalArgumentException("at least one year is needed");
    }
  }

  /**
   * Years that were made.
   *
   * @param standardOffset the offset of the years' local standard time
   * @param years one or more years
   */
  public Weathers(ZoneOffset standardOffset, List<WeatherYear> years) {
    this(standardOffset, years, false);
  }

  /**
   * Which of the ends in order, from 1, nine of ten weathers keep. Of n made years it is number 0.9
   * n. A year to come keeps the end number k of n real years with a chance of k in n + 1, as any of
   * the n + 1 may be the worst; so it is number 0.9 (n + 1) of them, at most the last.
   *
   * @return 1 to the count of years
   */
  public int safeRank() {
    int draws = years.size() + (real ? 1 : 0);
    return Math.min(years.size(), (9 * draws + 9) / 10);
  }
}
