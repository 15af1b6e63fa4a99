package curewindow.words;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** On cards a hold's short name runs on into "until" and its date, and has to read so. */
final class ShortNamesTest {

  private static final ShopFiles STARTER = new ShopFiles(Path.of("no-such-shop"));
  private static final WordsLibrary LIBRARY = WordsLibrary.open(STARTER);

  private static List<String> holds() {
    return ShopFolder.read(STARTER, Instant.EPOCH).catalogue().holds().keySet().stream().toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es", "ar"})
  void noneEndsBeforeItsDate(String language) {
    Words words = LIBRARY.of(language);
    assertFalse(holds().isEmpty());
    for (String hold : holds()) {
      String name = words.text("hold." + hold + ".short");
      assertFalse(name.contains(":"), name);
      assertFalse(name.endsWith(" off"), "off until: " + name);
      assertTrue(name.length() <= 32, name);
    }
  }

  /** Outside, wipers and rain may do what the inside does not stand. */
  @ParameterizedTest
  @CsvSource({"en, inside", "es, dentro", "ar, داخل"})
  void theInsideOfTheWindshieldIsNamed(String language, String inside) {
    for (String hold : List.of("demist", "inside-glass")) {
      String name = LIBRARY.of(language).text("hold." + hold + ".short");
      assertTrue(name.contains(inside), name);
    }
  }

  @Test
  void britainHasItsOwnWords() {
    Words british =
        WordsLibrary.open(STARTER, java.util.Optional.of("en-GB"), java.util.Optional.empty())
            .of("en");
    assertTrue(british.text("hold.defroster.short").equals("No heated rear window"));
    assertTrue(british.text("hold.demist.short").equals("No wiping inside windscreen"));
  }
}
