package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.WeatherYear;
import curewindow.climate.YearHours;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DoseTableTest {

  private static final ZoneOffset STANDARD = ZoneOffset.ofHoursMinutes(5, 45);

  private static long second(String local) {
    return Instant.parse(local + "Z").getEpochSecond();
  }

  /** Hour by hour from the calendar alone. */
  private static double direct(IntToDoubleFunction rate, long from, long to) {
    double sum = 0;
    long at = from;
    while (at < to) {
      long next = Math.min(to, Math.floorDiv(at, 3600) * 3600 + 3600);
      Instant instant = Instant.ofEpochSecond(at - STANDARD.getTotalSeconds());
      sum += rate.applyAsDouble(YearHours.of(instant, STANDARD)) * (next - at) / 3600.0;
      at = next;
    }
    return sum;
  }

  @ParameterizedTest
  @EnumSource(Driver.class)
  void equalsTheDirectSum(Driver driver) {
    Surface surface = new Surface(Cases.OUTSIDE, Exposure.OUTSIDE_UP, PaintTone.DARK);
    SurfaceHours hours = SurfaceHours.of(Cases.lively(1), surface, DayHours.NO_MATTER);
    IntToDoubleFunction rate = hour -> hours.rate(hour, driver, 50_000);
    DoseTable table = Cases.table(2027, rate);
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 200; i++) {
      long from = Cases.newYear(2027) + random.nextLong(2L * 365 * 86_400);
      long to = from + random.nextLong(366L * 86_400);
      double expected = direct(rate, from, to);
      assertEquals(expected, table.between(from, to, 0), 1e-9 * Math.max(1, expected));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "2028-02-27T23:30:00, 2028-03-01T01:15:00",
    "2028-02-29T00:00:00, 2028-03-01T00:00:00",
    "2028-02-29T10:20:30, 2028-02-29T10:20:31",
    "2028-02-28T12:00:00, 2028-02-29T12:00:00",
    "2028-03-01T00:00:00, 2028-03-02T00:00:00",
    "2027-12-31T23:59:59, 2028-01-01T00:00:01",
    "2027-12-31T12:00:00, 2029-01-01T12:00:00",
    "2027-01-01T00:00:00, 2030-01-01T00:00:00",
    "2029-02-28T12:00:00, 2029-03-01T12:00:00",
  })
  void equalsTheDirectSumOverTheCalendarsCorners(String from, String to) {
    IntToDoubleFunction rate = hour -> 1 + hour % 97;
    double expected = direct(rate, second(from), second(to));
    DoseTable table = Cases.table(2027, rate);
    assertEquals(
        expected, table.between(second(from), second(to), 0), 1e-9 * Math.max(1, expected));
  }

  @Test
  void findsTheInstantOfADose() {
    IntToDoubleFunction rate = hour -> (hour % 24) / 10.0;
    DoseTable table = Cases.table(2027, rate);
    SplittableRandom random = new SplittableRandom(11);
    long last = Cases.newYear(2030);
    for (int i = 0; i < 500; i++) {
      double sum = random.nextDouble() * table.until(last, 0);
      long at = table.reach(sum, 0, Cases.newYear(2027), last);
      assertTrue(table.until(at, 0) >= sum - 1e-6, "reached");
      assertTrue(table.until(at - 1, 0) < sum, "not before");
      long from = at - random.nextLong(at - Cases.newYear(2027));
      long latest = at + random.nextLong(last - at + 1);
      assertEquals(at, table.reach(sum, 0, from, latest), "the same between any two times");
    }
  }

  @Test
  void findsDosesOnFebruary29() {
    DoseTable table = Cases.table(2028, hour -> 1);
    for (double days : new double[] {58.5, 59, 59.5, 60, 60.5, 366}) {
      long expected = Cases.newYear(2028) + (long) (days * 86_400);
      assertEquals(expected, table.reach(24 * days, 0, Cases.newYear(2028), Cases.newYear(2029)));
    }
  }

  @Test
  void waitsThroughHoursInWhichNothingHappens() {
    DoseTable table = Cases.table(2026, hour -> hour >= 100 && hour < 3000 ? 0 : 1);
    long start = Cases.newYear(2026);
    long last = Cases.newYear(2028);
    assertEquals(
        start + 100 * 3600, table.reach(100, 0, start, last), "at the start of the plateau");
    assertEquals(start + 3001 * 3600, table.reach(101, 0, start, last));
  }

  @Test
  void stopsAtTheLastTimeLookedAt() {
    DoseTable table = Cases.table(2026, hour -> 1);
    long start = Cases.newYear(2026);
    assertEquals(start + 48 * 3600, table.reach(48, 0, start, start + 48 * 3600));
    assertEquals(DoseTable.NEVER, table.reach(48, 0, start, start + 48 * 3600 - 1));
    assertEquals(
        DoseTable.NEVER, Cases.table(2026, hour -> 0).reach(1e-9, 0, start, start + 86_400));
  }

  @Test
  void goesOnFromItsFirstWeekForFiveYears() {
    DoseTable table = Cases.table(2026, hour -> 1);
    assertEquals(WeatherYear.HOURS, table.until(Cases.newYear(2027), 0), 1e-9);
    assertEquals(2 * WeatherYear.HOURS, table.until(Cases.newYear(2028), 0), 1e-9);
    assertThrows(IllegalArgumentException.class, () -> table.until(Cases.newYear(2032), 0));
    assertThrows(IllegalArgumentException.class, () -> table.until(Cases.newYear(2026) - 1, 0));
  }

  @Test
  void joinsWeeksThatDiffer() {
    DoseTable table =
        new DoseTable(
            Weeks.january(2027) - 1,
            1,
            week ->
                WeekSums.of(Weeks.inYear(week), List.of(h -> week < Weeks.january(2027) ? 1 : 3)));
    long newYear = Cases.newYear(2027);
    assertEquals(10 + 30, table.between(newYear - 36_000, newYear + 36_000, 0), 1e-9);
    assertEquals(
        newYear + 3600, table.reach(table.until(newYear, 0) + 3, 0, newYear, newYear + 86_400));
  }
}
