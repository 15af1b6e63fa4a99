package curewindow.cure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Sums of an hourly quantity along the calendar, over one or several months, in each of the
 * weathers of a place: the dose of a driver, or degree hours for a mean. Times are seconds of local
 * standard time since 1970. Built once and shared; costs no more than a binary search to ask.
 *
 * <p>The calendar is cut into stretches within which the hours of the weather year follow each
 * other and sums begin at 0: the months, and February 29, which repeats the 28th.
 */
final class DoseTable {

  /** What is returned where a dose is not reached. */
  static final long NEVER = Long.MAX_VALUE;

  private final int members;
  private final long start;
  private final Stretch[] stretches;

  /**
   * Some hours of one month.
   *
   * @param first the first hour, counted from the table's start
   * @param end the hour after the last
   * @param skipped hours from the first hour of the weather year to that of the stretch, less first
   * @param sums the month's sums
   * @param base to be added to them, for each weather
   * @param meanBase mean of the bases
   */
  private record Stretch(
      int first, int end, int skipped, MonthSums sums, double[] base, double meanBase) {

    double until(int hour, int member) {
      return sums.until(hour + skipped, member) + base[member];
    }

    double mean(int hour) {
      return sums.mean(hour + skipped) + meanBase;
    }
  }

  /**
   * Joins months.
   *
   * @param firstMonth the number of the first month
   * @param months the sums of the first and the following months
   */
  DoseTable(int firstMonth, List<MonthSums> months) {
    members = months.get(0).members();
    start = Months.start(firstMonth);
    Stretches joined = new Stretches();
    for (int i = 0; i < months.size(); i++) {
      MonthSums sums = months.get(i);
      joined.add(sums, sums.first(), sums.end());
      if (Months.hasLeapDay(firstMonth + i)) {
        joined.add(sums, sums.end() - 24, sums.end());
      }
    }
    stretches = joined.list.toArray(Stretch[]::new);
  }

  /** Puts stretches one after the other. */
  private final class Stretches {
    private final List<Stretch> list = new ArrayList<>();
    private int first;
    private double[] before = new double[members];

    void add(MonthSums sums, int from, int to) {
      double[] base = new double[members];
      double[] after = new double[members];
      for (int m = 0; m < members; m++) {
        base[m] = before[m] - sums.until(from, m);
        after[m] = base[m] + sums.until(to, m);
      }
      double meanBase = Arrays.stream(base).average().orElseThrow();
      list.add(new Stretch(first, first + to - from, from - first, sums, base, meanBase));
      first += to - from;
      before = after;
    }
  }

  /** How many weathers there are. */
  int members() {
    return members;
  }

  /** The last whole hour, counted from the table's start, that is not after a time. */
  int hour(long second) {
    return (int) Math.floorDiv(second - start, 3600);
  }

  /** The time at which an hour, counted from the table's start, begins. */
  long second(int hour) {
    return start + 3600L * hour;
  }

  /**
   * The sum from the start of the first month.
   *
   * @param second a time within the months, or the end of the last
   * @param member the weather, from 0
   */
  double until(long second, int member) {
    int hour = hour(second);
    Stretch in = within(second, hour);
    double sum = in.until(hour, member);
    long into = second - second(hour);
    return into == 0 ? sum : sum + (in.until(hour + 1, member) - sum) * (into / 3600.0);
  }

  /**
   * The sums from the start of the first month.
   *
   * @param second a time within the months, or the end of the last
   * @return one for each weather
   */
  double[] until(long second) {
    int hour = hour(second);
    Stretch in = within(second, hour);
    double part = (second - second(hour)) / 3600.0;
    double[] sums = new double[members];
    for (int m = 0; m < members; m++) {
      double sum = in.until(hour, m);
      sums[m] = part == 0 ? sum : sum + (in.until(hour + 1, m) - sum) * part;
    }
    return sums;
  }

