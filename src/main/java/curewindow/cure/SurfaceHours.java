package curewindow.cure;

import curewindow.climate.Psychrometrics;
import curewindow.climate.WeatherYear;

/**
 * Hour by hour through a weather year: the air where the car stands, the air at the surface, the
 * surface itself and the dew point. What carries over from hour to hour (the warmth of the cabin,
 * the daily mean in a garage) runs round from the end of the year into its start.
 */
final class SurfaceHours {

  /** How much warmer a garage is than the mean of the last 24 hours, K; common practice. */
  static final double GARAGE_EXCESS = 2;

  /** Share of the sun that reaches a car in the shade; common practice. */
  static final double SHADE_SHARE = 0.15;

  private static final int SETTLING_HOURS = 48;

  /** A fall of the cabin's warmth within the hour that is no fall, K. */
  private static final double STEADY = 1e-9;

  private static final double[] NONE = new double[WeatherYear.HOURS];

  private final double[] air = new double[WeatherYear.HOURS];
  private final double[] near;
  private final double[] film = new double[WeatherYear.HOURS];
  private final double[] fall;
  private final double[] dewPoint = new double[WeatherYear.HOURS];
  private final double[] vapour = new double[WeatherYear.HOURS];

  private final double cabinShare;

  /** Outside the cabin the air at the surface is the air where the car stands, and steady. */
  private SurfaceHours(double cabinShare) {
    this.cabinShare = cabinShare;
    this.near = cabinShare > 0 ? new double[WeatherYear.HOURS] : air;
    this.fall = cabinShare > 0 ? new double[WeatherYear.HOURS] : NONE;
  }

  /**
   * The hours of a surface.
   *
   * @param weather the weather
   * @param surface the surface
   * @param days which hours belong to the day
   */
  static SurfaceHours of(WeatherYear weather, Surface surface, DayHours days) {
    SurfaceHours hours = new SurfaceHours(cabinShare(surface.exposure()));
    double[] garage = surface.parking().uses(Parking.GARAGE) ? garageAir(weather) : NONE;
    double cabin = cabinAtNewYear(weather, surface, days);
    for (int hour = 0; hour < WeatherYear.HOURS; hour++) {
      Parking parking = parking(hour, surface, days);
      double sun = sun(weather, hour, surface, days);
      double air = air(weather.temperature(hour), garage[hour], parking);
      double excess = FilmTemperature.cabinOverHour(cabin, sun);
      hours.air[hour] = air;
      if (hours.cabinShare > 0) {
        hours.film[hour] = air + hours.cabinShare * excess;
        hours.near[hour] = air + excess;
        hours.fall[hour] = FilmTemperature.cabinFall(cabin, sun);
      } else {
        hours.film[hour] = outsideFilm(air, sun, surface, parking);
      }
      hours.moist(hour, Math.min(weather.dewPoint(hour), air));
      cabin = FilmTemperature.cabinAfterHour(cabin, sun);
    }
    return hours;
  }

  /** Notes the moisture of an hour, which is often that of the hour before. */
  private void moist(int hour, double dew) {
    dewPoint[hour] = dew;
    vapour[hour] =
        hour > 0 && dew == dewPoint[hour - 1]
            ? vapour[hour - 1]
            : Psychrometrics.vapourPressure(dew);
  }

  private static double cabinAtNewYear(WeatherYear weather, Surface surface, DayHours days) {
    double cabin = 0;
    for (int hour = WeatherYear.HOURS - SETTLING_HOURS; hour < WeatherYear.HOURS; hour++) {
      cabin = FilmTemperature.cabinAfterHour(cabin, sun(weather, hour, surface, days));
    }
    return cabin;
  }

  private static double outsideFilm(double air, double sun, Surface surface, Parking parking) {
    return surface.exposure() == Exposure.OUTSIDE_UP
        ? FilmTemperature.up(air, sun, surface.paint(), parking == Parking.OUTSIDE)
        : FilmTemperature.side(air, sun, surface.paint());
  }

  private static double cabinShare(Exposure exposure) {
    return switch (exposure) {
      case BEHIND_GLASS -> FilmTemperature.GLASS_SHARE;
      case CABIN -> 1;
      case OUTSIDE_UP, OUTSIDE_SIDE -> 0;
    };
  }

  private static Parking parking(int hour, Surface surface, DayHours days) {
    return days.isDay(hour) ? surface.parking().day() : surface.parking().night();
  }

  /** Sun that reaches the car in an hour, W/m2. */
  static double sun(WeatherYear weather, int hour, Surface surface, DayHours days) {
    return switch (parking(hour, surface, days)) {
      case OUTSIDE -> weather.irradiance(hour);
      case SHADE -> SHADE_SHARE * weather.irradiance(hour);
      case GARAGE, HEATED -> 0;
    };
  }

  private static double air(double outside, double garage, Parking parking) {
    return switch (parking) {
      case OUTSIDE, SHADE -> outside;
      case GARAGE -> garage;
      case HEATED -> Math.max(outside, Parking.HEATED_LEAST);
    };
  }

  private static double[] garageAir(WeatherYear weather) {
    double sum = 0;
    for (int hour = WeatherYear.HOURS - 24; hour < WeatherYear.HOURS; hour++) {
      sum += weather.temperature(hour);
    }
    double[] garage = new double[WeatherYear.HOURS];
    for (int hour = 0; hour < WeatherYear.HOURS; hour++) {
      int leaving = hour < 24 ? hour - 24 + WeatherYear.HOURS : hour - 24;
      sum += weather.temperature(hour) - weather.temperature(leaving);
      garage[hour] = sum / 24 + GARAGE_EXCESS;
    }
    return garage;
  }

  /** Air temperature where the car stands, degrees Celsius. */
  double air(int hour) {
    return air[hour];
  }

  /** Temperature of the surface, degrees Celsius. */
  double film(int hour) {
    return film[hour];
  }

  /** Dew point of the air, never above the air temperature, degrees Celsius. */
  double dewPoint(int hour) {
    return dewPoint[hour];
  }

  /**
   * The rate of a driver over an hour; inside the car the mean of the hour's two halves, as the
   * cabin warms and cools faster than by the hour.
   *
   * @param hour 0 to 8759
   * @param driver the driver
   * @param bondEnergy activation energy of bond and crosslink, J/mol
   * @return reference hours per hour
   */
  double rate(int hour, Driver driver, double bondEnergy) {
    if (Math.abs(fall[hour]) < STEADY) {
      return Rates.in(driver, film[hour], near[hour], vapour[hour], bondEnergy);
    }
    return (half(hour, driver, bondEnergy, fall[hour])
            + half(hour, driver, bondEnergy, -fall[hour]))
        / 2;
  }

  private double half(int hour, Driver driver, double bondEnergy, double warmer) {
    return Rates.in(
        driver, film[hour] + cabinShare * warmer, near[hour] + warmer, vapour[hour], bondEnergy);
  }
}
