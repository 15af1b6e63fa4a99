package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mozilla.javascript.Context;
import org.mozilla.javascript.ScriptableObject;

/** What people look up, in what a browser loads for it. */
class SearchWordsTest {

  private static final Map<String, String> PAGES =
      Demo.PAGES.open(
          Demo.shop("Longs Peak"),
          Optional.of(Demo.year()),
          Stream.of("en", "es", "ar").map(Demo.WORDS::of).toList(),
          new Problems());

  /** A place found: where it leads, its title and the line of text that is shown with it. */
  private record Found(String href, String title, String text) {}

  /** Each language's script, run once. */
  private static final Map<String, ScriptableObject> SCOPES = new HashMap<>();

  private static ScriptableObject scope(Context context, String language) {
    return SCOPES.computeIfAbsent(
        language,
        l -> {
          ScriptableObject scope = context.initSafeStandardObjects();
          run(context, scope, PAGES.get(language + "/find-index.js"));
          run(context, scope, "var index = lookup.open(volume.index);");
          return scope;
        });
  }

  private static List<Found> ask(String language, String words) {
    try (Context context = Context.enter()) {
      context.setLanguageVersion(Context.VERSION_ECMASCRIPT);
      context.setInterpretedMode(true);
      ScriptableObject scope = scope(context, language);
      ScriptableObject.putProperty(scope, "asked", words);
      ScriptableObject.putProperty(scope, "lang", language);
      String rows =
          run(
              context,
              scope,
              "lookup.ask(index, asked, lang).map(function (f) { return volume.rows[f.n]; })"
                  + ".map(function (r) { return [r[0], r[1], r[3]].join('\\t'); }).join('\\n')");
      return rows.lines()
          .map(row -> row.split("\t", 3))
          .map(parts -> new Found(parts[0], parts[1], parts[2]))
          .toList();
    }
  }

  private static String run(Context context, ScriptableObject scope, String script) {
    return Context.toString(context.evaluateString(scope, script, "test", 1, null));
  }

  @ParameterizedTest
  @CsvSource({
    "en, bugs, (?i)bugs?|insect",
    "en, snow, (?i)snow",
    "en, dog, (?i)dog",
    "en, lost card, (?i)lost|address",
    "en, inspection, (?i)inspection",
    "en, inspections, (?i)inspection",
    "en, warranty, (?i)warranty",
    "es, insectos, (?i)insecto",
    "es, nieve, (?i)nieve",
    "es, perro, (?i)perro",
    "es, perros, (?i)perro",
    "es, tarjeta perdida, (?i)tarjeta",
    "es, inspeccion, (?i)inspección",
    "ar, حشرات, حشرات",
    "ar, الثلج, ثلج",
    "ar, كلب, كلب",
    "ar, بطاقة ضائعة, البطاقة",
    "ar, فحص, فحص"
  })
  void theBestAnswerStandsFirstWithALineOfItsText(String language, String words, String said) {
    List<Found> found = ask(language, words);
    assertFalse(found.isEmpty(), words);
    Found first = found.get(0);
    assertTrue(
        Pattern.compile(said).matcher(first.title() + " " + first.text()).find(),
        words + ": " + found);
    assertFalse(first.text().isBlank());
  }

  @ParameterizedTest
  @CsvSource({
    "en, lost card, lost-card.html",
    "en, my card is lost, lost-card.html",
    "en, inspection, through-the-year.html#s-once-a-year-inspection",
    "en, bubbles, normal.html#q-bubbles",
    "en, how long each month, year.html",
    "es, tarjeta perdida, lost-card.html",
    "ar, بطاقة ضائعة, lost-card.html"
  })
  void leadsTo(String language, String words, String href) {
    List<Found> found = ask(language, words);
    assertTrue(found.stream().limit(3).anyMatch(f -> f.href().equals(href)), words + ": " + found);
  }

  /** Not "show" for snow, "bags" for bugs, "card" and "care" for car, "service" for ice. */
  @ParameterizedTest
  @CsvSource({
    "snow, (?i)\\bsnow|ice\\b",
    "bugs, (?i)\\b(bugs?|insects?)\\b",
    "ice, (?i)\\b(ice|icy|snow)\\b",
    "dog, (?i)\\bdogs?\\b"
  })
  void nothingIsFoundInsideOtherWords(String words, String whole) {
    for (Found found : ask("en", words)) {
      assertTrue(
          Pattern.compile(whole).matcher(found.title() + " " + found.text()).find(),
          words + ": " + found);
    }
  }

  @Test
  void aSlipOrABeginningStillFinds() {
    assertEquals(ask("en", "bubbles").get(0), ask("en", "bubles").get(0));
    assertTrue(ask("en", "defros").get(0).title().toLowerCase().contains("defroster"));
    assertEquals(List.of(), ask("en", "zzzz"));
    assertEquals(List.of(), ask("en", "?!*~^:+-"));
  }
}
