package curewindow.climate;

import java.util.List;

/** How far days depart from the normals: a rule fitted to weather years, no place's own figure. */
final class Spread {

  /** The dew point departs by this share of the air temperature's departure. */
  static final double DEW_POINT_SHARE = 0.6;

  private static final double LEAST_CLEARNESS = 0.05;

  private Spread() {}

  /** The spread of a place by month, K: its weather file's own, or else the rule. */
  static double[] of(Place place) {
    return place.fileWeather().map(FileWeather::spreads).orElseGet(() -> byMonth(place.normals()));
  }

  /**
   * Standard deviation of the daily mean temperature about its normal: 0.6 K, and more with the
   * year's range and in the year's cold part, within 0.7 to 6.5 K.
   *
   * @param normals twelve months
   * @return twelve values in K
   */
  static double[] byMonth(List<MonthNormals> normals) {
    double[] means = normals.stream().mapToDouble(m -> (m.dailyMin() + m.dailyMax()) / 2).toArray();
    Course year = Course.of(means);
    double[] spreads = new double[means.length];
    for (int m = 0; m < means.length; m++) {
      double colderThanYear = year.mean() - means[m];
      double rule = 0.6 + 0.128 * year.range() + 0.084 * colderThanYear;
      spreads[m] = Math.max(0.7, Math.min(6.5, rule));
    }
    return spreads;
  }

  /**
   * The clearness of a day that is duller or brighter than typical. Days vary most where the sky is
   * half clouded and hardly under a sky that is always clear.
   *
   * @param typical the typical day's clearness
   * @param brightness departure in spreads, below 0 duller
   * @return at least 0.05 and at most 1, or the typical clearness where that lies outside
   */
  static double clearness(double typical, double brightness) {
    double day = typical * (1 + 0.35 * brightness * Math.max(0, 1.05 - typical) / 0.6);
    double least = Math.min(LEAST_CLEARNESS, typical);
    return Math.max(least, Math.min(Math.max(1, typical), day));
  }
}
