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
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Calls that were made, on a shop with one job whose card was handed over. */
class CalledTest {

  private static final String CARDS = "job,hold,state,date,printed\n";
  private static final String CALLS = "job,day,hold,told\n";
  private static final String WINDOWS =
      "Q-3101,windows-up,safe-by,2026-11-26T14:00-08:00,2026-11-24\n";

  /** In the evening of November 24 by the shop's clock. */
  private static final String AT = "2026-11-25T06:30Z";

  @TempDir Path shop;
  private String said = "";

  @BeforeEach
  void oneJob() throws IOException {
    Files.createDirectories(shop.resolve("jobs"));
    for (String file : List.of("shop.yaml", "logo.svg", "jobs/Q-3101.yaml", "link-ledger.csv")) {
      Files.copy(Path.of("content/demo").resolve(file), shop.resolve(file));
    }
    cards(WINDOWS);
  }

  private void cards(String rows) throws IOException {
    Files.writeString(shop.resolve("printed-dates.csv"), CARDS + rows);
  }

  private String calls() throws IOException {
    return Files.readString(shop.resolve("calls.csv"));
  }

  private int due(String... rest) {
    List<Object> all = new java.util.ArrayList<>(List.of("due", "--shop", shop, "--at", AT));
    all.addAll(List.of(rest));
    Typed typed = Typed.run(all.toArray());
    said = typed.said().replace('\u00A0', ' ');
    return typed.code();
  }

  /** Moves work and pickup, and all dates with them. */
  private void finished(String from, String to) throws IOException {
    Path job = shop.resolve("jobs/Q-3101.yaml");
    Files.writeString(job, Files.readString(job).replace("2026-11-" + from, "2026-11-" + to));
  }

