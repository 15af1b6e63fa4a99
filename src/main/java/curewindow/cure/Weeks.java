package curewindow.cure;

import curewindow.climate.WeatherYear;
import java.time.LocalDate;
import java.time.YearMonth;

/**
 * The months of the calendar by number: twelve times the year and the months of that year before
 * it. Times are seconds of local standard time since 1970.
 */
final class Months {

  private static final int IN_YEAR = 12;
  private static final int HOURS_IN_DAY = 24;
  private static final int SECONDS_IN_DAY = 86_400;

  /** Any year without a February 29. */
  private static final int USUAL_YEAR = 2026;

  private Months() {}

  /** The month that a time falls in. */
  static int of(long second) {
    LocalDate day = LocalDate.ofEpochDay(Math.floorDiv(second, SECONDS_IN_DAY));
    return january(day.getYear()) + day.getMonthValue() - 1;
  }

  /** The January of a year. */
  static int january(int year) {
    return year * IN_YEAR;
  }

  /** The year of a month. */
  static int year(int month) {
    return Math.floorDiv(month, IN_YEAR);
  }

  /** The time at which a month begins. */
  static long start(int month) {
    return YearMonth.of(year(month), inYear(month) + 1).atDay(1).toEpochDay() * SECONDS_IN_DAY;
  }

  /** Whether a month has a February 29, in which the weather of the 28th comes again. */
  static boolean hasLeapDay(int month) {
    return inYear(month) == 1 && YearMonth.of(year(month), 2).lengthOfMonth() == 29;
  }

  /** The number of a month within its year, from 0. */
  static int inYear(int month) {
    return Math.floorMod(month, IN_YEAR);
  }

  /**
   * The hour of the weather year at which a month begins.
   *
   * @param inYear 0 for January to 12 for the end of the year
   */
  static int firstHour(int inYear) {
    return inYear == IN_YEAR
        ? WeatherYear.HOURS
        : HOURS_IN_DAY * (LocalDate.of(USUAL_YEAR, inYear + 1, 1).getDayOfYear() - 1);
  }
}
