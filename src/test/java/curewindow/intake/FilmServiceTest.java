package curewindow.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.site.LoadedShop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A film is for one service, so a table need not tell it. */
class FilmServiceTest {

  @TempDir Path temp;
  private Path shop;

  @BeforeEach
  void layOut() throws IOException {
    shop = Diary.shop(temp.resolve("shop"));
    Diary.map(shop, Diary.MAP.replace("service: tint, ", ""));
  }

  private List<Problem> left(String row) {
    IntakePlan plan = Diary.plan(shop, Diary.HEADINGS + row);
    assertEquals(List.of(), plan.stops());
    assertEquals(List.of(RowPlan.State.LEFT), Diary.states(plan));
    return plan.rows().get(0).problems();
  }

  @Test
  void withoutAColumnTheFilmTellsIt() throws IOException {
    IntakePlan done =
        Diary.carryOut(shop, Diary.HEADINGS + Diary.row("Q-3140", "Hafen 35", "Heckscheibe"));
    assertEquals(List.of(RowPlan.State.GOOD), Diary.states(done));
    LoadedShop loaded = LoadedShop.load(shop, Diary.CLOCK);
    assertEquals("tint", loaded.job("Q-3140").orElseThrow().items().get(0).service());
  }

  @Test
  void whereTheCellIsEmptyTheFilmTellsItToo() throws IOException {
    Diary.map(
        shop,
        Diary.MAP
            .replace("service: tint, ", "")
            .replace("  batch: Rolle", "  batch: Rolle\n  service: Art"));
    String head = Diary.HEADINGS.replace("\n", ";Art\n");
    IntakePlan plan =
        Diary.plan(
            shop,
            head
                + Diary.row("Q-3140", "Hafen 35", "Heckscheibe").replace("\n", ";\n")
                + Diary.row("Q-3141", "Hafen 35", "Heckscheibe").replace("\n", ";wrap\n"));
    assertEquals(List.of(RowPlan.State.GOOD, RowPlan.State.LEFT), Diary.states(plan));
    assertEquals("film-of-another-service", plan.rows().get(1).problems().get(0).code());
  }

  @Test
  void aFilmThatIsNotKnownIsOneProblemAtItsRow() {
    List<Problem> problems = left(Diary.row("Q-3140", "Nube 35", "Heckscheibe"));
    assertEquals(1, problems.size(), Diary.lines(problems).toString());
    assertEquals("unknown-film", problems.get(0).code());
    assertEquals(2, problems.get(0).line());
  }

  @Test
  void aFilmThatIsMissingIsOneProblemAtItsRow() {
    List<Problem> problems = left(Diary.row("Q-3140", "", "Heckscheibe"));
    assertEquals(1, problems.size(), Diary.lines(problems).toString());
    assertTrue(problems.get(0).message().endsWith("film is missing"), problems.get(0).message());
  }

  /** Two films of one trade name, for other work: only a map can tell which one is meant. */
  @Test
  void aNameOfSeveralFilmsIsOneProblemAtItsRow() throws IOException {
    Path films = shop.resolve("content/catalogue/films.yaml");
    String text = Files.readString(films);
    Files.writeString(
        films,
        text
            + "  harbor-wrap: {service: wrap, name: Harbor 35, material: PVC, thickness: 100,"
            + " permeance: 5}\n");
    Diary.map(shop, Diary.MAP.replace("service: tint, ", "").replace("Hafen 35: harbor-35, ", ""));
    List<Problem> problems = left(Diary.row("Q-3140", "Harbor 35", "Heckscheibe"));
    assertEquals(1, problems.size(), Diary.lines(problems).toString());
    assertEquals("film-of-several-services", problems.get(0).code());
    assertEquals(2, problems.get(0).line());
    Diary.map(shop, Diary.MAP.replace("service: tint, ", "").replace("Hafen 35:", "Harbor 35:"));
    IntakePlan told =
        Diary.plan(shop, Diary.HEADINGS + Diary.row("Q-3140", "Harbor 35", "Heckscheibe"));
    assertEquals(List.of(RowPlan.State.GOOD), Diary.states(told));
  }
}
