package curewindow.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import curewindow.shop.ShopFiles;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.mozilla.javascript.Context;
import org.mozilla.javascript.Scriptable;
import org.mozilla.javascript.ScriptableObject;

/** The words of the printed index, and the script that searches, run as a browser runs it. */
class LookupTest {

  private static final ShopFiles OWN = new ShopFiles(Path.of("no-such-shop"));
  private static final String SCRIPT = SearchScript.read(OWN, new Problems()).orElseThrow();

  private static final List<Entry> ENTRIES =
      List.of(
          new Entry("¿Por qué se ve turbio el cristal?", "Hay agua detrás de la lámina."),
          new Entry("First wash", "By hand, with a soft cloth."),
          new Entry("There are bubbles", "Leave them. Do not wash yet."),
          new Entry("متى أغسل السيارة؟", "لا تفتح النوافذ قبل المَوعد."));

  private static final Lookup LOOKUP =
      Lookup.of(
          ENTRIES,
          IndexWord.read(
              "wash: wash: laundry rinse\nlámina: lamina\nsomething else: else\n\nsoft cloth\nbubbles: bubble: blisters"));

  @Test
  void headwordsNameTitlesBeforeTexts() {
    assertEquals(
        List.of(List.of(1, 2), List.of(0), List.of(), List.of(1), List.of(2)), LOOKUP.places());
    assertEquals(List.of("", "wash laundry rinse", "bubbles blisters", ""), LOOKUP.names());
    assertEquals(List.of("lámina", "soft cloth", "wash laundry rinse", ""), LOOKUP.further());
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
    assertEquals(first, first(asked));
  }

  /** The number of the entry that is found first, or nothing. */
  private static String first(String asked) {
    List<List<String>> rows =
        IntStream.range(0, ENTRIES.size())
            .mapToObj(
                n ->
                    List.of(
                        "",
                        ENTRIES.get(n).title(),
                        "",
                        ENTRIES.get(n).text(),
                        LOOKUP.names().get(n),
                        LOOKUP.further().get(n)))
            .toList();
    return inBrowser(
        "function () { var f = lookup.ask(lookup.build(arguments[0], 'en'), arguments[1], 'en');"
            + " return f.length ? String(f[0].n) : ''; }",
        rows,
        asked);
  }

  private static String inBrowser(String function, Object... values) {
    try (Context context = Context.enter()) {
      context.setLanguageVersion(Context.VERSION_ECMASCRIPT);
      context.setInterpretedMode(true);
      ScriptableObject scope = context.initSafeStandardObjects();
      context.evaluateString(scope, SCRIPT, "search", 1, null);
      Object[] arguments = new Object[values.length];
      for (int i = 0; i < values.length; i++) {
        arguments[i] = array(context, scope, values[i]);
      }
      return Context.toString(
          context
              .compileFunction(scope, function, "test", 1, null)
              .call(context, scope, scope, arguments));
    }
  }

  private static Object array(Context context, Scriptable scope, Object value) {
    return value instanceof List<?> list
        ? context.newArray(
            scope, list.stream().map(inner -> array(context, scope, inner)).toArray())
        : value;
  }

  /** What the press calls a word, the browser does. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "¿Por qué se ve turbio? 3½ Días, PARABRISAS-2",
        "Naïve façade: Ærø, straße, İstanbul, ǅ, O’Neil’s e\u0301te\u0301",
        "لا تفتح النوافذ قبل المَوعد، والسيارة بالماء ١٢٣ للزجاج مستوى مدرسة كـتـاب",
        "雨の日 🚗 שלום ﬁlm Ａｂ",
        "  ",
        ""
      })
  void browserAndPressMeanTheSameByAWord(String text) {
    assertEquals(
        String.join("|", SearchWords.in(text)),
        inBrowser("function () { return lookup.words(arguments[0]).join('|'); }", text));
  }

  /** As from an address that somebody made up; a browser stood still for 18 seconds. */
  @ParameterizedTest
  @ValueSource(strings = {"x", "wash", "washabcdefghijkl ", "lámina wash ", "سيارة"})
  void aQuestionOfManySignsIsAnsweredAtOnce(String piece) {
    String asked = piece.repeat(4000 / piece.length());
    assertTimeoutPreemptively(Duration.ofSeconds(20), () -> first(asked));
  }

  @Test
  void whatBeginsALongQuestionIsStillFound() {
    assertEquals("1", first("first wash " + "zzzz ".repeat(100)));
  }

  @Test
  void theScriptCarriesTheLibrarysLicence() {
    assertTrue(SCRIPT.startsWith("/*\nCopyright (C) 2013 by Oliver Nightingale"));
    assertTrue(SCRIPT.contains("THE SOFTWARE IS PROVIDED \"AS IS\""));
    assertFalse(SCRIPT.contains("</"), "it can stand inside a page");
  }
}
