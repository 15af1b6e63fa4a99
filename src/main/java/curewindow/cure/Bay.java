package curewindow.cure;

import curewindow.climate.Psychrometrics;

/**
 * The shop's bay: the air in which a job stands until pickup, and the lamp.
 *
 * @param temperature degrees Celsius, -10 to 50
 * @param relativeHumidity percent, 1 to 100
 * @param lamp temperature to which the shop's lamp heats a film or coating, degrees Celsius, 30 to
 *     100
 */
public record Bay(double temperature, double relativeHumidity, double lamp) {

  /** The least temperature of a surface under a lamp, degrees Celsius. */
  public static final double COOLEST_LAMP = 30;

  /** The highest temperature of a surface under a lamp, degrees Celsius. */
  public static final double HOTTEST_LAMP = 100;

  /** What a lamp is usually set to, degrees Celsius; common practice, no source. */
  public static final double USUAL_LAMP = 60;

  /** How warm a bay usually is, degrees Celsius; common practice, no source. */
  public static final double USUAL_TEMPERATURE = 21;

  /** Refuses numbers that are not finite or out of range, by name. */
  public Bay {
    if (!(temperature >= -10 && temperature <= 50)) {
      throw new IllegalArgumentException("temperature " + temperature + " is not within -10 to 50");
    }
    if (!(relativeHumidity >= 1 && relativeHumidity <= 100)) {
      throw new IllegalArgumentException(
          "relativeHumidity " + relativeHumidity + " is not within 1 to 100");
    }
    if (!(lamp >= COOLEST_LAMP && lamp <= HOTTEST_LAMP)) {
      throw new IllegalArgumentException("lamp " + lamp + " is not within 30 to 100");
    }
  }

  /**
   * A bay whose lamp is set as usual.
   *
   * @param temperature degrees Celsius, -10 to 50
   * @param relativeHumidity percent, 1 to 100
   */
  public Bay(double temperature, double relativeHumidity) {
    this(temperature, relativeHumidity, USUAL_LAMP);
  }

  /**
   * The bay with its heating turned up, and with the moisture that its air has.
   *
   * @param warmer degrees Celsius, not less than it has, up to 50
   * @return a bay of that temperature; of at least 1 percent relative humidity
   */
  public Bay warmedTo(double warmer) {
    double humidity =
        relativeHumidity
            * Psychrometrics.saturationPressureOverWater(temperature)
            / Psychrometrics.saturationPressureOverWater(warmer);
    return new Bay(warmer, Math.max(1, humidity), lamp);
  }
}
