package curewindow.intake;

import static curewindow.intake.Diary.HEADINGS;
import static curewindow.intake.Diary.row;
import static curewindow.intake.RowPlan.State.GOOD;
import static curewindow.intake.RowPlan.State.LEFT;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import curewindow.shop.Job;
import curewindow.site.LoadedShop;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever stands in a cell, the good rows around it come in, and it does no harm. */
class HostileTableTest {

  @TempDir Path temp;
  private Path shop;

  @BeforeEach
  void layOut() throws IOException {
    shop = Diary.shop(temp.resolve("shop"));
  }

  private IntakePlan around(String row) throws IOException {
    return Diary.carryOut(
        shop,
        HEADINGS
            + row("Q-3140", "Hafen 35", "Heckscheibe")
            + row
            + row("Q-3142", "Hafen 35", "Heckscheibe"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=HYPERLINK(0)",
        "@SUM(1)",
        "{{x}}",
        "a: b",
        "- x",
        "# x",
        "&x *x",
        "true",
        "null",
        "!!x",
        "'",
        "\\",
        "[1",
        "%x",
        "~",
        "0x1F",
        "1e3",
        "2026-11-24",
        "<b>&amp"
      })
  void textStaysTheTextItIs(String text) throws IOException {
    String row = row("Q-3141", "Hafen 35", "Heckscheibe").replace("schwarzer Wagen", text);
    assertEquals(List.of(GOOD, GOOD, GOOD), Diary.states(around(row)));
    Job job = LoadedShop.load(shop, Diary.CLOCK).job("Q-3141").orElseThrow();
    assertEquals(text, job.car().text());
  }

  @ParameterizedTest
  @ValueSource(strings = {"\u0007", "\u001B[31m", "\u202E", "\u0000", "a\u2028b", "\"a\nid: x\""})
  void whatNoJobMayHoldIsToldWithItsCell(String text) throws IOException {
    String bad = row("Q-3141", "Hafen 35", "Heckscheibe").replace("schwarzer Wagen", text);
    IntakePlan done = around(bad);
    assertEquals(List.of(GOOD, LEFT, GOOD), Diary.states(done));
    String line = Diary.lines(done).get(0);
    int column = bad.indexOf("schwarz;") + "schwarz;".length() + 1;
    assertTrue(line.startsWith("diary.csv:3:" + column + "  \"Fahrzeug\": "), line);
    assertTrue(line.codePoints().noneMatch(c -> Character.getType(c) == Character.CONTROL), line);
  }

  @ParameterizedTest
  @ValueSource(strings = {"../../x", "CON", "a/b", "x.yaml", "Q 1", "\u00C4"})
  void anIdThatIsNoFileNameIsRefused(String id) throws IOException {
    IntakePlan done = around(row(id, "Hafen 35", "Heckscheibe"));
    assertEquals(List.of(GOOD, LEFT, GOOD), Diary.states(done));
    assertTrue(Diary.lines(done).get(0).contains("\"Auftrag\": the id"), "" + Diary.lines(done));
    assertEquals(2, Diary.jobs(shop).size());
  }

  @Test
  void aCellOfTenMegabytesCostsOnlyItsRow() throws IOException {
    String large = "x".repeat(10 << 20);
    for (String cell : List.of("schwarzer Wagen", "Q-3141", "24.11.2026 14:30", "Hafen 35")) {
      layOutAnew();
      IntakePlan done = around(row("Q-3141", "Hafen 35", "Heckscheibe").replace(cell, large));
      assertEquals(List.of(GOOD, LEFT, GOOD), Diary.states(done));
      String line = Diary.lines(done).get(0);
      assertTrue(line.contains("has 10485760 characters") && line.length() < 300, cell);
      assertTrue(done.rest().orElseThrow().length > large.length());
    }
  }

  private void layOutAnew() throws IOException {
    for (String job : Diary.jobs(shop).keySet()) {
      Files.delete(shop.resolve("jobs").resolve(job));
    }
  }

  @Test
  void rowsOfOddWidthsAreToldAndTrailingSeparatorsAreNot() throws IOException {
    IntakePlan done =
        around(
            row("Q-3141", "Hafen 35", "Heckscheibe").replace("\n", ";;\n")
                + row("Q-3143", "Hafen 35", "Heckscheibe").replace("\n", ";;x\n")
                + "Q-3144;x\n;;;;;\n"
                + row("", "Hafen 35", "Heckscheibe"));
    assertEquals(List.of(GOOD, GOOD, LEFT, LEFT, LEFT, GOOD), Diary.states(done));
    List<String> lines = Diary.lines(done);
    assertTrue(lines.get(0).contains("the row has 14 cells, the headings are 12"), lines.get(0));
    assertTrue(lines.get(1).contains("the row has 2 cells"), lines.get(1));
    assertTrue(lines.get(2).contains("the row names no job"), lines.get(2));
  }

  /**
   * Whatever is done to the bytes of a table, each row is told or written, and no fault comes up.
   */
  @Test
  void spoiltTablesNeverBringOutAFault() throws IOException {
    Random random = new Random(7);
    StringBuilder text = new StringBuilder(HEADINGS);
    for (int i = 0; i < 6; i++) {
      text.append(row("Q-32" + i, "Hafen 35", "Vordere T\u00FCren, Heckscheibe"));
    }
    byte[] whole = text.toString().getBytes(StandardCharsets.UTF_8);
    byte[] odd = ";\",\n\r\t\u0000x9.".getBytes(StandardCharsets.UTF_8);
    int told = 0;
    for (int i = 0; i < 120; i++) {
      byte[] spoilt = whole.clone();
      for (int j = 0; j <= i % 5; j++) {
        spoilt[random.nextInt(spoilt.length)] = odd[random.nextInt(odd.length)];
      }
      Optional<ForeignTable> table = ForeignTable.of("diary.csv", spoilt, new Problems());
      if (table.isPresent()) {
        IntakePlan plan = Intake.plan(table.get(), "diary", LoadedShop.load(shop, Diary.CLOCK));
        assertTrue(
            Diary.lines(plan).stream().noneMatch(l -> l.contains("fault")), "" + Diary.lines(plan));
        assertTrue(!plan.stops().isEmpty() || plan.rows().size() == table.get().size());
        told += plan.count(LEFT) > 0 ? 1 : 0;
      }
    }
    assertTrue(told > 20, "spoilt tables that had anything to tell: " + told);
  }
}
