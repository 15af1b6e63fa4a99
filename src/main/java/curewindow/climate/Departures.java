package curewindow.climate;

import java.util.ArrayList;
import java.util.List;

/**
 * How the days of one year depart from the normals.
 *
 * @param temperatures added to the day's air temperatures, K, 365 values
 * @param ranges times the day's range of temperature, 365 values
 * @param dewPoints added to the day's dew point, K, 365 values
 * @param clearnesses the day's share of the clear-sky irradiation, 365 values
 * @param clouds how clearness comes and goes within the days, in spreads, 8,760 values
 */
record Departures(
    double[] temperatures,
    double[] ranges,
    double[] dewPoints,
    double[] clearnesses,
    double[] clouds) {

  /** An overcast sky lets through about this share of the clear sky's sun. */
  private static final double OVERCAST = 0.25;

  /** The clearest days are this clear: the clear sky's formula is of a mean atmosphere. */
  private static final double CLEAREST = 1.08;

  /** Bounds of the clearness of single hours. */
  private static final double DARKEST = 0.12;

  private static final double MOST_OF_AN_HOUR = 1.15;

  /** Makes the spread of clearness within a half-clouded day 0.2. */
  private static final double CLOUD_SPREAD = 0.87;

  private static final double LEAST_RANGE = 0.3;
  private static final int ROUNDS = 8;

  double temperature(int day) {
    return temperatures[day];
  }

  double range(int day) {
    return ranges[day];
  }

  double dewPoint(int day) {
    return dewPoints[day];
  }

  double clearness(int day) {
    return clearnesses[day];
  }

  /** The years of an ensemble; on each day the mean clearness of all is the typical one. */
  static List<Departures> of(PlaceDays place, Chances chances) {
    List<Departures> years = new ArrayList<>();
    for (int i = 0; i < chances.members(); i++) {
      years.add(empty(chances.clouds().get(i)));
    }
    for (int d = 0; d < MonthCurve.DAYS; d++) {
      for (int i = 0; i < years.size(); i++) {
        years.get(i).drawn(d, place.spreads(), chances, i);
        years.get(i).offset(d, place, chances.offsets(), i);
      }
      keepMeanClearness(years, d, place.clearness(d));
      for (Departures year : years) {
        double brighter = year.clearnesses[d] - place.clearness(d);
        double wider = 1 + place.spreads().rangeInBrightness()[d] * brighter;
        year.ranges[d] = Math.max(LEAST_RANGE, wider);
      }
    }
    return years;
  }

  private static Departures empty(double[] clouds) {
    int days = MonthCurve.DAYS;
    return new Departures(
        new double[days], new double[days], new double[days], new double[days], clouds);
  }

  /** Draws a day; its clearness only as a departure yet. */
  private void drawn(int day, DaySpreads spreads, Chances chances, int member) {
    double warm = chances.warmth().get(member)[day];
    double bright = chances.brightness().get(member)[day];
    double moist = chances.moisture().get(member)[day];
    double warmShare = spreads.brightInWarmth()[day];
    double brightShare = spreads.rules().moistInBrightness();
    temperatures[day] = spreads.warmth()[day] * warm;
    clearnesses[day] = spreads.brightness()[day] * (warmShare * warm + rest(warmShare) * bright);
    dewPoints[day] =
        spreads.dewShare()[day] * temperatures[day]
            + spreads.moisture()[day] * (brightShare * bright + rest(brightShare) * moist);
  }

  /** Adds what the year as a whole departs by. */
  private void offset(int day, PlaceDays place, Offsets offsets, int member) {
    Doubt doubt = place.doubt();
    double warmer = doubt.warmth() * offsets.warmth()[member];
    double drier = doubt.dryness() * offsets.dryness()[member];
    temperatures[day] += warmer;
    dewPoints[day] += warmer - drier * (place.depression(day) + Doubt.LEAST_DEPRESSION);
    clearnesses[day] += doubt.sun() * offsets.sun()[member] * place.clearness(day);
  }

  /**
   * Shares out a day's sun over its hours: skies half clouded come and go, overcast and clear ones
   * stay.
   *
   * @param day the day
   * @param irradiance the year's clear-sky irradiance, W/m2; from then on the day's is as departed
   */
  void shade(int day, double[] irradiance) {
    double typical = clearnesses[day];
    double spread = Math.max(0, CLOUD_SPREAD * (typical - DARKEST) * (CLEAREST - typical));
    double clear = 0;
    double sum = 0;
    for (int h = 24 * day; h < 24 * day + 24; h++) {
      double share = within(DARKEST, MOST_OF_AN_HOUR, typical + spread * clouds[h]);
      clear += irradiance[h];
      irradiance[h] *= spread > 0 ? share : typical;
      sum += irradiance[h];
    }
    for (int h = 24 * day; h < 24 * day + 24; h++) {
      irradiance[h] *= sum > 0 ? typical * clear / sum : 1;
    }
  }

  private static double rest(double share) {
    return Math.sqrt(1 - share * share);
  }

  /** Adds the typical clearness, within what skies can be, shifted such that the mean stays. */
  private static void keepMeanClearness(List<Departures> years, int day, double typical) {
    double least = Math.min(OVERCAST, typical / 2);
    double most = Math.max(CLEAREST, typical);
    double middle = typical;
    for (int round = 0; round < ROUNDS; round++) {
      double sum = 0;
      for (Departures year : years) {
        sum += within(least, most, middle + year.clearnesses[day]);
      }
      middle += typical - sum / years.size();
    }
    for (Departures year : years) {
      year.clearnesses[day] = within(least, most, middle + year.clearnesses[day]);
    }
  }

  private static double within(double low, double high, double value) {
    return Math.max(low, Math.min(high, value));
  }
}
