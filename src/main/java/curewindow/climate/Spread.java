package curewindow.climate;

import java.util.List;

/** How far days depart from the normals: a rule fitted to weather years, no place's own figure. */
final class Spread {

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
}
