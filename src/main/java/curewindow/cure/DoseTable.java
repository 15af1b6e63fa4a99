package curewindow.cure;

import java.time.LocalDate;
import java.util.List;

/**
 * Sums of an hourly quantity along the calendar, over one or several years: the dose of a driver,
 * or degree hours for a mean. Times are seconds of local standard time since 1970. Built once and
 * shared; costs no more than a binary search to ask.
 */
final class DoseTable {

  /** What is returned where a dose is not reached. */
  static final long NEVER = Long.MAX_VALUE;

  private final long[] starts;
  private final YearSum[] years;
  private final boolean[] leap;
  private final double[] before;

  /**
   * Joins years.
   *
   * @param firstYear the first calendar year
   * @param years the sums of the first and the following years
   */
  DoseTable(int firstYear, List<YearSum> years) {
    int count = years.size();
    this.years = years.toArray(YearSum[]::new);
    starts = new long[count + 1];
    leap = new boolean[count];
    before = new double[count + 1];
    starts[0] = start(firstYear);
    for (int i = 0; i < count; i++) {
      starts[i + 1] = start(firstYear + i + 1);
      leap[i] = LocalDate.ofYearDay(firstYear + i, 1).isLeapYear();
      before[i + 1] = before[i] + years.get(i).whole(leap[i]);
    }
  }

  /** Seconds of local standard time at the start of a calendar year. */
  static long start(int year) {
    return LocalDate.ofYearDay(year, 1).toEpochDay() * 86_400;
  }

  /** The calendar year that a second of local standard time falls in. */
  static int year(long second) {
    return LocalDate.ofEpochDay(Math.floorDiv(second, 86_400)).getYear();
  }

  /**
   * The sum from the start of the first year.
   *
   * @param second a time within the years, or the end of the last
   */
  double until(long second) {
    if (second < starts[0] || second > starts[years.length]) {
      throw new IllegalArgumentException("second " + second + " is outside the table's years");
    }
    int i = 0;
    while (second > starts[i + 1]) {
      i++;
    }
    return before[i] + years[i].until((second - starts[i]) / 3600.0, leap[i]);
  }

  /** The sum between two times. */
  double between(long from, long to) {
    return until(to) - until(from);
  }

  /**
   * The first whole second at which a sum is reached, give or take the thousandth of a second that
   * keeps rounding errors from costing a second.
   *
   * @param sum the sum from the start of the first year, above that until {@code from}
   * @param from a time before which the sum is not reached
   * @param latest the last time looked at
   * @return the time, not after {@code latest}, or {@link #NEVER}
   */
  long reach(double sum, long from, long latest) {
    if (until(latest) < sum) {
      return NEVER;
    }
    int i = 0;
    while (sum > before[i + 1]) {
      i++;
    }
    int first = (int) (Math.max(0, from - starts[i]) / 3600);
    int last = (int) (Math.min(starts[i + 1], latest) - starts[i]) / 3600 + 1;
    double hours = years[i].reach(sum - before[i], leap[i], first, last);
    return Math.min(latest, starts[i] + (long) Math.ceil(hours * 3600 - 0.001));
  }
}
