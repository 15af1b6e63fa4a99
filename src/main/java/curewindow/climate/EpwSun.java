package curewindow.climate;

/** The cloudless sun under the hours of a weather file, and an estimate where it has no sun. */
final class EpwSun {

  /** More sun than this share while the sun is down means that clock or place are wrong. */
  private static final double MOST_NIGHT_SUN = 0.03;

  /** Over 30 days no sky lets more than this share of the cloudless sun through. */
  private static final double MOST_CLEARNESS = 1.3;

  /** Below this sum over 30 days, in Wh/m2, the sun is too low to tell how clear the sky is. */
  private static final double DARK = 30 * 250;

  private static final int THIRTY_DAYS = 30 * 24;

  private EpwSun() {}

  /** Refuses sun that cannot be where and when the file says it was. */
  static void check(EpwHours hours, double[] clearSky) throws EpwFault {
    double all = 0;
    double atNight = 0;
    double clear = 0;
    double measured = 0;
    for (int row = 0; row < hours.rows(); row++) {
      all += hours.sun()[row];
      atNight += clearSky[row] == 0 ? hours.sun()[row] : 0;
      measured += hours.sun()[row];
      clear += clearSky[row];
      if (row % THIRTY_DAYS == THIRTY_DAYS - 1) {
        if (measured > MOST_CLEARNESS * Math.max(DARK, clear)) {
          throw tooMuch(hours.line(row - THIRTY_DAYS + 1));
        }
        measured = 0;
        clear = 0;
      }
    }
    if (all == 0) {
      throw new EpwFault(
          "epw-no-sun",
          hours.line(0),
          "the global horizontal radiation is 0 in all rows",
          "write 9999 where it was not measured, or use a file that has it");
    }
    if (atNight > MOST_NIGHT_SUN * all) {
      throw new EpwFault(
          "epw-night-sun",
          hours.line(0),
          "the sun shines in hours in which it is down at the file's latitude, longitude and clock",
          "correct LOCATION, or the hours, which must be in the time zone that LOCATION names");
    }
  }

  private static EpwFault tooMuch(int line) {
    return new EpwFault(
        "epw-too-much-sun",
        line,
        "the 30 days from here have more sun than a cloudless sky lets through",
        "check LOCATION, and that global horizontal radiation is in Wh/m2");
  }

  /** The cloudless sun for each row of a file; February 29 has that of the 28th. */
  static double[] byRow(EpwHours hours, double[] clearSky) {
    double[] rows = new double[hours.rows()];
    int hour = 0;
    for (int row = 0; row < rows.length; row++) {
      if (hours.onLeapDay(row)) {
        rows[row] = clearSky[hour - 24 + row % 24];
      } else {
        rows[row] = clearSky[hour];
        hour = (hour + 1) % WeatherYear.HOURS;
      }
    }
    return rows;
  }

  /**
   * Puts in the sun of a file that has none: the cloudless sun times a share by month, such that
   * the month's mean is the estimate from the daily range of temperature ({@link Irradiation}).
   */
  static void estimate(EpwHours hours, double latitude, double[] clearSky) {
    double[] clear = MonthCurve.means(Sun.dailySums(clearSky));
    double[] range = ranges(hours);
    double[] share = new double[MonthCurve.MONTHS];
    for (int m = 0; m < share.length; m++) {
      double estimate = Irradiation.fromDailyRange(latitude, m + 1, 0, Math.min(40, range[m]));
      share[m] = clear[m] == 0 ? 0 : Math.min(1, estimate / clear[m]);
    }
    double[] byRow = byRow(hours, clearSky);
    for (int row = 0, day = 0; row < hours.rows(); row++) {
      hours.sun()[row] = byRow[row] * share[MonthCurve.month(day)];
      if (row % 24 == 23 && !hours.onLeapDay(row)) {
        day = (day + 1) % MonthCurve.DAYS;
      }
    }
  }

  /** Means of the daily range of temperature, by month, K. */
  private static double[] ranges(EpwHours hours) {
    double[] sums = new double[MonthCurve.DAYS];
    int days = 0;
    for (int start = 0; start < hours.rows(); start += 24) {
      if (hours.onLeapDay(start)) {
        continue;
      }
      double least = Double.POSITIVE_INFINITY;
      double most = Double.NEGATIVE_INFINITY;
      for (int row = start; row < start + 24; row++) {
        least = Math.min(least, hours.air()[row]);
        most = Math.max(most, hours.air()[row]);
      }
      sums[days % MonthCurve.DAYS] += most - least;
      days++;
    }
    int years = days / MonthCurve.DAYS;
    double[] means = MonthCurve.means(sums);
    for (int m = 0; m < means.length; m++) {
      means[m] /= years;
    }
    return means;
  }
}
