package curewindow.climate;

/**
 * How the days of one year depart from the normals.
 *
 * @param temperatures added to the day's air temperatures, K, 365 values
 * @param dewPoints added to the day's dew point, K, 365 values
 * @param clearnesses the day's share of the clear-sky irradiation, 365 values
 */
record Departures(double[] temperatures, double[] dewPoints, double[] clearnesses) {

  double temperature(int day) {
    return temperatures[day];
  }

  double dewPoint(int day) {
    return dewPoints[day];
  }

  double clearness(int day) {
    return clearnesses[day];
  }

  /**
   * Departures told in spreads.
   *
   * @param warmth the daily mean temperature's departure, in spreads, 365 values
   * @param brightness the clearness's departure, in spreads, 365 values
   */
  static Departures inSpreads(PlaceDays place, double[] warmth, double[] brightness) {
    double[] temperatures = new double[MonthCurve.DAYS];
    double[] dewPoints = new double[MonthCurve.DAYS];
    double[] clearnesses = new double[MonthCurve.DAYS];
    for (int d = 0; d < MonthCurve.DAYS; d++) {
      temperatures[d] = place.spread(d) * warmth[d];
      dewPoints[d] = Spread.DEW_POINT_SHARE * temperatures[d];
      clearnesses[d] = Spread.clearness(place.clearness(d), brightness[d]);
    }
    return new Departures(temperatures, dewPoints, clearnesses);
  }
}
