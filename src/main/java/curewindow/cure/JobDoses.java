package curewindow.cure;

import java.util.EnumMap;
import java.util.Map;

/**
 * The doses one job gathers: at a steady rate in the shop's bay until pickup, then in the weathers
 * of its place. Times are seconds of local standard time. For one thread.
 */
final class JobDoses {

  private final CureCase job;
  private final Site site;
  private final long pickup;
  private final Site.Years years;
  private final Map<Exposure, Surface> surfaces = new EnumMap<>(Exposure.class);
  private final Tables[] tables = new Tables[Exposure.values().length * Driver.values().length];

  private record Tables(double bayRate, DoseTable table, double[] atPickup) {}

  /**
   * Gets ready for a job.
   *
   * @param job the job
   * @param site the tables of its place
   * @param pickup when the car leaves the bay
   * @param latest the last time that will be asked for
   */
  JobDoses(CureCase job, Site site, long pickup, long latest) {
    this.job = job;
    this.site = site;
    this.pickup = pickup;
    int first = DoseTable.year(pickup);
    this.years = new Site.Years(first, DoseTable.year(latest) - first + 1);
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
    double rate = tables(claim.item().exposure(), driver).bayRate;
    double need = claim.need(driver);
    return rate * (pickup - claim.finished()) / 3600.0 >= need
        ? claim.finished() + (long) Math.ceil(need / rate * 3600 - 0.001)
        : DoseTable.NEVER;
  }

  /**
   * What an item needs of a driver after the bay, which did not give it all.
   *
   * @param claim the item and its rule
   * @param driver one of the rule's drivers
   */
  Wanted wanted(Claim claim, Driver driver) {
    Tables of = tables(claim.item().exposure(), driver);
    double left = claim.need(driver) - of.bayRate * (pickup - claim.finished()) / 3600.0;
    double[] targets = new double[of.atPickup.length];
    for (int m = 0; m < targets.length; m++) {
      targets[m] = of.atPickup[m] + left;
    }
    return new Wanted(claim, driver, of.table, targets);
  }

  /**
   * When an item has what it needs of a driver.
   *
   * @param claim the item and its rule
   * @param driver one of the rule's drivers
   * @param member the weather, from 0
   * @return not after the claim's look-by, or {@link DoseTable#NEVER}
   */
  long met(Claim claim, Driver driver, int member) {
    long inBay = metInBay(claim, driver);
    return inBay != DoseTable.NEVER ? inBay : wanted(claim, driver).met(member, pickup);
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
    Tables of = tables(claim.item().exposure(), driver);
    double inBay = of.bayRate * (Math.min(until, pickup) - claim.finished()) / 3600.0;
    return until <= pickup ? inBay : inBay + of.table.until(until, member) - of.atPickup[member];
  }

  /**
   * Degree hours after pickup on the surface of an item.
   *
   * @param exposure what the surface sees
   * @param member the weather, from 0
   */
  MeanTable means(Exposure exposure, int member) {
    return site.means(years, surface(exposure), member);
  }

  private Tables tables(Exposure exposure, Driver driver) {
    int at = exposure.ordinal() * Driver.values().length + driver.ordinal();
    if (tables[at] == null) {
      tables[at] = read(exposure, driver);
    }
    return tables[at];
  }

  private Tables read(Exposure exposure, Driver driver) {
    double energy = job.bondEnergy();
    DoseTable table = site.doses(years, surface(exposure), driver, energy);
    return new Tables(Rates.inBay(driver, job.bay(), energy), table, table.until(pickup));
  }

  private Surface surface(Exposure exposure) {
    return surfaces.computeIfAbsent(
        exposure, e -> new Surface(job.parking(), e, job.paint()).shared());
  }
}
