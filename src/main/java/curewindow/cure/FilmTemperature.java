package curewindow.cure;

/** Temperatures of a car's surfaces and of the air in its cabin, from air and sun. */
final class FilmTemperature {

  /** Cabin excess in steady sun, K per W/m2; tuned to the heating of closed cars. */
  static final double CABIN_GAIN = 0.028;

  /** How quickly the cabin follows, hours. */
  static final double CABIN_TIME = 0.5;

  /** Share of the cabin excess that a film on the inside of a window takes part in. */
  static final double GLASS_SHARE = 0.6;

  /** Cooling of a surface that faces the sky, K; ASHRAE's sol-air temperature, from memory. */
  static final double SKY_COOLING = 3.9;

  /** Share of the horizontal sun that an upright surface sees; common practice, no source. */
  static final double SIDE_SHARE = 0.5;

  private static final double LEFT_AFTER_AN_HOUR = StrictMath.exp(-1 / CABIN_TIME);
  private static final double LEFT_IN_THE_MEAN = CABIN_TIME * (1 - LEFT_AFTER_AN_HOUR);
  private static final double LEFT_AFTER_HALF = StrictMath.exp(-0.5 / CABIN_TIME);
  private static final double LEFT_IN_FIRST_HALF = 2 * CABIN_TIME * (1 - LEFT_AFTER_HALF);

  private FilmTemperature() {}

  /**
   * Sun taken up over the heat given off, ASHRAE's sol-air temperature (light and dark from memory,
   * mid between them).
   *
   * @param paint how much sun the paint takes up
   * @return m2 K/W
   */
  static double sunGain(PaintTone paint) {
    return switch (paint) {
      case LIGHT -> 0.026;
      case MID -> 0.039;
      case DARK -> 0.052;
    };
  }

  /**
   * Temperature of an outside surface that faces the sky.
   *
   * @param air air temperature, degrees Celsius
   * @param sun global horizontal irradiance that reaches the car, W/m2
   * @param paint how much sun the paint takes up
   * @param openSky whether nothing stands between the car and the sky
   * @return degrees Celsius
   */
  static double up(double air, double sun, PaintTone paint, boolean openSky) {
    return air + sunGain(paint) * sun - (openSky ? SKY_COOLING : 0);
  }

  /**
   * Temperature of an outside surface that stands upright.
   *
   * @param air air temperature, degrees Celsius
   * @param sun global horizontal irradiance that reaches the car, W/m2
   * @param paint how much sun the paint takes up
   * @return degrees Celsius
   */
  static double side(double air, double sun, PaintTone paint) {
    return air + SIDE_SHARE * sunGain(paint) * sun;
  }

  /**
   * How much warmer the cabin is than the air outside after an hour of steady sun.
   *
   * @param before excess at the start of the hour, K
   * @param sun irradiance that reaches the car, W/m2
   * @return excess at the end of the hour, K
   */
  static double cabinAfterHour(double before, double sun) {
    double settled = CABIN_GAIN * sun;
    return settled + (before - settled) * LEFT_AFTER_AN_HOUR;
  }

  /**
   * How much warmer the cabin is than the air outside, as a mean over an hour of steady sun.
   *
   * @param before excess at the start of the hour, K
   * @param sun irradiance that reaches the car, W/m2
   * @return mean excess, K
   */
  static double cabinOverHour(double before, double sun) {
    double settled = CABIN_GAIN * sun;
    return settled + (before - settled) * LEFT_IN_THE_MEAN;
  }

  /**
   * How much the mean of the hour's first half is above that of the whole hour, and that of the
   * second half below it.
   *
   * @param before excess at the start of the hour, K
   * @param sun irradiance that reaches the car, W/m2
   * @return half the fall of the excess from one half of the hour to the other, K; below 0 where it
   *     rises
   */
  static double cabinFall(double before, double sun) {
    double first = LEFT_IN_FIRST_HALF;
    return (before - CABIN_GAIN * sun) * (first - LEFT_AFTER_HALF * first) / 2;
  }
}
