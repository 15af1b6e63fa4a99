package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.site.LanguageState;
import curewindow.site.LoadedShop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A new language is files alone, and {@code check} tells how far it is. */
final class LanguageCheckTest {

  @TempDir Path shop;

  private LoadedShop load() {
    return LoadedShop.load(shop, Clock.systemUTC());
  }

  private void file(String name, String text) throws IOException {
    Path file = shop.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private static LanguageState state(LoadedShop loaded, String language) {
    return loaded.languages().stream()
        .filter(s -> s.language().equals(language))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> codes(LoadedShop loaded, String language) {
    return loaded.problems().stream()
        .filter(p -> p.file().matches("content/(words|guides)/" + language + "(/.*)?"))
        .map(p -> p.code())
        .distinct()
        .sorted()
        .toList();
  }

  @Test
  void theShippedLanguagesAreComplete() {
    LoadedShop loaded = load();
    List<String> lines = loaded.languages().stream().map(LanguageState::line).toList();
    assertEquals(List.of("ar: complete", "en: complete", "es: complete"), lines);
  }

  @Test
  void aLanguageIsAddedByFilesAloneAndItsGapsAreCounted() throws IOException {
    file("content/words/de/page.yaml", "page:\n  skip: Zu den Terminen\n");
    LoadedShop wordsOnly = load();
    assertFalse(state(wordsOnly, "de").usable());
    assertTrue(state(wordsOnly, "de").line().endsWith("all guides, so no job can use it"));
    assertEquals(List.of("language-without-guides", "text-lacking"), codes(wordsOnly, "de"));

    file("content/guides/de/tint.md", "# Scheibentönung\n\nAbstand: (= 0.9 m =).\n");
    LoadedShop both = load();
    LanguageState de = state(both, "de");
    assertTrue(de.usable());
    assertEquals(List.of("missing-translation", "text-lacking"), codes(both, "de"));
    LanguageState en = state(both, "en");
    assertEquals(new LanguageState("en", true, 0, 0, 0), en);
    assertTrue(de.texts() > 150, de::line);
    assertTrue(de.guides() >= 9, de::line);
    assertEquals("de: lacks " + de.texts() + " texts, " + de.guides() + " guides", de.line());
    assertFalse(both.problems().stream().anyMatch(p -> p.code().equals("unknown-language")));
  }

  /**
   * Arabic has six forms, Spanish and English two for whole numbers of days (CLDR, from memory).
   */
  @Test
  void aCountWithoutAFormOfItsLanguageIsNamed() throws IOException {
    String two = "{n, plural, one {# day} other {# days}}";
    for (String language : List.of("ar", "en", "es")) {
      file("content/words/" + language + "/mine.yaml", "mine:\n  days: \"" + two + "\"\n");
    }
    LoadedShop loaded = load();
    assertEquals(1, state(loaded, "ar").plurals());
    assertEquals(0, state(loaded, "en").plurals());
    assertEquals(0, state(loaded, "es").plurals());
    String message =
        loaded.problems().stream()
            .filter(p -> p.code().equals("plural-lacking"))
            .findFirst()
            .orElseThrow()
            .message();
    assertEquals("the text mine.days lacks forms of a count: few, many, two, zero", message);
  }

  @Test
  void guidesWithoutWordsAreNamed() throws IOException {
    file("content/guides/fr/tint.md", "# Vitres\n\nTexte.\n");
    assertEquals(List.of("language-without-words"), codes(load(), "fr"));
  }
}
