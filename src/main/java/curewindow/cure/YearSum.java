package curewindow.cure;

import curewindow.climate.WeatherYear;
import java.util.function.IntToDoubleFunction;

/**
 * Prefix sums of an hourly quantity over a weather year. In a leap year February 29 repeats the
 * 28th. Positions are hours since the start of the calendar year, whole or broken.
 */
final class YearSum {

  private static final int LAST_OF_FEBRUARY = 24 * (31 + 27);
  private static final int MARCH = 24 * (31 + 28);

  private final double[] before = new double[WeatherYear.HOURS + 1];

  private YearSum() {}

  /**
   * Sums of a quantity.
   *
   * @param hourly its value in each hour, 0 to 8759
   */
  static YearSum of(IntToDoubleFunction hourly) {
    YearSum sum = new YearSum();
    for (int hour = 0; hour < WeatherYear.HOURS; hour++) {
      sum.before[hour + 1] = sum.before[hour] + hourly.applyAsDouble(hour);
    }
    return sum;
  }

  /**
   * The sum of a whole calendar year.
   *
   * @param leap whether it has a February 29
   */
  double whole(boolean leap) {
    return before[WeatherYear.HOURS] + (leap ? leapDay() : 0);
  }

  /**
   * The sum from the start of the year.
   *
   * @param position hours since the start of the year
   * @param leap whether the year has a February 29
   */
  double until(double position, boolean leap) {
    if (!leap || position <= MARCH) {
      return at(position);
    }
    if (position <= MARCH + 24) {
      return before[MARCH] + at(position - 24) - before[LAST_OF_FEBRUARY];
    }
    return leapDay() + at(position - 24);
  }

  /**
   * The first position at which the sum from the start of the year is reached. The hourly quantity
   * must not be negative.
   *
   * @param sum not above the sum at {@code to}
   * @param leap whether the year has a February 29
   * @param from a whole hour not after the position
   * @param to a whole hour not before the position
   * @return hours since the start of the year
   */
  double reach(double sum, boolean leap, int from, int to) {
    int low = Math.max(0, leap ? from - 24 : from);
    int high = Math.min(WeatherYear.HOURS, to);
    if (!leap || sum <= before[MARCH]) {
      return search(sum, low, high);
    }
    if (sum <= before[MARCH] + leapDay()) {
      return 24 + search(sum - before[MARCH] + before[LAST_OF_FEBRUARY], LAST_OF_FEBRUARY, MARCH);
    }
    return 24 + search(sum - leapDay(), Math.max(MARCH, low), high);
  }

  private double leapDay() {
    return before[MARCH] - before[LAST_OF_FEBRUARY];
  }

  private double at(double position) {
    int hour = Math.min((int) position, WeatherYear.HOURS - 1);
    return before[hour] + (position - hour) * (before[hour + 1] - before[hour]);
  }

  /** The first hour whose end reaches the sum, then the part of it that is needed. */
  private double search(double sum, int from, int to) {
    int low = from + 1;
    int high = to;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (before[middle] >= sum) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    double gain = before[low] - before[low - 1];
    double part = gain > 0 ? (sum - before[low - 1]) / gain : 1;
    return low - 1 + Math.min(1, Math.max(0, part));
  }
}
