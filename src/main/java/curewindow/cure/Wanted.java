package curewindow.cure;

/** What an item still needs of a driver when the car leaves the bay. For one thread. */
final class Wanted {

  private final Claim claim;
  private final Driver driver;
  private final DoseTable table;
  private final double[] targets;
  private final double[][] limits;

  /**
   * Lays the need out.
   *
   * @param claim the item and its rule
   * @param driver one of the rule's drivers
   * @param table the driver's doses in the weathers
   * @param targets the sums in the table at which the need is met, one for each weather
   */
  Wanted(Claim claim, Driver driver, DoseTable table, double[] targets) {
    this.claim = claim;
    this.driver = driver;
    this.table = table;
    this.targets = targets;
    this.limits = new double[table.stretches()][];
  }

  Claim claim() {
    return claim;
  }

  Driver driver() {
    return driver;
  }

  DoseTable table() {
    return table;
  }

  /**
   * When the need is met.
   *
   * @param member the weather, from 0
   * @param pickup when the car leaves the bay
   * @return not after the look-by, or {@link DoseTable#NEVER}
   */
  long met(int member, long pickup) {
    return table.reach(targets[member], member, pickup, claim.lookBy());
  }

  /**
   * When the need is met within an hour, not after the look-by.
   *
   * @param member a weather in which it is met by the hour's end
   * @param end the hour's end, counted in hours from the table's start
   */
  long metInHour(int member, int end) {
    return Math.min(claim.lookBy(), table.inHour(targets[member], member, end));
  }

  /**
   * The weathers in which the need is not met by the look-by.
   *
   * @param lookBys for each weather the latest look-by that comes first; raised here
   */
  void raiseMissed(long[] lookBys) {
    double[] sums = table.until(claim.lookBy());
    for (int m = 0; m < targets.length; m++) {
      if (sums[m] < targets[m]) {
        lookBys[m] = Math.max(lookBys[m], claim.lookBy());
      }
    }
  }

  /** Never counts a weather from now on. */
  void leaveOut(int member) {
    targets[member] = Double.POSITIVE_INFINITY;
  }

  /** Whether an hour begins before the look-by, so that it matters whether the need is met. */
  boolean matters(int hour) {
    return table.second(hour) < claim.lookBy();
  }

  /** In how many weathers the need is met by the start of an hour. */
  int count(int hour) {
    int stretch = table.stretchOf(hour);
    return table.count(stretch, hour, limits(stretch));
  }

  /** Takes away the weathers in which the need is not met by the start of an hour. */
  void and(int hour, boolean[] met) {
    int stretch = table.stretchOf(hour);
    table.and(stretch, hour, limits(stretch), met);
  }

  /** Takes away the weathers in which the need is not met by a time, or by the look-by before. */
  void and(long second, boolean[] met) {
    double[] sums = table.until(Math.min(second, claim.lookBy()));
    for (int m = 0; m < targets.length; m++) {
      met[m] &= sums[m] >= targets[m];
    }
  }

  private double[] limits(int stretch) {
    if (limits[stretch] == null) {
      limits[stretch] = table.limits(stretch, targets);
    }
    return limits[stretch];
  }
}
