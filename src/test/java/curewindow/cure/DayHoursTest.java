package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import curewindow.climate.WeatherYear;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DayHoursTest {

  /** First and last standard-time hour of the day, on dates in and out of daylight saving time. */
  @ParameterizedTest
  @CsvSource({
    "America/Chicago, -06:00, 2026-01-15, 8, 17",
    "America/Chicago, -06:00, 2026-03-07, 8, 17",
    "America/Chicago, -06:00, 2026-03-08, 7, 16",
    "America/Chicago, -06:00, 2026-07-15, 7, 16",
    "America/Chicago, -06:00, 2026-10-31, 7, 16",
    "America/Chicago, -06:00, 2026-11-01, 8, 17",
    "America/Phoenix, -07:00, 2026-07-15, 8, 17",
    "Australia/Sydney, +10:00, 2026-01-15, 7, 16",
    "Australia/Sydney, +10:00, 2026-07-15, 8, 17",
    "Asia/Kathmandu, +05:45, 2026-07-15, 8, 17",
    "Australia/Lord_Howe, +10:30, 2026-01-15, 7, 16",
    "Pacific/Kiritimati, +14:00, 2026-07-15, 8, 17",
    "Europe/Dublin, Z, 2026-07-15, 7, 16",
  })
  void followsTheClockOnTheWall(String zone, String standard, LocalDate date, int from, int to) {
    DayHours days = DayHours.of(ZoneId.of(zone), ZoneOffset.of(standard), date.getYear());
    int midnight = 24 * (date.getDayOfYear() - 1);
    assertEquals(midnight + from, days.day().nextSetBit(midnight));
    assertEquals(midnight + to, days.day().nextClearBit(midnight + from) - 1);
  }

  @Test
  void leavesOutFebruary29() {
    ZoneId zone = ZoneId.of("America/Chicago");
    DayHours days = DayHours.of(zone, ZoneOffset.ofHours(-6), 2028);
    int twelfthOfMarch = 24 * (31 + 28 + 11);
    assertEquals(twelfthOfMarch + 7, days.day().nextSetBit(twelfthOfMarch), "begins on the 12th");
    assertEquals(twelfthOfMarch - 24 + 8, days.day().nextSetBit(twelfthOfMarch - 24));
  }

  @Test
  void hasTenHoursADayAllYear() {
    for (int year : new int[] {2026, 2028}) {
      DayHours days = DayHours.of(ZoneId.of("Europe/Madrid"), ZoneOffset.ofHours(1), year);
      assertEquals(10 * WeatherYear.HOURS / 24, days.day().cardinality());
    }
  }
}
