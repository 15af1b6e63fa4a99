package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Measured hours belong to the calendar year of the place's own standard time. */
class ObservedHoursTest {

  @ParameterizedTest
  @CsvSource({
    "2026-12-31T20:00:00-08:00, -08:00, 2026",
    "2027-01-01T05:00:00+13:00, +13:00, 2027",
    "2026-12-31T23:00:00+00:00, Z, 2026",
    "2027-01-01T01:00:00+05:45, +05:45, 2027"
  })
  void theYearIsThatOfTheClocksThere(String start, String offset, int year) {
    ObservedHour hour =
        new ObservedHour(
            java.time.OffsetDateTime.parse(start).toInstant(), 5, 1, OptionalDouble.empty());
    assertEquals(
        Set.of(year), new ObservedHours(List.of(hour)).years(ZoneOffset.of(offset)), start);
  }

  @Test
  void noHoursHaveNoYear() {
    assertEquals(Set.of(), new ObservedHours(List.of()).years(ZoneOffset.UTC));
    assertEquals(0, new ObservedHours(List.of()).count());
  }

  @Test
  void anHourStandsWhereItBelongsInTheYear() {
    ObservedHour hour =
        new ObservedHour(Instant.parse("2027-01-01T04:00:00Z"), 21, 9, OptionalDouble.of(0));
    WeatherYear usual = WeatherYear.of(filled(3), filled(1), filled(0));
    WeatherYear changed = new ObservedHours(List.of(hour)).in(usual, 2026, ZoneOffset.ofHours(-8));
    // 8 in the evening of 31 December, the fourth hour from the end of the year
    assertEquals(21, changed.temperature(WeatherYear.HOURS - 4));
    assertEquals(9, changed.dewPoint(WeatherYear.HOURS - 4));
    assertEquals(3, changed.temperature(WeatherYear.HOURS - 3));
    assertEquals(3, changed.temperature(0));
  }

  private static double[] filled(double value) {
    double[] hours = new double[WeatherYear.HOURS];
    java.util.Arrays.fill(hours, value);
    return hours;
  }
}
