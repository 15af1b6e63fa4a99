package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The command {@code dates} as a user types it. */
class DatesCommandTest {

  private static final Path DEMO = Path.of("content/demo");
  private static final List<String> NAMES =
      List.of("job", "hold", "kind", "state", "at", "likely", "share", "full", "waitsFor", "day");

  private String said = "";

  private int run(Path shop, String... rest) {
    List<Object> all = new ArrayList<>(List.of("dates", "--shop", shop));
    all.addAll(List.of(rest));
    Typed typed = Typed.run(all.toArray());
    said = typed.said();
    return typed.code();
  }

  private JsonNode json(String... rest) {
    List<String> all = new ArrayList<>(List.of(rest));
    all.add("--json");
    assertEquals(Exit.OK, run(DEMO, all.toArray(String[]::new)), () -> said);
    return JsonMapper.builder().build().readTree(said);
  }

  /** The explanation, which is tested for itself, has the same dates. */
  @Test
  void areThoseOfTheExplanation() {
    for (String job : List.of("Q-3101", "Q-3103", "Q-3110")) {
      JsonNode why =
          JsonMapper.builder()
              .build()
              .readTree(Typed.run("why", job, "--json", "--shop", DEMO).said());
      JsonNode dates = json(job);
      int position = 0;
      for (JsonNode hold : why.get("holds")) {
        JsonNode row = dates.get(position++);
        assertEquals(job, row.get("job").asString());
        assertEquals(hold.get("end"), row.get("at"));
        for (String name : List.of("hold", "kind", "state", "likely", "share", "full")) {
          assertEquals(hold.get(name), row.get(name), name);
        }
        assertEquals(hold.get("waitsForHold"), row.get("waitsFor"));
      }
      assertTrue(dates.size() - position <= 1, "a visit at most: " + dates);
    }
  }

  @Test
  void haveAVisitBelowThem() {
    JsonNode rows = json("Q-3101");
    JsonNode visit = rows.get(rows.size() - 1);
    assertEquals("visit", visit.get("kind").asString());
    assertEquals("come-in", visit.get("state").asString());
    assertTrue(visit.get("day").asString().matches("20\\d\\d-\\d\\d-\\d\\d"), visit::toString);
    assertTrue(visit.get("hold").isNull() && visit.get("at").isNull(), visit::toString);
    run(DEMO, "Q-3101");
    String last = said.strip().lines().reduce((a, b) -> b).orElseThrow();
    assertTrue(
        last.matches("Q-3101  Come in so we can check it  +any day we are open, starting [A-Z].*"),
        said);
  }

  @Test
  void haveTheSameNamesAndValuesInBothForms() {
    JsonNode rows = json();
    assertEquals(Exit.OK, run(DEMO, "--csv"), () -> said);
    List<String> lines = said.lines().toList();
    assertEquals(String.join(",", NAMES), lines.get(0));
    assertEquals(rows.size() + 1, lines.size());
    for (int i = 0; i < rows.size(); i++) {
      String[] cells = lines.get(i + 1).split(",", -1);
      for (int c = 0; c < NAMES.size(); c++) {
        JsonNode value = rows.get(i).get(NAMES.get(c));
        assertEquals(value.isNull() ? "" : value.asString(), cells[c], lines.get(i + 1));
      }
    }
    for (JsonNode row : rows) {
      boolean limit = row.get("state").asString().equals("at-limit");
      assertEquals(limit, !row.get("share").isNull(), row::toString);
    }
  }

  @Test
  void standOnALineEachWithTheSenseInWhichTheyAreMeant() {
    int dates = json("Q-3103", "Q-3101").size();
    assertEquals(Exit.OK, run(DEMO, "Q-3103", "Q-3101", "Q-3103"), () -> said);
    assertEquals(dates, said.lines().count());
    assertTrue(said.startsWith("Q-3103  "), "in the order asked for: " + said);
    String date = "[A-Z][a-z]{2}, [A-Z][a-z]{2} \\d+, 20\\d\\d, (\\d+ [AP]M|noon)";
    String limit =
        ", at the limit \\(\\d+% cured\\)(, then go easy, fully cured about .* 20\\d\\d)?";
    assertFalse(said.contains("12 PM"), "noon is called so: " + said);
    for (String line : said.lines().filter(l -> l.matches(".*(M|noon), .*")).toList()) {
      assertTrue(
          line.matches("Q-310[13]  .*  " + date + "(, (safe|settled) by then|" + limit + ")"),
          line);
    }
    assertTrue(said.contains("safe by then") && said.contains(", then go easy, fully cured"), said);
  }

