package curewindow.cure;

/**
 * What the temperature of a film depends on besides the weather.
 *
 * @param parking where the car stands
 * @param exposure what the surface sees of sun, sky and cabin
 * @param paint how much sun the paint takes up
 */
record Surface(ParkingPlan parking, Exposure exposure, PaintTone paint) {

  /**
   * The same surface, with details that make no difference set to one fixed value, so that equal
   * surfaces share their tables.
   */
  Surface shared() {
    if (isIndoors(parking.day()) && isIndoors(parking.night())) {
      return new Surface(parking, Exposure.OUTSIDE_SIDE, PaintTone.LIGHT);
    }
    boolean painted = exposure == Exposure.OUTSIDE_UP || exposure == Exposure.OUTSIDE_SIDE;
    return painted ? this : new Surface(parking, exposure, PaintTone.LIGHT);
  }

  private static boolean isIndoors(Parking parking) {
    return parking == Parking.GARAGE || parking == Parking.HEATED;
  }
}
