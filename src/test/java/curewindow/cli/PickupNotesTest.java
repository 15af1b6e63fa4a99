package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the counter reads before it hands over a car whose coating is not set. */
class PickupNotesTest {

  /** The day before the coated cars of the demo are picked up, and the week after. */
  private static final Instant BEFORE = Instant.parse("2026-11-18T12:00:00Z");

  private static final Instant AFTER = Instant.parse("2026-11-27T12:00:00Z");

  @TempDir Path temp;
  private Path shop;

  @BeforeEach
  void twoJobs() throws IOException {
    shop = temp.resolve("shop");
    Files.createDirectories(shop.resolve("jobs"));
    Files.copy(Path.of("content/demo/shop.yaml"), shop.resolve("shop.yaml"));
    Files.copy(Path.of("content/demo/logo.svg"), shop.resolve("logo.svg"));
    for (String job : List.of("Q-3101", "Q-3107", "Q-3108", "Q-3110", "Q-3111")) {
      String file = "jobs/" + job + ".yaml";
      Files.copy(Path.of("content/demo").resolve(file), shop.resolve(file));
    }
  }

  private static Typed run(Instant now, Object... args) {
    return Typed.run(Clock.fixed(now, ZoneOffset.UTC), args);
  }

  /**
   * By hand, Q-3107: 21.5 h in the bay at 0.87105 an hour are 18.7 of 24; 5.27 more take 6.05 h, or
   * with the lamp at 60 C, 9.5372 an hour more, 30.4 minutes. Q-3111: 3.5 h are 3.05 of 12; 8.95
   * more take 10.3 h; seats get no lamp.
   */
  @Test
  void checkNotesCarsThatAreNotReadyForTheRoadAndNothingFails() {
    Typed notes = run(BEFORE, "check", "--notes", "--shop", shop);
    assertEquals(Exit.OK, notes.code());
    assertTrue(
        notes
            .said()
            .contains(
                "note: jobs/Q-3107.yaml:3:5  Keep the coating dry: at pickup Tidewater Paint has 18 of"
                    + " its 24 hours  keep the car in 7 hours longer (bay at 21 C), or give each"
                    + " part 35 minutes of lamp at 60 C in the bay, and the way home does no harm in any"
                    + " weather; never more heat than its maker allows\n"),
        notes.said());
    assertTrue(
        notes
            .said()
            .contains(
                "note: jobs/Q-3111.yaml:3:5  Stay off the treated seats and carpets: at pickup Tidewater Fabric has 3 of its 12"
                    + " hours  keep the car in 11 hours longer (bay at 21 C), and the way home"
                    + " does no harm in any weather\n"),
        notes.said());
    assertTrue(
        notes.said().contains("Tidewater Glass has 3 of its 24 hours, Tidewater Wheel has 6 of"),
        notes.said());
    assertTrue(notes.said().contains("none on chipped glass"), notes.said());
    assertFalse(notes.said().contains("jobs/Q-3101"), "a window stays up on the road too");
    Typed quiet = run(BEFORE, "check", "--shop", shop);
    assertEquals(Exit.OK, quiet.code());
    assertFalse(quiet.said().contains("at pickup"), quiet.said());
  }

  /**
   * By hand: the wheels have 23 x 0.87105 = 20.03 of their 24 hours, and the bay gives the rest in
   * the 8 h until the floor of the hood. The hood has 3.48; 8 h of the bay give 6.97, and 13.55 at
   * 9.5372 an hour are 85.2 minutes.
   */
  @Test
  void aPartThatIsSetWhileTheCarStaysGetsNoLamp() throws IOException {
    Files.writeString(
        shop.resolve("jobs/TWO.yaml"),
        """
        id: TWO
        car: {body: suv, paint: mid}
        parking: outside
        pickup: 2026-11-20T17:00
        items:
          - {service: paint-coating, film: tidewater-paint, spots: [hood], finished: 2026-11-20T13:00}
          - {service: wheel-coating, film: tidewater-wheel, spots: [wheels], finished: 2026-11-19T18:00}
        """);
    String note = noteOf("TWO");
    assertTrue(
        note.contains(
            " or give Tidewater Paint 90 minutes of lamp at 60 C in the bay and keep the car in 8"
                + " hours longer, and"),
        note);
  }

  /** Nobody keeps a car in for a hundred hours, or shines a lamp on one part for four. */
  @Test
  void aBayThatIsTooColdIsToBeWarmed() throws IOException {
    bay("temperature: 21", "temperature: -5");
    String coating = noteOf("Q-3107");
    assertTrue(
        coating.contains(
            "  the bay is too cold at -5 C: warm it to 21 C and keep the car in 60 hours longer, or"
                + " give each part 135 minutes of lamp at 60 C in the bay, and the way home does no harm in any"
                + " weather; never more heat than its maker allows"),
        coating);
    assertTrue(
        noteOf("Q-3111")
            .endsWith(
                "warm it to 21 C and keep the car in 33 hours longer, and the way home does no harm"
                    + " in any weather"),
        "no lamp on seats");
    bay("humidity: 50", "humidity: 50\n  lamp: 31");
    assertFalse(noteOf("Q-3107").contains("lamp"), "it would take hours");
    bay("humidity: 50", "humidity: 5");
    String dry = noteOf("Q-3107");
    assertTrue(dry.contains("  the bay's air hardly sets it: keep the car in where it is"), dry);
  }

