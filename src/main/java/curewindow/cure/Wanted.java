package curewindow.cure;

/**
 * What an item still needs of a driver when the car leaves the bay.
 *
 * @param claim the item and its rule
 * @param doses the driver's doses since the pickup
 * @param dose the need, less what the bay has given; above 0
 * @param whole the whole need
 */
record Wanted(Claim claim, PickupDoses doses, double dose, double whole) {

  /** When the need is met, not after the look-by, or {@link DoseTable#NEVER}. */
  long met(int member) {
    return doses.reach(dose, member, claim.lookBy());
  }

  /** When the need is met within the hour that ends with an hour's start, by the look-by. */
  long metInHour(int member, int end) {
    return Math.min(claim.lookBy(), doses.inHour(dose, member, end));
  }

  /** Whether the need is met wherever another's is, as both count the same doses. */
  boolean isMetWith(Wanted other) {
    return doses == other.doses && dose <= other.dose;
  }

  /** Whether the need is met by the look-by in all weathers; seldom no although it is. */
  boolean isMetInAll(int members) {
    return doses.count(doses.hour(claim.lookBy()), dose) == members;
  }

  /**
   * How much of the need is lacking at the look-by.
   *
   * @return for each weather a share of the whole need, above 0 where it is not met
   */
  double[] lacking() {
    double[] lacking = doses.since(claim.lookBy());
    for (int m = 0; m < lacking.length; m++) {
      lacking[m] = (dose - lacking[m]) / whole;
    }
    return lacking;
  }

  /** Whether an hour begins before the look-by, so that it matters whether the need is met. */
  boolean matters(int hour) {
    return doses.second(hour) < claim.lookBy();
  }

  /**
   * In how many weathers the need is met by the start of an hour, or need not be any more.
   *
   * @param hour the hour
   * @param members how many weathers there are
   */
  int count(int hour, int members) {
    return matters(hour) ? doses.count(hour, dose) : members;
  }
}
