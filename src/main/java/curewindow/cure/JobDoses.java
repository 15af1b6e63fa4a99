package curewindow.cure;

/**
 * The doses one job gathers: at a steady rate in the shop's bay until pickup, then in the weathers
 * of its place. Times are seconds of local standard time. For one thread.
 */
final class JobDoses {

  private static final int DRIVERS = Driver.values().length;
  private static final int EXPOSURES = Exposure.values().length;

  private final CureCase job;
  private final long pickup;
  private final JobTables tables;

  /** By exposure and driver. */
  private final PickupDoses[] doses = new PickupDoses[EXPOSURES * DRIVERS];

  /**
   * Gets ready for a job.
   *
   * @param job the job
   * @param site the tables of its place
   * @param pickup when the car leaves the bay
   */
  JobDoses(CureCase job, Site site, long pickup) {
    this.job = job;
    this.pickup = pickup;
    int first = Months.of(pickup);
    this.tables =
        site.tables(new JobTables.Key(first, job.parking(), job.paint(), job.bondEnergy()));
  }

  /** When the car leaves the bay. */
  long pickup() {
    return pickup;
  }

  /**
   * When an item has what it needs of a driver while still in the bay.
   *
   * @param claim the item and its rule
   * @param driver one of the rule's drivers
   * @return not after the pickup, or {@link DoseTable#NEVER}
   */
  long metInBay(Claim claim, Driver driver) {
    PickupDoses of = doses(claim.item().exposure(), driver);
    double need = claim.need(driver);
    return of.inBay(claim.finished(), pickup) >= need
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
    PickupDoses of = doses(claim.item().exposure(), driver);
    double need = claim.need(driver);
    return new Wanted(claim, of, need - of.inBay(claim.finished(), pickup));
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
    long inBay = metInBay(claim, driver);
    return inBay != DoseTable.NEVER ? inBay : wanted(claim, driver).met(member);
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
    PickupDoses of = doses(claim.item().exposure(), driver);
    double inBay = of.inBay(claim.finished(), until);
    return until <= pickup ? inBay : inBay + of.since(until, member);
  }

  /**
   * Which share of all that an item needs it has in each of the weathers.
   *
   * @param claim the item and its rule
   * @param until a time not before the pickup
   * @param shares for each weather, made smaller where this item has less of a driver; 0 to 1
   */
  void shares(Claim claim, long until, double[] shares) {
    for (Driver driver : claim.drivers()) {
      PickupDoses of = doses(claim.item().exposure(), driver);
      double inBay = of.inBay(claim.finished(), pickup);
      double[] since = of.since(until);
      for (int m = 0; m < shares.length; m++) {
        shares[m] = Math.min(shares[m], claim.share(driver, inBay + since[m]));
      }
    }
  }

  /**
   * Degree hours after pickup on the surface of an item.
   *
   * @param exposure what the surface sees
   * @param member the weather, from 0
   */
  MeanTable means(Exposure exposure, int member) {
    return tables.means(exposure, member);
  }

  private PickupDoses doses(Exposure exposure, Driver driver) {
    int at = exposure.ordinal() * DRIVERS + driver.ordinal();
    if (doses[at] == null) {
      double bayRate = Rates.inBay(driver, job.bay(), job.bondEnergy());
      doses[at] = new PickupDoses(tables.doses(exposure, driver), pickup, bayRate);
    }
    return doses[at];
  }

  /** The surface of an item after pickup, in its shared form. */
  Surface surface(Exposure exposure) {
    return tables.surface(exposure);
  }
}
