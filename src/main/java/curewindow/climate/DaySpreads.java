package curewindow.climate;

import java.util.List;

/**
 * How far the days of a place depart from its normals, for each day of the year: {@link DayRules}
 * applied to its months.
 *
 * @param warmth spread of the daily mean temperature, K
 * @param dewShare by how much the dew point follows the temperature
 * @param moisture spread of what of the dew point does not follow, K
 * @param brightness spread of the clearness
 * @param brightInWarmth correlation of clearness with temperature
 * @param rangeInBrightness share of the daily range that one unit of clearness adds to it
 * @param rules the rules these come from
 */
record DaySpreads(
    double[] warmth,
    double[] dewShare,
    double[] moisture,
    double[] brightness,
    double[] brightInWarmth,
    double[] rangeInBrightness,
    DayRules rules) {

  private static final double MOST_DEW_SHARE = 1.4;
  private static final double LEAST_DEW_SHARE = -0.5;
  private static final double LEAST_MOISTURE = 0.5;
  private static final double LEAST_BRIGHTNESS = 0.03;

  /** The most that clearness spreads, as a share of itself. */
  private static final double MOST_BRIGHTNESS = 0.4;

  /** From this temperature on, in degrees Celsius, the sun alone makes the daily range. */
  private static final double MILD = 12;

  private static final double MOST_CORRELATION = 0.6;

  /** In air with this depression, in K, clear days are no longer cold ones in winter. */
  private static final double DRY = 8;

  /** Below this range of the monthly means, in K, a year has no cold part. */
  private static final double SEASONLESS = 2;

  /**
   * Applies the rules.
   *
   * @param normals twelve months
   * @param clearness 365 daily shares of the clear sky's sun
   * @param rules the rules
   */
  static DaySpreads of(List<MonthNormals> normals, double[] clearness, DayRules rules) {
    return of(normals, Spread.byMonth(normals), clearness, rules);
  }

  /**
   * The same where the spread of the temperature is known.
   *
   * @param normals twelve months
   * @param warmth spread of the daily mean temperature by month, K
   * @param clearness 365 daily shares of the clear sky's sun
   * @param rules the rules
   */
  static DaySpreads of(
      List<MonthNormals> normals, double[] warmth, double[] clearness, DayRules rules) {
    double[] means = normals.stream().mapToDouble(DaySpreads::mean).toArray();
    double[] clear = MonthCurve.means(clearness);
    double[] cold = coldness(means);
    int months = MonthCurve.MONTHS;
    double[] dewShare = new double[months];
    double[] moisture = new double[months];
    double[] brightness = new double[months];
    double[] inWarmth = new double[months];
    double[] range = new double[months];
    for (int m = 0; m < months; m++) {
      double depression = Math.max(0, means[m] - normals.get(m).dewPoint());
      dewShare[m] =
          within(LEAST_DEW_SHARE, MOST_DEW_SHARE, line(rules.dewShare(), depression, cold[m]));
      moisture[m] = Math.max(LEAST_MOISTURE, line(rules.moisture(), depression, warmth[m]));
      brightness[m] =
          within(
              LEAST_BRIGHTNESS,
              MOST_BRIGHTNESS * clear[m],
              line(rules.brightness(), clear[m], warmth[m]));
      inWarmth[m] =
          within(
              -MOST_CORRELATION,
              MOST_CORRELATION,
              line(rules.brightInWarmth(), cold[m] * StrictMath.exp(-depression / DRY), 0));
      range[m] = Math.max(0, line(rules.rangeInBrightness(), Math.min(MILD, means[m]), 0));
    }
    return new DaySpreads(
        MonthCurve.days(warmth),
        MonthCurve.days(dewShare),
        MonthCurve.days(moisture),
        MonthCurve.days(brightness),
        MonthCurve.days(inWarmth),
        MonthCurve.days(range),
        rules);
  }

  private static double mean(MonthNormals month) {
    return (month.dailyMin() + month.dailyMax()) / 2;
  }

  /** How far months lie below the year's mean, as a share of the year's range. */
  private static double[] coldness(double[] means) {
    Course year = Course.of(means);
    double[] cold = new double[means.length];
    for (int m = 0; m < means.length; m++) {
      cold[m] = (year.mean() - means[m]) / Math.max(SEASONLESS, year.range());
    }
    return cold;
  }

  private static double line(double[] rule, double first, double second) {
    return rule[0] + rule[1] * first + (rule.length > 2 ? rule[2] * second : 0);
  }

  private static double within(double low, double high, double value) {
    return Math.max(low, Math.min(high, value));
  }
}
