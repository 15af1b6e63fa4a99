package curewindow.cure;

import java.util.List;
import java.util.function.IntFunction;

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
   * The sums of one month.
   *
   * @param air of the air where the car stands
   * @param film of the surface
   * @param dewPoint of the dew point
   */
  record Month(MonthSums air, MonthSums film, MonthSums dewPoint) {

    /**
     * Sums up a month.
     *
     * @param month the month, 0 for January to 11
     * @param hours its hours
     */
    static Month of(int month, SurfaceHours hours) {
      return new Month(
          MonthSums.of(month, List.of(hours::air)),
          MonthSums.of(month, List.of(hours::film)),
          MonthSums.of(month, List.of(hours::dewPoint)));
    }
  }

  /**
   * Sums up from a month on.
   *
   * @param firstMonth the number of the first month
   * @param months the sums of a month by its number
   */
  static MeanTable of(int firstMonth, IntFunction<Month> months) {
    return new MeanTable(
        new DoseTable(firstMonth, 1, month -> months.apply(month).air()),
        new DoseTable(firstMonth, 1, month -> months.apply(month).film()),
        new DoseTable(firstMonth, 1, month -> months.apply(month).dewPoint()));
  }
}
