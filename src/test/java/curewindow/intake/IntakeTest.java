package curewindow.intake;

import static curewindow.intake.Diary.HEADINGS;
import static curewindow.intake.Diary.row;
import static curewindow.intake.RowPlan.State.GOOD;
import static curewindow.intake.RowPlan.State.LEFT;
import static curewindow.intake.RowPlan.State.THERE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import curewindow.site.LoadedShop;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows of another program become jobs, and none is lost on the way. */
class IntakeTest {

  private static final String GOOD_JOB =
      String.join(
          "\n",
          "id: Q-3140",
          "first-name: J\u00F6rg",
          "car: {body: sedan, paint: dark, text: schwarzer Wagen}",
          "parking: {day: outside, night: garage}",
          "pickup: 2026-11-24T17:00",
          "items:",
          "  - service: tint",
          "    film: harbor-35",
          "    spots: [front-door-glass, back-glass]",
          "    finished: 2026-11-24T14:30",
          "    vlt: 28.5",
          "    batch: H-1",
          "");

  @TempDir Path temp;
  private Path shop;

  @BeforeEach
  void layOut() throws IOException {
    shop = Diary.shop(temp.resolve("shop"));
  }

  @Test
  void aTableInWindows1252WithDecimalCommasBecomesJobs() throws IOException {
    String text = HEADINGS + row("Q-3140", "Hafen 35", "Vordere T\u00FCren, Heckscheibe");
    ForeignTable table = Diary.table(text, Charset.forName("windows-1252"));
    IntakePlan done = Intake.carryOut(table, "diary", shop, Diary.CLOCK);
    assertEquals(List.of(GOOD), Diary.states(done));
    assertEquals(Map.of("Q-3140.yaml", GOOD_JOB), Diary.jobs(shop));
    assertEquals(
        "diary.csv is read as Windows-1252, columns separated by semicolons",
        done.notes().get(0).message());
    assertTrue(done.notes().get(1).message().contains("day-first, as line 2 has \"24.11.2026\""));
    assertEquals(1, LoadedShop.load(shop, Diary.CLOCK).jobs().size());
    assertTrue(done.rest().isEmpty());
  }

  @Test
  void tabsAndUtf16MakeTheSameJob() throws IOException {
    String text = HEADINGS + row("Q-3140", "Hafen 35", "Vordere T\u00FCren, Heckscheibe");
    byte[] bytes = ("\uFEFF" + text.replace(';', '\t')).getBytes(StandardCharsets.UTF_16LE);
    ForeignTable table = ForeignTable.of("t", bytes, new Problems()).orElseThrow();
    Intake.carryOut(table, "diary", shop, Diary.CLOCK);
    assertEquals(GOOD_JOB, Diary.jobs(shop).get("Q-3140.yaml"));
  }

  @Test
  void rowsOfOneJobAreJoinedAndMayNotDiffer() throws IOException {
    String second = row("Q-3140", "Hafen 20", "Heckscheibe");
    String text = HEADINGS + row("Q-3140", "Hafen 35", "Vordere T\u00FCren") + second;
    IntakePlan done = Diary.carryOut(shop, text);
    assertEquals(List.of(GOOD, GOOD), Diary.states(done));
    String job = Diary.jobs(shop).get("Q-3140.yaml");
    assertTrue(job.contains("film: harbor-35") && job.contains("film: harbor-20"), job);
    IntakePlan other =
        Diary.plan(
            shop,
            text.replace("Q-3140", "Q-3141")
                + row("Q-3141", "Hafen 20", "x").replace("schwarzer", "grauer"));
    assertEquals(List.of(LEFT, LEFT, LEFT), Diary.states(other));
    assertTrue(
        Diary.lines(other).stream()
            .anyMatch(
                l ->
                    l.startsWith("diary.csv:4:") && l.contains("\"Fahrzeug\" differs from line 2")),
        Diary.lines(other).toString());
    assertTrue(
        Diary.lines(other).get(0).contains("another row of the same job has a problem, in line 4"));
  }

  @Test
  void aPlanWritesNothing() throws IOException {
    IntakePlan plan = Diary.plan(shop, HEADINGS + row("Q-3140", "Hafen 35", "Heckscheibe"));
    assertEquals(1, plan.jobs().size());
    assertEquals(Map.of(), Diary.jobs(shop));
  }

  @Test
  void whatIsThereIsPassedOverOrRefusedButNeverWrittenOver() throws IOException {
    String text = HEADINGS + row("Q-3140", "Hafen 35", "Heckscheibe");
    Diary.carryOut(shop, text);
    assertEquals(List.of(THERE), Diary.states(Diary.carryOut(shop, text)));
    Path file = shop.resolve("jobs/Q-3140.yaml");
    String commented = "# mine\n" + Files.readString(file);
    Files.writeString(file, commented);
    assertEquals(List.of(THERE), Diary.states(Diary.carryOut(shop, text)));
    IntakePlan other = Diary.carryOut(shop, text.replace("28,5", "30"));
    assertEquals(List.of(LEFT), Diary.states(other));
    assertTrue(
        Diary.lines(other).get(0).contains("says something else"), Diary.lines(other).toString());
    assertEquals(List.of(LEFT), Diary.states(Diary.carryOut(shop, text.replace("Q-", "q-"))));
    Files.writeString(file, "id: Q-3140\n");
    IntakePlan broken = Diary.carryOut(shop, text);
    assertTrue(
        Diary.lines(broken).get(0).contains("is there already"), Diary.lines(broken).toString());
    Files.writeString(file, commented.replace("Q-3140", "Q-1"));
    IntakePlan named = Diary.carryOut(shop, text);
    assertTrue(
        Diary.lines(named).get(0).contains("there is a file jobs/Q-3140.yaml"),
        Diary.lines(named).toString());
    assertEquals(commented.replace("Q-3140", "Q-1"), Files.readString(file));
  }

