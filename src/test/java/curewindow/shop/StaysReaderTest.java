package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.Stay;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stays in a job file of the base shop, whose tint is finished on November 25, 2026, at 14:30. */
class StaysReaderTest {

  private static final String FIRST = "{in: 2026-11-25T09:00, pickup: 2026-11-25T17:00}";

  @TempDir Path dir;

  @BeforeEach
  void shop() throws IOException {
    TestShops.base(dir);
  }

  private ShopRead read(String stays) throws IOException {
    Path file = dir.resolve("jobs/1.yaml");
    String job = Files.readString(file);
    Files.writeString(file, job.replaceFirst("pickup: .*", stays));
    return TestShops.read(dir);
  }

  private static Stay stay(String in, String pickup) {
    return new Stay(Instant.parse(in), Instant.parse(pickup));
  }

  @Test
  void aPickupAloneIsAStayFromTheFirstFinishOn() throws IOException {
    Job job = TestShops.read(dir).jobs().get(0);
    assertEquals(List.of(stay("2026-11-25T22:30:00Z", "2026-11-26T01:00:00Z")), job.stays());
  }

  @Test
  void staysAreReadInTheirOrder() throws IOException {
    ShopRead read =
        read("stays: [" + FIRST + ", {in: 2026-12-03T08:00, pickup: 2026-12-03T17:00}]");
    assertEquals(List.of(), TestShops.lines(read));
    Job job = read.jobs().get(0);
    assertEquals(
        List.of(
            stay("2026-11-25T17:00:00Z", "2026-11-26T01:00:00Z"),
            stay("2026-12-03T16:00:00Z", "2026-12-04T01:00:00Z")),
        job.stays());
    assertEquals(Instant.parse("2026-12-04T01:00:00Z"), job.pickup());
    assertEquals(Instant.parse("2026-11-26T01:00:00Z"), job.pickupAfter(job.items().get(0)));
  }

  @Test
  void aLaterStayCountsOnceTheCarHasComeIn() throws IOException {
    Path file = dir.resolve("jobs/1.yaml");
    Files.writeString(
        file,
        Files.readString(file)
                .replaceFirst(
                    "pickup: .*",
                    "stays: [" + FIRST + ", {in: 2026-12-03T08:00, pickup: 2026-12-03T17:00}]")
            + "  - {service: paint-coating, film: tidewater-paint, spots: [hood],"
            + " finished: 2026-12-03T15:00}\n");
    for (String early : List.of("2026-11-20T00:00:00Z", "2026-12-03T15:59:00Z")) {
      Job before = TestShops.read(dir, Instant.parse(early)).jobs().get(0);
      assertEquals(1, before.stays().size(), early);
      assertEquals(List.of("tint"), before.items().stream().map(i -> i.service()).toList());
    }
    Job after = TestShops.read(dir, Instant.parse("2026-12-03T16:00:00Z")).jobs().get(0);
    assertEquals(2, after.stays().size());
    assertEquals(2, after.items().size());
  }

  /** In one stay a spot is written once; in a later one the same spot is fitted anew. */
  @Test
  void laterWorkTakesThePlaceOfOlderOnTheSameSpot() throws IOException {
    Path file = dir.resolve("jobs/1.yaml");
    String again =
        "  - {service: tint, film: harbor-35, spots: [front-door-glass], finished: DAYT12:00}\n";
    String job =
        Files.readString(file)
            .replaceFirst(
                "pickup: .*",
                "stays: [" + FIRST + ", {in: 2026-12-03T08:00, pickup: 2026-12-03T17:00}]");
    Files.writeString(file, job + again.replace("DAY", "2026-11-25"));
    assertEquals(1, TestShops.read(dir).problems().size());
    Files.writeString(file, job + again.replace("DAY", "2026-12-03"));
    Instant now = Instant.parse("2026-12-04T00:00:00Z");
    assertEquals(List.of(), TestShops.lines(TestShops.read(dir, now)));
    assertEquals(List.of("front-door-glass 2026-12-03T20:00:00Z"), spots(TestShops.read(dir, now)));
    Instant before = Instant.parse("2026-12-01T00:00:00Z");
    assertEquals(
        List.of("front-door-glass 2026-11-25T22:30:00Z"), spots(TestShops.read(dir, before)));
  }

