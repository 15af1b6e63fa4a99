package curewindow.cure;

/**
 * The doses one job gathers: at a steady rate in the shop's bay, in each of its stays, and in the
 * weathers of its place between and after them. Times are seconds of local standard time. For one
 * thread.
 */
final class JobDoses {

  private static final int DRIVERS = Driver.values().length;
  private static final int EXPOSURES = Exposure.values().length;

  private final CureCase job;
  private final PlaceTables site;
  private final Stays stays;

  /** By stay. */
  private final JobTables[] tables;

  /** By stay, exposure and driver. */
  private final PickupDoses[] doses;

  /**
   * Gets ready for a job.
   *
   * @param job the job
   * @param site the tables of its place
   * @param stays the job's stays
   */
  JobDoses(CureCase job, PlaceTables site, Stays stays) {
    this.job = job;
    this.site = site;
    this.stays = stays;
    this.tables = new JobTables[stays.count()];
    this.doses = new PickupDoses[stays.count() * EXPOSURES * DRIVERS];
  }

  /** When the car is in the bay. */
  Stays stays() {
    return stays;
  }

  /**
   * When an item has what it needs of a driver while still in the bay.
   *
   * @param itemNeed the item and its rule
   * @param driver one of the rule's drivers
   * @return not after the claim's pickup, or {@link DoseTable#NEVER}
   */
  long metInBay(ItemNeed itemNeed, Driver driver) {
    PickupDoses of = doses(itemNeed, driver);
    double need = itemNeed.need(driver);
    return of.inBay(itemNeed.finished(), itemNeed.pickup()) >= need
        ? of.metInBay(itemNeed.finished(), need)
        : DoseTable.NEVER;
  }

  /**
   * What an item needs of a driver after the bay, which did not give it all.
   *
   * @param itemNeed the item and its rule
   * @param driver one of the rule's drivers
   */
  RemainingNeed remaining(ItemNeed itemNeed, Driver driver) {
    PickupDoses of = doses(itemNeed, driver);
    double need = itemNeed.need(driver);
    return new RemainingNeed(
        itemNeed,
        of,
        itemNeed.whole(driver),
        need - of.inBay(itemNeed.finished(), itemNeed.pickup()));
  }

  /**
   * When an item has what it needs of a driver.
   *
   * @param itemNeed the item and its rule
   * @param driver one of the rule's drivers
   * @param member the weather, from 0
   * @return not after the claim's limit, or {@link DoseTable#NEVER}
   */
  long met(ItemNeed itemNeed, Driver driver, int member) {
    PickupDoses of = doses(itemNeed, driver);
    double need = itemNeed.need(driver);
    double inBay = of.inBay(itemNeed.finished(), itemNeed.pickup());
    return inBay >= need
        ? of.metInBay(itemNeed.finished(), need)
        : of.reach(need - inBay, member, itemNeed.limit());
  }

  /**
   * What an item has gained of a driver, in hours of the reference film.
   *
   * @param itemNeed the item
   * @param driver the driver
   * @param member the weather, from 0
   * @param until a time not before the finish
   */
  double gained(ItemNeed itemNeed, Driver driver, int member, long until) {
    PickupDoses of = doses(itemNeed, driver);
    double inBay = of.inBay(itemNeed.finished(), until);
    return until <= itemNeed.pickup() ? inBay : inBay + of.since(until, member);
  }

  /**
   * Degree hours after the claim's pickup on the surface of an item, as if the car did not come
   * back.
   *
   * @param itemNeed the item
   * @param member the weather, from 0
   */
  MeanTable means(ItemNeed itemNeed, int member) {
    return tables(itemNeed.stay()).means(itemNeed.item().exposure(), member);
  }

  private PickupDoses doses(ItemNeed itemNeed, Driver driver) {
    int exposure = itemNeed.item().exposure().ordinal();
    int at = (itemNeed.stay() * EXPOSURES + exposure) * DRIVERS + driver.ordinal();
    if (doses[at] == null) {
      double bayRate = Rates.inBay(driver, job.bay(), job.bondEnergy());
      DoseTable table = tables(itemNeed.stay()).doses(itemNeed.item().exposure(), driver);
      boolean comesBack = itemNeed.stay() < stays.count() - 1;
      doses[at] =
          new PickupDoses(
              comesBack ? table.backInBay(stays, itemNeed.stay(), bayRate) : table,
              itemNeed.pickup(),
              bayRate);
    }
    return doses[at];
  }

  private JobTables tables(int stay) {
    if (tables[stay] == null) {
      int first = Weeks.of(stays.pickup(stay));
      tables[stay] =
          site.tables(new JobTables.Key(first, job.parking(), job.paint(), job.bondEnergy()));
    }
    return tables[stay];
  }

  /** The surface of an item outside the bay, in its shared form. */
  Surface surface(Exposure exposure) {
    return tables(0).surface(exposure);
  }
}
