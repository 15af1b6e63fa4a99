package curewindow.cure;

import curewindow.climate.WeatherYear;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * Prefix sums of an hourly quantity over the weather years of a place, one beside the other: the
 * sums of all years up to an hour lie together, as they are asked for together.
 */
final class YearSums {

  /** The hour at which February 28 begins. */
  static final int LAST_OF_FEBRUARY = 24 * (31 + 27);

  /** The hour at which March begins. */
  static final int MARCH = 24 * (31 + 28);

  private final int members;
  private final double[] before;

  private YearSums(int members) {
    this.members = members;
    before = new double[(WeatherYear.HOURS + 1) * members];
  }

  /**
   * Sums of a quantity.
   *
   * @param hourly for each weather, its value in each hour, 0 to 8759, not negative where doses are
   *     to be searched for
   */
  static YearSums of(List<IntToDoubleFunction> hourly) {
    int members = hourly.size();
    YearSums sums = new YearSums(members);
    for (int m = 0; m < members; m++) {
      IntToDoubleFunction values = hourly.get(m);
      double sum = 0;
      for (int hour = 0; hour < WeatherYear.HOURS; hour++) {
        sum += values.applyAsDouble(hour);
        sums.before[(hour + 1) * members + m] = sum;
      }
    }
    return sums;
  }

  /** How many weathers there are. */
  int members() {
    return members;
  }

  /**
   * The sum from the start of the year.
   *
   * @param hour 0 to 8760
   * @param member the weather, from 0
   */
  double until(int hour, int member) {
    return before[hour * members + member];
  }

  /** The sum over February 28, which February 29 repeats. */
  double leapDay(int member) {
    return until(MARCH, member) - until(LAST_OF_FEBRUARY, member);
  }

  /**
   * How many weathers have gained a dose since a time.
   *
   * @param hour 0 to 8760
   * @param then the sums at that time, one for each weather
   * @param dose the dose
   */
  int count(int hour, double[] then, double dose) {
    int at = hour * members;
    int count = 0;
    for (int m = 0; m < members; m++) {
      count += before[at + m] - dose >= then[m] ? 1 : 0;
    }
    return count;
  }

  /**
   * Takes away the weathers that have not gained a dose since a time.
   *
   * @param hour 0 to 8760
   * @param then the sums at that time, one for each weather
   * @param dose the dose
   * @param gained one for each weather
   */
  void and(int hour, double[] then, double dose, boolean[] gained) {
    int at = hour * members;
    for (int m = 0; m < members; m++) {
      gained[m] &= before[at + m] - dose >= then[m];
    }
  }
}
