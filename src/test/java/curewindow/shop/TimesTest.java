package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Times as people type them. */
final class TimesTest {

  private static final ZoneId ZONE = ZoneId.of("America/Los_Angeles");

  @TempDir Path dir;

  /** What is written as in daily life is answered with all that it can mean. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "02/12/2026 17:00 | 2026-12-02T17:00 or 2026-02-12T17:00: write the one you mean",
        "12/2/26 5 pm | 2026-12-02T17:00 or 2026-02-12T17:00: write the one you mean",
        "2.12.2026 | 2026-12-02 or 2026-02-12: write the one you mean, with the hour: 2026-12-02T14:30",
        "2. 12. 2026, 9.05 | 2026-12-02T09:05 or 2026-02-12T09:05: write the one you mean",
        "12/25/2026 9:30 a.m. | write it as 2026-12-25T09:30",
        "25/12/2026 12 am | write it as 2026-12-25T00:00",
        "25-12-26 12:15PM | write it as 2026-12-25T12:15",
        "5/5/2026 17:00:30 | write it as 2026-05-05T17:00",
        "2026/12/02 17:00 | write it as 2026-12-02T17:00",
        "2026-12-2 9:00 | write it as 2026-12-02T09:00",
        "25.12.2026 | write it as 2026-12-25T14:30, with its hour",
        "29/02/2027 17:00 | check the month, the day and the year",
        "31/31/2026 17:00 | check the month, the day and the year",
        "2026-13-01T09:00 | check the month, the day and the year",
        "2026-12-02T24:00 | midnight at the end of that day is 2026-12-03T00:00",
        "2026-12-31 24:00 | midnight at the end of that day is 2027-01-01T00:00",
        "2026-12-02T24:30 | check the hour, the minute and the offset",
        "2026-12-02T09:60 | check the hour, the minute and the offset",
        "02/12/1926 17:00 | write it as 2026-11-25T14:30",
        "02/12/2026 25:00 | write it as 2026-11-25T14:30",
        "02/12/2026 13 pm | write it as 2026-11-25T14:30",
        "tomorrow | write it as 2026-11-25T14:30",
      })
  void otherFormsAreAnsweredInTheRightOne(String typed, String fix) {
    TypedTime.Wrong wrong = (TypedTime.Wrong) Times.read(typed, Optional.of(ZONE));
    assertEquals("not-a-time", wrong.code());
    assertEquals(fix, wrong.fix());
  }

  /** One clear error for what people type behind an option, and all that it can mean. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "29/02/2027 | names a day that does not exist: 29/02/2027 | check the month, the day and",
        "2027-02-29 | names a day that does not exist: 2027-02-29 | check the month, the day and",
        "2026-13-01 | names a day that does not exist: 2026-13-01 | check the month, the day and",
        "31.4.26 | names a day that does not exist: 31.4.26 | check the month, the day and",
        "2026-12-02T24:00 | names an hour that no clock shows: 2026-12-02T24:00 | 2026-12-03T00:00",
        "2027-03-14T02:30 | does not exist: the clocks of America/Los_Angeles skip from | write the",
        "02/12/2026 | is not a time: 02/12/2026 | 2026-12-02 or 2026-02-12: write the one you mean",
        "24:00 | is not a time: 24:00 | write a day such as 2026-12-02, a time by the shop's clock",
        "02/12 | is not a time: 02/12 | write a day such as 2026-12-02, a time by the shop's clock"
      })
  void aDayOrTimeBehindAnOptionIsAnsweredInOneSentence(String typed, String what, String fix) {
    TypedTime.Wrong wrong = (TypedTime.Wrong) Times.readOrDay(typed, ZONE);
    assertTrue(wrong.what().startsWith(what), wrong.what());
    assertTrue(wrong.fix().contains(fix), wrong.fix());
  }

  @Test
  void filesOfBothKindsGetTheAnswer() throws IOException {
    TestShops.base(dir);
    Path job = dir.resolve("jobs/1.yaml");
    Files.writeString(job, Files.readString(job).replace("2026-11-25T17:00", "02/12/2026 17:00"));
    Path csv = dir.resolve("jobs.csv");
    Files.writeString(
        csv,
        "job,body,paint,parking-day,parking-night,pickup,service,film,spots,finished\n"
            + "C-1,sedan,dark,outside,outside,12/2/26 5 pm,tint,harbor-35,back-glass,2.12.2026\n");
    String lines = String.join("\n", TestShops.lines(TestShops.read(dir)));
    for (String place : new String[] {"jobs.csv:2:", "jobs/1.yaml:7:9  pickup is not a time: 02"}) {
      assertTrue(lines.contains(place), lines);
    }
    assertEquals(2, lines.split("2026-12-02T17:00 or 2026-02-12T17:00: write", -1).length - 1);
  }

  /** Days of the calendar have no hour. */
  @Test
  void aClosedDayIsAnsweredWithoutAnHour() throws IOException {
    TestShops.base(dir);
    Path shop = dir.resolve("shop.yaml");
    Files.writeString(shop, Files.readString(shop) + "closed: [12/25/2026, 1/2/2027]\n");
    String lines = String.join("\n", TestShops.lines(TestShops.read(dir)));
    assertTrue(lines.contains("is not a day: 12/25/2026  write it as 2026-12-25\n"), lines);
    assertTrue(lines.contains("2027-02-01 or 2027-01-02: write the one you mean"), lines);
  }

  @ParameterizedTest
  @CsvSource({
    "-12:00, ''",
    "+14:00, ''",
    "-12:01, -12:01",
    "-15:00, -15:00",
    "+14:30, +14:30",
    "+18:00, +18:00"
  })
  void offsetsThatNoClockHasAreRefused(String offset, String told) {
    TypedTime read = Times.read("2026-11-25T14:30" + offset, Optional.empty());
    String what =
        read instanceof TypedTime.Wrong wrong
            ? wrong.what().replace("has an offset that no clock has: ", "")
            : "";
    assertEquals(told, what);
  }

  /** Pacific Standard Time is UTC-8, by the IANA time zone database. */
  @ParameterizedTest
  @CsvSource({
    "2026-12-02, 2026-12-02T08:00:00Z",
    "2026-12-02T09:00, 2026-12-02T17:00:00Z",
    "2026-12-02 09:00, 2026-12-02T17:00:00Z",
    "2026-12-02T09:00+01:00, 2026-12-02T08:00:00Z",
    "2026-12-02T09:00Z, 2026-12-02T09:00:00Z",
  })
  void anOptionMayLeaveOutTheHourAndTheOffset(String typed, String at) {
    assertEquals(new TypedTime.Moment(Instant.parse(at)), Times.readOrDay(typed, ZONE));
  }

  @ParameterizedTest
  @CsvSource({
    "2026-02-30, day that does not exist",
    "1999-12-31, in the year 1999",
    "2026-03-08T02:30, does not exist: the clocks",
    "2026-11-01T01:30, happens twice",
    "2026-12-02T25:00, time or offset that does not exist",
  })
  void whatNoClockShowsIsSaid(String typed, String what) {
    TypedTime.Wrong wrong = (TypedTime.Wrong) Times.readOrDay(typed, ZONE);
    assertTrue(wrong.what().contains(what), wrong.what());
  }
}