  /** Of a day its first moment counts, by the shop's clock; a visit stays through its day. */
  @Test
  void thatAreOverAtATimeCanBeLeftOut() {
    JsonNode all = json("Q-3101", "Q-3103");
    for (String at : List.of("2026-12-02", "2026-12-02T10:00", "2026-12-02T18:00Z")) {
      JsonNode left = json("Q-3101", "Q-3103", "--at", at);
      Instant time =
          Instant.parse(at.length() > 10 ? "2026-12-02T18:00:00Z" : "2026-12-02T08:00:00Z");
      List<String> ahead = new ArrayList<>();
      for (JsonNode row : all) {
        boolean visit = row.get("at").isNull();
        if (visit || OffsetDateTime.parse(row.get("at").asString()).toInstant().isAfter(time)) {
          ahead.add(row.toString());
        }
      }
      List<String> rows = new ArrayList<>();
      left.forEach(row -> rows.add(row.toString()));
      assertEquals(ahead, rows, at);
      assertTrue(rows.size() < all.size(), at);
    }
    assertFalse(json("Q-3101", "--at", "2027-03-15T20:00").isEmpty(), "the day of the visit");
    assertTrue(json("Q-3101", "--at", "2027-03-16").isEmpty());
    assertEquals(Exit.USAGE, run(DEMO, "--at", "noonish"), said);
    assertTrue(said.contains("--at is not a time: noonish"), said);
  }

  /** Nobody reads that a date is safe by then where it is over as the shop has looked. */
  @Test
  void sayWhereTheShopHasLooked(@TempDir Path shop) throws IOException {
    twoJobs(shop);
    Files.writeString(
        shop.resolve("visits.csv"), "job,day,what,result\nQ-3101,2026-11-27,windows-up,fine\n");
    Clock clock = Clock.fixed(Instant.parse("2026-12-01T20:00:00Z"), ZoneOffset.UTC);
    String over = "Fri, Nov 27, 2026, 8 AM, over, seen by us";
    String text = Typed.run(clock, "dates", "Q-3101", "--shop", shop).said();
    assertTrue(text.matches("(?s).*Q-3101  Windows stay up +" + over + "\\R.*"), text);
    String csv = Typed.run(clock, "dates", "Q-3101", "--csv", "--shop", shop).said();
    assertTrue(csv.contains("\nQ-3101,windows-up,hold,seen,2026-11-27T08:00-08:00,"), csv);
    String json = Typed.run(clock, "dates", "Q-3101", "--json", "--shop", shop).said();
    assertTrue(json.contains("\"seen\""), json);
    String why = Typed.run(clock, "why", "Q-3101", "--shop", shop).said();
    assertTrue(why.contains("Windows stay up: Fri, Nov 27, 8 AM, over, seen by us"), why);
  }

  @Test
  void moveWithTheParking() {
    JsonNode outside = json("Q-3101");
    JsonNode heated = json("Q-3101", "--parking", "heated");
    assertTrue(
        heated.get(0).get("at").asString().compareTo(outside.get(0).get("at").asString()) < 0);
    assertEquals(Exit.OK, run(DEMO, "Q-3101", "--parking", "heated"));
    assertTrue(said.startsWith("A TRIAL: parked otherwise"), said);
    assertEquals(Exit.USAGE, run(DEMO, "Q-3101", "--parking", "heatd"));
    assertTrue(said.contains("did you mean heated?"), said);
    assertEquals(Exit.USAGE, run(DEMO, "--csv", "--json"));
  }

  /**
   * Of a broken job its own problems are told, and those of what jobs share; not those of others.
   */
  @Test
  void ofABrokenJobAreItsOwnProblems(@TempDir Path shop) throws IOException {
    twoJobs(shop);
    for (String id : List.of("Q-3101", "Q-3102")) {
      Path job = shop.resolve("jobs/" + id + ".yaml");
      Files.writeString(job, Files.readString(job).replace("pickup:", "pick-up:"));
    }
    String head =
        "job,body,paint,car,parking-day,parking-night,pickup,service,film,spots,finished\n";
    String row =
        ",sedan,dark,\"four\ndoors\",outside,outside,2026-11-25T17:00,tint,harbor-35,"
            + "back-glass,2026-11-25T14:30\n";
    Files.writeString(
        shop.resolve("jobs.csv"),
        head
            + ("C-1" + row).replace("sedan", "sedann")
            + ("C-2" + row).replace("harbor", "harbour")
            + "C-3,sedan\n");
    String two = told(shop, "Q-3102");
    assertTrue(two.startsWith("Job Q-3102 has to be mended first:\njobs/Q-3102.yaml:"), two);
    assertFalse(two.contains("Q-3101.yaml") || two.contains("jobs.csv"), two);
    assertTrue(two.endsWith("\n7 more to fix in other jobs: run check to see them\n"), two);
    assertEquals(two, told(shop, "Q-3102", "why"));
    assertEquals(two, told(shop, "Q-3102", "card"));
    assertTrue(told(shop, "C-1").contains("jobs.csv:2:5  no body type is called sedann"), said);
    assertEquals(4, said.lines().count(), said);
    assertTrue(told(shop, "C-2").contains("jobs.csv:5:") && said.contains("harbour-35"), said);
    assertEquals(4, said.lines().count(), said);
    assertTrue(told(shop, "C-3").contains("jobs.csv:6:1  the row has 2 columns"), said);
    assertEquals(3, said.lines().count(), said);
  }

