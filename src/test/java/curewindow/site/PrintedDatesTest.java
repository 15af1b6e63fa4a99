package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import curewindow.told.Printed;
import curewindow.told.PrintedDate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrintedDatesTest {

  private static final String HEADER = "job,hold,state,date,printed\n";

  @TempDir Path shop;

  private List<PrintedDate> of(String job, String rows) throws IOException {
    Files.writeString(shop.resolve(PrintedDates.FILE), HEADER + rows);
    return PrintedDates.read(shop, new Problems()).orElseThrow().of(job).dates();
  }

  @Test
  void theFirstCardAndTheEarliestPromiseCount() throws IOException {
    List<PrintedDate> dates =
        of(
            "K-7",
            """
            K-7,windows-up,safe-by,2026-12-03T14:00-08:00,2026-11-25
            K-8,windows-up,safe-by,2026-11-01T14:00-08:00,2026-11-25
            K-7,windows-up,safe-by,2026-12-01T09:00-08:00,2026-11-28
            K-7,windows-up,safe-by,2026-12-05T09:00-08:00,2026-11-29
            K-7,hand-wash,ask-us,2026-11-30T09:00-08:00,2026-11-25
            K-7,hand-wash,safe-by,2026-12-02T09:00-08:00,2026-11-26
            K-7,rain,at-limit,2026-12-02T09:00-08:00,2026-11-26
            """);
    assertEquals(
        List.of(
            date("hand-wash", "2026-12-02T17:00:00Z", "2026-12-02T17:00:00Z"),
            date("rain", "2026-12-02T17:00:00Z", "2026-12-02T17:00:00Z"),
            date("windows-up", "2026-12-03T22:00:00Z", "2026-12-01T17:00:00Z")),
        dates);
    assertFalse(dates.get(2).isOnFirstCard());
    assertTrue(dates.get(1).isOnFirstCard());
  }

  @Test
  void ofVisitsTheDayThatWasAskedForLastCounts() throws IOException {
    Files.writeString(
        shop.resolve(PrintedDates.FILE),
        HEADER
            + """
            K-7,,visit,2026-12-09,2026-11-25
            K-7,rain,safe-by,2026-12-02T09:00-08:00,2026-11-26
            K-7,,visit,2026-12-14,2026-11-28
            K-8,,visit,2026-12-20,2026-11-28
            """);
    Printed printed = PrintedDates.read(shop, new Problems()).orElseThrow().of("K-7");
    assertEquals(Optional.of(LocalDate.parse("2026-12-14")), printed.visit());
    assertEquals(List.of("rain"), printed.dates().stream().map(PrintedDate::hold).toList());
  }

  private static PrintedDate date(String hold, String card, String earliest) {
    return new PrintedDate(hold, Instant.parse(card), Instant.parse(earliest))
        .by(new PrintedDate.Clocks(ZoneOffset.ofHours(-8), ZoneOffset.ofHours(-8)));
  }

  @Test
  void aFolderWithoutThemHasNoneAndIsLeftWithout() throws IOException {
    PrintedDates none = PrintedDates.read(shop, new Problems()).orElseThrow();
    assertEquals(Printed.NOTHING, none.of("K-7"));
    none.save();
    assertFalse(Files.exists(shop.resolve(PrintedDates.FILE)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          ''                                             | 0 | the file is empty
          job,hold,date                                  | 1 | the first line
          X,rain,safe-by,2026-12-03T14:00-08:00,2026-11-25 | 1 | the first line
          ^X,rain,safe-by,2026-12-03T14:00-08:00         | 2 | 4 fields
          ^X,rain,sure,2026-12-03T14:00-08:00,2026-11-25 | 2 | none of safe-by, at-limit, by-season, visit
          ^X,,visit,2026-12-03T14:00-08:00,2026-11-25    | 2 | "2026-12-03T14:00-08:00" is not a date
          ^X,rain,safe-by,2026-12-03,2026-11-25          | 2 | "2026-12-03" is not a date
          ^X,rain,safe-by,2026-12-03T14:00-08:00,today   | 2 | "today" is not a date
          ^X,rain,ask-us,2026-12-03T14:00-08:00,2026-11-25~"X,rain | 3 | 1 fields
          """)
  void aBrokenFileIsSaidAndNotUsed(String text, int line, String said) throws IOException {
    String broken = text.replace("^", HEADER).replace('~', '\n');
    Files.writeString(shop.resolve(PrintedDates.FILE), broken);
    Problems problems = new Problems();
    assertEquals(Optional.empty(), PrintedDates.read(shop, problems));
    assertTrue(problems.all().get(0).message().contains(said), problems.all()::toString);
    assertEquals(line, problems.all().get(0).line());
    assertEquals(PrintedDates.FILE, problems.all().get(0).file());
    assertEquals(broken, Files.readString(shop.resolve(PrintedDates.FILE)));
  }
}
