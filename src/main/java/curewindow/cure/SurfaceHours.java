package curewindow.cure;

import curewindow.climate.Psychrometrics;
import curewindow.climate.WeatherYear;

/**
 * Hour by hour through a weather year, or one week of it: the air where the car stands, the air at
 * the surface, the surface itself and the dew point. What carries over from hour to hour (the
 * warmth of the cabin, the daily mean in a garage) comes from the hours before, and runs round from
 * the end of the year into its start.
 */
final class SurfaceHours {

  /** How much warmer a garage is than the mean of the last 24 hours, K; common practice. */
  static final double GARAGE_EXCESS = 2;

  /** Share of the sun that reaches a car in the shade; common practice. */
  static final double SHADE_SHARE = 0.15;

  private static final int DAY = 24;
  private static final int SETTLING_HOURS = 48;

  /** A fall of the cabin's warmth within the hour that is no fall, K. */
  private static final double STEADY = 1e-9;

  private final int first;
  private final double[] air;
  private final double[] near;
  private final double[] film;
  private final double[] fall;
  private final double[] dewPoint;
  private final double[] vapour;

  private final double cabinShare;

  /** Outside the cabin the air at the surface is the air where the car stands, and steady. */
  private SurfaceHours(double cabinShare, int first, int end) {
    int count = end - first;
    this.cabinShare = cabinShare;
    this.first = first;
    this.air = new double[count];
    this.near = cabinShare > 0 ? new double[count] : air;
    this.film = new double[count];
    this.fall = new double[count];
    this.dewPoint = new double[count];
    this.vapour = new double[count];
  }

  /**
   * The hours of a surface in the whole year.
   *
   * @param weather the weather
   * @param surface the surface
   * @param days which hours belong to the day
   */
  static SurfaceHours of(WeatherYear weather, Surface surface, DayHours days) {
    return of(0, WeatherYear.HOURS, weather, surface, days);
  }

  /**
   * The hours of a surface in a week; no other hour may be asked for.
   *
   * @param week the week within its year, from 0
   * @param weather the weather
   * @param surface the surface
   * @param days which hours belong to the day
   */
  static SurfaceHours ofWeek(int week, WeatherYear weather, Surface surface, DayHours days) {
    return of(Weeks.firstHour(week), Weeks.firstHour(week + 1), weather, surface, days);
  }

  private static SurfaceHours of(
      int first, int end, WeatherYear weather, Surface surface, DayHours days) {
    SurfaceHours hours = new SurfaceHours(cabinShare(surface.exposure()), first, end);
    hours.fill(weather, surface, days);
    return hours;
  }

  private void fill(WeatherYear weather, Surface surface, DayHours days) {
    boolean garage = surface.parking().uses(Parking.GARAGE);
    double lastDay = garage ? dayBefore(weather) : 0;
    double cabin = cabinBefore(weather, surface, days);
    for (int at = 0; at < air.length; at++) {
      int hour = first + at;
      Parking parking = parking(hour, surface, days);
      double sun = sun(weather, hour, surface, days);
      if (garage) {
        lastDay += weather.temperature(hour) - weather.temperature(before(hour, DAY));
      }
      double air = air(weather.temperature(hour), lastDay / DAY + GARAGE_EXCESS, parking);
      double excess = FilmTemperature.cabinOverHour(cabin, sun);
      this.air[at] = air;
      if (cabinShare > 0) {
        film[at] = air + cabinShare * excess;
        near[at] = air + excess;
        fall[at] = FilmTemperature.cabinFall(cabin, sun);
      } else {
        film[at] = outsideFilm(air, sun, surface, parking);
      }
      moist(at, Math.min(weather.dewPoint(hour), air));
      cabin = FilmTemperature.cabinAfterHour(cabin, sun);
    }
  }

  /** The hour so many hours before another; before the first of the year come the last. */
  private static int before(int hour, int hours) {
    return Math.floorMod(hour - hours, WeatherYear.HOURS);
  }

  /** Notes the moisture of an hour, which is often that of the hour before. */
  private void moist(int at, double dew) {
    dewPoint[at] = dew;
    vapour[at] =
        at > 0 && dew == dewPoint[at - 1] ? vapour[at - 1] : Psychrometrics.vapourPressure(dew);
  }

  private double cabinBefore(WeatherYear weather, Surface surface, DayHours days) {
    double cabin = 0;
    for (int back = SETTLING_HOURS; back > 0; back--) {
      cabin =
          FilmTemperature.cabinAfterHour(cabin, sun(weather, before(first, back), surface, days));
    }
    return cabin;
  }

  /** The sum of the temperatures of the day before the first hour. */
  private double dayBefore(WeatherYear weather) {
    double sum = 0;
    for (int back = DAY; back > 0; back--) {
      sum += weather.temperature(before(first, back));
    }
    return sum;
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

  /** Air temperature where the car stands, degrees Celsius. */
  double air(int hour) {
    return air[hour - first];
  }

  /** Temperature of the surface, degrees Celsius. */
  double film(int hour) {
    return film[hour - first];
  }

  /** Dew point of the air, never above the air temperature, degrees Celsius. */
  double dewPoint(int hour) {
    return dewPoint[hour - first];
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
    int at = hour - first;
    if (Math.abs(fall[at]) < STEADY) {
      return Rates.in(driver, film[at], near[at], vapour[at], bondEnergy);
    }
    return (half(at, driver, bondEnergy, fall[at]) + half(at, driver, bondEnergy, -fall[at])) / 2;
  }

  private double half(int at, Driver driver, double bondEnergy, double warmer) {
    return Rates.in(
        driver, film[at] + cabinShare * warmer, near[at] + warmer, vapour[at], bondEnergy);
  }
}
