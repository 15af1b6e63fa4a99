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
   * The sums of one week.
   *
   * @param air of the air where the car stands
   * @param film of the surface
   * @param dewPoint of the dew point
   */
  record Week(WeekSums air, WeekSums film, WeekSums dewPoint) {

    /**
     * Sums up a week.
     *
     * @param week the week within its year, from 0
     * @param hours its hours
     */
    static Week of(int week, SurfaceHours hours) {
      return new Week(
          WeekSums.of(week, List.of(hours::air)),
          WeekSums.of(week, List.of(hours::film)),
          WeekSums.of(week, List.of(hours::dewPoint)));
    }
  }

  /**
   * Sums up from a week on.
   *
   * @param firstWeek the number of the first week
   * @param weeks the sums of a week by its number
   */
  static MeanTable of(int firstWeek, IntFunction<Week> weeks) {
    return new MeanTable(
        new DoseTable(firstWeek, 1, week -> weeks.apply(week).air()),
        new DoseTable(firstWeek, 1, week -> weeks.apply(week).film()),
        new DoseTable(firstWeek, 1, week -> weeks.apply(week).dewPoint()));
  }
}
