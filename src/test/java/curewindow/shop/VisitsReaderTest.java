package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import curewindow.shop.PastVisit.Result;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What visits.csv says of the base shop's job 1, a tint finished on November 25, 2026. */
class VisitsReaderTest {

  @TempDir Path dir;

  @BeforeEach
  void shop() throws IOException {
    TestShops.base(dir);
  }

  private ShopRead read(String rows) throws IOException {
    Files.writeString(dir.resolve(VisitsReader.FILE), rows);
    return TestShops.read(dir);
  }

  private static List<PastVisit> seen(ShopRead read) {
    return read.jobs().get(0).seen();
  }

  @Test
  void visitsComeInTheOrderOfTheirDays() throws IOException {
    ShopRead read =
        read(
            """
            job,day,what,result,note
            1,2027-01-08,,fine,
            1,2026-12-08,tint windows-up,mended,a corner pressed down
            """);
    assertEquals(List.of(), TestShops.lines(read));
    assertEquals(
        List.of(
            new PastVisit(
                LocalDate.of(2026, 12, 8),
                List.of("tint", "windows-up"),
                Result.MENDED,
                "a corner pressed down"),
            new PastVisit(LocalDate.of(2027, 1, 8), List.of(), Result.FINE, "")),
        seen(read));
  }

  @Test
  void aSpreadsheetsSemicolonsAndFewColumnsWillDo() throws IOException {
    assertEquals(1, seen(read("result;day;job\nfine;2026-12-08;1\n")).size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "8,2026-12-08,,fine | 1 | no job is called 8",
        "1,2027-06-02,,fine | 3 | day has not come yet: 2027-06-02",
        "1,8 Dec,,fine | 3 | day is not a day: 8 Dec",
        "1,2026-12-08,,good | 15 | no result is called good",
        "1,2026-12-08,wrap,fine | 14 | no service or hold of the job is called wrap",
        "1,2026-12-08,tint windws-up,fine | 14 | no service or hold of the job is called windws-up",
        "1,2026-11-25,,fine | 1 | nothing of the job 1 was finished before 2026-11-25",
        ",2026-12-08,,fine | 1 | job is missing",
        "1,,,fine | 1 | day is missing",
        "1,2026-12-08,, | 1 | result is missing"
      })
  void aRowWithAProblemIsToldOnceAndTheOthersCount(String row, int column, String what)
      throws IOException {
    ShopRead read = read("job,day,what,result\n" + row + "\n1,2026-12-09,,fine\n");
    List<String> lines = TestShops.lines(read);
    assertEquals(1, lines.size(), lines.toString());
    assertEquals(
        "visits.csv:2:" + column + "  " + what,
        lines.get(0).substring(0, lines.get(0).indexOf("  ", 16)));
    assertEquals(
        List.of(LocalDate.of(2026, 12, 9)), seen(read).stream().map(v -> v.day()).toList());
    assertEquals(1, read.jobs().size(), "no job is left out for it");
  }

  @Test
  void todayCountsByTheShopsClock() throws IOException {
    Files.writeString(dir.resolve(VisitsReader.FILE), "job,day,result\n1,2026-12-08,fine\n");
    Instant late = Instant.parse("2026-12-09T07:30:00Z");
    assertEquals(
        1, seen(TestShops.read(dir, late)).size(), "the eighth, half past eleven at night");
    Instant before = Instant.parse("2026-12-08T07:30:00Z");
    assertEquals(0, seen(TestShops.read(dir, before)).size(), "still the seventh");
  }

  @Test
  void aVisitOfAJobWithProblemsPointsThere() throws IOException {
    Files.writeString(dir.resolve("jobs/2.yaml"), "id: 2\n");
    ShopRead read = read("job,day,result\n2,2026-12-08,fine\n");
    assertEquals(
        List.of(
            "visits.csv:2:1  no usable job is called 2  mend its file first, which has problems"),
        TestShops.lines(read).stream().filter(l -> l.startsWith("visits")).toList());
  }
}
