package curewindow.climate;

/** Estimates a month's mean daily irradiation where nobody measured it. */
public final class Irradiation {

  /** The coefficient for inland places, as FAO Irrigation and Drainage Paper 56 gives it. */
  private static final double RANGE_FACTOR = 0.16;

  private Irradiation() {}

  /**
   * From the daily range of temperature, after Hargreaves and Samani 1982 with the inland factor of
   * FAO-56. Against weather years, its usual error is 0.6 kWh/m2 a day.
   *
   * @param latitude degrees north, -90 to 90
   * @param month 1 to 12
   * @param dailyMin mean daily lowest temperature, degrees Celsius
   * @param dailyMax mean daily highest temperature, degrees Celsius, not below the lowest
   * @return kWh/m2 per day
   * @throws IllegalArgumentException where a value is out of range or not a number
   */
  public static double fromDailyRange(
      double latitude, int month, double dailyMin, double dailyMax) {
    if (!(dailyMax >= dailyMin && dailyMax - dailyMin <= 40)) {
      throw new IllegalArgumentException(
          "daily range from " + dailyMin + " to " + dailyMax + " is not within 0 to 40 K");
    }
    return RANGE_FACTOR * Math.sqrt(dailyMax - dailyMin) * extraterrestrial(latitude, month);
  }

  /**
   * From the share of the daylight hours in which the sun shines, after Angstrom and Prescott with
   * the coefficients of FAO-56 (0.25 and 0.50).
   *
   * @param latitude degrees north, -90 to 90
   * @param month 1 to 12
   * @param share sunny hours over daylight hours, 0 to 1
   * @return kWh/m2 per day
   * @throws IllegalArgumentException where a value is out of range or not a number
   */
  public static double fromSunshineShare(double latitude, int month, double share) {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("share " + share + " is not within 0 to 1");
    }
    return (0.25 + 0.50 * share) * extraterrestrial(latitude, month);
  }

  private static double extraterrestrial(double latitude, int month) {
    if (!(latitude >= -90 && latitude <= 90)) {
      throw new IllegalArgumentException("latitude " + latitude + " is not within -90 to 90");
    }
    if (month < 1 || month > 12) {
      throw new IllegalArgumentException("month " + month + " is not within 1 to 12");
    }
    Sun sun = Sun.over(latitude, 0);
    double[] days = new double[MonthCurve.DAYS];
    for (int d = 0; d < days.length; d++) {
      days[d] = sun.extraterrestrial(d);
    }
    return MonthCurve.means(days)[month - 1];
  }
}