  private static List<String> spots(ShopRead read) {
    return read.jobs().get(0).items().stream()
        .map(i -> String.join(" ", i.spots()) + " " + i.finished())
        .toList();
  }

  @Test
  void aRowOfJobsCsvNamesItsStay() throws IOException {
    Files.delete(dir.resolve("jobs/1.yaml"));
    String head =
        "job,body,paint,parking-day,parking-night,in,pickup,service,film,spots,finished\n"
            + "7,sedan,dark,outside,outside,2026-11-25T09:00,2026-11-25T17:00,tint,harbor-35,"
            + "front-door-glass,2026-11-25T14:00\n";
    String row = "7,,,,,%s,%s,tint,harbor-35,front-door-glass,%s\n";
    Files.writeString(
        dir.resolve("jobs.csv"),
        head
            + "7,,,,,,,tint,harbor-35,back-glass,2026-11-25T14:00\n"
            + row.formatted("2026-12-03T08:00", "2026-12-03T17:00", "2026-12-03T12:00"));
    ShopRead read = TestShops.read(dir, Instant.parse("2026-12-04T00:00:00Z"));
    assertEquals(List.of(), TestShops.lines(read));
    assertEquals(
        List.of(
            stay("2026-11-25T17:00:00Z", "2026-11-26T01:00:00Z"),
            stay("2026-12-03T16:00:00Z", "2026-12-04T01:00:00Z")),
        read.jobs().get(0).stays());
    assertEquals(
        List.of("back-glass 2026-11-25T22:00:00Z", "front-door-glass 2026-12-03T20:00:00Z"),
        spots(read));
    Files.writeString(
        dir.resolve("jobs.csv"), head + row.formatted("", "2026-12-03T17:00", "2026-12-03T12:00"));
    assertEquals(1, TestShops.read(dir).problems().size());
    assertEquals("in is missing", TestShops.lines(TestShops.read(dir)).get(0).split("  ")[1]);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "stays: [] | no stay is listed",
        "stays: [A, {in: 2026-11-25T16:00, pickup: 2026-12-03T17:00}]"
            + " | the car comes before it left from the stay before",
        "stays: [{in: 2026-11-25T18:00, pickup: 2026-11-25T17:00}]"
            + " | the pickup is before the car comes in",
        "stays: [{in: 2026-11-25T09:00, pickup: 2026-11-25T12:00},"
            + " {in: 2026-12-03T08:00, pickup: 2026-12-03T17:00}]"
            + " | the work is finished while the car is not in the shop",
        "stays: [{in: 2026-11-25T09:00, pickup: 2026-11-25T12:00}]"
            + " | the work is finished after the pickup",
        "stays: [{in: 2026-11-25T09:00}] | pickup is missing",
        "stays: 3 | stays should be a list, not a number",
        "note: | pickup is missing"
      })
  void eachSlipIsToldOnce(String stays, String what) throws IOException {
    List<String> lines = TestShops.lines(read(stays.replace("A", FIRST)));
    lines = lines.stream().filter(l -> !l.contains("the key note is not known")).toList();
    assertEquals(1, lines.size(), lines.toString());
    assertEquals(what, lines.get(0).split("  ")[1]);
  }

  @ParameterizedTest
  @CsvSource({
    "12-03T08:00, 11-25T16:00, 9:10, the car comes before it left from the stay before",
    "12-03T17:00, 12-03T07:00, 9:36, the pickup is before the car comes in",
    "12-03T17:00, 12-33T17:00, 9:36, pickup names a day"
  })
  void aSlipIsToldWhereItStands(String from, String to, String place, String what)
      throws IOException {
    String stays =
        "stays:\n  - " + FIRST + "\n  - {in: 2026-12-03T08:00, pickup: 2026-12-03T17:00}";
    List<String> lines = TestShops.lines(read(stays.replace(from, to)));
    assertEquals(1, lines.size(), lines.toString());
    assertTrue(lines.get(0).startsWith("jobs/1.yaml:" + place + "  " + what), lines.get(0));
  }

  @Test
  void pickupAndStaysTogetherAreTooMuch() throws IOException {
    List<String> lines = TestShops.lines(read("pickup: 2026-11-25T17:00\nstays: [" + FIRST + "]"));
    assertEquals(
        List.of(
            "jobs/1.yaml:8:8  pickup and stays are both given"
                + "  keep one of the two; each of the stays has its own pickup"),
        lines);
  }
}