  @Test
  void problemsStandAtTheirCellInTheirWords() throws IOException {
    String bad = row("Q-3141", "Hafen 36", "Dach");
    IntakePlan plan =
        Diary.plan(
            shop,
            HEADINGS
                + bad
                + row("Q-3142", "", "Heckscheibe")
                + row("Q-3143", "Hafen 35", "Heckscheibe").replace("24.11.2026 14:30", "24.11.2026")
                + row("Q-3144", "Hafen 35", "Heckscheibe").replace("24.11.2026 14:30", "bald")
                + row("Q-3145", "Hafen 35", "Heckscheibe").replace("28,5", "heil"));
    List<String> lines = Diary.lines(plan);
    String first =
        "diary.csv:2:" + (bad.indexOf("Hafen") + 1) + "  \"Folie\": no film is called Hafen 36";
    assertTrue(lines.get(0).startsWith(first), lines.toString());
    assertTrue(lines.get(0).contains("under names in imports/diary.yaml"), lines.get(0));
    assertTrue(lines.get(1).contains("\"Stelle\": no spot is called Dach"), lines.get(1));
    assertTrue(
        lines.get(2).startsWith("diary.csv:3:")
            && lines.get(2).contains("\"Folie\": film is missing"),
        lines.get(2));
    assertTrue(
        lines
            .get(3)
            .contains(
                "\"Fertig\": finished has a date without an hour  add the hour, or write under hours"),
        lines.get(3));
    assertTrue(lines.get(4).contains("\"Fertig\": finished is not a time: bald"), lines.get(4));
    assertTrue(lines.get(5).contains("\"Messung\": vlt should be a number"), lines.get(5));
    assertEquals(6, lines.size());
  }

  @Test
  void datesThatCannotBeToldStopAllUntilTheMapSays() throws IOException {
    String text = (HEADINGS + row("Q-3140", "Hafen 35", "Heckscheibe")).replace("24.11.", "02.03.");
    IntakePlan unsure = Diary.carryOut(shop, text);
    assertEquals(List.of(), unsure.rows());
    assertEquals(Map.of(), Diary.jobs(shop));
    String line = Diary.lines(unsure.stops()).get(0);
    assertTrue(line.contains("\"02.03.2026\", which may be 2026-03-02 or 2026-02-03"), line);
    assertTrue(line.contains("dates: day-first or dates: month-first"), line);
    Diary.map(shop, "dates: month-first\n" + Diary.MAP);
    assertEquals(List.of(GOOD), Diary.states(Diary.carryOut(shop, text)));
    assertTrue(Diary.jobs(shop).get("Q-3140.yaml").contains("finished: 2026-02-03T14:30"));
  }

  @Test
  void oneColumnTellsAnother() {
    String text =
        HEADINGS
            + row("Q-3140", "Hafen 35", "Heckscheibe")
                .replace("24.11.2026 14:30", "02.03.26 14:30");
    IntakePlan plan = Diary.plan(shop, text);
    assertEquals(List.of(GOOD), Diary.states(plan), Diary.lines(plan).toString());
    assertTrue(plan.jobs().get("Q-3140").contains("finished: 2026-03-02T14:30"));
  }

  @Test
  void hoursStandInWhereThereIsADayAlone() throws IOException {
    Diary.map(shop, "hours: {finished: \"16:00\"}\n" + Diary.MAP);
    for (String day : List.of("24.11.2026", "24.11.2026 00:00:00")) {
      String text =
          HEADINGS + row("Q-3140", "Hafen 35", "Heckscheibe").replace("24.11.2026 14:30", day);
      assertTrue(
          Diary.plan(shop, text).jobs().get("Q-3140").contains("finished: 2026-11-24T16:00"));
    }
  }

  /** Some programs write the first day of their calendar with each time: common practice. */
  @Test
  void aTimeMayHaveADayThatMeansNothing() {
    String text =
        HEADINGS
            + row("Q-3140", "Hafen 35", "Heckscheibe")
                .replace(";17:00;", ";30.12.1899 17:00:00;")
                .replace("24.11.2026;", "24.11.2026 00:00:00;");
    IntakePlan plan = Diary.plan(shop, text);
    assertTrue(
        plan.jobs().get("Q-3140").contains("pickup: 2026-11-24T17:00"),
        Diary.lines(plan).toString());
  }

  @Test
  void headingsThatAreNotThereStopAllWithTheLineOfTheMap() throws IOException {
    Diary.map(shop, Diary.MAP.replace("film: Folie", "film: Folje"));
    IntakePlan plan = Diary.carryOut(shop, HEADINGS + row("Q-3140", "Hafen 35", "Heckscheibe"));
    assertEquals(
        List.of(
            "imports/diary.yaml:8:9  diary.csv has no heading \"Folje\"  did you mean \"Folie\"?"),
        Diary.lines(plan.stops()));
    String twice = HEADINGS.replace("Vorname", "Folie") + row("Q-3140", "Hafen 35", "Heckscheibe");
    Diary.map(shop, Diary.MAP.replace("  first-name: Vorname\n", ""));
    assertTrue(Diary.lines(Diary.plan(shop, twice).stops()).get(0).contains("\"Folie\" twice"));
  }

  @Test
  void aBrokenShopIsToldAndNothingIsWritten() throws IOException {
    Files.writeString(shop.resolve("shop.yaml"), "name: [\n");
    IntakePlan plan = Diary.carryOut(shop, HEADINGS + row("Q-3140", "Hafen 35", "Heckscheibe"));
    assertFalse(plan.stops().isEmpty());
    assertEquals(Map.of(), Diary.jobs(shop));
  }
}
