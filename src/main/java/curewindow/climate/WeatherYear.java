package curewindow.climate;

/**
 * One year of hourly weather: 8,760 means over the hour in local standard time, hour 0 from 0:00 to
 * 1:00 on January 1, without February 29. Immutable.
 */
public final class WeatherYear {

  /** Hours in the year. */
  public static final int HOURS = 8760;

  private final double[] temperature;
  private final double[] dewPoint;
  private final double[] irradiance;

  private WeatherYear(double[] temperature, double[] dewPoint, double[] irradiance) {
    this.temperature = temperature;
    this.dewPoint = dewPoint;
    this.irradiance = irradiance;
  }

  /**
   * A year of given hours. Dew points above the air temperature are lowered to it.
   *
   * @param temperature air temperature, degrees Celsius, -90 to 65, 8,760 values
   * @param dewPoint dew point, degrees Celsius, -100 to 45, 8,760 values
   * @param irradiance global horizontal irradiance, W/m2, 0 to 1500, 8,760 values
   * @return the year
   * @throws IllegalArgumentException where a value is not finite or out of range, by name and hour
   */
  public static WeatherYear of(double[] temperature, double[] dewPoint, double[] irradiance) {
    double[] t = checked("temperature", temperature, -90, 65);
    double[] d = checked("dewPoint", dewPoint, -100, 45);
    double[] g = checked("irradiance", irradiance, 0, 1500);
    for (int i = 0; i < HOURS; i++) {
      d[i] = Math.min(d[i], t[i]);
    }
    return new WeatherYear(t, d, g);
  }

  private static double[] checked(String name, double[] values, double low, double high) {
    if (values.length != HOURS) {
      throw new IllegalArgumentException(
          name + " has " + values.length + " hours instead of " + HOURS);
    }
    for (int i = 0; i < HOURS; i++) {
      if (!(values[i] >= low && values[i] <= high)) {
        throw new IllegalArgumentException(
            name + " " + values[i] + " in hour " + i + " is not within " + low + " to " + high);
      }
    }
    return values.clone();
  }

  /**
   * Air temperature.
   *
   * @param hour hour of the year, 0 to 8759
   * @return degrees Celsius
   */
  public double temperature(int hour) {
    return temperature[hour];
  }

  /**
   * Dew point, never above the air temperature.
   *
   * @param hour hour of the year, 0 to 8759
   * @return degrees Celsius
   */
  public double dewPoint(int hour) {
    return dewPoint[hour];
  }

  /**
   * Global horizontal irradiance.
   *
   * @param hour hour of the year, 0 to 8759
   * @return W/m2
   */
  public double irradiance(int hour) {
    return irradiance[hour];
  }
}
