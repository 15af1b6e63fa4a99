package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.problem.Severity;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Broken weather files: each is one problem with its line. */
class EpwProblemsTest {

  private static Problem problem(String name, byte[] bytes) {
    EpwReader.Result result = EpwReader.read(name, bytes);
    Problem problem = assertInstanceOf(EpwReader.Broken.class, result).problem();
    assertEquals(Severity.ERROR, problem.severity());
    assertEquals(name, problem.file());
    return problem;
  }

  private static void broken(EpwSample sample, int line, String words) {
    Problem problem = problem("weather/sample.epw", sample.bytes());
    assertEquals(line, problem.line(), problem.oneLine());
    assertTrue(problem.message().contains(words), problem.oneLine());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "6|warm|the dry bulb temperature is not a number: warm",
        "6|1,5|the row has 23 fields, not 22",
        "6|NaN|is not a number: NaN",
        "6|0x1p3|is not a number: 0x1p3",
        "6|-9999|is -9999, outside -70 to 60",
        "6|75|is 75, outside -70 to 60",
        "7|41|the dew point is 41, outside -70 to 40",
        "7|39|the dew point 39.0 is above the air's",
        "8|111|the relative humidity is 111, outside 0 to 110",
        "8|-1|the relative humidity is -1",
        "13|-1|the global horizontal radiation is -1, outside 0 to 1500",
        "13|1501|the global horizontal radiation is 1501, outside 0 to 1500",
        "0|20x3|the year is not a number: 20x3",
        "0||the year is empty",
        "1|13|the month is 13, outside 1 to 12",
        "2|32|the day is 32, outside 1 to 31",
        "3|0|the hour is 0, but the hours of a day go from 1 to 24",
        "3|25|the hour is 25, outside 0 to 24",
        "3|1.5|the hour is 1.5, which is not whole",
        "4|61|the minute is 61, outside 0 to 60",
      })
  void aValueThatCannotBe(int field, String value, String words) {
    EpwSample sample = EpwSample.year(2023).set(100, 7, field, value == null ? "" : value);
    broken(sample, EpwSample.line(100, 7), words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0|PLACE,x|does not begin with LOCATION",
        "0||does not begin with LOCATION",
        "0|LOCATION,Example, Harbor,EX,USA,M,0,47.5,-122.3,-8,120|LOCATION has 10 values, not 9",
        "0|LOCATION,A,EX,USA,M,0,97.5,-122.3,-8,120|the latitude is 97.5",
        "0|LOCATION,A,EX,USA,M,0,47.5,W122,-8,120|the longitude is not a number: W122",
        "0|LOCATION,A,EX,USA,M,0,47.5,122.3,-8,120|longitude 122.3 and time zone -8 do not go",
        "0|LOCATION,A,EX,USA,M,0,47.5,-122.3,-8.1,120|not in quarters of an hour",
        "0|LOCATION,A,EX,USA,M,0,47.5,-122.3,-8,9000|the elevation is 9000",
        "7|DATA PERIODS,1,4,Data,Sunday,1/1,12/31|the file has 4 records an hour",
        "7|DATA PERIODS,1,1,Data,Sunday, 1/ 1, 6/30|the hours go from 1/ 1 to 6/30",
        "7|DATA PERIODS,1,1,Data,Sunday,2/1,12/31|the hours go from 2/1 to 12/31",
        "7|DATA PERIODS,2,1,Data,Sunday,1/1,12/31|fewer than its 2 periods",
        "7|DATA PERIODS,1|DATA PERIODS is cut",
        "7|COMMENTS 3,x|none of the first 8 lines begins with DATA PERIODS",
      })
  void aHeaderThatCannotBe(int index, String line, String words) {
    EpwSample sample = EpwSample.year(2023);
    sample.lines.set(index, line == null ? "" : line);
    broken(sample, index + 1, words);
  }

  @Test
  void rowsMissingTwiceOrInDisorder() {
    EpwSample sample = EpwSample.year(2023);
    sample.lines.remove(EpwSample.line(31, 5) - 1);
    broken(
        sample,
        EpwSample.line(31, 5),
        "hours are missing before February 1, hour 6, where February 1, hour 5 was expected");
    sample = EpwSample.year(2023);
    sample.lines.add(EpwSample.line(31, 5), sample.lines.get(EpwSample.line(31, 5) - 1));
    broken(sample, EpwSample.line(31, 6), "a second row for February 1, hour 5");
    sample = EpwSample.year(2023);
    sample.lines.add(EpwSample.line(31, 9), sample.lines.get(EpwSample.line(31, 5) - 1));
    broken(sample, EpwSample.line(31, 10), "out of order: February 1, hour 5");
    sample = EpwSample.year(2023);
    sample.lines.add(EpwSample.line(31, 9), "");
    broken(sample, EpwSample.line(31, 10), "an empty line stands between the rows");
    sample = EpwSample.year(2023);
    sample.set(58, 24, 2, "30");
    broken(sample, EpwSample.line(58, 24), "February 30, hour 24");
  }

  @Test
  void aYearThatIsNotWhole() {
    EpwSample sample = EpwSample.year(2023);
    sample.lines.subList(sample.lines.size() - 48, sample.lines.size()).clear();
    broken(
        sample,
        EpwSample.HEADER + 8712,
        "ends before December 30, hour 1; its last year has 8712 rows");
    EpwSample leap = EpwSample.year(2024);
    leap.lines.subList(EpwSample.line(59, 7), EpwSample.line(60, 1) - 1).clear();
    broken(
        leap,
        EpwSample.line(59, 8),
        "hours are missing before March 1, hour 1, where February 29, hour 8 was expected");
    EpwSample second = EpwSample.year(2022, 2023);
    second.lines.remove(second.lines.size() - 1);
    broken(second, EpwSample.HEADER + 2 * 8760 - 1, "its last year has 8759 rows");
    EpwSample none = EpwSample.year();
    broken(none, EpwSample.HEADER, "its last year has 0 rows");
  }

  @Test
  void moreYearsThanAnybodyNeeds() {
    EpwSample year = EpwSample.year(2023);
    String head = String.join("\n", year.lines.subList(0, EpwSample.HEADER)) + "\n";
    String body = String.join("\n", year.lines.subList(EpwSample.HEADER, year.lines.size())) + "\n";
    byte[] bytes = (head + body.repeat(61)).getBytes(StandardCharsets.ISO_8859_1);
    Problem problem = problem("weather/long.epw", bytes);
    assertTrue(problem.message().contains("more than 60 years"), problem.oneLine());
    assertEquals(EpwSample.HEADER + 60 * 8784 + 1, problem.line());
  }

  @Test
  void aRowThatIsCut() {
    EpwSample sample = EpwSample.year(2023);
    String last = sample.lines.remove(sample.lines.size() - 1);
    sample.lines.add(last.substring(0, 30));
    broken(sample, EpwSample.HEADER + 8760, "not 22 as the first row");
    EpwSample first = EpwSample.year(2023);
    first.lines.set(EpwSample.HEADER, "2023,1,1,1,0,?9,3");
    broken(first, EpwSample.HEADER + 1, "the row has 7 fields, fewer than the 14 needed");
  }

  @Test
  void gapsThatAreTooLong() {
    for (int field : List.of(6, 13)) {
      EpwSample sample = EpwSample.year(2023);
      for (int hour = 8; hour <= 14; hour++) {
        sample.set(200, hour, field, field == 6 ? "99.9" : "9999");
      }
      broken(sample, EpwSample.line(200, 8), "is missing in 7 rows from here on");
    }
    EpwSample dew = EpwSample.year(2023).setAll(7, "99.9").setAll(8, "999");
    broken(dew, EpwSample.HEADER + 1, "the dew point is missing in all rows");
  }

  @Test
  void sunThatCannotBe() {
    broken(EpwSample.year(2023).setAll(13, "0"), 9, "is 0 in all rows");
    broken(EpwSample.year(2023).setAll(13, "400"), 9, "more sun than a cloudless sky");
    EpwSample utc = EpwSample.year(2023);
    List<String> rows = utc.lines;
    for (int i = rows.size() - 1; i >= EpwSample.HEADER + 8; i--) {
      String sun = rows.get(i - 8).split(",")[13];
      utc.setLine(i + 1, 13, sun);
    }
    broken(utc, 9, "the sun shines in hours in which it is down");
  }

  @Test
  void zipsThatCannotBe() {
    byte[] epw = EpwSample.year(2023).bytes();
    byte[] good = EpwSample.zip("a.epw", epw);
    zip("the end of the zip is missing", Arrays.copyOf(good, good.length / 2));
    zip("the end of the zip is missing", Arrays.copyOf(good, good.length - 30));
    zip("the file is not a zip", epw);
    zip("the file is not a zip", new byte[0]);
    zip("more than one .epw file", EpwSample.zip("a.epw", epw, "b.EPW", epw));
    zip("no .epw file", EpwSample.zip("a.stat", epw));
    byte[] damaged = good.clone();
    for (int i = 2000; i < 2100; i++) {
      damaged[i] ^= 0x55;
    }
    zip("damaged", damaged);
    Object[] many = new Object[2 * 1001];
    for (int i = 0; i < many.length; i += 2) {
      many[i] = "f" + i;
      many[i + 1] = new byte[0];
    }
    zip("more than 1000 entries", EpwSample.zip(many));
  }

  @Test
  void aSmallZipThatUnpacksToALotIsRefused() {
    byte[] zeros = new byte[EpwReader.MAX_BYTES / 2 + 1];
    byte[] bomb = EpwSample.zip("a.stat", zeros, "b.epw", zeros);
    assertTrue(bomb.length < 200_000);
    zip("more than the " + EpwReader.MAX_BYTES + " bytes", bomb);
    byte[] huge = new byte[EpwReader.MAX_BYTES + 1];
    assertEquals("too-large", problem("w.epw", huge).code());
  }

  /** Names of entries are never used as paths, so one that points elsewhere does no harm. */
  @Test
  void aPathInAZipIsOnlyAName() {
    byte[] epw = EpwSample.year(2023).bytes();
    EpwSample.good(EpwReader.read("w.zip", EpwSample.zip("../../etc/a.epw", epw)));
  }

  private static void zip(String words, byte[] bytes) {
    Problem problem = problem("weather/w.zip", bytes);
    assertEquals(0, problem.line());
    assertTrue(problem.message().contains(words), problem.oneLine());
  }

  /** Whatever the bytes are, there is an answer, and no stack trace. */
  @Test
  void anyBytesGetAnAnswer() {
    byte[] good = EpwSample.year(2023).bytes();
    byte[] packed = EpwSample.zip("a.epw", good);
    SplittableRandom random = new SplittableRandom(8);
    for (int i = 0; i < 150; i++) {
      byte[] bytes = (i % 3 == 0 ? packed : good).clone();
      for (int edits = 1 + random.nextInt(3); edits > 0; edits--) {
        bytes[random.nextInt(i % 2 == 0 ? 600 : bytes.length)] = (byte) random.nextInt(256);
      }
      sane(EpwReader.read("w.epw", bytes));
    }
    for (int i = 0; i < 200; i++) {
      byte[] bytes = new byte[random.nextInt(400)];
      random.nextBytes(bytes);
      sane(EpwReader.read(i % 2 == 0 ? "w.epw" : "w.zip", bytes));
    }
    sane(EpwReader.read("w.epw", "LOCATION".getBytes(StandardCharsets.UTF_16)));
  }

  private static void sane(EpwReader.Result result) {
    if (result instanceof EpwReader.Broken broken) {
      String line = broken.problem().oneLine();
      assertTrue(line.codePoints().noneMatch(Character::isISOControl), line);
      assertTrue(line.length() < 400, line);
    }
  }
}
