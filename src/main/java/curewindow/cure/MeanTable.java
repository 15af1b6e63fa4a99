package curewindow.cure;

import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
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
   * Sums up from a month on.
   *
   * @param firstMonth the number of the first month
   * @param months the hours of a month by its number
   */
  static MeanTable of(int firstMonth, IntFunction<SurfaceHours> months) {
    return new MeanTable(
        table(firstMonth, months, m -> m::air),
        table(firstMonth, months, m -> m::film),
        table(firstMonth, months, m -> m::dewPoint));
  }

  private static DoseTable table(
      int firstMonth,
      IntFunction<SurfaceHours> months,
      Function<SurfaceHours, IntToDoubleFunction> hourly) {
    return new DoseTable(
        firstMonth,
        1,
        month -> MonthSums.of(Months.inYear(month), List.of(hourly.apply(months.apply(month)))));
  }
}
