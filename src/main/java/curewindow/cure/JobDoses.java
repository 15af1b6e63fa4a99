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
  private final Site site;
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
  JobDoses(CureCase job, Site site, Stays stays) {
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
   * @param claim the item and its rule
   * @param driver one of the rule's drivers
   * @return not after the claim's pickup, or {@link DoseTable#NEVER}
   */
  long metInBay(Claim claim, Driver driver) {
    PickupDoses of = doses(claim, driver);
    double need = claim.need(driver);
    return of.inBay(claim.finished(), claim.pickup()) >= need
        ? of.metInBay(claim.finished(), need)
        : DoseTable.NEVER;
  }

  /**
   * What an item needs of a driver after the bay, which did not give it all.
   *
   * @param claim the item and its rule
   * @param driver one of the rule's drivers
   */
  Wanted wanted(Claim claim, Driver driver) {
    PickupDoses of = doses(claim, driver);
    double need = claim.need(driver);
    return new Wanted(
        claim, of, claim.whole(driver), need - of.inBay(claim.finished(), claim.pickup()));
  }

  /**
   * When an item has what it needs of a driver.
   *
   * @param claim the item and its rule
   * @param driver one of the rule's drivers
   * @param member the weather, from 0
   * @return not after the claim's limit, or {@link DoseTable#NEVER}
   */
  long met(Claim claim, Driver driver, int member) {
    PickupDoses of = doses(claim, driver);
    double need = claim.need(driver);
    double inBay = of.inBay(claim.finished(), claim.pickup());
    return inBay >= need
        ? of.metInBay(claim.finished(), need)
        : of.reach(need - inBay, member, claim.limit());
  }

  /**
   * What an item has gained of a driver, in hours of the reference film.
   *
   * @param claim the item
   * @param driver the driver
   * @param member the weather, from 0
   * @param until a time not before the finish
   */
  double gained(Claim claim, Driver driver, int member, long until) {
    PickupDoses of = doses(claim, driver);
    double inBay = of.inBay(claim.finished(), until);
    return until <= claim.pickup() ? inBay : inBay + of.since(until, member);
  }

  /**
   * Degree hours after the claim's pickup on the surface of an item, as if the car did not come
   * back.
   *
   * @param claim the item
   * @param member the weather, from 0
   */
  MeanTable means(Claim claim, int member) {
    return tables(claim.stay()).means(claim.item().exposure(), member);
  }

  private PickupDoses doses(Claim claim, Driver driver) {
    int exposure = claim.item().exposure().ordinal();
    int at = (claim.stay() * EXPOSURES + exposure) * DRIVERS + driver.ordinal();
    if (doses[at] == null) {
      double bayRate = Rates.inBay(driver, job.bay(), job.bondEnergy());
      DoseTable table = tables(claim.stay()).doses(claim.item().exposure(), driver);
      boolean comesBack = claim.stay() < stays.count() - 1;
      doses[at] =
          new PickupDoses(
              comesBack ? table.backInBay(stays, claim.stay(), bayRate) : table,
              claim.pickup(),
              bayRate);
    }
    return doses[at];
  }

  private JobTables tables(int stay) {
    if (tables[stay] == null) {
      int first = Months.of(stays.pickup(stay));
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
