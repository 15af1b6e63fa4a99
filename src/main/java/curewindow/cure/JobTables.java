package curewindow.cure;

import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * The tables of one place that the jobs of one parking, paint, bond energy and first week need, by
 * number instead of by name: a job looks this up once and each table then costs one read. Built
 * when first asked for, shared between threads; equal surfaces share their tables through the
 * {@link PlaceTables}.
 */
final class JobTables {

  private static final int DRIVERS = Driver.values().length;
  private static final int EXPOSURES = Exposure.values().length;

  private final PlaceTables site;
  private final Key key;
  private final int members;
  private final Surface[] surfaces = new Surface[EXPOSURES];
  private final AtomicReferenceArray<DoseTable> doses =
      new AtomicReferenceArray<>(EXPOSURES * DRIVERS);
  private final AtomicReferenceArray<MeanTable> means;

  /**
   * What the tables of a job depend on besides the place.
   *
   * @param firstWeek the number of the week of the pickup
   * @param parking where the car stands
   * @param paint how much sun its paint takes up
   * @param bondEnergy activation energy of bond and crosslink, J/mol
   */
  record Key(int firstWeek, ParkingPlan parking, PaintTone paint, double bondEnergy) {}

  JobTables(PlaceTables site, Key key) {
    this.site = site;
    this.key = key;
    this.members = site.members();
    this.means = new AtomicReferenceArray<>(EXPOSURES * members);
    for (Exposure exposure : Exposure.values()) {
      surfaces[exposure.ordinal()] = new Surface(key.parking(), exposure, key.paint()).shared();
    }
  }

  /** The surface of an exposure, in its shared form. */
  Surface surface(Exposure exposure) {
    return surfaces[exposure.ordinal()];
  }

  /** The doses of a driver on the surface of an exposure, in all weathers. */
  DoseTable doses(Exposure exposure, Driver driver) {
    int at = exposure.ordinal() * DRIVERS + driver.ordinal();
    DoseTable known = doses.get(at);
    if (known == null) {
      known = site.doses(key.firstWeek(), surface(exposure), driver, key.bondEnergy());
      doses.set(at, known);
    }
    return known;
  }

  /** Temperatures and dew points on the surface of an exposure in one weather. */
  MeanTable means(Exposure exposure, int member) {
    int at = exposure.ordinal() * members + member;
    MeanTable known = means.get(at);
    if (known == null) {
      known = site.means(key.firstWeek(), surface(exposure), member);
      means.set(at, known);
    }
    return known;
  }
}
