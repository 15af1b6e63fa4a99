package curewindow.climate;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.SPA;

/**
 * The sun's declination and the equation of time for each day of a year, from the NREL solar
 * position algorithm (Reda and Andreas) once, then interpolated. Values are rounded far below their
 * meaning, so that last-digit differences between machines vanish.
 */
final class SolarCalendar {

  /** The year weather is laid on: halfway between leap years, give or take six months. */
  static final int REFERENCE_YEAR = 2026;

  private static final int DAYS = 365;
  private static final double DELTA_T_SECONDS = 69;
  private static final double POLE = 90;

  private final double[] declination = new double[DAYS];
  private final double[] equationOfTime = new double[DAYS];

  private SolarCalendar(int year) {
    LocalDate day = LocalDate.of(year, 1, 1);
    for (int i = 0; i < DAYS; i++) {
      ZonedDateTime noon = day.plusDays(i).atTime(12, 0).atZone(ZoneOffset.UTC);
      // Seen from the north pole, the sun stands as high as its declination.
      double zenith = SPA.calculateSolarPosition(noon, POLE, 0, 0, DELTA_T_SECONDS).zenithAngle();
      declination[i] = rounded(90 - zenith, 1e6);
      ZonedDateTime transit = SPA.calculateSunriseTransitSet(noon, 0, 0, DELTA_T_SECONDS).transit();
      double hour = transit.toLocalTime().toNanoOfDay() / 3.6e12;
      equationOfTime[i] = rounded(12 - hour, 1e5);
    }
  }

  private static double rounded(double value, double steps) {
    return Math.rint(value * steps) / steps;
  }

  /** The calendar of one year; of a leap year its first 365 days. */
  static SolarCalendar ofYear(int year) {
    return new SolarCalendar(year);
  }

  /** The calendar of the reference year, made once. */
  static SolarCalendar reference() {
    return Reference.CALENDAR;
  }

  /**
   * Declination in degrees north.
   *
   * @param day days since the year's beginning in UTC; any finite number, taken round the year
   */
  double declination(double day) {
    return between(declination, day);
  }

  /**
   * Apparent minus mean solar time, in hours.
   *
   * @param day days since the year's beginning in UTC; any finite number, taken round the year
   */
  double equationOfTime(double day) {
    return between(equationOfTime, day);
  }

  private static double between(double[] atNoon, double day) {
    double position = day - 0.5;
    int before = (int) Math.floor(position);
    double share = position - before;
    double low = atNoon[Math.floorMod(before, DAYS)];
    double high = atNoon[Math.floorMod(before + 1, DAYS)];
    return low + share * (high - low);
  }

  private static final class Reference {
    static final SolarCalendar CALENDAR = ofYear(REFERENCE_YEAR);
  }
}
