package curewindow.cure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * Prefix sums of an hourly quantity over one week in the weather years of a place, one beside the
 * other: the sums of all years up to an hour lie together, as they are asked for together. Hours
 * are those of the weather year.
 */
final class WeekSums {

  private static final int HOURS_IN_DAY = 24;

  private final int members;
  private final int first;
  private final int end;
  private final double[] before;

  /** Means over the years; of one year, its own sums. */
  private final double[] mean;

  private WeekSums(int members, int first, int end) {
    this.members = members;
    this.first = first;
    this.end = end;
    before = new double[(end - first + 1) * members];
    mean = members == 1 ? before : new double[end - first + 1];
  }

  /**
   * Sums of a quantity.
   *
   * @param week the week within its year, from 0
   * @param hourly for each weather, its value in each hour of the week, not negative where doses
   *     are to be searched for
   */
  static WeekSums of(int week, List<IntToDoubleFunction> hourly) {
    return of(Weeks.firstHour(week), Weeks.firstHour(week + 1), hourly);
  }

  private static WeekSums of(int from, int end, List<IntToDoubleFunction> hourly) {
    int members = hourly.size();
    WeekSums sums = new WeekSums(members, from, end);
    double[] sum = new double[members];
    for (int first = sums.first; first < sums.end; first += HOURS_IN_DAY) {
      for (int m = 0; m < members; m++) {
        sum[m] = sums.addDay(first, m, hourly.get(m), sum[m]);
      }
    }
    return sums;
  }

  /**
   * The same with some hours, or parts of them, at a steady rate.
   *
   * @param share which share of an hour has that rate, 0 to 1
   * @param rate the rate per hour
   */
  WeekSums mixed(IntToDoubleFunction share, double rate) {
    List<IntToDoubleFunction> hourly = new ArrayList<>();
    for (int m = 0; m < members; m++) {
      int member = m;
      hourly.add(
          hour -> {
            double steady = share.applyAsDouble(hour);
            double own = until(hour + 1, member) - until(hour, member);
            return steady * rate + (1 - steady) * own;
          });
    }
    return of(first, end, hourly);
  }

  /** Day by day through all weathers, so that what is written lies close together. */
  private double addDay(int first, int member, IntToDoubleFunction values, double before) {
    double sum = before;
    for (int hour = first; hour < first + HOURS_IN_DAY; hour++) {
      sum += values.applyAsDouble(hour);
      this.before[at(hour + 1) + member] = sum;
      if (members > 1) {
        mean[hour + 1 - this.first] += sum / members;
      }
    }
    return sum;
  }

  private int at(int hour) {
    return (hour - first) * members;
  }

  /** The hour at which the week begins. */
  int first() {
    return first;
  }

  /** The hour after the week's last. */
  int end() {
    return end;
  }

  /** How many weathers there are. */
  int members() {
    return members;
  }

  /**
   * The sum from the start of the week.
   *
   * @param hour from the first of the week to its end
   * @param member the weather, from 0
   */
  double until(int hour, int member) {
    return before[at(hour) + member];
  }

  /**
   * The mean over the years of their sums from the start of the week.
   *
   * @param hour from the first of the week to its end
   */
  double mean(int hour) {
    return mean[hour - first];
  }

  /**
   * How many weathers have gained a dose since a time.
   *
   * @param hour from the first of the week to its end
   * @param then the sums at that time, one for each weather
   * @param dose the dose
   */
  int count(int hour, double[] then, double dose) {
    int at = at(hour);
    int count = 0;
    for (int m = 0; m < members; m++) {
      count += before[at + m] - dose >= then[m] ? 1 : 0;
    }
    return count;
  }

  /**
   * Takes away the weathers that have not gained a dose since a time.
   *
   * @param hour from the first of the week to its end
   * @param then the sums at that time, one for each weather
   * @param dose the dose
   * @param gained the weathers that are left
   */
  void keep(int hour, double[] then, double dose, WeatherSet gained) {
    int at = at(hour);
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
   * @param hour from the first of the week to its end
   * @param then the sums from which the dose counts, one for each weather
   * @param dose the dose
   * @param further how many weathers lack more, 0 or more
   */
  double lacking(int hour, double[] then, double dose, int further) {
    int at = at(hour);
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
