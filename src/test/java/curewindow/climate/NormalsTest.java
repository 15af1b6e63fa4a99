package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The values that weather is made of refuse what cannot be, by name, and map times to hours. */
class NormalsTest {

  @ParameterizedTest
  @CsvSource({
    "NaN, 20, 5, 4, dailyMin", "-81, 20, 5, 4, dailyMin", "61, 62, 5, 4, dailyMin",
    "10, NaN, 5, 4, dailyMax", "10, 66, 5, 4, dailyMax", "10, 9, 5, 4, dailyMax",
    "10, 20, NaN, 4, dewPoint", "10, 20, -91, 4, dewPoint", "30, 45, 41, 4, dewPoint",
    "10, 20, 21, 4, dewPoint", "10, 20, 5, NaN, sun", "10, 20, 5, -0.1, sun",
    "10, 20, 5, 12.1, sun"
  })
  void monthRefuses(double low, double high, double dew, double sun, String name) {
    refused(name, () -> new MonthNormals(low, high, dew, sun));
  }

  @ParameterizedTest
  @CsvSource({
    "NaN, 0, 0, latitude", "-90.1, 0, 0, latitude", "90.1, 0, 0, latitude",
    "0, NaN, 0, longitude", "0, -180.1, 0, longitude", "0, 180.1, 0, longitude",
    "0, 0, NaN, height", "0, 0, -451, height", "0, 0, 6001, height"
  })
  void placeRefuses(double latitude, double longitude, double height, String name) {
    refused(name, () -> place(latitude, longitude, height, 12));
  }

  @Test
  void placeHasTwelveMonths() {
    refused("a place has 12 months, not 11", () -> place(0, 0, 0, 11));
    assertEquals(12, place(0, 0, 0, 12).normals().size());
  }

  @Test
  void yearRefusesWrongHoursByNameAndHour() {
    double[] good = new double[WeatherYear.HOURS];
    double[] nan = good.clone();
    nan[77] = Double.NaN;
    double[] bright = good.clone();
    bright[5] = 1501;
    double[] low = good.clone();
    low[8759] = -101;
    refused("temperature NaN in hour 77", () -> WeatherYear.of(nan, good, good));
    refused("dewPoint -101.0 in hour 8759", () -> WeatherYear.of(good, low, good));
    refused("irradiance 1501.0 in hour 5", () -> WeatherYear.of(good, good, bright));
    refused("temperature has 8784 hours", () -> WeatherYear.of(new double[8784], good, good));
  }

  @Test
  void yearCopiesItsHoursAndCapsTheDewPoint() {
    double[] air = new double[WeatherYear.HOURS];
    double[] dew = new double[WeatherYear.HOURS];
    Arrays.fill(air, 10);
    Arrays.fill(dew, 12);
    WeatherYear year = WeatherYear.of(air, dew, dew);
    air[0] = 99;
    assertEquals(10, year.temperature(0));
    assertEquals(10, year.dewPoint(0));
    assertEquals(12, year.irradiance(0));
    assertThrows(ArrayIndexOutOfBoundsException.class, () -> year.temperature(8760));
  }

  @Test
  void weathersNeedAYear() {
    refused("at least one year", () -> new Weathers(ZoneOffset.UTC, List.of()));
  }

  @ParameterizedTest
  @CsvSource({
    "2027-01-01T00:00, 0", "2027-12-31T23:59:59, 8759", "2027-03-01T00:00, 1416",
    "2028-02-28T13:00, 1405", "2028-02-29T13:00, 1405", "2028-03-01T00:00, 1416",
    "2028-12-31T23:00, 8759"
  })
  void leapDayHasTheWeatherOfTheDayBefore(LocalDateTime local, int hour) {
    ZoneOffset standard = ZoneOffset.ofHoursMinutes(5, 30);
    assertEquals(hour, YearHours.of(local.toInstant(standard), standard));
  }

  /** Standard time all year: noon by the daylight clock is eleven o'clock. */
  @Test
  void daylightTimeIsNotInTheHours() {
    Instant noon =
        LocalDateTime.of(2027, 7, 1, 12, 0).atZone(ZoneId.of("Europe/Berlin")).toInstant();
    assertEquals(181 * 24 + 11, YearHours.of(noon, ZoneOffset.ofHours(1)));
  }

  private static Place place(double latitude, double longitude, double height, int months) {
    MonthNormals month = new MonthNormals(10, 20, 8, 3);
    return new Place(
        "x",
        "X",
        latitude,
        longitude,
        height,
        ZoneOffset.UTC,
        Collections.nCopies(months, month),
        "invented");
  }

  private static void refused(String said, Runnable call) {
    String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
    assertTrue(message.startsWith(said), message);
  }
}
