package curewindow.climate;

/**
 * What the hours of a month at a place were like, over one or more years.
 *
 * @param normals means of the daily extremes, of the dew point and of the daily sun
 * @param mean mean air temperature, degrees Celsius
 * @param spread standard deviation of the daily mean temperature about the season's course, K,
 *     above 0
 * @param persistence correlation of that departure with the day before, 0 to 0.95
 */
public record MonthStatistics(
    MonthNormals normals, double mean, double spread, double persistence) {

  /** Refuses a spread or a persistence out of range. */
  public MonthStatistics {
    if (!(spread > 0 && spread <= 20)) {
      throw new IllegalArgumentException("spread " + spread + " is not within 0 to 20");
    }
    if (!(persistence >= 0 && persistence <= 0.95)) {
      throw new IllegalArgumentException("persistence " + persistence + " is not within 0 to 0.95");
    }
  }
}
