package curewindow.cure;

import java.util.List;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;

/**
 * Degree hours along the calendar in one weather, from which the mean weather of a stretch of time
 * is taken.
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
        table(firstYear, years, y -> y::air),
        table(firstYear, years, y -> y::film),
        table(firstYear, years, y -> y::dewPoint));
  }

  private static DoseTable table(
      int firstYear, List<SurfaceHours> years, Function<SurfaceHours, IntToDoubleFunction> hourly) {
    return new DoseTable(
        firstYear, years.stream().map(y -> YearSums.of(List.of(hourly.apply(y)))).toList());
  }
}
