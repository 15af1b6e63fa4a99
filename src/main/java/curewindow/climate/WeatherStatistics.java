package curewindow.climate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Monthly statistics of hourly years.
 *
 * <p>Spread and persistence are those of the daily mean temperature about the season's course,
 * which is laid through the file's own monthly means. A month's mean follows its own days, so days
 * look calmer about it than about the true normal; with few years that matters. The correction is
 * the one for a first-order autoregressive process: the mean of n days with persistence p has the
 * variance v times that of the days, with v = (1/n2) sum of p^|i-j|; so the true variance is the
 * apparent one over 1 - v, and p = r (1 - v) + v for an apparent lag-1 correlation r. A single
 * month still holds only about six independent days, so each takes a quarter of each neighbour's.
 */
final class WeatherStatistics {

  private static final double LEAST_SPREAD = 0.3;
  private static final double MOST_SPREAD = 20;
  private static final double MOST_PERSISTENCE = 0.95;
  private static final int ROUNDS = 20;
  private static final int[] LENGTH = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

  private final List<WeatherYear> years;
  private final double[] low = new double[MonthCurve.DAYS];
  private final double[] high = new double[MonthCurve.DAYS];
  private final double[] mean = new double[MonthCurve.DAYS];
  private final double[] dew = new double[MonthCurve.DAYS];
  private final double[] sun = new double[MonthCurve.DAYS];

  private WeatherStatistics(List<WeatherYear> years) {
    this.years = years;
  }

  /** The twelve months of one or more years. */
  static List<MonthStatistics> of(List<WeatherYear> years) {
    WeatherStatistics statistics = new WeatherStatistics(years);
    years.forEach(statistics::add);
    return statistics.months();
  }

  private void add(WeatherYear year) {
    for (int day = 0; day < MonthCurve.DAYS; day++) {
      double least = Double.POSITIVE_INFINITY;
      double most = Double.NEGATIVE_INFINITY;
      for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
        least = Math.min(least, year.temperature(hour));
        most = Math.max(most, year.temperature(hour));
        dew[day] += year.dewPoint(hour) / 24 / years.size();
        sun[day] += year.irradiance(hour) / 1000 / years.size();
      }
      low[day] += least / years.size();
      high[day] += most / years.size();
      mean[day] += dayMean(year, day) / years.size();
    }
  }

  private static double dayMean(WeatherYear year, int day) {
    double sum = 0;
    for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
      sum += year.temperature(hour);
    }
    return sum / 24;
  }

  private List<MonthStatistics> months() {
    double[] means = MonthCurve.means(mean);
    double[] lows = MonthCurve.means(low);
    double[] highs = MonthCurve.means(high);
    double[] dews = MonthCurve.means(dew);
    double[] suns = MonthCurve.means(sun);
    Moments moments = new Moments(MonthCurve.days(means));
    years.forEach(moments::add);
    List<MonthStatistics> months = new ArrayList<>();
    for (int m = 0; m < MonthCurve.MONTHS; m++) {
      double apparent = moments.correlation(m);
      double persistence = persistence(apparent, LENGTH[m]);
      double shrunk = 1 - ofMean(persistence, LENGTH[m]);
      months.add(
          new MonthStatistics(
              new MonthNormals(lows[m], highs[m], Math.min(dews[m], highs[m]), suns[m]),
              means[m],
              Math.max(
                  LEAST_SPREAD, Math.min(MOST_SPREAD, Math.sqrt(moments.variance(m) / shrunk))),
              persistence));
    }
    return months;
  }

  private double persistence(double apparent, int days) {
    double persistence = Math.max(0, apparent);
    for (int round = 0; round < ROUNDS; round++) {
      double v = ofMean(persistence, days);
      persistence = Math.max(0, Math.min(MOST_PERSISTENCE, apparent * (1 - v) + v));
    }
    return persistence;
  }

  /** Variance of the mean of all the years' days in a month, as a share of the days' variance. */
  private double ofMean(double persistence, int days) {
    double sum = days;
    double power = 1;
    for (int lag = 1; lag < days; lag++) {
      power *= persistence;
      sum += 2 * (days - lag) * power;
    }
    return sum / days / days / years.size();
  }

  /** Sums of squares and of products with the day before, by month. */
  private static final class Moments {

    private final double[] course;
    private final double[] squares = new double[MonthCurve.MONTHS];
    private final double[] products = new double[MonthCurve.MONTHS];
    private final double[] earlier = new double[MonthCurve.MONTHS];
    private final int[] days = new int[MonthCurve.MONTHS];

    Moments(double[] course) {
      this.course = course;
    }

    void add(WeatherYear year) {
      double before = Double.NaN;
      for (int day = 0; day < MonthCurve.DAYS; day++) {
        int month = MonthCurve.month(day);
        double departure = dayMean(year, day) - course[day];
        squares[month] += departure * departure;
        days[month]++;
        // The months of a typical year come from different years, so no pair spans two months.
        if (day > 0 && MonthCurve.month(day - 1) == month) {
          products[month] += departure * before;
          earlier[month] += (before * before + departure * departure) / 2;
        }
        before = departure;
      }
    }

    double variance(int month) {
      return smoothed(squares, month) / smoothed(days, month);
    }

    double correlation(int month) {
      double among = smoothed(earlier, month);
      return among == 0 ? 0 : smoothed(products, month) / among;
    }

    private static double smoothed(double[] sums, int month) {
      int before = (month + MonthCurve.MONTHS - 1) % MonthCurve.MONTHS;
      int after = (month + 1) % MonthCurve.MONTHS;
      return sums[before] / 4 + sums[month] / 2 + sums[after] / 4;
    }

    private static double smoothed(int[] counts, int month) {
      return smoothed(Arrays.stream(counts).asDoubleStream().toArray(), month);
    }
  }
}
