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

class MonthsTest {

  private static long second(LocalDate day) {
    return day.toEpochDay() * 86_400;
  }

  @ParameterizedTest
  @CsvSource({"1970-01-31, 1970", "2026-12-01, 2026", "2028-02-29, 2028", "1969-12-31, 1969"})
  void knowsTheMonthOfADay(LocalDate day, int year) {
    int month = Months.of(second(day) + 86_399);
    assertEquals(year, Months.year(month));
    assertEquals(day.getMonthValue() - 1, Months.inYear(month));
    assertEquals(second(day.withDayOfMonth(1)), Months.start(month));
  }

  @Test
  void hoursAreThoseOfTheWeatherYear() {
    for (int month = Months.january(2026); month < Months.january(2029); month++) {
      int first = YearHours.of(Instant.ofEpochSecond(Months.start(month)), ZoneOffset.UTC);
      assertEquals(first, Months.firstHour(Months.inYear(month)));
      assertEquals(month == Months.january(2028) + 1, Months.hasLeapDay(month));
    }
    assertEquals(WeatherYear.HOURS, Months.firstHour(12));
  }

  /** A month alone has the hours that the year has, but for the last bits of a daily mean. */
  @ParameterizedTest
  @EnumSource(Exposure.class)
  void aMonthHasTheHoursOfItsYear(Exposure exposure) {
    SplittableRandom random = new SplittableRandom(5);
    WeatherYear weather = Cases.lively(3);
    for (Parking day : Parking.values()) {
      for (Parking night : Parking.values()) {
        Surface surface = new Surface(new ParkingPlan(day, night), exposure, PaintTone.MID);
        DayHours days = DayHours.of(ZoneOffset.UTC, ZoneOffset.UTC, 2026);
        SurfaceHours year = SurfaceHours.of(weather, surface, days);
        int month = random.nextInt(12);
        SurfaceHours part = SurfaceHours.ofMonth(month, weather, surface, days);
        for (int h = Months.firstHour(month); h < Months.firstHour(month + 1); h++) {
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
