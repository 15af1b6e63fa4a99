package curewindow.cure;

/**
 * What an item still needs of a driver when the car leaves the bay.
 *
 * @param claim the item and its rule
 * @param driver one of the rule's drivers
 * @param table the driver's doses in the weathers
 * @param targets the sums in the table at which the need is met, one for each weather
 */
record Wanted(Claim claim, Driver driver, DoseTable table, double[] targets) {

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
}
