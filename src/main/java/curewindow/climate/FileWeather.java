package curewindow.climate;

import java.util.List;

/**
 * What a weather file tells of its place beyond the normals: how its days vary, and its years.
 *
 * @param months statistics of the twelve months, January first
 * @param years the hours, a year each, in the file's order, one or more
 */
public record FileWeather(List<MonthStatistics> months, List<WeatherYear> years) {

  /**
   * From so many years on, the years themselves are the weathers that a place may have. A new year
   * keeps the worst of n dates with a chance of n in n + 1; nine is the least n for nine in ten.
   */
  public static final int ENOUGH_YEARS = 9;

  /** Refuses anything but twelve months, and a file without years. */
  public FileWeather {
    months = List.copyOf(months);
    years = List.copyOf(years);
    if (months.size() != MonthCurve.MONTHS || years.isEmpty()) {
      throw new IllegalArgumentException("a weather file has 12 months and at least one year");
    }
  }

  /**
   * The statistics of hours.
   *
   * @param years the hours, a year each, one or more
   * @return the weather
   */
  public static FileWeather of(List<WeatherYear> years) {
    return new FileWeather(WeatherStatistics.of(years), years);
  }

  /**
   * Whether there are enough years to take them as they are.
   *
   * @return true from {@link #ENOUGH_YEARS} on
   */
  public boolean hasEnoughYears() {
    return years.size() >= ENOUGH_YEARS;
  }

  /**
   * The normals of the twelve months.
   *
   * @return January first
   */
  public List<MonthNormals> normals() {
    return months.stream().map(MonthStatistics::normals).toList();
  }

  /** Spread of the daily mean temperature by month, K. */
  double[] spreads() {
    return months.stream().mapToDouble(MonthStatistics::spread).toArray();
  }

  /** Persistence over the whole year: how much of a day's departure is left on the next. */
  double persistence() {
    return months.stream().mapToDouble(MonthStatistics::persistence).average().orElseThrow();
  }
}
