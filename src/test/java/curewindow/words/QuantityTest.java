package curewindow.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.util.ULocale;
import curewindow.problem.Problems;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import curewindow.shop.Units;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Quantities in the reader's units. Factors: NIST Special Publication 811 (2008), appendix B, from
 * memory: 1 ft = 0.3048 m and 1 in = 25.4 mm exactly, 1 psi = 6.894757 kPa, t(F) = 1.8 t(C) + 32.
 * Texts: the unit patterns of the Unicode CLDR, from memory.
 */
final class QuantityTest {

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    "METRE, 0.3048, 1",
    "METRE, 0.9, 3",
    "METRE, 1, 3",
    "METRE, 5, 16",
    "MILLIMETRE, 25.4, 1",
    "MILLIMETRE, 1, 0.04",
    "MILLIMETRE, 4, 0.16",
    "CENTIMETRE, 30, 12",
    "CENTIMETRE, 2.54, 1",
    "BAR, 80, 1200",
    "BAR, 2, 30",
    "BAR, 120, 1700",
    "CELSIUS, 0, 32",
    "CELSIUS, 100, 212",
    "CELSIUS, -40, -40",
    "CELSIUS, 60, 140"
  })
  void convertsAndRoundsAsItWasMeant(Measure measure, double metric, double customary) {
    assertEquals(customary, measure.inCustomary(metric), 1e-12);
  }

  @Test
  void isNeverFurtherOffThanATenth() {
    for (Measure measure : List.of(Measure.METRE, Measure.MILLIMETRE, Measure.BAR)) {
      double exact =
          measure == Measure.METRE ? 1 / 0.3048 : measure == Measure.BAR ? 14.5037738 : 1 / 25.4;
      for (double value = 0.05; value < 400; value *= 1.013) {
        assertEquals(1, measure.inCustomary(value) / (value * exact), 0.1, measure + " " + value);
      }
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en-US | US | 0.9 m | 3 feet",
        "en-CA | METRIC | 0.9 m | 0.9 metres",
        "en-US | METRIC | 1 m | 1 meter",
        "es-US | US | 0.9 m | 3 pies",
        "es-US | METRIC | 0.9 m | 0.9 metros",
        "es-ES | METRIC | 0.9 m | 0,9 metros",
        "ar-AE | METRIC | 0.9 m | 0.9 متر",
        "ar-AE | METRIC | 3 m | 3 أمتار",
        "ar-AE | METRIC | 11 m | 11 مترًا",
        "en-US | US | 1 to 4 mm | 1/16–1/8 inch",
        "en-US | US | 3 mm | 1/8 inch",
        "en-US | US | 1 cm | 1/2 inch",
        "en-US | US | 0.1 mm | 0.004 inches",
        "en-US | US | 1 to 30 cm | 0.4–12 inches",
        "es-US | US | 1 to 4 mm | 1/16–1/8 pulgada",
        "en-US | METRIC | 1 to 4 mm | 1–4 millimeters",
        "es-US | METRIC | 1 to 4 mm | 1-4 milímetros",
        "en-US | US | 80 bar | 1,200 psi",
        "en-US | METRIC | 80 bar | 80 bar",
        "en-US | US | 60 C | 140°F",
        "en-US | METRIC | -5 C | -5°C",
        "de-DE | METRIC | 60 C | 60 °C",
      })
  void isWrittenAsTheLocaleHasIt(String locale, Units units, String quantity, String text) {
    Numbers numbers = new Numbers(ULocale.forLanguageTag(locale), units);
    String written = numbers.quantity(Quantity.of(quantity).orElseThrow());
    assertEquals(text, written.replace('\u00A0', ' '));
    assertTrue(!written.contains(" "), "a number stays with its unit");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.9", "m", "0.9m", "0,9 m", "4 to 1 mm", "1-4 mm", "3 ft", "1e3 m", ""})
  void refusesWhatIsNoQuantity(String text) {
    assertEquals(Optional.empty(), Quantity.of(text));
  }

  @Test
  void aTextGivesItOnceForAllReaders() throws Exception {
    Path file = folder.resolve("content/words/en/a.yaml");
    Files.createDirectories(file.getParent());
    Files.writeString(
        file,
        "a:\n  one: \"{who}: stay (= 0.9 m =) away\"\n  two: \"it''s (= 60 C =)\"\n  three: \"(= 9 yd =)\"\n");
    Problems problems = new Problems();
    ShopFiles files = new ShopFiles(folder);
    WordsLibrary library = WordsLibrary.open(files);
    library.check(ShopFolder.read(files, Instant.EPOCH).catalogue(), Set.of(), problems);
    Map<String, String> who = Map.of("who", "(= 1 m =)");
    assertEquals("(= 1 m =): stay 3\u00A0feet away", library.of("en").text("a.one", who));
    Words metric = library.of("en", Units.METRIC);
    assertEquals("(= 1 m =): stay 0.9\u00A0meters away", metric.text("a.one", who));
    assertEquals("it's 60°C", metric.text("a.two"));
    assertEquals(1, problems.errorCount());
    assertTrue(problems.all().stream().anyMatch(p -> p.message().contains("(= 9 yd =)")));
  }
}
