package curewindow.climate;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * A place's normals laid out over the days of a year, with the cloudless sky above it: all that the
 * years of its weather have in common. The arrays are never changed once made.
 */
final class PlaceDays {

  /** Below this mean daily clear-sky sum in kWh/m2 a month's irradiation says nothing on clouds. */
  private static final double DARK_MONTH = 0.25;

  private static final double MOST_CLEARNESS = 1.3;
  private static final double LEAST_CLEARNESS = 0.02;
  private static final int DEW_ROUNDS = 5;
  private static final Instant OFFSET_DATE = Instant.parse("2026-01-01T00:00:00Z");

  private final ZoneOffset standard;
  private final double[] clearSky;
  private final DailyCycle.Moment[] moments;
  private final double[] dailyMin;
  private final double[] dailyMax;
  private final double[] dewPoint;
  private final double[] clearness;
  private final DaySpreads spreads;
  private final Doubt doubt;

  /** The days of a place whose cloudless sky is known. */
  PlaceDays(Place place, DayRules rules, double[] clearSky) {
    standard = standardOffset(place);
    this.clearSky = clearSky;
    dailyMin = days(place, MonthNormals::dailyMin);
    dailyMax = days(place, MonthNormals::dailyMax);
    moments = moments(place, standard, days(place, DailyCycle::bend));
    dewPoint = days(place, MonthNormals::dewPoint);
    double[] perDay = Sun.dailySums(clearSky);
    clearness = clearness(months(place, MonthNormals::sun), perDay);
    spreads = DaySpreads.of(place.normals(), Spread.of(place), clearness, rules);
    doubt = place.doubt();
  }

  /** The offset of the place's standard time, as its zone has it on January 1, 2026. */
  static ZoneOffset standardOffset(Place place) {
    return place.zone().getRules().getStandardOffset(OFFSET_DATE);
  }

  /** The irradiance of the year's hours were the sky cloudless, W/m2. */
  static double[] clearSky(Place place) {
    Sun sun = Sun.over(place.latitude(), place.longitude());
    return sun.clearSkyHours(standardOffset(place));
  }

  /** What is impossible in the normals of a place, in words; empty where all is possible. */
  static List<String> impossible(Place place, double[] clearSky) {
    double[] clear = MonthCurve.means(Sun.dailySums(clearSky));
    List<String> found = new ArrayList<>();
    for (int m = 0; m < MonthCurve.MONTHS; m++) {
      double given = place.normals().get(m).sun();
      double most = Math.max(DARK_MONTH, clear[m]) * MOST_CLEARNESS;
      if (given > most) {
        found.add(
            String.format(
                Locale.ROOT,
                "sun %s in month %d is more than the %.1f kWh/m2 a day that latitude %s can have",
                given,
                m + 1,
                most,
                place.latitude()));
      }
    }
    return found;
  }

  /** The middle of each hour by the sun's clock. */
  private static DailyCycle.Moment[] moments(Place place, ZoneOffset standard, double[] bends) {
    Sun sun = Sun.over(place.latitude(), place.longitude());
    double ahead = standard.getTotalSeconds() / 3600.0;
    DailyCycle.Moment[] moments = new DailyCycle.Moment[WeatherYear.HOURS];
    for (int h = 0; h < moments.length; h++) {
      double lead = sun.solarLead((h + 0.5 - ahead) / 24, standard);
      moments[h] = DailyCycle.Moment.of(bends, h + 0.5 + lead);
    }
    return moments;
  }

  private static double[] months(Place place, ToDoubleFunction<MonthNormals> part) {
    return place.normals().stream().mapToDouble(part).toArray();
  }

  private static double[] days(Place place, ToDoubleFunction<MonthNormals> part) {
    return MonthCurve.days(months(place, part));
  }

  /**
   * Daily share of the clear-sky sum, such that each month's mean irradiation is met. Dark months,
   * which cannot tell, take the year's share.
   */
  private static double[] clearness(double[] given, double[] clearPerDay) {
    double[] clear = MonthCurve.means(clearPerDay);
    double givenSum = 0;
    double clearSum = 0;
    for (int m = 0; m < MonthCurve.MONTHS; m++) {
      givenSum += given[m];
      clearSum += clear[m];
    }
    double[] shares = new double[MonthCurve.MONTHS];
    for (int m = 0; m < shares.length; m++) {
      shares[m] = clear[m] < DARK_MONTH ? givenSum / clearSum : given[m] / clear[m];
    }
    double[] weights = new double[MonthCurve.DAYS];
    for (int d = 0; d < weights.length; d++) {
      weights[d] = Math.max(1e-6, clearPerDay[d]);
    }
    double[] days = MonthCurve.days(shares, weights);
    for (int d = 0; d < days.length; d++) {
      days[d] = Math.max(LEAST_CLEARNESS, Math.min(MOST_CLEARNESS, days[d]));
    }
    return days;
  }

  ZoneOffset standard() {
    return standard;
  }

  /** How far the days depart from the normals. */
  DaySpreads spreads() {
    return spreads;
  }

  /** How far the normals may be off. */
  Doubt doubt() {
    return doubt;
  }

  /** By how much the dew point lies below the middle of the day's temperatures, K, 0 or more. */
  double depression(int day) {
    return Math.max(0, (dailyMin[day] + dailyMax[day]) / 2 - dewPoint[day]);
  }

  /** Share of the clear-sky irradiation that reaches the ground on a typical day. */
  double clearness(int day) {
    return clearness[day];
  }

  /** A year of hours that departs from the normals as told. */
  WeatherYear year(Departures departures) {
    double[] low = new double[MonthCurve.DAYS];
    double[] high = new double[MonthCurve.DAYS];
    for (int d = 0; d < MonthCurve.DAYS; d++) {
      double wider = (departures.range(d) - 1) * (dailyMax[d] - dailyMin[d]) / 2;
      low[d] = dailyMin[d] + departures.temperature(d) - wider;
      high[d] = dailyMax[d] + departures.temperature(d) + wider;
    }
    return WeatherYear.byDay(
        (day, air, dew, irradiance) -> {
          int first = 24 * day;
          for (int h = first; h < first + 24; h++) {
            air[h] = within(-90, 65, moments[h].temperature(low, high));
          }
          double mean = within(-100, 45, dewPoint[day] + departures.dewPoint(day));
          Arrays.fill(dew, first, first + 24, within(-100, 45, dewOfDay(mean, air, first)));
          System.arraycopy(clearSky, first, irradiance, first, 24);
          departures.shade(day, irradiance);
        });
  }

  /**
   * The dew point of a day's unsaturated hours. Where nights are colder than that, dew falls and
   * lowers it for a while; the day's mean is to be met all the same.
   */
  private static double dewOfDay(double mean, double[] air, int first) {
    double dew = mean;
    for (int round = 0; round < DEW_ROUNDS; round++) {
      double sum = 0;
      for (int h = first; h < first + 24; h++) {
        sum += Math.min(dew, air[h]);
      }
      dew += mean - sum / 24;
    }
    return dew;
  }

  private static double within(double low, double high, double value) {
    return Math.max(low, Math.min(high, value));
  }
}
