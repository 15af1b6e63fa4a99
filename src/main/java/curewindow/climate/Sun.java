package curewindow.climate;

import java.time.ZoneOffset;

/** The sun over one point: its height in the sky and what a cloudless sky lets through. */
final class Sun {

  private static final int DAYS = 365;
  private static final int STEPS_IN_HOUR = 12;
  private static final double STEP = StrictMath.toRadians(15.0 / STEPS_IN_HOUR);
  private static final double COS_STEP = StrictMath.cos(STEP);
  private static final double SIN_STEP = StrictMath.sin(STEP);
  private static final double SOLAR_CONSTANT = 1361;

  private final SolarCalendar calendar;
  private final double latitude;
  private final double longitude;

  /**
   * A point on the globe.
   *
   * @param latitude degrees north
   * @param longitude degrees east
   */
  Sun(SolarCalendar calendar, double latitude, double longitude) {
    this.calendar = calendar;
    this.latitude = latitude;
    this.longitude = longitude;
  }

  static Sun over(double latitude, double longitude) {
    return new Sun(SolarCalendar.reference(), latitude, longitude);
  }

  /**
   * Sine of the sun's true (unrefracted) elevation.
   *
   * @param day days since the year's beginning in UTC
   */
  double sineOfElevation(double day) {
    double declination = calendar.declination(day);
    double hours = (day - Math.floor(day)) * 24 + longitude / 15 + calendar.equationOfTime(day);
    return sine(declination, hours);
  }

  private double sine(double declination, double solarHour) {
    double phi = StrictMath.toRadians(latitude);
    double delta = StrictMath.toRadians(declination);
    double angle = StrictMath.toRadians(15 * (solarHour - 12));
    return StrictMath.sin(phi) * StrictMath.sin(delta)
        + StrictMath.cos(phi) * StrictMath.cos(delta) * StrictMath.cos(angle);
  }

  /**
   * Apparent solar time less the local standard time, in hours, within -12 to 12.
   *
   * @param day days since the year's beginning in UTC
   */
  double solarLead(double day, ZoneOffset standard) {
    double hours =
        longitude / 15 - standard.getTotalSeconds() / 3600.0 + calendar.equationOfTime(day);
    return hours - 24 * Math.floor((hours + 12) / 24);
  }

  /**
   * Global horizontal irradiance under a cloudless sky, after Haurwitz 1945.
   *
   * @param sine sine of the sun's elevation
   * @return W/m2
   */
  static double clearSky(double sine) {
    return sine <= 0 ? 0 : 1098 * sine * StrictMath.exp(-0.059 / sine);
  }

  /**
   * Clear-sky irradiance of the year's hours, each the mean of twelve moments within the hour, so
   * that the hours of sunrise and sunset are right.
   *
   * @return 8,760 values in W/m2, local standard time
   */
  double[] clearSkyHours(ZoneOffset standard) {
    double[] hours = new double[WeatherYear.HOURS];
    for (int i = 0; i < hours.length; i++) {
      hours[i] = clearSkyOfHour(i - standard.getTotalSeconds() / 3600.0);
    }
    return hours;
  }

  private double clearSkyOfHour(double start) {
    double middle = (start + 0.5) / 24;
    double delta = StrictMath.toRadians(calendar.declination(middle));
    double phi = StrictMath.toRadians(latitude);
    double constant = StrictMath.sin(phi) * StrictMath.sin(delta);
    double swing = StrictMath.cos(phi) * StrictMath.cos(delta);
    if (constant + Math.abs(swing) <= 0) {
      return 0;
    }
    double lead = longitude / 15 + calendar.equationOfTime(middle) - 12;
    double first = StrictMath.toRadians(15 * (start + 0.5 / STEPS_IN_HOUR + lead));
    double cosine = StrictMath.cos(first);
    double sine = StrictMath.sin(first);
    double sum = 0;
    for (int k = 0; k < STEPS_IN_HOUR; k++) {
      sum += clearSky(constant + swing * cosine);
      double turned = cosine * COS_STEP - sine * SIN_STEP;
      sine = sine * COS_STEP + cosine * SIN_STEP;
      cosine = turned;
    }
    return sum / STEPS_IN_HOUR;
  }

  /**
   * Daily sums of the clear-sky irradiance.
   *
   * @param hours 8,760 values in W/m2
   * @return 365 values in kWh/m2
   */
  static double[] dailySums(double[] hours) {
    double[] sums = new double[DAYS];
    for (int i = 0; i < hours.length; i++) {
      sums[i / 24] += hours[i] / 1000;
    }
    return sums;
  }

  /**
   * Irradiation on a horizontal plane above the air, in one day.
   *
   * @param day day of the year from 0
   * @return kWh/m2
   */
  double extraterrestrial(int day) {
    double phi = StrictMath.toRadians(latitude);
    double delta = StrictMath.toRadians(calendar.declination(day + 0.5));
    double constant = StrictMath.sin(phi) * StrictMath.sin(delta);
    double swing = StrictMath.cos(phi) * StrictMath.cos(delta);
    double sunset = sunsetAngle(constant, swing);
    double distance = 1 + 0.033 * StrictMath.cos(2 * Math.PI * (day + 1) / DAYS);
    double mean = (sunset * constant + swing * StrictMath.sin(sunset)) / Math.PI;
    return 24 * SOLAR_CONSTANT / 1000 * distance * mean;
  }

  /**
   * Half the length of the day as an angle: 0 in the polar night, pi in the polar day. The swing is
   * never quite 0: no number is exactly a right angle.
   */
  private static double sunsetAngle(double constant, double swing) {
    return StrictMath.acos(Math.max(-1, Math.min(1, -constant / swing)));
  }
}
