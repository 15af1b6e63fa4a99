package curewindow.cure;

import curewindow.climate.WeatherYear;
import java.time.LocalDate;
import java.time.YearMonth;

/**
 * The weeks of the calendar's months by number, four a month: they begin on the 1st, 8th, 15th and
 * 22nd, and the last goes on to the month's end. Times are seconds of local standard time since
 * 1970.
 */
final class Weeks {

  /** How many there are in a year. */
  static final int IN_YEAR = 48;

  private static final int IN_MONTH = 4;
  private static final int DAYS = 7;
  private static final int HOURS_IN_DAY = 24;
  private static final int SECONDS_IN_DAY = 86_400;

  /** Any year without a February 29. */
  private static final int USUAL_YEAR = 2026;

  private Weeks() {}

  /** The week that a time falls in. */
  static int of(long second) {
    LocalDate day = LocalDate.ofEpochDay(Math.floorDiv(second, SECONDS_IN_DAY));
    int inMonth = Math.min((day.getDayOfMonth() - 1) / DAYS, IN_MONTH - 1);
    return january(day.getYear()) + IN_MONTH * (day.getMonthValue() - 1) + inMonth;
  }

  /** The first week of a year. */
  static int january(int year) {
    return year * IN_YEAR;
  }

  /** The year of a week. */
  static int year(int week) {
    return Math.floorDiv(week, IN_YEAR);
  }

  /** The time at which a week begins. */
  static long start(int week) {
    return firstDay(year(week), inYear(week)).toEpochDay() * SECONDS_IN_DAY;
  }

  private static LocalDate firstDay(int year, int inYear) {
    return LocalDate.of(year, inYear / IN_MONTH + 1, 1 + DAYS * (inYear % IN_MONTH));
  }

  /** Whether a week has a February 29, in which the weather of the 28th comes again. */
  static boolean hasLeapDay(int week) {
    return inYear(week) == 2 * IN_MONTH - 1 && YearMonth.of(year(week), 2).lengthOfMonth() == 29;
  }

  /** The number of a week within its year, from 0. */
  static int inYear(int week) {
    return Math.floorMod(week, IN_YEAR);
  }

  /**
   * The hour of the weather year at which a week begins.
   *
   * @param inYear 0 for January's first to 48 for the end of the year
   */
  static int firstHour(int inYear) {
    return inYear == IN_YEAR
        ? WeatherYear.HOURS
        : HOURS_IN_DAY * (firstDay(USUAL_YEAR, inYear).getDayOfYear() - 1);
  }
}