  /** What several of them share is told once, and what is left to mend is counted once. */
  @Test
  void ofSeveralBrokenJobsEachProblemIsToldOnce(@TempDir Path shop) throws IOException {
    twoJobs(shop);
    for (String id : List.of("Q-3101", "Q-3102")) {
      Path job = shop.resolve("jobs/" + id + ".yaml");
      Files.writeString(job, Files.readString(job).replaceAll("place: .*", "place: cove"));
    }
    Files.createDirectories(shop.resolve("content/places"));
    Files.writeString(shop.resolve("content/places/cove.yaml"), "name: Cove\n");
    Files.writeString(shop.resolve("jobs/X-1.yaml"), "id: X-1\n");
    Typed both = Typed.run("dates", "Q-3102", "Q-3101", "Q-3101", "X-9", "--shop", shop);
    assertEquals(Exit.PROBLEMS, both.code());
    List<String> lines = both.said().lines().toList();
    assertEquals("There is no job X-9", lines.get(0));
    assertEquals("Jobs Q-3102, Q-3101 have to be mended first:", lines.get(1));
    assertEquals(lines.size(), new HashSet<>(lines).size(), both.said());
    String place = "content/places/cove.yaml:1:1  ";
    assertEquals(5, lines.stream().filter(l -> l.startsWith(place)).count(), both.said());
    assertEquals("4 more to fix in other jobs: run check to see them", lines.get(7), both.said());
    assertEquals(8, lines.size(), both.said());
    Files.writeString(shop.resolve("shop.yaml"), "name: Shop\n");
    List<String> none =
        Typed.run("card", "Q-3101", "Q-3102", "--shop", shop).said().lines().toList();
    assertEquals("shop.yaml has to be mended first:", none.get(0));
    assertEquals(none.size(), new HashSet<>(none).size(), none::toString);
  }

  private String told(Path shop, String job, String... command) {
    Typed typed = Typed.run(command.length == 0 ? "dates" : command[0], job, "--shop", shop);
    assertEquals(Exit.PROBLEMS, typed.code(), typed.said());
    said = typed.said().replace("\r\n", "\n");
    return said;
  }

  @Test
  void areToldOfTheGoodJobsThoughAnotherIsUnknownOrBroken(@TempDir Path shop) throws IOException {
    assertEquals(Exit.PROBLEMS, run(DEMO, "Q-3011", "Q-3101"));
    assertTrue(said.contains("There is no job Q-3011; did you mean Q-3101?"), said);
    assertTrue(said.contains("Q-3101  Windows stay up"), said);
    twoJobs(shop);
    Path job = shop.resolve("jobs/Q-3102.yaml");
    Files.writeString(job, Files.readString(job).replace("pickup:", "pick-up:"));
    assertEquals(Exit.PROBLEMS, run(shop));
    assertTrue(said.contains("Without Q-3102:"), said);
    assertTrue(said.contains("jobs/Q-3102.yaml:"), said);
    assertTrue(said.contains("Q-3101  Windows stay up"), said);
    Files.writeString(shop.resolve("shop.yaml"), "name: [");
    assertEquals(Exit.PROBLEMS, run(shop));
    assertTrue(said.startsWith("shop.yaml has to be mended first:"), said);
  }

  /** What is broken there would be told, had it been read. */
  @Test
  void needNoGuideNoTemplateAndNoOtherLanguage(@TempDir Path shop) throws IOException {
    twoJobs(shop);
    run(shop);
    String before = said;
    Path job = shop.resolve("jobs/Q-3101.yaml");
    Files.writeString(job, Files.readString(job) + "language: es\n");
    for (String file :
        List.of(
            "content/guides/en/tint.md", "content/words/es/page.yaml", "site-templates/page.js")) {
      Files.createDirectories(shop.resolve(file).getParent());
      Files.write(shop.resolve(file), new byte[] {(byte) 0xff, (byte) 0xfe, 0});
    }
    assertEquals(Exit.OK, run(shop), () -> said);
    assertEquals(before, said);
  }

  private static void twoJobs(Path shop) throws IOException {
    Files.createDirectories(shop.resolve("jobs"));
    for (String file : List.of("shop.yaml", "logo.svg", "jobs/Q-3101.yaml", "jobs/Q-3102.yaml")) {
      Files.copy(DEMO.resolve(file), shop.resolve(file));
    }
  }
}
