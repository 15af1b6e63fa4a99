package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.calendar.CareEvent;
import curewindow.calendar.Revisions;
import curewindow.calendar.Revisions.Revision;
import curewindow.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Dates given out are remembered from press to press. */
class CalendarDatesTest {

  private static final Instant PICKUP = Instant.parse("2026-11-25T01:00:00Z");
  private static final Instant LATER = Instant.parse("2026-11-28T09:30:00Z");
  private static final Revision FIRST = new Revision(0, PICKUP);
  private static final CareEvent.Start FRIDAY =
      new CareEvent.At(Instant.parse("2026-11-27T22:00:00Z"));
  private static final CareEvent.Start SATURDAY =
      new CareEvent.At(Instant.parse("2026-11-28T22:00:00Z"));
  private static final CareEvent.Start YEARLY =
      new CareEvent.Day(LocalDate.of(2027, 11, 24), 12, 9);

  @TempDir Path dir;

  private static CareEvent event(String name, CareEvent.Start start, String text) {
    return new CareEvent(name, start, text, "details", Optional.empty(), true);
  }

  private CalendarDates read() {
    Problems problems = new Problems();
    CalendarDates dates = CalendarDates.read(dir, problems).orElseThrow();
    assertEquals(List.of(), problems.all());
    return dates;
  }

  private Revisions press(Instant now, CareEvent... events) throws IOException {
    CalendarDates dates = read();
    Revisions revisions = dates.note("K-1", "", List.of(events), now, FIRST);
    dates.save();
    return revisions;
  }

  @Test
  void whatDoesNotChangeKeepsItsRevisionAndTheFileItsBytes() throws IOException {
    CareEvent once = event("replace", new CareEvent.Day(LocalDate.of(2036, 11, 24), 12, 1), "r");
    press(PICKUP, event("windows-up", FRIDAY, "a"), event("check", YEARLY, "b"), once);
    String before = Files.readString(dir.resolve(CalendarDates.FILE));
    Revisions again =
        press(LATER, event("windows-up", FRIDAY, "a"), event("check", YEARLY, "b"), once);
    assertEquals(Map.of("windows-up", FIRST, "check", FIRST, "replace", FIRST), again.of());
    assertEquals(before, Files.readString(dir.resolve(CalendarDates.FILE)));
  }

  /** RFC 5546 2.1.4, from memory: the sequence rises with the date, not with the words. */
  @Test
  void aMovedDateHasAHigherNumberAndAnotherTextOnlyANewerTime() throws IOException {
    press(PICKUP, event("windows-up", FRIDAY, "a"));
    assertEquals(
        new Revision(1, LATER),
        press(LATER, event("windows-up", SATURDAY, "a")).of().get("windows-up"));
    Instant third = LATER.plusSeconds(60);
    assertEquals(
        new Revision(2, third),
        press(third, event("windows-up", FRIDAY, "a")).of().get("windows-up"));
    Instant fourth = LATER.plusSeconds(120);
    assertEquals(
        new Revision(2, fourth),
        press(fourth, event("windows-up", FRIDAY, "b")).of().get("windows-up"));
  }

  @Test
  void whatIsNoLongerThereIsTakenBackAndMayComeAgain() throws IOException {
    press(PICKUP, event("windows-up", FRIDAY, "a"), event("haze", SATURDAY, "b"));
    List<Revisions.Gone> gone = press(LATER, event("windows-up", FRIDAY, "a")).gone();
    assertEquals(List.of(new Revisions.Gone("haze", SATURDAY, new Revision(1, LATER))), gone);
    Instant third = LATER.plusSeconds(60);
    assertEquals(gone, press(third, event("windows-up", FRIDAY, "a")).gone());
    Revisions back = press(third, event("windows-up", FRIDAY, "a"), event("haze", SATURDAY, "b"));
    assertEquals(List.of(), back.gone());
    assertEquals(new Revision(2, third), back.of().get("haze"));
  }

  @Test
  void aBrokenFileIsTold() throws IOException {
    press(PICKUP, event("windows-up", FRIDAY, "a"));
    Path file = dir.resolve(CalendarDates.FILE);
    String good = Files.readString(file);
    for (String bad :
        List.of(
            good.replace("T22:00:00Z", "T22:61:00Z"),
            good.replace(",0,", ",-1,"),
            good.replace("job,", "jobs,"),
            good.replace("2026-11-27T22:00:00Z", "2026-11-27/P0M/2"))) {
      Files.writeString(file, bad);
      Problems problems = new Problems();
      assertTrue(CalendarDates.read(dir, problems).isEmpty(), bad);
      assertTrue(problems.hasErrors());
    }
  }
}
