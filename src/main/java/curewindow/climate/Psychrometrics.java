package curewindow.climate;

/**
 * Water vapour in air. Saturation pressures after Alduchov and Eskridge 1996, "Improved Magnus form
 * approximation of saturation vapor pressure", over water and, below 0 C, over ice.
 *
 * <p>Humidity of the air, be it a dew point or a relative humidity, is stated over liquid water at
 * all temperatures, also below 0 C, as weather services state it (WMO-No. 8, part I, chapter 4;
 * from memory) and as weather files and normals have it. Only what is frozen itself evaporates with
 * the pressure over ice.
 */
public final class Psychrometrics {

  private static final double WATER_AT_ZERO = 610.94;
  private static final double WATER_FACTOR = 17.625;
  private static final double WATER_OFFSET = 243.04;
  private static final double ICE_AT_ZERO = 611.21;
  private static final double ICE_FACTOR = 22.587;
  private static final double ICE_OFFSET = 273.86;

  private Psychrometrics() {}

  /**
   * Saturation pressure of water vapour, over water from 0 C, over ice below. Never falls with
   * rising temperature: the two fits differ by 0.04 % at 0 C, so the ice fit stops at the water
   * fit's value there.
   *
   * @param temperature degrees Celsius, -100 to 150
   * @return Pa
   * @throws IllegalArgumentException where the temperature is out of range or not a number
   */
  public static double saturationPressure(double temperature) {
    return temperature < 0
        ? Math.min(saturationPressureOverIce(temperature), WATER_AT_ZERO)
        : saturationPressureOverWater(temperature);
  }

  /**
   * Saturation pressure over liquid water, supercooled below 0 C.
   *
   * @param temperature degrees Celsius, -100 to 150
   * @return Pa
   * @throws IllegalArgumentException where the temperature is out of range or not a number
   */
  public static double saturationPressureOverWater(double temperature) {
    inRange("temperature", temperature, -100, 150);
    return WATER_AT_ZERO
        * StrictMath.exp(WATER_FACTOR * temperature / (WATER_OFFSET + temperature));
  }

  /**
   * Saturation pressure over ice.
   *
   * @param temperature degrees Celsius, -100 to 0
   * @return Pa
   * @throws IllegalArgumentException where the temperature is out of range or not a number
   */
  public static double saturationPressureOverIce(double temperature) {
    inRange("temperature", temperature, -100, 0);
    return ICE_AT_ZERO * StrictMath.exp(ICE_FACTOR * temperature / (ICE_OFFSET + temperature));
  }

  /**
   * Pressure of the water vapour in air of a dew point.
   *
   * @param dewPoint degrees Celsius, over water at all temperatures, -100 to 150
   * @return Pa
   * @throws IllegalArgumentException where the dew point is out of range or not a number
   */
  public static double vapourPressure(double dewPoint) {
    inRange("dewPoint", dewPoint, -100, 150);
    return saturationPressureOverWater(dewPoint);
  }

  /**
   * Relative humidity of air, against liquid water at all temperatures.
   *
   * @param temperature degrees Celsius, -100 to 150
   * @param dewPoint degrees Celsius, over water at all temperatures, -100 to 150
   * @return per cent; above 100 where the dew point is above the temperature
   * @throws IllegalArgumentException where a value is out of range or not a number
   */
  public static double relativeHumidity(double temperature, double dewPoint) {
    return 100 * vapourPressure(dewPoint) / saturationPressureOverWater(temperature);
  }

  /**
   * Dew point of air; undoes {@link #relativeHumidity}. Below 0 C it is a little lower than the
   * frost point.
   *
   * @param temperature degrees Celsius, -90 to 100
   * @param relativeHumidity per cent against liquid water, 0.5 to 100
   * @return degrees Celsius, not above the temperature
   * @throws IllegalArgumentException where a value is out of range or not a number
   */
  public static double dewPoint(double temperature, double relativeHumidity) {
    inRange("temperature", temperature, -90, 100);
    inRange("relativeHumidity", relativeHumidity, 0.5, 100);
    double pressure = saturationPressureOverWater(temperature) * relativeHumidity / 100;
    return Math.min(temperature, overWater(pressure));
  }

  /** The temperature at which water has a saturation pressure. */
  private static double overWater(double pressure) {
    double log = StrictMath.log(pressure / WATER_AT_ZERO);
    return WATER_OFFSET * log / (WATER_FACTOR - log);
  }

  private static void inRange(String name, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          name + " " + value + " is not within " + low + " to " + high);
    }
  }
}