  private Stretch within(long second, int hour) {
    if (second < start || second > second(stretches[stretches.length - 1].end())) {
      throw new IllegalArgumentException("second " + second + " is outside the table's months");
    }
    return stretch(hour);
  }

  private Stretch stretch(int hour) {
    return stretches[stretchOf(hour)];
  }

  /** The sum between two times in one weather. */
  double between(long from, long to, int member) {
    return until(to, member) - until(from, member);
  }

  /** How many stretches of hours there are. */
  int stretches() {
    return stretches.length;
  }

  /** The number of the stretch of an hour, from 0; the last one's end belongs to it. */
  int stretchOf(int hour) {
    int i = 0;
    while (hour >= stretches[i].end() && i < stretches.length - 1) {
      i++;
    }
    return i;
  }

  /**
   * Sums as a stretch counts them.
   *
   * @param stretch the number of the stretch
   * @param sums from the start of the first month, one for each weather
   * @return the sums, or the same where the stretch is the first
   */
  double[] within(int stretch, double[] sums) {
    if (stretch == 0) {
      return sums;
    }
    double[] within = new double[members];
    double[] base = stretches[stretch].base();
    for (int m = 0; m < members; m++) {
      within[m] = sums[m] - base[m];
    }
    return within;
  }

  /** How many weathers have gained a dose by an hour of a stretch, since sums of that stretch. */
  int count(int stretch, int hour, double[] then, double dose) {
    Stretch in = stretches[stretch];
    return in.sums().count(hour + in.skipped(), then, dose);
  }

  /** Takes away the weathers that have not gained a dose by an hour of a stretch. */
  void keep(int stretch, int hour, double[] then, double dose, WeatherSet gained) {
    Stretch in = stretches[stretch];
    in.sums().keep(hour + in.skipped(), then, dose, gained);
  }

  /** How far the weathers are from a dose at an hour of a stretch, of which so many are further. */
  double lacking(int stretch, int hour, double[] then, double dose, int further) {
    Stretch in = stretches[stretch];
    return in.sums().lacking(hour + in.skipped(), then, dose, further);
  }

  /** The mean over the weathers of the sums from the start of the first month to an hour. */
  double mean(int hour) {
    return stretch(hour).mean(hour);
  }

  /**
   * The first hour by which the weathers have gained a dose on the mean since another.
   *
   * @param from the other hour
   * @param dose the dose
   * @param last the last hour looked at, not before the other
   * @return the hour, or the last
   */
  int meanReach(int from, double dose, int last) {
    double sum = mean(from) + dose;
    int low = from;
    int high = last;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (mean(middle) >= sum) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /**
   * The first whole second at which a sum is reached, give or take the thousandth of a second that
   * keeps rounding errors from costing a second.
   *
   * @param sum the sum from the start of the first month, above that until {@code from}
   * @param member the weather, from 0
   * @param from a time before which the sum is not reached
   * @param latest the last time looked at
   * @return the time, not after {@code latest}, or {@link #NEVER}
   */
  long reach(double sum, int member, long from, long latest) {
    if (until(latest, member) < sum) {
      return NEVER;
    }
    int low = hour(Math.max(start, from)) + 1;
    int high = hour(latest - 1) + 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (stretch(middle).until(middle, member) >= sum) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return Math.min(latest, inHour(sum, member, low));
  }

  /**
   * The first whole second of an hour at which a sum is reached.
   *
   * @param sum not above the sum at the hour's end
   * @param member the weather, from 0
   * @param end the hour's end, counted in hours from the table's start
   */
  long inHour(double sum, int member, int end) {
    Stretch in = stretch(end - 1);
    double before = in.until(end - 1, member);
    double gain = in.until(end, member) - before;
    double part = gain > 0 ? Math.min(1, Math.max(0, (sum - before) / gain)) : 1;
    return second(end - 1) + (long) Math.ceil(part * 3600 - 0.001);
  }
}
