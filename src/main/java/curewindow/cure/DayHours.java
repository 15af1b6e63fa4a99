package curewindow.cure;

import curewindow.climate.WeatherYear;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.BitSet;

/**
 * Which hours of a weather year belong to the day (8:00 to 18:00 by the clock on the wall) and
 * which to the night. Weather years count in standard time, so daylight saving moves the day by an
 * hour. An hour belongs to the day if its middle does.
 */
record DayHours(BitSet day) {

  private static final int FIRST = 8;
  private static final int LAST = 17;

  /** Of a plan by which the car stands at the same place day and night. */
  static final DayHours NO_MATTER = new DayHours(new BitSet());

  /**
   * The day hours of a calendar year.
   *
   * @param zone the zone that clocks follow
   * @param standard the offset in which the weather year counts
   * @param year the calendar year
   */
  static DayHours of(ZoneId zone, ZoneOffset standard, int year) {
    BitSet day = new BitSet(WeatherYear.HOURS);
    LocalDate date = LocalDate.ofYearDay(year, 1);
    for (int start = 0; start < WeatherYear.HOURS; start += 24) {
      if (date.getMonthValue() == 2 && date.getDayOfMonth() == 29) {
        date = date.plusDays(1);
      }
      for (int hour = 0; hour < 24; hour++) {
        int clock = date.atTime(hour, 30).toInstant(standard).atZone(zone).getHour();
        day.set(start + hour, clock >= FIRST && clock <= LAST);
      }
      date = date.plusDays(1);
    }
    return new DayHours(day);
  }

  /**
   * Whether an hour of the weather year belongs to the day.
   *
   * @param hour 0 to 8759
   */
  boolean isDay(int hour) {
    return day.get(hour);
  }
}
