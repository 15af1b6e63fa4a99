package curewindow.cure;

import curewindow.climate.WeatherYear;
import java.util.Arrays;
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

  /** Means over the years. */
  private final double[] mean = new double[WeatherYear.HOURS + 1];

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
    double[] sum = new double[members];
    for (int first = 0; first < WeatherYear.HOURS; first += 24) {
      for (int m = 0; m < members; m++) {
        sum[m] = sums.addDay(first, m, hourly.get(m), sum[m]);
      }
    }
    return sums;
  }

  /** Day by day through all years, so that what is written lies close together. */
  private double addDay(int first, int member, IntToDoubleFunction values, double before) {
    double sum = before;
    for (int hour = first; hour < first + 24; hour++) {
      sum += values.applyAsDouble(hour);
      this.before[(hour + 1) * members + member] = sum;
      mean[hour + 1] += sum / members;
    }
    return sum;
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

  /**
   * The mean over the years of their sums from the start of the year.
   *
   * @param hour 0 to 8760
   */
  double mean(int hour) {
    return mean[hour];
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
   * @param gained the weathers that are left
   */
  void keep(int hour, double[] then, double dose, WeatherSet gained) {
    int at = hour * members;
    for (int from = 0; from < members; from += WeatherSet.BITS) {
      int end = Math.min(members, from + WeatherSet.BITS);
      long bits = 0;
      for (int m = from; m < end; m++) {
        bits |= (before[at + m] - dose >= then[m] ? 1L : 0) << m;
      }
      gained.keep(from, bits);
    }
  }

  /**
   * How far the weathers are from a dose, of which so many are further.
   *
   * @param hour 0 to 8760
   * @param then the sums from which the dose counts, one for each weather
   * @param dose the dose
   * @param further how many weathers lack more, 0 or more
   */
  double lacking(int hour, double[] then, double dose, int further) {
    int at = hour * members;
    double[] most = new double[further + 1];
    Arrays.fill(most, Double.NEGATIVE_INFINITY);
    for (int m = 0; m < members; m++) {
      double lacking = then[m] + dose - before[at + m];
      for (int i = further; i >= 0 && lacking > most[i]; i--) {
        if (i < further) {
          most[i + 1] = most[i];
        }
        most[i] = lacking;
      }
    }
    return most[further];
  }
}
