package curewindow.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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

/** The first map of a table, as it is guessed. */
class FirstMapTest {

  private static final String ENGLISH =
      "Order No.,Customer Name,Plate,Model Year,Body Type,Color,Pickup Time,Pickup Date,Service,Film,Panels,Finished,VLT\n"
          + "Q-3140,Mara,QH 12,2023,Sedan,Black,5:00 PM,11/24/2026,Window tint,Harbor 35,front door windows + rear window,11/24/2026 2:30 PM,28%\n"
          + "Q-3141,Otis,QH 13,2024,Pickup truck,Pearl,5:00 PM,11/25/2026,Window Tint,Harbor 20,Rear Window,11/25/2026 2:30 PM,16%\n";

  @TempDir Path temp;
  private Path shop;

  @BeforeEach
  void layOut() throws IOException {
    shop = Diary.shop(temp.resolve("shop"));
  }

  private GuessedMap guess(String text) {
    return Intake.guess(Diary.table(text), "first", LoadedShop.load(shop, Diary.CLOCK));
  }

  @Test
  void anEnglishTableIsReadAsItIsGuessed() throws IOException {
    GuessedMap map = guess(ENGLISH);
    List<String> errors =
        map.looks().stream().filter(Problem::isError).map(Problem::oneLine).toList();
    assertEquals(List.of(), errors);
    assertTrue(map.text().contains("pickup: [\"Pickup Date\", \"Pickup Time\"]"), map.text());
    assertTrue(map.text().contains("dates: month-first"), map.text());
    assertTrue(map.text().contains("# Not read: \"Plate\""), map.text());
    assertTrue(Intake.keep(map, shop));
    IntakePlan plan =
        Intake.plan(Diary.table(ENGLISH), "first", LoadedShop.load(shop, Diary.CLOCK));
    assertEquals(
        2,
        plan.count(RowPlan.State.GOOD),
        () -> Diary.lines(plan.stops()) + " " + Diary.lines(plan));
    String job = plan.jobs().get("Q-3141");
    assertTrue(job.contains("{year: 2024, body: pickup, paint: light}"), job);
    assertTrue(job.contains("film: harbor-20") && job.contains("[back-glass]"), job);
    assertTrue(plan.jobs().get("Q-3140").contains("[front-door-glass, back-glass]"));
  }

  @Test
  void everyLineToLookAtIsThatLine() {
    GuessedMap map = guess(Diary.HEADINGS + Diary.row("Q-3140", "Harbor 36", "Dach"));
    List<String> lines = map.text().lines().toList();
    assertFalse(map.looks().isEmpty());
    for (Problem look : map.looks()) {
      assertTrue(lines.get(look.line() - 1).contains("# look"), look.oneLine());
      assertEquals("imports/first.yaml", look.file());
    }
    assertEquals(map.looks().size(), lines.stream().filter(l -> l.contains("# look")).count());
    assertTrue(map.looks().stream().anyMatch(Problem::isError));
  }

  @Test
  void spanishAndArabicHeadingsAreKnown() {
    GuessedMap spanish =
        guess(
            "Folio;Nombre;Carrocer\u00EDa;Pel\u00EDcula;Teléfono\n1;Ana;sed\u00E1n;Harbor 35;1\n");
    for (String line :
        List.of(
            "job: \"Folio\"",
            "first-name: \"Nombre\"",
            "film: \"Pel\u00EDcula\"",
            "\"sed\u00E1n\": sedan")) {
      assertTrue(spanish.text().contains(line), spanish.text());
    }
    assertFalse(spanish.text().contains("  \"Tel"), spanish.text());
    GuessedMap arabic =
        guess(
            "\u0631\u0642\u0645 \u0627\u0644\u0637\u0644\u0628,\u0627\u0644\u0644\u0648\u0646\n1,\u0623\u0633\u0648\u062F\n");
    assertTrue(arabic.text().contains("job: ") && arabic.text().contains(": dark"), arabic.text());
  }

  @Test
  void aFilmOfAnotherNumberIsNotTheSameFilm() {
    GuessedMap map = guess(ENGLISH.replace("Harbor 35", "Harbor 36"));
    assertTrue(map.text().contains("# \"Harbor 36\": # look: which film is it?"), map.text());
  }

  @Test
  void whatTheDatesDoNotTellIsAsked() {
    GuessedMap map = guess(ENGLISH.replace("11/24/", "11/04/").replace("11/25/", "11/05/"));
    assertTrue(map.text().contains("# dates: day-first # look"), map.text());
  }

  @Test
  void oddHeadingsAndNamesMakeAMapThatCanBeRead() throws IOException {
    String odd =
        "\"Fil\"\"m: {x}\u0007 #\",\"- a\nb\",Film,\u202Ex\nq,\"# \\ \"\"\",\"a: \"\"b\u0000\",\u2028\n";
    GuessedMap map = guess(odd);
    assertTrue(Intake.keep(map, shop));
    IntakePlan plan = Intake.plan(Diary.table(odd), "first", LoadedShop.load(shop, Diary.CLOCK));
    assertTrue(
        plan.stops().stream().allMatch(p -> p.code().equals("missing-column")),
        "" + Diary.lines(plan.stops()));
  }

  @Test
  void aMapThatIsThereIsKept() throws IOException {
    String mine = Files.readString(shop.resolve("imports/diary.yaml"));
    assertFalse(
        Intake.keep(
            Intake.guess(Diary.table(ENGLISH), "diary", LoadedShop.load(shop, Diary.CLOCK)), shop));
    assertEquals(mine, Files.readString(shop.resolve("imports/diary.yaml")));
  }
}
