package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import curewindow.climate.WeatherYear;
import curewindow.climate.YearHours;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class WeeksTest {

  private static long second(LocalDate day) {
    return day.toEpochDay() * 86_400;
  }

  @ParameterizedTest
  @CsvSource({
    "1970-01-31, 1970-01-22, 3",
    "2026-12-01, 2026-12-01, 44",
    "2026-12-14, 2026-12-08, 45",
    "2026-12-15, 2026-12-15, 46",
    "2028-02-29, 2028-02-22, 7",
    "1969-12-31, 1969-12-22, 47"
  })
  void knowsTheWeekOfADay(LocalDate day, LocalDate begins, int inYear) {
    int week = Weeks.of(second(day) + 86_399);
    assertEquals(day.getYear(), Weeks.year(week));
    assertEquals(inYear, Weeks.inYear(week));
    assertEquals(second(begins), Weeks.start(week));
  }

  @Test
  void followEachOther() {
    for (int week = Weeks.january(2026); week < Weeks.january(2029); week++) {
      assertEquals(week, Weeks.of(Weeks.start(week)));
      assertEquals(week, Weeks.of(Weeks.start(week + 1) - 1));
    }
  }

  @Test
  void hoursAreThoseOfTheWeatherYear() {
    for (int week = Weeks.january(2026); week < Weeks.january(2029); week++) {
      int first = YearHours.of(Instant.ofEpochSecond(Weeks.start(week)), ZoneOffset.UTC);
      assertEquals(first, Weeks.firstHour(Weeks.inYear(week)));
      assertEquals(week == Weeks.january(2028) + 7, Weeks.hasLeapDay(week));
    }
    assertEquals(WeatherYear.HOURS, Weeks.firstHour(Weeks.IN_YEAR));
  }

  /** A week alone has the hours that the year has, but for the last bits of a daily mean. */
  @ParameterizedTest
  @EnumSource(Exposure.class)
  void aWeekHasTheHoursOfItsYear(Exposure exposure) {
    SplittableRandom random = new SplittableRandom(5);
    WeatherYear weather = Cases.lively(3);
    for (Parking day : Parking.values()) {
      for (Parking night : Parking.values()) {
        Surface surface = new Surface(new ParkingPlan(day, night), exposure, PaintTone.MID);
        DayHours days = DayHours.of(ZoneOffset.UTC, ZoneOffset.UTC, 2026);
        SurfaceHours year = SurfaceHours.of(weather, surface, days);
        int week = random.nextInt(Weeks.IN_YEAR);
        SurfaceHours part = SurfaceHours.ofWeek(week, weather, surface, days);
        for (int h = Weeks.firstHour(week); h < Weeks.firstHour(week + 1); h++) {
          assertEquals(year.air(h), part.air(h), 1e-9);
          assertEquals(year.film(h), part.film(h), 1e-9);
          assertEquals(year.dewPoint(h), part.dewPoint(h), 1e-9);
          for (Driver driver : Driver.values()) {
            double rate = year.rate(h, driver, 50_000);
            assertEquals(rate, part.rate(h, driver, 50_000), 1e-9 * Math.max(1, rate));
          }
        }
      }
    }
  }
}
