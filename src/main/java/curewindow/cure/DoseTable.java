package curewindow.cure;

import java.util.Arrays;
import java.util.function.IntFunction;

/**
 * Sums of an hourly quantity along the calendar in each of the weathers of a place: the dose of a
 * driver, or degree hours for a mean. Times are seconds of local standard time since 1970. Shared
 * between threads; costs no more than a binary search to ask.
 *
 * <p>The calendar is cut into stretches within which the hours of the weather year follow each
 * other and sums begin at 0: the weeks, and February 29, which repeats the 28th. A week is summed
 * up when somebody first asks for a time in it: most holds are over within two.
 */
final class DoseTable {

  /** What is returned where a dose is not reached. */
  static final long NEVER = Long.MAX_VALUE;

  /** No question reaches further than five years. */
  private static final int MOST_WEEKS = 5 * Weeks.IN_YEAR;

  private final int members;
  private final int firstWeek;
  private final long start;
  private final IntFunction<WeekSums> weeks;
  private final Bays bays;
  private int joined;
  private volatile Stretch[] stretches = {};

  /**
   * Some hours of one week.
   *
   * @param first the first hour, counted from 1970
   * @param end the hour after the last
   * @param skipped hours from the first hour of the weather year to that of the stretch, less first
   * @param sums the week's sums
   * @param base to be added to them, for each weather
   * @param meanBase mean of the bases
   */
  private record Stretch(
      int first, int end, int skipped, WeekSums sums, double[] base, double meanBase) {

    double until(int hour, int member) {
      return sums.until(hour + skipped, member) + base[member];
    }

    double mean(int hour) {
      return sums.mean(hour + skipped) + meanBase;
    }
  }

  /**
   * A table that begins with a week.
   *
   * @param firstWeek the number of the first week
   * @param members how many weathers there are
   * @param weeks the sums of a week by its number
   */
  DoseTable(int firstWeek, int members, IntFunction<WeekSums> weeks) {
    this(firstWeek, members, weeks, (sums, skipped) -> sums);
  }

  private DoseTable(int firstWeek, int members, IntFunction<WeekSums> weeks, Bays bays) {
    this.firstWeek = firstWeek;
    this.members = members;
    this.weeks = weeks;
    this.bays = bays;
    this.start = Weeks.start(firstWeek);
  }

  /** The sums of a stretch of the calendar with what the bay gives in it. */
  @FunctionalInterface
  private interface Bays {
    WeekSums in(WeekSums sums, int skipped);
  }

  /**
   * The same sums, but at a steady rate while the car is in the bay again. An hour in which it
   * comes or leaves counts by its shares.
   *
   * @param stays when the car is in the bay
   * @param after the number of the stay after which the sums are asked for
   * @param rate reference hours per hour in the bay
   */
  DoseTable backInBay(Stays stays, int after, double rate) {
    return new DoseTable(
        firstWeek,
        members,
        weeks,
        (sums, skipped) -> {
          long from = second(sums.first() - skipped);
          long to = second(sums.end() - skipped);
          return stays.bayHours(after + 1, from, to) == 0
              ? sums
              : sums.mixed(hour -> inBay(stays, after, hour - skipped), rate);
        });
  }

  private double inBay(Stays stays, int after, int hour) {
    return stays.bayHours(after + 1, second(hour), second(hour + 1));
  }

  private synchronized Stretch[] joinedBeyond(int count) {
    while (stretches.length <= count) {
      if (joined == MOST_WEEKS) {
        throw new IllegalArgumentException("more than " + MOST_WEEKS + " weeks are asked for");
      }
      int week = firstWeek + joined++;
      WeekSums sums = weeks.apply(week);
      Stretch[] more = with(stretches, sums, sums.first());
      stretches = Weeks.hasLeapDay(week) ? with(more, sums, sums.end() - 24) : more;
    }
    return stretches;
  }

  private Stretch[] with(Stretch[] before, WeekSums plain, int from) {
    Stretch[] with = Arrays.copyOf(before, before.length + 1);
    Stretch last = before.length == 0 ? null : before[before.length - 1];
    int first = last == null ? hour(start) : last.end();
    WeekSums sums = bays.in(plain, from - first);
    double[] base = new double[members];
    for (int m = 0; m < members; m++) {
      base[m] = (last == null ? 0 : last.until(first, m)) - sums.until(from, m);
    }
    double meanBase = Arrays.stream(base).average().orElseThrow();
    with[before.length] =
        new Stretch(first, first + sums.end() - from, from - first, sums, base, meanBase);
    return with;
  }

  private Stretch at(int number) {
    Stretch[] known = stretches;
    return number < known.length ? known[number] : joinedBeyond(number)[number];
  }

  /** How many weathers there are. */
  int members() {
    return members;
  }

