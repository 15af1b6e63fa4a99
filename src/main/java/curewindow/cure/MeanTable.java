package curewindow.cure;

import java.util.ArrayList;
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
   * Sums the months up.
   *
   * @param firstMonth the number of the first month
   * @param months its hours and those of the following months
   */
  static MeanTable of(int firstMonth, List<SurfaceHours> months) {
    return new MeanTable(
        table(firstMonth, months, m -> m::air),
        table(firstMonth, months, m -> m::film),
        table(firstMonth, months, m -> m::dewPoint));
  }

  private static DoseTable table(
      int firstMonth,
      List<SurfaceHours> months,
      Function<SurfaceHours, IntToDoubleFunction> hourly) {
    List<MonthSums> sums = new ArrayList<>();
    for (int i = 0; i < months.size(); i++) {
      int month = Months.inYear(firstMonth + i);
      sums.add(MonthSums.of(month, List.of(hourly.apply(months.get(i)))));
    }
    return new DoseTable(firstMonth, sums);
  }
}