  /** A bay near freezing does as little for what is hardly set at its limit. */
  @Test
  void aColdBayIsNoHelpToWhatIsHardlySet() throws IOException {
    Files.copy(Path.of("content/demo/jobs/Q-3103.yaml"), shop.resolve("jobs/Q-3103.yaml"));
    bay("temperature: 21", "temperature: 2");
    assertTrue(
        noteOf("Q-3103")
            .endsWith(
                "  a warmer bay or the lamp would help; never more heat than its maker allows,"
                    + " glass slowly, and none on chipped glass"),
        noteOf("Q-3103"));
  }

  private void bay(String from, String to) throws IOException {
    Path file = shop.resolve("shop.yaml");
    Files.writeString(file, Files.readString(file).replace(from, to));
  }

  @Test
  void carsThatHaveLeftAreNotSpokenOf() {
    assertFalse(run(AFTER, "check", "--notes", "--shop", shop).said().contains("at pickup"));
    String said =
        run(BEFORE, "check", "--notes", "--shop", shop, "--at", "2026-11-20T12:00Z").said();
    assertFalse(said.contains("Q-3107"), said);
    assertTrue(said.contains("Q-3110"), said);
  }

  @Test
  void pressSaysTheSameOfCarsThatAreStillHere() {
    Path out = temp.resolve("out");
    Typed press = run(BEFORE, "press", "--shop", shop, "--out", out);
    assertEquals(Exit.OK, press.code());
    assertTrue(press.said().contains("Before pickup:"), press.said());
    assertTrue(press.said().contains("at pickup Tidewater Paint has 18 of its 24"), press.said());
    String later = run(AFTER, "press", "--shop", shop, "--out", out).said();
    assertFalse(later.contains("Before pickup"), later);
  }

  /** What is safe or planned by, and hardly set at its limit, is told too, in one line a job. */
  @Test
  void checkNotesWhatIsHardlySetWhenItEnds() throws IOException {
    Path job = shop.resolve("jobs/Q-3103.yaml");
    Files.copy(Path.of("content/demo/jobs/Q-3103.yaml"), job);
    String hardly =
        "Rear defroster stays off: ends at its limit, Thu, Dec 17, only about 21% cured";
    assertEquals(
        "note: jobs/Q-3103.yaml:3:5  "
            + hardly
            + "  longer in the bay or the lamp would help; never more heat than its maker allows,"
            + " glass slowly, and none on chipped glass",
        noteOf("Q-3103"));
    Files.writeString(
        job,
        Files.readString(job)
            + "  - {service: paint-film, film: fieldcoat-gloss, spots: [hood],"
            + " finished: 2026-12-03T15:00}\n");
    String both = noteOf("Q-3103");
    assertTrue(both.contains("No rain, no wet roads: at pickup Fieldcoat Gloss has"), both);
    assertTrue(both.contains("hours; " + hardly + "  keep the car in"), both);
  }

  private String noteOf(String job) {
    List<String> notes =
        run(BEFORE, "check", "--notes", "--shop", shop)
            .said()
            .lines()
            .filter(l -> l.contains(job))
            .toList();
    assertEquals(1, notes.size(), notes.toString());
    return notes.get(0);
  }

  /** Who does as told is told no more. */
  @Test
  void theLampOrTheLongerStayEndsIt() throws IOException {
    Path job = shop.resolve("jobs/Q-3107.yaml");
    String file = Files.readString(job);
    Files.writeString(job, file + "    lamp: {surface: 60, minutes: 35}\n");
    assertFalse(run(BEFORE, "check", "--notes", "--shop", shop).said().contains("Q-3107"));
    Files.writeString(job, file.replace("T15:00", "T22:00"));
    assertFalse(run(BEFORE, "check", "--notes", "--shop", shop).said().contains("Q-3107"));
    Files.writeString(job, file.replace("T15:00", "T21:00"));
    assertTrue(run(BEFORE, "check", "--notes", "--shop", shop).said().contains("Q-3107"));
  }

  @Test
  void whySaysItUntilTheCarHasLeftAndOfATriedPickup() {
    String said = why(BEFORE);
    assertTrue(said.contains("Before pickup"), said);
    assertTrue(said.contains("keep the car in 5 hours longer (bay at 21 C)"), said);
    assertFalse(why(BEFORE, "--pickup", "2026-11-18T21:00").contains("Before pickup"), "set by it");
    assertFalse(why(AFTER).contains("Before pickup"), "nobody can keep in what has left");
    assertTrue(why(AFTER, "--json").contains("\"beforePickup\" : null"));
    assertEquals(said, why(AFTER, "--at", "2026-11-18"));
  }

  private String why(Instant now, String... more) {
    List<Object> args = new ArrayList<>(List.of("why", "Q-3108", "--shop", shop));
    args.addAll(List.of(more));
    return run(now, args.toArray()).said().replaceAll("\\s+", " ");
  }
}