  /** What the command {@code dates} has for the windows. */
  private String windows() {
    return Typed.run("dates", "Q-3101", "--csv", "--shop", shop)
        .said()
        .lines()
        .filter(l -> l.contains(",windows-up,"))
        .map(l -> l.split(",")[4])
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whoWasToldIsNotAskedForAgainUntilTheDateMovesAgain() throws IOException {
    assertEquals(Exit.OK, due());
    assertTrue(said.startsWith("call  Q-3101 "), said);
    assertTrue(said.contains("the card says Thursday, November 26, 2 PM"), said);
    assertTrue(said.contains("due --called JOB"), said);
    String told = windows();
    assertEquals(Exit.OK, due("--called", "Q-3101"), () -> said);
    assertTrue(said.matches("noted: Q-3101 was told .*, Windows stay up\\R"), said);
    String first = CALLS + "Q-3101,2026-11-24T22:30,windows-up," + told + "\n";
    assertEquals(first, calls(), "the time is that of the shop");
    due();
    assertEquals("No one to call: every card date still ahead is good.", said.strip());
    finished("24", "26");
    due();
    assertTrue(said.startsWith("call  Q-3101 ") && said.contains("    we said "), said);
    assertFalse(said.contains("the card says"), "they know better by now: " + said);
    due("--called", "Q-3101");
    assertEquals(first + "Q-3101,2026-11-24T22:30,windows-up," + windows() + "\n", calls());
    due();
    assertFalse(said.contains("Q-3101"), said);
  }

  @Test
  void whatIsSoonerThanWasSaidByPhoneIsTold() throws IOException {
    due("--called", "Q-3101");
    finished("24", "22");
    due();
    assertTrue(said.startsWith("No one to call"), said);
    assertTrue(said.contains("sooner  Q-3101") && said.contains("    we said "), said);
    due("--called", "Q-3101");
    due();
    assertFalse(said.contains("Q-3101"), said);
  }

  /** Who got a new card since goes by that one. */
  @Test
  void aCardHandedOverSinceCountsMoreThanTheCall() throws IOException {
    due("--called", "Q-3101");
    cards(WINDOWS + "Q-3101,windows-up,safe-by,2026-11-27T14:00-08:00,2026-11-24\n");
    due();
    assertFalse(said.contains("Q-3101"), "on the day of the call: " + said);
    cards(WINDOWS + "Q-3101,windows-up,safe-by,2026-11-27T14:00-08:00,2026-11-25\n");
    due();
    assertTrue(said.startsWith("call  Q-3101 "), said);
  }

  /** They hold a card that is right, so nobody has to call again. */
  @Test
  void aCardOfTheSameDayCountsMoreThanTheCallBeforeIt() throws IOException {
    due("--called", "Q-3101");
    finished("24", "26");
    String row = "Q-3101,windows-up,safe-by," + windows() + ",2026-11-24T";
    cards(WINDOWS + row + "22:00\n");
    due();
    assertTrue(said.startsWith("call  Q-3101 "), "the card came before the call: " + said);
    cards(WINDOWS + row + "22:31\n");
    due();
    assertFalse(said.contains("Q-3101"), said);
  }

  /** What the call said is over, though the cards before and after it say the same. */
  @Test
  void aCardThatSaysAgainWhatTheFirstSaidIsNotedAfterACall() throws IOException {
    cards(WINDOWS.replace("2026-11-26T14:00-08:00", windows()));
    String first = Files.readString(shop.resolve("printed-dates.csv"));
    Files.writeString(
        shop.resolve("calls.csv"),
        CALLS + "Q-3101,2026-11-24T12:00,windows-up,2026-12-03T14:00-08:00\n");
    due();
    assertTrue(said.contains("sooner  Q-3101"), said);
    card();
    String both = Files.readString(shop.resolve("printed-dates.csv"));
    assertTrue(both.startsWith(first) && both.contains(",2026-11-24T23:30\n"), both);
    due();
    assertFalse(said.contains("windows"), said);
    card();
    assertEquals(both, Files.readString(shop.resolve("printed-dates.csv")), "once is enough");
  }

  private void card() {
    Clock clock = Clock.fixed(Instant.parse("2026-11-25T07:30:00Z"), ZoneOffset.UTC);
    Path file = shop.resolve("c.pdf");
    Typed typed = Typed.run(clock, "card", "Q-3101", "--shop", shop, "--out", file);
    assertEquals(Exit.OK, typed.code(), typed::said);
  }

  @Test
  void aVisitThatMovedIsNotedToo() throws IOException {
    cards(WINDOWS + "Q-3101,,visit,2026-12-30,2026-11-24\n");
    due();
    assertTrue(said.contains("visit  Q-3101") && said.contains("we said Wed, Dec 30"), said);
    due("--called", "Q-3101");
    assertTrue(
        calls().lines().anyMatch(l -> l.matches("Q-3101,2026-11-24T22:30,,20\\d\\d-[-0-9]+")));
    due();
    assertFalse(said.contains("Q-3101"), said);
  }

  @Test
  void nothingIsNotedWhereThereIsNothingToTellOrNoSuchJob() throws IOException {
    assertEquals(Exit.PROBLEMS, due("--called", "Q-3110"));
    assertEquals("There is no job Q-3110; did you mean Q-3101?", said.strip());
    assertEquals(Exit.USAGE, due("--called", "Q-3101", "--out", "day.html"));
    cards(WINDOWS.replace("2026-11-26T14:00-08:00", windows()));
    assertEquals(Exit.OK, due("--called", "Q-3101"));
    assertTrue(said.startsWith("There is nothing to tell the customer of Q-3101"), said);
    assertFalse(Files.exists(shop.resolve("calls.csv")));
  }

  @Test
  void aBrokenFileIsSaidAndStaysAsItIs() throws IOException {
    for (String row : List.of("Q-3101,2026-11-24,windows-up,soon", "Q-3101,,,2026-12-01", "x")) {
      String broken = CALLS + row + "\n";
      Files.writeString(shop.resolve("calls.csv"), broken);
      assertEquals(Exit.PROBLEMS, due("--called", "Q-3101"));
      assertTrue(said.contains("calls.csv:2:1  "), said);
      assertEquals(broken, calls());
    }
  }
}
