package curewindow.cure;

/**
 * What an item still needs of a driver when the car leaves the bay.
 *
 * @param itemNeed the item and its rule
 * @param doses the driver's doses since the pickup
 * @param whole all that the item needs
 * @param dose the need, less what the bay has given; above 0
 */
record RemainingNeed(ItemNeed itemNeed, PickupDoses doses, double whole, double dose) {

  /** When the mean dose of the weathers is enough, up to the hour, at most a last time. */
  long metOnTheMean(long last) {
    return doses.second(doses.guess(dose, doses.hour(last)));
  }

  /** When the wait is over that ends within the hour before an hour's start. */
  long overInHour(int member, int end) {
    return Math.min(itemNeed.limit(), doses.inHour(dose, member, end));
  }

  /**
   * Whether the wait is over wherever another's is, and never less of the need met, as both count
   * the same doses.
   */
  boolean isOverWith(RemainingNeed other) {
    return doses == other.doses
        && dose <= other.dose
        && whole >= other.whole
        && itemNeed.limit() <= other.itemNeed.limit();
  }

  /**
   * Which share of all that it needs the item has.
   *
   * @param at a time not before the pickup
   * @param shares for each weather, made smaller where this item has less; 0 to 1
   */
  void shares(long at, double[] shares) {
    double[] since = doses.since(at);
    for (int m = 0; m < shares.length; m++) {
      shares[m] = Math.min(shares[m], 1 - (dose - since[m]) / whole);
    }
  }

  /** Whether an hour begins before the limit, so that it matters whether the need is met. */
  boolean matters(int hour) {
    return doses.second(hour) < itemNeed.limit();
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
