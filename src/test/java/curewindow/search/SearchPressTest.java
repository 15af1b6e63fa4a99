package curewindow.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import curewindow.shop.ShopFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SearchPressTest {

  private static final ShopFiles OWN = new ShopFiles(Path.of("no-such-shop"));

  private static final LanguageTexts VOLUME =
      new LanguageTexts(
          "en",
          List.of(
              new Entry("¿Por qué se ve turbio el cristal?", "Hay agua detrás de la lámina."),
              new Entry("First wash", "By hand, with a soft cloth."),
              new Entry("There are bubbles", "Leave them. Do not wash yet."),
              new Entry("متى أغسل السيارة؟", "لا تفتح النوافذ قبل المَوعد.")),
          IndexWord.read(
              "wash: wash: laundry rinse\nlámina: lamina\nsomething else: else\n\nsoft cloth\nbubbles: bubble: blisters"));

  private static Lookup lookup() {
    Problems problems = new Problems();
    Lookup lookup =
        SearchPress.read(OWN, problems)
            .orElseThrow()
            .press(List.of(VOLUME), problems)
            .orElseThrow()
            .get(0);
    assertEquals(List.of(), problems.all());
    return lookup;
  }

  @Test
  void headwordsNameTitlesBeforeTexts() {
    assertEquals(
        List.of(List.of(1, 2), List.of(0), List.of(), List.of(1), List.of(2)), lookup().places());
  }

  @Test
  void sameTextsGiveTheSameBytes() {
    assertEquals(lookup(), lookup());
  }

  @ParameterizedTest
  @CsvSource({
    "wash, 1",
    "WASHING, 1",
    "wahs cloth, 1",
    "bubles, 2",
    "blister, 2",
    "laundry, 1",
    "can I do my laundry now, 1",
    "when do I see bub bles, 2",
    "do I have to leave it, 2",
    "bub, 2",
    "lamina, 0",
    "LÁMINAS, 0",
    "turbios, 0",
    "سيارة, 3",
    "السياره, 3",
    "نوافذ, 3",
    "موعد, 3",
    "zzzz, ''",
    "'?!*~^:+-', ''"
  })
  void findsWhatWasMeantFirst(String asked, String first) {
    assertEquals(first, first(lookup(), asked));
  }

  /** The number of the entry that is found first, or nothing. */
  private static String first(Lookup lookup, String asked) {
    try (Engine engine = new Engine()) {
      SearchPress press = SearchPress.read(OWN, new Problems()).orElseThrow();
      engine.run(press.script(), "script");
      engine.run(
          "lookup.first = function (json, asked) { var f = lookup.ask(lookup.open(JSON.parse(json)),"
              + " asked, 'en'); return f.length ? String(f[0].n) : ''; }",
          "test");
      return engine.text("first", lookup.index(), asked);
    }
  }

  /** As from an address that somebody made up; a browser stood still for 18 seconds. */
  @ParameterizedTest
  @ValueSource(strings = {"x", "wash", "washabcdefghijkl ", "lámina wash ", "سيارة"})
  void aQuestionOfManySignsIsAnsweredAtOnce(String piece) {
    Lookup lookup = lookup();
    String asked = piece.repeat(4000 / piece.length());
    assertTimeoutPreemptively(Duration.ofSeconds(20), () -> first(lookup, asked));
  }

  @Test
  void whatBeginsALongQuestionIsStillFound() {
    assertEquals("1", first(lookup(), "first wash " + "zzzz ".repeat(100)));
  }

  @Test
  void theScriptCarriesTheLibrarysLicence() {
    String script = SearchPress.read(OWN, new Problems()).orElseThrow().script();
    assertTrue(script.startsWith("/*\nCopyright (C) 2013 by Oliver Nightingale"));
    assertTrue(script.contains("THE SOFTWARE IS PROVIDED \"AS IS\""));
    assertFalse(script.contains("</"), "it can stand inside a page");
  }

  @Test
  void aMistakeInTheScriptIsAProblemWithItsLine(@TempDir Path folder) throws IOException {
    Path own = Files.createDirectories(folder.resolve("site-templates")).resolve("search.js");
    for (String script :
        List.of(
            "// fine\nvar lookup = {;",
            "// fine\nvar lookup = {words: function () { return java.lang.System.exit(1); }};",
            "// fine\nthrow new Error('no');")) {
      Files.writeString(own, script);
      Problems problems = new Problems();
      assertTrue(
          SearchPress.read(new ShopFiles(folder), problems)
              .orElseThrow()
              .press(List.of(VOLUME), problems)
              .isEmpty());
      assertEquals("script-mistake", problems.all().get(0).code());
      assertEquals(2, problems.all().get(0).line());
    }
  }
}
