package curewindow.shop;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.Stay;
import curewindow.shop.PastVisit.Result;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
        "1,2027-06-02,,fine | 3 | day has not come yet: 2027-06-02",
        "1,8 Dec,,fine | 3 | day is not a day: 8 Dec",
        "1,2026-12-08,,good | 15 | no result is called good",
        "1,2026-12-08,wrap,fine | 14 | no service or hold of the job is called wrap",
        "1,2026-12-08,tint windws-up,fine | 14 | no service or hold of the job is called windws-up",
        "1,2026-11-25,,fine | 1 | nothing of the job 1 was finished before 2026-11-25",
        "1,,,fine | 1 | day is missing",
        "1,2026-12-08,, | 1 | result is missing"
      })
  void aRowWithAProblemIsToldOnceAndLeavesOutItsJobAlone(String row, int column, String what)
      throws IOException {
    secondJob();
    ShopRead read = read("job,day,what,result\n" + row + "\n2,2026-12-09,,fine\n");
    assertEquals(List.of("visits.csv:2:" + column + "  " + what), told(read));
    assertEquals(List.of("2"), ids(read));
    assertEquals(
        List.of(LocalDate.of(2026, 12, 9)), seen(read).stream().map(v -> v.day()).toList());
    assertEquals(List.of("1"), read.brokenJobs().stream().map(BrokenJob::name).toList());
    assertTrue(read.brokenJobs().get(0).has(read.problems().get(0)), "it is a problem of the job");
  }

  /** Job 2 is a coating, picked up a week after job 1. */
  private void secondJob() throws IOException {
    Files.writeString(
        dir.resolve("jobs/2.yaml"),
        Files.readString(dir.resolve("jobs/1.yaml"))
            .replace("id: 1", "id: 2")
            .replace("11-25", "12-02")
            .replace("service: tint", "service: paint-coating")
            .replace("film: harbor-35", "film: tidewater-paint")
            .replace("front-door-glass", "hood"));
  }

  private static List<String> ids(ShopRead read) {
    return read.jobs().stream().map(Job::id).toList();
  }

  /** The errors without what to do about them. */
  private static List<String> told(ShopRead read) {
    return TestShops.lines(read).stream().map(l -> l.substring(0, l.indexOf("  ", 16))).toList();
  }

  private static String doubt(int line, int column, String jobs) {
    String place = line == 0 ? "" : ":" + line + ":" + column;
    String count = jobs.contains(",") ? "2 jobs" : "1 job";
    return "visits.csv"
        + place
        + "  the error here leaves out "
        + count
        + ", whose dates would not be sure: "
        + jobs;
  }

  /** Without what was fitted anew a page would tell the old dates as the ones that count. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "8,2026-12-08,,fine, | 1 | no job is called 8 | ''",
        "8,2026-12-08,,mended, | 1 | no job is called 8 | ''",
        ",2026-12-08,,fine, | 1 | job is missing | ''",
        "8,2026-12-08,,refited, | 1 | no job is called 8 | ''",
        "8,2026-12-08,tint,refitted,2026-12-08T11:00 | 1 | no job is called 8 | ''",
        ",2026-12-08,,refited, | 1 | job is missing | '1, 2'",
        ",2026-12-08,hood,refitted,2026-12-08T11:00 | 1 | job is missing | 2",
        ",2026-12-08,tnt,refitted,2026-12-08T11:00 | 1 | job is missing | '1, 2'",
        ",2026-12-01,,refitted,2026-12-01T11:00 | 1 | job is missing | 1",
        ",2026-12-08,tint,refitted,2026-12-08T11:00 | 1 | job is missing | 1"
      })
  void aRowOfNobodyKnowsWhichJobLeavesOutThoseThatItMayBeOf(
      String row, int column, String what, String jobs) throws IOException {
    secondJob();
    ShopRead read = read("job,day,what,result,finished\n" + row + "\n2,2026-12-09,,fine,\n");
    assertTrue(told(read).contains("visits.csv:2:" + column + "  " + what), told(read).toString());
    assertEquals(
        jobs.isEmpty() ? List.of() : List.of(doubt(2, 1, jobs)),
        told(read).stream().filter(l -> l.contains("leaves out")).toList());
    assertEquals(List.of("1", "2").stream().filter(id -> !jobs.contains(id)).toList(), ids(read));
  }

  /** One slip, or a row of a job that was taken away, must not stop half the shop. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "K-1042 | K-1024 | did you mean K-1024?",
        "K-1025 | K-1024 | did you mean K-1024?",
        "k1024 | K-1024 | did you mean K-1024?",
        "B-7 | '' | delete the row if its job was taken away"
      })
  void anUnknownIdLeavesOutOnlyAJobThatItMayBeASlipOf(String typed, String job, String fix)
      throws IOException {
    Path one = dir.resolve("jobs/1.yaml");
    for (String id : List.of("K-1024", "M-2280")) {
      Files.writeString(
          dir.resolve("jobs/" + id + ".yaml"), Files.readString(one).replace("id: 1", "id: " + id));
    }
    ShopRead read =
        read(
            "job,day,what,result,finished\n"
                + typed
                + ",2026-12-08,tint,refitted,2026-12-08T11:00\n");
    String lines = TestShops.lines(read).toString();
    assertTrue(lines.contains("visits.csv:2:1  no job is called " + typed), lines);
    assertTrue(lines.contains(fix), lines);
    assertEquals(
        List.of("1", "K-1024", "M-2280").stream().filter(id -> !id.equals(job)).toList(),
        ids(read));
  }

  @Test
  void aRowOfAJobThatIsLeftOutAnywayConcernsNoOther() throws IOException {
    Files.writeString(dir.resolve("jobs/9.yaml"), "id: [\n");
    ShopRead read =
        read("job,day,what,result,finished\n9,2026-12-08,tint,refitted,2026-12-08T11:00\n");
    assertEquals(List.of("1"), ids(read));
  }

  /** Which is as good as a visit of any car that has left the shop; no other can have been seen. */
  @Test
  void aFileThatCannotBeReadLeavesOutAllCarsThatHaveLeft() throws IOException {
    secondJob();
    Path file = dir.resolve(VisitsReader.FILE);
    String header = "job,day,what,result,note\n";
    String good = "1,2026-11-26,,fine,\n";
    Map<String, String> wrong = new LinkedHashMap<>();
    wrong.put("", doubt(0, 0, "1"));
    wrong.put("job,day\n1,2026-11-26\n", doubt(1, 1, "1"));
    wrong.put(header + good + "1,2026-11-26,,fine,\"well\n", doubt(3, 1, "1"));
    wrong.put(header + "8,2026-11-26,,fine\n", doubt(2, 1, "1"));
    for (Map.Entry<String, String> one : wrong.entrySet()) {
      Files.writeString(file, one.getKey());
      leavesOutJobOne(one.getValue());
    }
    Files.write(file, (header + "\u00e98,2026-11-26,,fine,\n").getBytes(ISO_8859_1));
    leavesOutJobOne(doubt(2, 1, "1"));
    Files.delete(file);
    Files.createSymbolicLink(file, dir.resolve("not-there-today.csv"));
    leavesOutJobOne(doubt(0, 0, "1"));
  }

  private void leavesOutJobOne(String doubt) {
    ShopRead read = TestShops.read(dir, Instant.parse("2026-11-27T12:00:00Z"));
    assertTrue(told(read).contains(doubt), told(read).toString());
    assertEquals(List.of("2"), ids(read), "it has not left yet");
    assertEquals(List.of("1"), read.brokenJobs().stream().map(BrokenJob::name).toList());
  }

  /** The page of a job whose rows are lost must stay, and rows of its visits are no slips. */
  @Test
  void jobsThatAreLostWithTheirFileMakeNoVisitWrong() throws IOException {
    String columns =
        "job,body,paint,parking-day,parking-night,pickup,service,film,spots,finished\n";
    Files.writeString(dir.resolve("jobs.csv"), columns + "\"3,sedan\n");
    ShopRead read =
        read("job,day,what,result,finished\n3,2026-12-08,x,refitted,2026-12-08T11:00\n");
    assertEquals(List.of("1"), ids(read));
    assertEquals(List.of("jobs.csv"), read.brokenJobs().stream().map(BrokenJob::name).toList());
    assertFalse(told(read).toString().contains("visits.csv"), told(read).toString());
  }

  /** A visit at half past two is meant, and all dates of the new work hang on it. */
  @Test
  void workFittedAnewAtNightIsNotedAndCounts() throws IOException {
    String row = "1,2026-12-08,tint,refitted,2026-12-08T02:30,2026-12-08T16:00\n";
    ShopRead read = read("job,day,what,result,finished,pickup\n" + row);
    assertEquals(
        List.of(
            "visits.csv:2:28  the work was finished at night, at 02:30  check the hour; 2:30 pm is"
                + " 14:30"),
        TestShops.lines(read));
    assertFalse(read.problems().get(0).isError());
    assertEquals(
        Instant.parse("2026-12-08T10:30:00Z"), read.jobs().get(0).items().get(0).finished());
    refitted(row.replace("02:30", "14:30"));
  }

  /** By the shop's own bay all would be over long before that pickup, and no hold be told. */
  @Test
  void aPickupYearsAfterWorkFittedAnewIsNoted() throws IOException {
    String row = "1,2026-12-08,tint,refitted,2026-12-08T14:30,2027-12-08T16:00\n";
    ShopRead read = read("job,day,what,result,finished,pickup\n" + row);
    assertEquals(
        List.of(
            "visits.csv:2:45  the pickup is 365 days after the work was finished  check the day, the"
                + " month and the year of pickup and of finished"),
        TestShops.lines(read));
    assertFalse(read.problems().get(0).isError());
  }

  private Job refitted(String rows) throws IOException {
    ShopRead read = read("job,day,what,result,finished,pickup\n" + rows);
    assertEquals(List.of(), TestShops.lines(read));
    return read.jobs().get(0);
  }

  private void tintTwoSpotsAndCoatTheHood() throws IOException {
    Path file = dir.resolve("jobs/1.yaml");
    Files.writeString(
        file,
        Files.readString(file).replace("[front-door-glass]", "[front-door-glass, back-glass]")
            + "    batch: H-1\n"
            + "  - {service: paint-coating, film: tidewater-paint, spots: [hood],"
            + " finished: 2026-11-25T15:00}\n");
  }

  private static Stay stay(String in, String pickup) {
    return new Stay(Instant.parse(in), Instant.parse(pickup));
  }

  @Test
  void whatIsRefittedBeginsAgainAndTheRestStays() throws IOException {
    tintTwoSpotsAndCoatTheHood();
    Job job = refitted("1,2026-12-08,tint back-glass,refitted,2026-12-08T11:00,2026-12-08T16:00\n");
    assertEquals(
        List.of(
            "[front-door-glass] 2026-11-25T22:30:00Z Optional[H-1]",
            "[back-glass] 2026-12-08T19:00:00Z Optional.empty",
            "[hood] 2026-11-25T23:00:00Z Optional.empty"),
        job.items().stream().map(i -> i.spots() + " " + i.finished() + " " + i.batch()).toList());
    assertEquals(
        List.of(
            stay("2026-11-25T22:30:00Z", "2026-11-26T01:00:00Z"),
            stay("2026-12-08T19:00:00Z", "2026-12-09T00:00:00Z")),
        job.stays());
    assertEquals(List.of("tint", "back-glass"), job.seen().get(0).what());
  }

  @Test
  void aWholeServiceOrAllOnASpotMayBeRefitted() throws IOException {
    tintTwoSpotsAndCoatTheHood();
    Instant anew = Instant.parse("2026-12-08T19:00:00Z");
    Job tint = refitted("1,2026-12-08,tint,refitted,2026-12-08T11:00,\n");
    assertEquals(
        List.of(List.of("front-door-glass", "back-glass")),
        tint.items().stream().filter(i -> i.finished().equals(anew)).map(i -> i.spots()).toList());
    Job hood = refitted("1,2026-12-08,hood,refitted,2026-12-08T11:00,\n");
    assertEquals(
        List.of(List.of("hood")),
        hood.items().stream().filter(i -> i.finished().equals(anew)).map(i -> i.spots()).toList());
  }

  @Test
  void theCarLeavesWhenTheShopCloses() throws IOException {
    Files.writeString(
        dir.resolve("shop.yaml"),
        Files.readString(dir.resolve("shop.yaml"))
            + "opening: {tue: '8:00-12:00, 13:00-17:30', wed: '8:00-18:00'}\n");
    assertEquals(
        stay("2026-12-08T19:00:00Z", "2026-12-09T01:30:00Z"),
        refitted("1,2026-12-08,tint,refitted,2026-12-08T11:00,\n").stays().get(1));
    assertEquals(
        stay("2026-12-09T02:00:00Z", "2026-12-09T02:00:00Z"),
        refitted("1,2026-12-08,tint,refitted,2026-12-08T18:00,\n").stays().get(1),
        "after hours");
    String closed = "1,2026-12-10,tint,refitted,2026-12-10T11:00,";
    assertEquals(
        List.of(
            "visits.csv:2:1  pickup is missing, and the shop was closed on 2026-12-10"
                + "  fill in pickup, or check finished"),
        TestShops.lines(read("job,day,what,result,finished,pickup\n" + closed + "\n")));
    assertEquals(
        stay("2026-12-10T19:00:00Z", "2026-12-10T20:00:00Z"),
        refitted(closed + "2026-12-10T12:00\n").stays().get(1));
  }

  @Test
  void workOfOneVisitSharesItsStay() throws IOException {
    tintTwoSpotsAndCoatTheHood();
    Job job =
        refitted(
            """
            1,2026-12-08,hood,refitted,2026-12-08T14:00,2026-12-08T15:00
            1,2026-12-08,back-glass,refitted,2026-12-08T11:00,2026-12-08T16:00
            """);
    assertEquals(stay("2026-12-08T19:00:00Z", "2026-12-09T00:00:00Z"), job.stays().get(1));
    assertEquals(2, job.stays().size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1,2026-12-08,tint,refitted,, | finished is missing",
        "1,2026-12-08,,refitted,2026-12-08T11:00, | what is missing",
        "1,2026-12-08,windows-up,refitted,2026-12-08T11:00,"
            + " | no service or spot of the job is called windows-up",
        "1,2026-12-08,tint,refitted,2026-12-07T11:00,"
            + " | finished is before the day of the visit or still to come: 2026-12-07",
        "1,2026-12-08,tint,refitted,2027-06-03T11:00,"
            + " | finished is before the day of the visit or still to come: 2027-06-03",
        "1,2026-12-08,tint,refitted,2026-12-08T11:00,2026-12-08T10:00"
            + " | the work is finished after the pickup",
        "1,2026-12-08,,fine,2026-12-08T11:00,"
            + " | finished is given, but nothing was fitted anew",
        "1,2026-12-08,tint,refitted,2026-12-08, | finished has a date without an hour",
        "1,2026-11-25,tint,refitted,2026-11-25T11:00,"
            + " | nothing of that was fitted on the car before",
        "1,2026-11-25,tint,refitted,2026-11-25T16:00," + " | the car had not left the shop by then"
      })
  void aRefitWithAProblemIsToldOnceAndLeavesOutItsJob(String row, String what) throws IOException {
    ShopRead read = read("job,day,what,result,finished,pickup\n" + row + "\n");
    List<String> lines = TestShops.lines(read);
    assertEquals(1, lines.size(), lines.toString());
    assertEquals(what, lines.get(0).split("  ")[1]);
    assertEquals(List.of(), read.jobs());
  }

  @Test
  void todayCountsByTheShopsClock() throws IOException {
    Files.writeString(dir.resolve(VisitsReader.FILE), "job,day,result\n1,2026-12-08,fine\n");
    Instant late = Instant.parse("2026-12-09T07:30:00Z");
    assertEquals(
        1, seen(TestShops.read(dir, late)).size(), "the eighth, half past eleven at night");
    Instant before = Instant.parse("2026-12-08T07:30:00Z");
    assertEquals(
        List.of("visits.csv:2:3  day has not come yet: 2026-12-08"),
        told(TestShops.read(dir, before)),
        "still the seventh");
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
