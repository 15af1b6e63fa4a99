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
  private final Map<Exposure, Map<Driver, Tables>> tables = new EnumMap<>(Exposure.class);

  private record Tables(double bayRate, DoseTable[] members, double[] atPickup) {}

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
   * When an item has what it needs of a driver, in each of the weathers.
   *
   * @param claim the item and its rule
   * @param driver one of the rule's drivers
   * @return times not after the claim's look-by, or {@link DoseTable#NEVER}
   */
  long[] met(Claim claim, Driver driver) {
    Tables of = tables(claim.item().exposure(), driver);
    long[] met = new long[of.members.length];
    for (int member = 0; member < met.length; member++) {
      met[member] = met(of, claim, driver, member);
    }
    return met;
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
    return met(tables(claim.item().exposure(), driver), claim, driver, member);
  }

  private long met(Tables of, Claim claim, Driver driver, int member) {
    double need = claim.need(driver);
    double inBay = of.bayRate * (pickup - claim.finished()) / 3600.0;
    if (inBay >= need) {
      return claim.finished() + (long) Math.ceil(need / of.bayRate * 3600 - 0.001);
    }
    double sum = of.atPickup[member] + need - inBay;
    return of.members[member].reach(sum, pickup, claim.lookBy());
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
    return until <= pickup ? inBay : inBay + of.members[member].until(until) - of.atPickup[member];
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
    return tables
        .computeIfAbsent(exposure, e -> new EnumMap<>(Driver.class))
        .computeIfAbsent(driver, d -> read(exposure, d));
  }

  private Tables read(Exposure exposure, Driver driver) {
    double energy = job.bondEnergy();
    DoseTable[] members = site.doses(years, surface(exposure), driver, energy);
    double[] atPickup = new double[members.length];
    for (int m = 0; m < members.length; m++) {
      atPickup[m] = members[m].until(pickup);
    }
    return new Tables(Rates.inBay(driver, job.bay(), energy), members, atPickup);
  }

  /** The surface of an item after pickup, in its shared form. */
  Surface surface(Exposure exposure) {
    return surfaces.computeIfAbsent(
        exposure, e -> new Surface(job.parking(), e, job.paint()).shared());
  }
}
