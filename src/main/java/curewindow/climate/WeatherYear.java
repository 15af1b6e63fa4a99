package curewindow.climate;

import java.util.Arrays;
import java.util.concurrent.atomic.AtomicIntegerArray;

/**
 * One year of hourly weather: 8,760 means over the hour in local standard time, hour 0 from 0:00 to
 * 1:00 on January 1, without February 29. Immutable, and safe for use by several threads.
 */
public final class WeatherYear {

  /** Hours in the year. */
  public static final int HOURS = 8760;

  private static final int DAYS = 365;
  private static final int HOURS_IN_DAY = HOURS / DAYS;
  private static final int MADE = 1;
  private static final AtomicIntegerArray ALL_MADE = allMade();

  private final double[] temperature;
  private final double[] dewPoint;
  private final double[] irradiance;

  /** Which days are there, {@link #MADE} or 0; a day is written before it is marked. */
  private final AtomicIntegerArray made;

  private final DayMaker maker;

  private WeatherYear(double[] temperature, double[] dewPoint, double[] irradiance) {
    this.temperature = temperature;
    this.dewPoint = dewPoint;
    this.irradiance = irradiance;
    this.made = ALL_MADE;
    this.maker = (day, t, d, g) -> {};
  }

  private WeatherYear(DayMaker maker) {
    this.temperature = new double[HOURS];
    this.dewPoint = new double[HOURS];
    this.irradiance = new double[HOURS];
    this.made = new AtomicIntegerArray(DAYS);
    this.maker = maker;
  }

  private static AtomicIntegerArray allMade() {
    int[] all = new int[DAYS];
    Arrays.fill(all, MADE);
    return new AtomicIntegerArray(all);
  }

  /** Makes the hours of one day, the same whenever it is asked. */
  @FunctionalInterface
  interface DayMaker {

    /**
     * Writes the hours of a day into the arrays of the year, each value within the bounds of {@link
     * WeatherYear#of}.
     *
     * @param day the day, 0 to 364
     * @param temperature air temperature, degrees Celsius
     * @param dewPoint dew point, degrees Celsius; above the air temperature it is lowered to it
     * @param irradiance global horizontal irradiance, W/m2
     */
    void make(int day, double[] temperature, double[] dewPoint, double[] irradiance);
  }

  /** A year whose days are made when they are first asked for: most dates need a month or two. */
  static WeatherYear byDay(DayMaker maker) {
    return new WeatherYear(maker);
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
    double[] t = copied("temperature", temperature);
    double[] d = copied("dewPoint", dewPoint);
    double[] g = copied("irradiance", irradiance);
    check(t, d, g, 0, HOURS);
    return new WeatherYear(t, d, g);
  }

  private static double[] copied(String name, double[] values) {
    if (values.length != HOURS) {
      throw new IllegalArgumentException(
          name + " has " + values.length + " hours instead of " + HOURS);
    }
    return values.clone();
  }

  /** Refuses what is out of range, and lowers dew points to the air temperature. */
  private static void check(double[] t, double[] d, double[] g, int from, int to) {
    check("temperature", t, -90, 65, from, to);
    check("dewPoint", d, -100, 45, from, to);
    check("irradiance", g, 0, 1500, from, to);
    for (int i = from; i < to; i++) {
      d[i] = Math.min(d[i], t[i]);
    }
  }

  private static void check(
      String name, double[] values, double low, double high, int from, int to) {
    for (int i = from; i < to; i++) {
      if (!(values[i] >= low && values[i] <= high)) {
        throw new IllegalArgumentException(
            name + " " + values[i] + " in hour " + i + " is not within " + low + " to " + high);
      }
    }
  }

  private void need(int hour) {
    int day = hour / HOURS_IN_DAY;
    if (made.get(day) != MADE) {
      make(day);
    }
  }

  private synchronized void make(int day) {
    if (made.get(day) != MADE) {
      int first = day * HOURS_IN_DAY;
      maker.make(day, temperature, dewPoint, irradiance);
      check(temperature, dewPoint, irradiance, first, first + HOURS_IN_DAY);
      made.set(day, MADE);
    }
  }

  /**
   * Air temperature.
   *
   * @param hour hour of the year, 0 to 8759
   * @return degrees Celsius
   */
  public double temperature(int hour) {
    need(hour);
    return temperature[hour];
  }

  /**
   * Dew point, never above the air temperature.
   *
   * @param hour hour of the year, 0 to 8759
   * @return degrees Celsius
   */
  public double dewPoint(int hour) {
    need(hour);
    return dewPoint[hour];
  }

  /**
   * Global horizontal irradiance.
   *
   * @param hour hour of the year, 0 to 8759
   * @return W/m2
   */
  public double irradiance(int hour) {
    need(hour);
    return irradiance[hour];
  }
}
