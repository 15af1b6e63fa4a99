package curewindow.climate;

/**
 * How far the normals of a place may be off, each one standard deviation: of what they are taken
 * from, of the way from there to the place, and of a year that is not the mean of years. Half of it
 * is too warm and half too cold, so the mean of what is made stays with the normals.
 *
 * <p>docs/climate.md tells what the spreads were fitted to and how they do elsewhere.
 *
 * @param warmth of the air temperature, the dew point moving along, K, 0 to 20
 * @param dryness of the depression (temperature less dew point), as a share of it and {@link
 *     #LEAST_DEPRESSION}, 0 to 1
 * @param sun of the clearness of the sky, as a share, 0 to 1
 */
public record Doubt(double warmth, double dryness, double sun) {

  /** Nothing is in doubt: made years differ by their days alone. */
  public static final Doubt NONE = new Doubt(0, 0, 0);

  /** A weather file of the place: a year, even a typical one, is not the mean of many. */
  public static final Doubt OF_FILE = new Doubt(0.2, 0.01, 0.02);

  /** A weather file whose sun was estimated from the daily range: the method's own error. */
  static final Doubt OF_FILE_WITHOUT_SUN = new Doubt(0.2, 0.01, 0.15);

  /** Normals that the shop typed from a station near by. */
  public static final Doubt OF_NORMALS = new Doubt(0.2, 0.01, 0.03);

  /** A built-in place, for a shop within {@link #NEAR_KM} of it and about as high. */
  public static final Doubt OF_BUILT_IN = new Doubt(1.7, 0.16, 0.16);

  /** What every 100 km beyond {@link #NEAR_KM} add, the variances being summed up. */
  private static final Doubt OF_100_KM = new Doubt(1.4, 0.09, 0.07);

  /** What the first km of height between adds; two add twice as much. */
  private static final Doubt OF_KM_HIGHER = new Doubt(2.2, 0.2, 0.07);

  /** Damp air's depression is in doubt as if it were wider by this, K. */
  static final double LEAST_DEPRESSION = 4;

  /** The doubt was fitted up to this distance and grows no more beyond, km. */
  private static final double MOST_KM = 400;

  private static final double MOST_KM_HIGHER = 3;

  /** Within this distance a place's normals are those of its town, km. */
  public static final double NEAR_KM = 50;

  /** Refuses spreads that are not numbers or out of range, by name. */
  public Doubt {
    inRange("warmth", warmth, 20);
    inRange("dryness", dryness, 1);
    inRange("sun", sun, 1);
  }

  private static void inRange(String name, double value, double most) {
    if (!(value >= 0 && value <= most)) {
      throw new IllegalArgumentException(name + " " + value + " is not within 0 to " + most);
    }
  }

  /**
   * The doubt of normals that are used away from where they were found.
   *
   * @param km great-circle distance, 0 or more
   * @param metres how much higher or lower
   * @return the doubt there, the same within {@link #NEAR_KM} at the same height
   * @throws IllegalArgumentException where a value is out of range or not a number
   */
  public Doubt away(double km, double metres) {
    inRange("distance", km, 20_100);
    double far = Math.sqrt(Math.max(0, Math.min(MOST_KM, km) - NEAR_KM) / 100);
    inRange("height", Math.abs(metres), 10_000);
    double high = Math.min(MOST_KM_HIGHER, Math.abs(metres) / 1000);
    return new Doubt(
        sum(warmth, far * OF_100_KM.warmth, high * OF_KM_HIGHER.warmth),
        sum(dryness, far * OF_100_KM.dryness, high * OF_KM_HIGHER.dryness),
        sum(sun, far * OF_100_KM.sun, high * OF_KM_HIGHER.sun));
  }

  private static double sum(double one, double two, double three) {
    return Math.sqrt(one * one + two * two + three * three);
  }
}