  /** The last whole hour, counted from 1970, that is not after a time. */
  static int hour(long second) {
    return (int) Math.floorDiv(second, 3600);
  }

  /** The time at which an hour, counted from 1970, begins. */
  static long second(int hour) {
    return 3600L * hour;
  }

  /**
   * The sum from the start of the first week.
   *
   * @param second a time not before it
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
   * The sums from the start of the first week.
   *
   * @param second a time not before it
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
    if (second < start) {
      throw new IllegalArgumentException("second " + second + " is before the table's weeks");
    }
    return stretch(hour);
  }

  private Stretch stretch(int hour) {
    return at(stretchOf(hour));
  }

  /** The sum between two times in one weather. */
  double between(long from, long to, int member) {
    return until(to, member) - until(from, member);
  }

  /** The number of the stretch of an hour, from 0. */
  int stretchOf(int hour) {
    return stretchOf(hour, 0);
  }

  /**
   * The number of the stretch of an hour.
   *
   * @param hour the hour
   * @param guess the number it has, most likely; decides nothing but the speed
   */
  int stretchOf(int hour, int guess) {
    int number = hour < at(guess).first() ? 0 : guess;
    while (hour >= at(number).end()) {
      number++;
    }
    return number;
  }

  /**
   * Sums as a stretch counts them.
   *
   * @param stretch the number of the stretch
   * @param sums from the start of the first week, one for each weather
   * @return the sums, or the same where the stretch is the first
   */
  double[] within(int stretch, double[] sums) {
    if (stretch == 0) {
      return sums;
    }
    double[] within = new double[members];
    double[] base = at(stretch).base();
    for (int m = 0; m < members; m++) {
      within[m] = sums[m] - base[m];
    }
    return within;
  }

  /** How many weathers have gained a dose by an hour of a stretch, since sums of that stretch. */
  int count(int stretch, int hour, double[] then, double dose) {
    Stretch in = at(stretch);
    return in.sums().count(hour + in.skipped(), then, dose);
  }

  /** Takes away the weathers that have not gained a dose by an hour of a stretch. */
  void keep(int stretch, int hour, double[] then, double dose, WeatherSet gained) {
    Stretch in = at(stretch);
    in.sums().keep(hour + in.skipped(), then, dose, gained);
  }

  /** How far the weathers are from a dose at an hour of a stretch, of which so many are further. */
  double lacking(int stretch, int hour, double[] then, double dose, int further) {
    Stretch in = at(stretch);
    return in.sums().lacking(hour + in.skipped(), then, dose, further);
  }

  /** The mean over the weathers of the sums from the start of the first week to an hour. */
  double mean(int hour) {
    return stretch(hour).mean(hour);
  }

  /**
   * The first hour by which the mean over the weathers has reached a sum.
   *
   * @param from the first hour looked at
   * @param sum the sum from the start of the first week
   * @param last the last hour looked at, not before the first
   * @return the hour, or the last
   */
  int meanReach(int from, double sum, int last) {
    int number = stretchOf(from);
    while (at(number).end() < last && at(number).mean(at(number).end()) < sum) {
      number++;
    }
    Stretch in = at(number);
    int low = Math.max(from, in.first());
    int high = Math.min(last, in.end());
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (in.mean(middle) >= sum) {
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
   * @param sum the sum from the start of the first week, above that until {@code from}
   * @param member the weather, from 0
   * @param from a time before which the sum is not reached
   * @param latest the last time looked at
   * @return the time, not after {@code latest}, or {@link #NEVER}
   */
  long reach(double sum, int member, long from, long latest) {
    int last = hour(latest - 1) + 1;
    int low = hour(Math.max(start, from)) + 1;
    int number = stretchOf(low - 1);
    while (at(number).end() < last && at(number).until(at(number).end(), member) < sum) {
      number++;
    }
    Stretch in = at(number);
    low = Math.max(low, in.first() + 1);
    int high = Math.min(last, in.end());
    if (in.until(high, member) < sum) {
      return NEVER;
    }
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (in.until(middle, member) >= sum) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    long found = inHour(sum, member, high);
    return found <= latest ? found : NEVER;
  }

  /**
   * The first whole second of an hour at which a sum is reached.
   *
   * @param sum not above the sum at the hour's end
   * @param member the weather, from 0
   * @param end the hour's end, counted in hours from 1970
   */
  long inHour(double sum, int member, int end) {
    Stretch in = stretch(end - 1);
    double before = in.until(end - 1, member);
    double gain = in.until(end, member) - before;
    double part = sum <= before ? 0 : gain > 0 ? Math.min(1, (sum - before) / gain) : 1;
    return second(end - 1) + (long) Math.ceil(part * 3600 - 0.001);
  }
}
