package curewindow.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import curewindow.shop.ImportMap;
import curewindow.shop.ImportMaps;
import curewindow.site.LoadedShop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A map that is told in a form is written, read again, and changed without losing anything. */
class MapTextTest {

  private static final String MAP =
      Diary.MAP
          + "  lacks: {\"x # y: \\\"z\\\"\": [rolls, wipers]}\n"
          + "hours: {pickup: \"16:30\"}\ndates: day-first\nspots-between: \" / \"\n";

  @TempDir Path shop;

  @BeforeEach
  void layOut() throws IOException {
    Diary.shop(shop);
  }

  private static ImportMap map(String text) {
    Problems problems = new Problems();
    ImportMap map = ImportMaps.of("diary", text, problems).orElseThrow();
    assertEquals(List.of(), problems.all());
    return map;
  }

  private static String bare(ImportMap map) {
    // Where a heading stands is another line in another text.
    return map.toString().replaceAll("where=Where\\[[^]]*]", "");
  }

  @Test
  void whatIsWrittenIsReadAsItWas() {
    ImportMap map = map(MAP);
    String text = MapText.of(map);
    assertEquals(bare(map), bare(map(text)));
    assertEquals(text, MapText.of(map(text)));
    assertTrue(text.contains("[\"rolls\", \"wipers\"]"), text);
  }

  @Test
  void onlyWhatHasNoNotesIsWrittenAnew() {
    String text = MapText.of(map(MAP));
    assertTrue(MapText.isOurs("diary", text));
    assertTrue(MapText.isOurs("diary", text.replace("hafen 35", "Hafen 35")), "as a table has it");
    assertFalse(MapText.isOurs("diary", text + "# a note\n"));
    assertFalse(MapText.isOurs("diary", MAP), "by hand");
    assertFalse(MapText.isOurs("diary", "columns: ["));
  }

  @Test
  void aMapThatLacksColumnsIsUnfinishedAndABrokenOneIsNone() {
    String lacking = Diary.MAP.replace("  film: Folie\n", "");
    assertTrue(ImportMaps.of("diary", lacking, new Problems()).isEmpty());
    assertFalse(ImportMaps.unfinished("diary", lacking).orElseThrow().columns().isEmpty());
    assertTrue(ImportMaps.unfinished("diary", Diary.MAP.replace("film:", "movie:")).isEmpty());
  }

  @Test
  void aMapIsChangedOnlyAsItStood() throws IOException {
    String now = Files.readString(shop.resolve("imports/diary.yaml"));
    assertEquals(List.of("diary"), Intake.maps(shop));
    assertFalse(Intake.keep("diary", "columns: {}\n", Optional.empty(), shop), "it is there");
    assertFalse(Intake.keep("diary", "columns: {}\n", Optional.of(now + " "), shop));
    assertEquals(now, Files.readString(shop.resolve("imports/diary.yaml")));
    assertTrue(Intake.keep("diary", MapText.of(map(MAP)), Optional.of(now), shop));
    assertEquals(MapText.of(map(MAP)), Files.readString(shop.resolve("imports/diary.yaml")));
    assertFalse(Intake.keep("other", MAP, Optional.of(now), shop), "it is gone");
    assertTrue(Intake.keep("other", MAP, Optional.empty(), shop));
    assertEquals(List.of("diary", "other"), Intake.maps(shop));
    assertThrows(
        IllegalArgumentException.class, () -> Intake.keep("../x", MAP, Optional.empty(), shop));
  }

  @Test
  void aGlanceShowsWhatIsToBeTold() {
    ForeignTable table =
        Diary.table(
            Diary.HEADINGS
                + Diary.row("Q-3140", "Hafen 35", "Heckscheibe, Dach")
                + Diary.row("Q-3141", "Harbor-35", "Dach")
                + Diary.row("Q-3142", "HAFEN 35", "hood fender"));
    TableGlance glance =
        new TableGlance(table, LoadedShop.load(shop, Diary.CLOCK).read().catalogue());
    assertEquals(
        "Auftrag Q-3140",
        glance.headings().get(0).text() + " " + glance.headings().get(0).sample());
    ImportMap map = map(Diary.MAP);
    assertEquals(List.of("Hafen 35"), glance.names("film", map, List.of()), "harbor-35 is ours");
    assertEquals(List.of("Heckscheibe", "Dach"), glance.names("spots", map, List.of()));
    assertEquals(List.of("Viertürer"), glance.names("body", map, List.of()));
    assertEquals(List.of(), glance.names("body", map, List.of("Viertürer")));
    assertEquals(
        List.of("Abholtag", "Abholzeit"),
        glance.inOrder("pickup", List.of("Abholzeit", "Abholtag")));
    assertEquals(List.of("Rolle", "Folie"), glance.inOrder("batch", List.of("Rolle", "Folie")));
    assertEquals(
        List.of("light", "mid", "dark"),
        TableGlance.ours("paint", LoadedShop.load(shop, Diary.CLOCK).read().catalogue()));
  }
}
