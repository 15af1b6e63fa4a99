package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.ObservedHours;
import curewindow.climate.Psychrometrics;
import curewindow.climate.WeatherYear;
import curewindow.problem.Problem;
import curewindow.problem.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ObservedReaderTest {

  @TempDir Path dir;

  @BeforeEach
  void shop() throws IOException {
    TestShops.base(dir);
    Files.createDirectories(dir.resolve("weather"));
  }

  private ShopRead read(String text) throws IOException {
    Files.writeString(dir.resolve(ObservedReader.FILE), text);
    return TestShops.read(dir);
  }

  private static WeatherYear freezing() {
    double[] air = new double[WeatherYear.HOURS];
    Arrays.fill(air, -30);
    return WeatherYear.of(air, air, new double[WeatherYear.HOURS]);
  }

  @Test
  void hoursAreReadByPlaceInItsOwnTime() throws IOException {
    ShopRead read =
        read(
            """
            place,time,air,dew-point,humidity,irradiance
            seattle,2026-11-25T14:00,8.5,6,,120
            ,2026-11-25T23:00Z,8,,100,
            phoenix,2026-11-25 14:00,24,2,,
            """);
    assertEquals(List.of(), TestShops.lines(read));
    assertEquals(Set.of("seattle", "phoenix"), read.observed().keySet());
    ObservedHours seattle = read.observed().get("seattle");
    assertEquals(2, seattle.count());
    assertTrue(
        seattle.within(
            Instant.parse("2026-11-25T22:00:00Z"), Instant.parse("2026-11-25T22:00:01Z")));
    WeatherYear year = seattle.in(freezing(), 2026, ZoneOffset.ofHours(-8));
    int hour = 24 * (304 + 24) + 14;
    assertEquals(8.5, year.temperature(hour));
    assertEquals(6, year.dewPoint(hour));
    assertEquals(120, year.irradiance(hour));
    assertEquals(8, year.temperature(hour + 1));
    assertEquals(8, year.dewPoint(hour + 1), 1e-9, "100 percent: the dew point is the air's");
    assertEquals(-30, year.temperature(hour + 2));
  }

  /** At 25 C and 50 percent the dew point is 13.9 C (handbook tables of moist air, from memory). */
  @Test
  void humidityBecomesTheDewPoint() throws IOException {
    ShopRead read = read("time,air,humidity\n2026-07-01T14:00,25,50\n");
    WeatherYear year = read.observed().get("seattle").in(freezing(), 2026, ZoneOffset.ofHours(-8));
    int hour = 24 * 181 + 13;
    assertEquals(25, year.temperature(hour), "14:00 of summer time is 13:00 of standard time");
    assertEquals(13.9, year.dewPoint(hour), 0.05);
  }

  /**
   * Humidity is stated over water below 0 C too: at 240 K, 27.272 of 37.667 Pa (Murphy and Koop
   * 2005, table C1) are saturated over ice and 72.4 percent of what is over water, so that the
   * air's dew point lies below the frost point of 240 K. By a dew point over ice it would be 240 K
   * itself at 100 percent only.
   */
  @Test
  void humidityIsOverWaterBelowZeroToo() throws IOException {
    ShopRead read =
        read(
            "time,air,humidity\n2026-01-05T14:00,-33.15,72.4\n2026-01-05T15:00,-60,1\n"
                + "2026-01-05T16:00,-33.15,100\n");
    assertEquals(List.of(), TestShops.lines(read));
    WeatherYear year = read.observed().get("seattle").in(freezing(), 2026, ZoneOffset.ofHours(-8));
    int hour = 24 * 4 + 14;
    assertEquals(27.272, Psychrometrics.vapourPressure(year.dewPoint(hour)), 0.012 * 27.272);
    assertEquals(37.667, Psychrometrics.vapourPressure(year.dewPoint(hour + 2)), 0.012 * 37.667);
    assertTrue(year.dewPoint(hour) < -36, "dew point " + year.dewPoint(hour));
  }

  @Test
  void theHourThatHappensTwiceNeedsItsOffsetAndTheSkippedOneDoesNotExist() throws IOException {
    ShopRead read =
        read(
            """
            place,time,air,dew-point
            seattle,2026-11-01T01:00-07:00,9,5
            seattle,2026-11-01T01:00-08:00,8,5
            seattle,2026-11-01T01:00,8,5
            seattle,2026-03-08T02:00,8,5
            """);
    List<String> lines = TestShops.lines(read);
    assertEquals(2, lines.size(), lines::toString);
    assertTrue(lines.get(0).startsWith("weather/observed.csv:4:9  time happens twice"));
    assertTrue(lines.get(1).startsWith("weather/observed.csv:5:9  time does not exist"));
    assertEquals(2, read.observed().get("seattle").count());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          seatle,2026-11-25T14:00,8,6,,         | 1  | no place is called seatle
          seattle,2026-11-25T14:20,8,6,,        | 9  | time is not the start of an hour
          seattle,2026-11-25,8,6,,              | 9  | time has a date without an hour
          seattle,yesterday,8,6,,               | 9  | time is not a time
          seattle,,8,6,,                        | 1  | time is missing
          seattle,2026-11-25T14:00,,6,,         | 1  | air is missing
          seattle,2026-11-25T14:00,warm,6,,     | 26 | air should be a number
          seattle,2026-11-25T14:00,88,6,,       | 26 | air is 88, outside -60 to 60
          seattle,2026-11-25T14:00,8,,,         | 1  | neither dew-point nor humidity
          seattle,2026-11-25T14:00,8,6,80,      | 1  | both given
          seattle,2026-11-25T14:00,8,12,,       | 28 | dew-point is above air
          seattle,2026-11-25T14:00,8,,0,        | 29 | humidity is 0, outside 1 to 100
          seattle,2026-11-25T14:00,60,,100,     | 30 | dew point of 60.0 C, above 45
          seattle,2026-11-25T14:00,50,,80,      | 30 | dew point of 45.6 C, above 45
          seattle,2026-11-25T14:00,8,6,,-5      | 31 | irradiance is -5
          seattle,2026-11-25T14:00,8,6          | 1  | the row has 4 columns
          seattle,2026-11-25T15:00,8,6,,        | 1  | the hour stands in line 2 already
          asia-none,2026-11-25T14:00,x,y,,z     | 1  | no place is called
          """)
  void aBadRowIsToldAndLeftOut(String row, int column, String said) throws IOException {
    ShopRead read =
        read(
            "place,time,air,dew-point,humidity,irradiance\nseattle,2026-11-25T15:00,8,6,,\n"
                + row
                + "\nseattle,2026-11-25T16:00,8,6,,\n");
    List<String> lines = TestShops.lines(read);
    assertTrue(
        lines.stream()
            .anyMatch(
                l -> l.startsWith("weather/observed.csv:3:" + column + "  ") && l.contains(said)),
        lines::toString);
    assertEquals(2, read.observed().get("seattle").count());
    assertEquals(1, read.jobs().size(), "jobs are not touched");
    assertTrue(read.brokenJobs().isEmpty());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          place,air,dew-point~seattle,8,6 | the column time is missing
          place,time,air,dew_point~s,2026-11-25T14:00,8,6 | did you mean dew-point
          '' | the file is empty
          """)
  void aFileWithoutItsColumnsIsNotUsed(String text, String said) throws IOException {
    ShopRead read = read(text.replace('~', '\n'));
    assertTrue(String.join("\n", TestShops.lines(read)).contains(said));
    assertTrue(read.observed().isEmpty());
    assertEquals(1, read.jobs().size());
  }

  /** In Seattle 14:00 is 22:00 of UTC in November, so the hour is over at 23:00. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          2026-11-25T22:59:59Z | 0 | 2 | this hour is not over yet, and 3 rows of such
          2026-11-25T23:00:00Z | 1 | 3 | this hour is not over yet, and 2 rows of such
          2026-11-25T23:59:59Z | 1 | 3 | this hour is not over yet, and 2 rows of such
          2026-11-26T00:00:00Z | 2 | 4 | this hour is not over yet, so its row
          2026-11-26T01:00:00Z | 3 | 0 |
          """)
  void anHourCountsOnceItIsOver(String now, int hours, int line, String said) throws IOException {
    Files.writeString(
        dir.resolve(ObservedReader.FILE),
        """
        place,time,air,dew-point
        seattle,2026-11-25T14:00,8,6
        seattle,2026-11-25T15:00,8,6
        seattle,2026-11-25T16:00,8,6
        """);
    ShopRead read = TestShops.read(dir, Instant.parse(now));
    assertEquals(hours, hours == 0 ? 0 : read.observed().get("seattle").count());
    assertEquals(hours > 0, read.observed().containsKey("seattle"));
    if (said == null) {
      assertEquals(List.of(), read.problems());
      return;
    }
    assertEquals(1, read.problems().size(), "told once");
    Problem told = read.problems().get(0);
    assertEquals(Severity.NOTICE, told.severity());
    assertEquals(line, told.line());
    assertTrue(told.oneLine().startsWith("weather/observed.csv:"), told::oneLine);
    assertTrue(told.message().startsWith(said), told::message);
    assertTrue(told.fix().contains("not a forecast"), told::fix);
  }

  @Test
  void aFolderInThePlaceOfTheFileIsTold() throws IOException {
    Files.createDirectories(dir.resolve(ObservedReader.FILE));
    ShopRead read = TestShops.read(dir);
    assertEquals(1, read.problems().size());
    assertEquals(Severity.ERROR, read.problems().get(0).severity());
    assertTrue(TestShops.lines(read).get(0).contains("this is a folder, not a file"));
    assertEquals(1, read.jobs().size());
  }

  @Test
  void withoutTheFileNothingWasMeasured() {
    assertTrue(TestShops.read(dir).observed().isEmpty());
  }
}
