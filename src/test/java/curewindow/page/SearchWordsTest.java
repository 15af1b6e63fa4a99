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
          run(context, scope, "var index = lookup.build(volume.rows, '" + l + "');");
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

  /** What people type: everyday words, whole questions, words of the road for those of the page. */
  @ParameterizedTest
  @CsvSource({
    "en, bugs, (?i)bugs?|insect",
    "en, mosquitoes, (?i)bugs?|insect",
    "en, snow, (?i)snow",
    "en, dog, (?i)dog",
    "en, my cat, (?i)dog",
    "en, lost card, (?i)lost|address",
    "en, inspection, (?i)inspection",
    "en, inspections, (?i)inspection",
    "en, warranty, (?i)warranty",
    "en, salt, (?i)salt",
    "en, sap, (?i)sap",
    "en, bird, (?i)bird droppings",
    "en, bird poop, (?i)bird droppings",
    "en, ice, (?i)^.*ice scraper",
    "en, scraper, (?i)^.*ice scraper",
    "en, haze, (?i)hazy",
    "en, cloudy, (?i)hazy",
    "en, foggy windows, (?i)hazy",
    "en, bubbles, (?i)press them out",
    "en, there are bubbles in my tint, (?i)press them out",
    "en, peel, (?i)peeling",
    "en, my tint is peeling, (?i)peeling",
    "en, sticker, (?i)sticker glue",
    "en, toll, (?i)toll tag",
    "en, gas, (?i)fuel on the paint",
    "en, gasoline, (?i)fuel on the paint",
    "en, fuel, (?i)fuel on the paint",
    "en, car seat, (?i)child seat",
    "en, rain, (?i)rain tonight",
    "en, wax, (?i)no wax",
    "en, when can I wax my car, (?i)no wax",
    "en, pressure washer, (?i)use a pressure washer",
    "en, car wash, (?i)an automatic wash",
    "en, when can I go to the car wash, (?i)an automatic wash",
    "en, roll down, (?i)roll(ed)? (the|a) window",
    "en, how long until I can roll down windows, (?i)when can I roll the windows down",
    "en, can I open the window, (?i)roll(ed)? (the|a) window",
    "en, when can I wash my car, (?i)wash it by hand",
    "en, how long until I can wash, (?i)wash it by hand",
    "en, is it normal that my tint looks cloudy, (?i)hazy",
    "en, can I use the defroster, (?i)rear defroster now",
    "en, how long until rain is ok, (?i)rain tonight",
    "en, can I put my dog in the car, (?i)my dog",
    "en, can I put a sticker on my window, (?i)sticker",
    "en, where do I put my toll tag, (?i)put my toll tag",
    "es, insectos, (?i)insecto",
    "es, bichos, (?i)insecto",
    "es, nieve, (?i)nieve",
    "es, hielo, (?i)hielo",
    "es, perro, (?i)perro",
    "es, perros, (?i)perro",
    "es, mascota, (?i)perro",
    "es, sal, (?i)sal de la calle",
    "es, gasolina, (?i)combustible en la pintura",
    "es, lluvia, (?i)llover",
    "es, burbujas, (?i)en el vidrio",
    "es, cera, (?i)nada de cera",
    "es, lavado, (?i)lavado",
    "es, cuándo puedo lavar el carro, (?i)lavarlo a mano",
    "es, cuánto tiempo hasta que pueda bajar las ventanas, (?i)cuándo puedo bajar",
    "es, es normal que el polarizado se vea opaco, (?i)lechoso",
    "es, puedo usar el desempañador, (?i)desempañador trasero",
    "es, niño, (?i)silla del niño",
    "es, silla del bebé, (?i)silla del niño",
    "es, rasqueta, (?i)raspador",
    "es, tarjeta perdida, (?i)tarjeta",
    "es, inspeccion, (?i)inspección",
    "es, pájaro, (?i)excremento de aves",
    "es, tag, (?i)peaje",
    "ar, حشرات, حشرات",
    "ar, بق, حشرات",
    "ar, الثلج, ثلج",
    "ar, جليد, الجليد",
    "ar, كلب, كلب",
    "ar, قطة, كلب",
    "ar, ملح, ملح الطريق",
    "ar, بنزين, وقود",
    "ar, مطر, ستمطر",
    "ar, فقاعات, فقاع",
    "ar, شمع, شمع",
    "ar, متى أغسل سيارتي, أغسلها باليد",
    "ar, متى يمكنني فتح النوافذ, فتحت نافذة",
    "ar, كرسي الطفل, مقعد الطفل",
    "ar, عصفور, طيور",
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
    "en, opening hours, index.html#reach",
    "en, what are your hours, index.html#reach",
    "en, appointment, index.html#reach",
    "es, horario, index.html#reach",
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
