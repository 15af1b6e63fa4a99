package curewindow.cure;

import java.util.Arrays;

/** The doses of one driver on one surface, counted from a pickup of one job. For one thread. */
final class PickupDoses {

  /** A guess takes no weather to have been slower than the mean by more than this. */
  private static final double SLOWEST = 2;

  private final DoseTable table;
  private final long pickup;
  private final double bayRate;
  private final double[] atPickup;
  private final double meanAtPickup;
  private int lastStretch;
  private double[][] byStretch = new double[4][];

  /**
   * Counts from a pickup.
   *
   * @param table the doses of the driver
   * @param pickup when the car leaves the bay
   * @param bayRate reference hours per hour until then
   */
  PickupDoses(DoseTable table, long pickup, double bayRate) {
    this.table = table;
    this.pickup = pickup;
    this.bayRate = bayRate;
    this.atPickup = table.until(pickup);
    this.meanAtPickup = mean(atPickup);
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  /** What an item gains in the bay until a time, which may be after the pickup. */
  double inBay(long finished, long until) {
    return bayRate * (Math.min(until, pickup) - finished) / 3600.0;
  }

  /** When an item has a dose if it stays in the bay. */
  long metInBay(long finished, double need) {
    return finished + (long) Math.ceil(need / bayRate * 3600 - 0.001);
  }

  /** What is gained from the pickup to a time after it. */
  double since(long until, int member) {
    return table.until(until, member) - atPickup[member];
  }

  /** What is gained from the pickup to a time after it, in each of the weathers. */
  double[] since(long until) {
    double[] since = table.until(until);
    for (int m = 0; m < since.length; m++) {
      since[m] -= atPickup[m];
    }
    return since;
  }

  /** Most questions are about hours close to each other. */
  private int stretchOf(int hour) {
    lastStretch = table.stretchOf(hour, lastStretch);
    return lastStretch;
  }

  /** The sums at the pickup, as the stretch of an hour counts them. */
  private double[] then(int stretch) {
    if (stretch >= byStretch.length) {
      byStretch = Arrays.copyOf(byStretch, 2 * stretch);
    }
    if (byStretch[stretch] == null) {
      byStretch[stretch] = table.within(stretch, atPickup);
    }
    return byStretch[stretch];
  }

  /** How many weathers have given a dose by the start of an hour. */
  int count(int hour, double dose) {
    int stretch = stretchOf(hour);
    return table.count(stretch, hour, then(stretch), dose);
  }

  /** Takes away the weathers that have not given a dose by the start of an hour. */
  void keep(int hour, double dose, WeatherSet gained) {
    int stretch = stretchOf(hour);
    table.keep(stretch, hour, then(stretch), dose, gained);
  }

  /** The hour by which a dose is gained on the mean of the weathers, at most a last hour. */
  int guess(double dose, int last) {
    int first = hour(pickup);
    return first >= last ? last : table.meanReach(first, meanAtPickup + dose, last);
  }

  /**
   * About the hour by which a dose is gained in all but so many weathers, if the last of them goes
   * on half as much more slowly than the mean as it did until then.
   *
   * @param dose the dose
   * @param further how many weathers may need longer
   * @param from an hour before it
   * @param last the last hour looked at
   */
  int guess(double dose, int further, int from, int last) {
    int stretch = stretchOf(from);
    double lacking = table.lacking(stretch, from, then(stretch), dose, further);
    if (lacking <= 0) {
      return from;
    }
    double mean = table.mean(from);
    double slower = Math.min(SLOWEST, (mean - meanAtPickup) / Math.max(dose - lacking, 0));
    slower = (1 + slower) / 2;
    return table.meanReach(from, mean + lacking * slower, last);
  }

  /** When a dose is gained, not after a last time, or {@link DoseTable#NEVER}. */
  long reach(double dose, int member, long latest) {
    return table.reach(atPickup[member] + dose, member, pickup, latest);
  }

  /** When a dose is gained within the hour that ends with an hour's start. */
  long inHour(double dose, int member, int end) {
    return table.inHour(atPickup[member] + dose, member, end);
  }

  /** The last whole hour that is not after a time. */
  int hour(long second) {
    return DoseTable.hour(second);
  }

  /** The time at which an hour begins. */
  long second(int hour) {
    return DoseTable.second(hour);
  }
}
