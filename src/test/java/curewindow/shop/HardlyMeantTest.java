package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.problem.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a job hardly means is a note with its line and what to do, and the job stays. */
final class HardlyMeantTest {

  private static final Instant NOW = Instant.parse("2026-12-04T01:00:00Z");

  private static final String JOB =
      """
      id: 1
      car: {body: sedan, paint: dark}
      parking: outside
      pickup: 2026-12-03T16:00
      items:
        - service: tint
          film: harbor-35
          spots: [front-door-glass, rear-door-glass]
          finished: 2026-12-02T14:30
          vlt: 30
      """;

  @TempDir Path dir;

  private List<Problem> notes(String job, Instant now) throws IOException {
    TestShops.base(dir);
    Path shop = dir.resolve("shop.yaml");
    Files.writeString(
        shop,
        Files.readString(shop).replaceAll("(?s)\nopening:.*?(?=\n[a-z])", "")
            + "\nopening: {mon: 9:00-17:00, tue: 9:00-17:00, wed: 9:00-17:00, thu: 9:00-17:00,"
            + " fri: 9:00-17:00}\n");
    Files.writeString(dir.resolve("jobs/1.yaml"), job);
    ShopRead read = TestShops.read(dir, now);
    assertEquals(1, read.jobs().size(), () -> read.problems().toString());
    assertTrue(read.problems().stream().allMatch(p -> p.severity() == Severity.NOTICE));
    return read.problems();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "pickup: 2026-12-03 | pickup: 2027-12-03 | 4 | 366 days after | check the day",
        "finished: 2026-12-02 | finished: 2026-02-12 | 4 | 294 days after | write 2026-12-02T14:30",
        "2026-12-0 | 2029-12-0 | 4 | days ahead, on 2029-12-03 | check the year",
        "pickup: 2026-12-03 | pickup: 2026-12-06 | 4 | closed on the day of the pickup, Sunday | check",
        "finished: 2026-12-02T14 | finished: 2026-12-02T02 | 9 | at night, at 02:30 | 2:30 pm is 14:30",
        "finished: 2026-12-02T14 | finished: 2026-12-02T23 | 9 | at night, at 23:30 | check the hour",
        "vlt: 30 | vlt: 53 | 10 | Harbor 35 alone lets 35 percent | measure",
        "vlt: 30 | vlt: 0.3 | 10 | vlt is 0.3 | percent",
        "vlt: 30 | {vlt: 45, glass-vlt: 80} | 10 | Harbor 35 on this glass lets 28 percent | measure",
        "vlt: 30 | lamp: {surface: 100; minutes: 30} | 10 | 100 C hot | what the maker allows",
        "vlt: 30 | lamp: {surface: 60; minutes: 600} | 10 | left 90 minutes after | check minutes",
        "body: sedan | body: coupe | 8 | body coupe usually has no rear-door-glass | check body",
      })
  void aSlipIsNotedWithItsLineAndWhatToDo(
      String from, String to, int line, String what, String todo) throws IOException {
    String keys = to.replaceAll("^\\{(.*), (.*)}$", "$1\n    $2").replace(';', ',');
    String leaves = to.contains("lamp") ? "2026-12-02T16:00" : "2026-12-03T16:00";
    String job = JOB.replace("2026-12-03T16:00", leaves).replace(from, keys);
    List<Problem> notes = notes(job, NOW);
    assertEquals(1, notes.size(), notes.toString());
    Problem note = notes.get(0);
    assertEquals("jobs/1.yaml:" + line, note.file() + ":" + note.line(), note.oneLine());
    assertTrue(note.message().contains(what), note.message());
    assertTrue(note.fix().contains(todo), note.fix());
  }

  /** Each of several stays has a pickup of its own, and the note stands at that. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "12-03T16:00 | 12-06T16:00 | 5:36 | closed on the day of the pickup, Sunday",
        "12-10T16:00 | 12-12T16:00 | 6:36 | closed on the day of the pickup, Saturday",
        "2026-12-10T16:00 | 2027-12-10T16:00 | 6:36 | 365 days after",
        "2026-12-1 | 2029-12-1 | 6:36 | days ahead, on 2029-12-10"
      })
  void aSlipInAStayIsNotedAtThatStay(String from, String to, String place, String what)
      throws IOException {
    String stays =
        """
        stays:
          - {in: 2026-12-02T09:00, pickup: 2026-12-03T16:00}
          - {in: 2026-12-10T09:00, pickup: 2026-12-10T16:00}
        """;
    String again =
        "  - {service: paint-coating, film: tidewater-paint, spots: [hood],"
            + " finished: 2026-12-10T14:30}\n";
    String job = JOB.replace("pickup: 2026-12-03T16:00\n", stays) + again;
    List<Problem> notes = notes(job.replace(from, to), NOW);
    assertEquals(1, notes.size(), notes.toString());
    Problem note = notes.get(0);
    assertEquals(place, note.line() + ":" + note.column(), note.oneLine());
    assertTrue(note.message().contains(what), note.message());
  }

  @Test
  void aHotLampOfTheBayIsNoted() throws IOException {
    TestShops.base(dir);
    Path shop = dir.resolve("shop.yaml");
    String text = Files.readString(shop).replaceAll("(?m)^bay:.*\n", "");
    String bay = "bay: {temperature: 21, humidity: 50, lamp: %d}\n";
    Files.writeString(shop, text + bay.formatted(80));
    assertEquals(List.of(), TestShops.lines(TestShops.read(dir)));
    Files.writeString(shop, text + bay.formatted(100));
    List<Problem> notes = TestShops.read(dir).problems();
    assertEquals("hot-lamp", notes.get(0).code());
    assertEquals("the lamp makes the work 100 C hot", notes.get(0).message());
    assertTrue(notes.get(0).line() > 1 && !notes.get(0).isError());
  }

  /** By now it is Dec 3: 12/02 and 12/03 were written as days of February and March. */
  @Test
  void daysThatAreBothSwappedAreNoted() throws IOException {
    String job = JOB.replace("2026-12-03", "2027-03-12").replace("2026-12-02", "2027-03-11");
    List<Problem> notes = notes(job, Instant.parse("2026-12-04T01:00:00Z"));
    assertEquals(List.of(), notes, "not the other way round either: that is in 2027");
    String swapped = JOB.replace("2026-12-03", "2026-06-05").replace("2026-12-02", "2026-06-04");
    Problem note = notes(swapped, Instant.parse("2026-05-07T01:00:00Z")).get(0);
    assertTrue(note.fix().contains("2026-04-06T14:30 and picked up 2026-05-06T16:00"), note.fix());
  }

  @Test
  void aSwapIsOfferedWhereThePickupIsBeforeTheFinish() throws IOException {
    TestShops.base(dir);
    Files.writeString(
        dir.resolve("jobs/1.yaml"), JOB.replace("pickup: 2026-12-03", "pickup: 2026-03-12"));
    String line = TestShops.lines(TestShops.read(dir, NOW)).get(0);
    assertTrue(line.contains("of pickup may be swapped; write 2026-12-03T16:00"), line);
  }

  private static String item(String service, String film, String spot, String finished) {
    return "  - {service: %s, film: %s, spots: [%s], finished: %s}%n"
        .formatted(service, film, spot, finished);
  }

  /** A film over fresh work of the same side is noted at the spot of the film above. */
  @Test
  void aFilmOverFreshWorkIsNoted() throws IOException {
    String base = JOB.substring(0, JOB.indexOf("  - service"));
    String coating = item("paint-coating", "tidewater-paint", "hood", "2026-12-02T10:00");
    String film = item("paint-film", "fieldcoat-gloss", "hood", "2026-12-02T14:00");
    Problem note = notes(base + coating + film, NOW).get(0);
    assertEquals("film-over-fresh-work", note.code());
    assertEquals(7, note.line());
    String wrap = item("wrap", "colorway-gloss", "hood", "2026-12-02T14:00");
    assertEquals(1, notes(base + film + wrap, NOW).size(), "two films at one time");
    String later = coating.replace("T10:00", "T15:00");
    assertEquals(List.of(), notes(base + film + later, NOW), "a coating over a film is usual");
    String strip = item("windshield-film", "clearway-shield", "windshield", "2026-12-02T14:00");
    String tint = item("tint", "harbor-70", "windshield", "2026-12-02T10:00");
    assertEquals(List.of(), notes(base + tint + strip, NOW), "one inside, one outside");
  }

  /** Standard time of the zones by the IANA time zone database; longitudes from any atlas. */
  @ParameterizedTest
  @CsvSource({
    "122.2, America/Los_Angeles, true",
    "-122.2, America/Los_Angeles, false",
    "-151.2, Australia/Sydney, true",
    "151.2, Australia/Sydney, false",
    "76.0, Asia/Shanghai, false",
    "-171.8, Pacific/Apia, false",
    "-8.5, Europe/Madrid, false",
    "-64.2, America/Argentina/Cordoba, false",
    "178.0, Pacific/Fiji, false",
    "-37.6, Europe/Moscow, true",
  })
  void aLongitudeOnTheWrongSideIsNoted(String longitude, String zone, boolean told)
      throws IOException {
    Files.createDirectories(dir.resolve("content/places"));
    Files.writeString(
        dir.resolve("content/places/mill.yaml"),
        "name: Mill\nlatitude: 40\nlongitude: %s\nheight: 10\nzone: %s\n"
            .formatted(longitude, zone));
    List<Problem> notes = notes(JOB, NOW);
    assertEquals(told ? 1 : 0, notes.size(), notes.toString());
    if (told) {
      assertEquals("content/places/mill.yaml:3", notes.get(0).file() + ":" + notes.get(0).line());
      String other = longitude.startsWith("-") ? longitude.substring(1) : "-" + longitude;
      assertTrue(notes.get(0).fix().contains("longitude: " + other), notes.get(0).fix());
    }
  }

  @Test
  void aGoodJobHasNoNote() throws IOException {
    assertEquals(List.of(), notes(JOB, NOW));
  }

  @ParameterizedTest
  @ValueSource(strings = {"content/demo", "content/starter-shop"})
  void theShippedShopsHaveNoNote(String shop) {
    for (String now : List.of("2026-06-01", "2026-11-25", "2026-12-24", "2029-01-01")) {
      ShopRead read = TestShops.read(Path.of(shop), Instant.parse(now + "T12:00:00Z"));
      assertEquals(List.of(), read.problems(), now);
    }
  }
}
