package curewindow.cure;

/**
 * What an item still needs of a driver when the car leaves the bay.
 *
 * @param claim the item and its rule
 * @param doses the driver's doses since the pickup
 * @param dose the need, less what the bay has given; above 0
 */
record Wanted(Claim claim, PickupDoses doses, double dose) {

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

  /**
   * Raises to the look-by the times of the weathers in which the need is not met by then.
   *
   * @param times one for each weather
   * @return whether there are such weathers
   */
  boolean raiseMissed(long[] times) {
    if (doses.count(doses.hour(claim.lookBy()), dose) == times.length) {
      return false;
    }
    boolean missed = false;
    for (int m = 0; m < times.length; m++) {
      if (doses.since(claim.lookBy(), m) < dose) {
        times[m] = Math.max(times[m], claim.lookBy());
        missed = true;
      }
    }
    return missed;
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
