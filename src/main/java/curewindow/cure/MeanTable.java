package curewindow.cure;

import java.util.List;

/**
 * Degree hours along the calendar, from which the mean weather of a stretch of time is taken.
 *
 * @param air of the air where the car stands
 * @param film of the surface
 * @param dewPoint of the dew point
 */
record MeanTable(DoseTable air, DoseTable film, DoseTable dewPoint) {

  /**
   * Sums the years up.
   *
   * @param firstYear the first calendar year
   * @param years its hours and those of the following years
   */
  static MeanTable of(int firstYear, List<SurfaceHours> years) {
    return new MeanTable(
        new DoseTable(firstYear, years.stream().map(y -> YearSum.of(y::air)).toList()),
        new DoseTable(firstYear, years.stream().map(y -> YearSum.of(y::film)).toList()),
        new DoseTable(firstYear, years.stream().map(y -> YearSum.of(y::dewPoint)).toList()));
  }
}
