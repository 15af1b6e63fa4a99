package curewindow.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Severity;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import curewindow.shop.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class WordsLibraryTest {

  @TempDir Path shop;

  private final Problems problems = new Problems();

  private void file(String name, String text) throws IOException {
    Path file = shop.resolve("content/words").resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private WordsLibrary read() {
    return read(Set.of());
  }

  private WordsLibrary read(Set<String> shown) {
    ShopFiles files = new ShopFiles(shop);
    WordsLibrary library = WordsLibrary.open(files);
    library.check(ShopFolder.read(files, Instant.EPOCH).catalogue(), shown, problems);
    return library;
  }

  private List<Problem> found(String code) {
    return problems.all().stream().filter(p -> p.code().equals(code)).toList();
  }

  @Test
  void whatComesWithTheProgramHasNoErrorAndLacksNothing() {
    WordsLibrary library = read();
    assertTrue(library.languages().containsAll(List.of("en", "es")), library.languages()::toString);
    assertEquals(List.of(), problems.all());
    assertEquals("Español", library.of("es").text("language.name"));
    assertFalse(library.of("es").rightToLeft());
  }

  @Test
  void filesOfAFolderAreOneLanguage() throws IOException {
    file("en/a.yaml", "a:\n  one: First\n");
    file("en/b.yaml", "b:\n  two: Second\n");
    Words en = read().of("en");
    assertEquals("First Second", en.text("a.one") + " " + en.text("b.two"));
  }

  @Test
  void aTextGivenTwiceIsOneProblemWithItsLine() throws IOException {
    file("en/a.yaml", "a:\n  one: First\n");
    file("en/b.yaml", "# again\na:\n  one: Second\n");
    assertEquals("First", read().of("en").text("a.one"));
    Problem p = found("text-twice").get(0);
    assertEquals("content/words/en/b.yaml", p.file());
    assertEquals(3, p.line());
    assertTrue(p.message().contains("content/words/en/a.yaml line 2"), p::oneLine);
  }

  @Test
  void aLackingTextIsANoticeAndShownInEnglish() throws IOException {
    file("en/a.yaml", "a:\n  one: First\n");
    Words es = read().of("es");
    Problem p =
        found("text-lacking").stream()
            .filter(l -> l.message().equals("es lacks a.one"))
            .findFirst()
            .orElseThrow();
    assertEquals(Severity.NOTICE, p.severity());
    assertFalse(problems.hasErrors());
    assertEquals("First", es.text("a.one"));
    assertTrue(es.has("a.one"));
  }

  @Test
  void aTextNobodyHasIsShownAsTheWordsOfItsId() {
    WordsLibrary library = read();
    Words en = library.of("en");
    assertFalse(en.has("spot.hatch-glass"));
    assertEquals("hatch glass", en.text("spot.hatch-glass"));
    assertEquals("Snow foam", en.text("hold.snow-foam.label"));
    assertEquals("Snow foam", en.text("hold.snow-foam.short"));
    Map<String, String> values = Map.of("when", "Friday", "full", "May 2");
    assertEquals("Snow foam: until Friday.", en.text("hold.snow-foam.until", values));
    assertEquals("Snow foam: over.", en.text("hold.snow-foam.done"));
    for (String language : List.of("ar", "en", "es")) {
      for (String part : List.of("until", "done", "gently", "season", "safety")) {
        String text = library.of(language).text("hold.snow-foam." + part, values);
        assertTrue(text.strip().contains(" "), text);
        assertFalse(text.matches(".*[\\[\\]{}].*"), text);
      }
    }
  }

  /** A shop names its own holds, so no text of the program says what theirs may use. */
  @Test
  void textsOfAnOwnHoldAreCheckedForTheirValues() throws IOException {
    file(
        "en/own.yaml",
        "hold:\n  foam:\n    until: No foam until {date}.\n    done: Foam away.\n    gently: By {full}.\n");
    file("es/own.yaml", "hold:\n  foam:\n    until: Sin espuma.\n");
    Words es = read().of("es");
    assertEquals("use one of when", found("unknown-value").get(0).fix());
    List<String> undated = found("no-date-in-text").stream().map(p -> p.file()).toList();
    assertEquals(List.of("content/words/en/own.yaml", "content/words/es/own.yaml"), undated);
    assertEquals("Foam: hasta el lunes.", es.text("hold.foam.until", Map.of("when", "lunes")));
  }

  private void ownSpot() throws IOException {
    Path file = shop.resolve("content/catalogue/spots.yaml");
    Files.createDirectories(file.getParent());
    String own = "spots:\n  hatch-glass: {faces: side}\n";
    String spots = new ShopFiles(shop).original("content/catalogue/spots.yaml").orElseThrow();
    Files.writeString(file, spots.replace("spots:\n", own));
  }

  @Test
  void anEntryWithoutTextsIsAnErrorWhereItIsShown() throws IOException {
    ownSpot();
    read(Set.of("en", "es"));
    Problem p = found("words-lacking").get(0);
    assertEquals(Severity.ERROR, p.severity());
    assertEquals("content/catalogue/spots.yaml", p.file());
    String line = Files.readAllLines(shop.resolve(p.file())).get(p.line() - 1);
    assertTrue(line.startsWith("  hatch-glass:"), line);
    assertEquals("add spot.hatch-glass to content/words/en/catalogue.yaml", p.fix());
  }

  @Test
  void oneLanguageAloneIsAskedForItsOwnTexts() throws IOException {
    ownSpot();
    read(Set.of("es"));
    assertTrue(found("words-lacking").get(0).fix().endsWith("to content/words/es/catalogue.yaml"));
  }

  @Test
  void inLanguagesThatNobodyReadsItIsANotice() throws IOException {
    ownSpot();
    file("es/own.yaml", "spot:\n  hatch-glass: ventana\n");
    read(Set.of("es"));
    assertFalse(problems.hasErrors(), problems.all()::toString);
    assertTrue(found("words-lacking").get(0).message().contains("in ar, en"));
    assertEquals(List.of(), found("text-unused"), "the catalogue has it");
  }

  @Test
  void englishStandsInForTheTextsOfAnEntry() throws IOException {
    ownSpot();
    file("en/own.yaml", "spot:\n  hatch-glass: hatch window\n");
    Words es = read(Set.of("es")).of("es");
    assertFalse(problems.hasErrors(), problems.all()::toString);
    assertEquals(List.of(), found("words-lacking"));
    assertTrue(
        found("text-lacking").stream()
            .anyMatch(p -> p.message().equals("es lacks spot.hatch-glass")));
    assertEquals("hatch window", es.text("spot.hatch-glass"));
  }

  @Test
  void aMistypedNameIsANoticeWithTheNearestOne() throws IOException {
    file("en/a.yaml", "a:\n  first: First\n");
    file("es/a.yaml", "a:\n  frist: Primero\n");
    read();
    assertEquals("did you mean a.first?", found("text-unused").get(0).fix());
  }

  @Test
  void aMalformedPatternIsOneProblemWithFileAndLine() throws IOException {
    file("en/a.yaml", "a:\n  good: Fine\n  bad: \"until {day\"\n");
    assertEquals("Fine", read().of("en").text("a.good"));
    assertEquals(1, problems.errorCount());
    Problem p = found("malformed-text").get(0);
    assertEquals("content/words/en/a.yaml:3", p.file() + ":" + p.line());
  }

  @Test
  void aPluralWithoutOtherIsMalformed() throws IOException {
    file("en/a.yaml", "a: \"{n, plural, one {# hour}}\"\n");
    read();
    assertEquals(1, found("malformed-text").size());
  }

  @Test
  void aValueEnglishDoesNotHaveIsAnError() throws IOException {
    file("en/a.yaml", "a: \"until {day}\"\n");
    file("es/a.yaml", "a: \"hasta {dia}\"\n");
    read();
    Problem p = found("unknown-value").get(0);
    assertTrue(p.message().contains("{dia}"), p::oneLine);
    assertEquals("content/words/es/a.yaml", p.file());
    assertTrue(p.fix().contains("day"), p::oneLine);
  }

  /** The program's own page.greeting uses {name} and {car}. */
  @Test
  void aWrongValueInTheShopsEnglishIsSaidOfThatFileAndTheProgramsTextIsShown() throws IOException {
    file("en/page.yaml", "page:\n  greeting: \"{nmae}, look at {car}\"\n  skip: To the dates\n");
    WordsLibrary library = read();
    assertEquals(1, problems.errorCount(), problems.all()::toString);
    Problem p = found("unknown-value").get(0);
    assertEquals("content/words/en/page.yaml:2", p.file() + ":" + p.line());
    assertEquals("did you mean {name}?", p.fix());
    Map<String, String> values = Map.of("name", "Ana", "car", "the blue one");
    assertEquals(
        "Ana, this is for your car: the blue one", library.of("en").text("page.greeting", values));
    assertEquals("To the dates", library.of("en").text("page.skip"));
  }

  @Test
  void aWrongOrMalformedTextIsShownAsTheProgramHasItInThatLanguage() throws IOException {
    file("es/page.yaml", "page:\n  greeting: \"{nombre}: {car}\"\n  greeting-nameless: \"{car\"\n");
    Words es = read().of("es");
    assertEquals("content/words/es/page.yaml", found("unknown-value").get(0).file());
    assertEquals(
        "Ana, esto es para su auto: azul",
        es.text("page.greeting", Map.of("name", "Ana", "car", "azul")));
    assertEquals("Su auto: azul", es.text("page.greeting-nameless", Map.of("car", "azul")));
  }

  @Test
  void yamlThatIsNotYamlIsOneProblem() throws IOException {
    file("en/a.yaml", "a: [1\nb: {\n");
    read();
    assertEquals(1, problems.errorCount());
    assertEquals("content/words/en/a.yaml", problems.all().get(0).file());
  }

  @Test
  void aFolderThatIsNoLanguageIsAnError() throws IOException {
    file("spanish/a.yaml", "a: hola\n");
    WordsLibrary library = read();
    assertEquals("content/words/spanish", found("unknown-language").get(0).file());
    assertFalse(library.languages().contains("spanish"));
  }

  @Test
  void settingsOfALanguageAreChecked() throws IOException {
    file("fr/language.yaml", "language:\n  direction: lrt\n  locale: fr_CA\n  units: metrical\n");
    read();
    assertEquals(2, found("unknown-choice").size());
    assertEquals("did you mean ltr?", found("unknown-choice").get(0).fix());
    assertEquals(3, found("unknown-locale").get(0).line());
    assertEquals(3, problems.errorCount());
  }

  @Test
  void withoutSettingsALanguageFollowsItsName() throws IOException {
    file("he/a.yaml", "b: c\n");
    Words he = read().of("he");
    assertTrue(he.rightToLeft());
    assertTrue(he.temperature(20).contains("20"), he.temperature(20));
  }

  @Test
  void unitsMayBeChosenByTheShop() {
    WordsLibrary library = read();
    assertEquals("68°F", library.of("en").temperature(20));
    assertEquals("20°C", library.of("en", Units.METRIC).temperature(20));
  }

  @Test
  void anUnknownLanguageIsMisuse() {
    WordsLibrary library = read();
    assertThrows(IllegalArgumentException.class, () -> library.of("tlh"));
    assertThrows(IllegalArgumentException.class, () -> library.of("tlh", Units.US));
  }

  @Test
  void valuesAndPluralsArePutIn() throws IOException {
    file(
        "en/a.yaml",
        "n: \"{n, plural, one {# hour} other {# hours}} left\"\nq: \"Don't wash {car} yet\"\n");
    Words en = read().of("en");
    assertEquals("1 hour left", en.text("n", Map.of("n", 1)));
    assertEquals("1,200 hours left", en.text("n", Map.of("n", 1200)));
    assertEquals("Don't wash {x} <b> yet", en.text("q", Map.of("car", "{x} <b>")));
  }

  @Test
  void aValueThatEndsWithAStopEndsItsSentence() throws IOException {
    file("en/a.yaml", "a:\n  one: \"Wait until {when}. Then {what}...\"\n");
    Words en = read().of("en");
    assertEquals(
        "Wait until 7 p.m. Then go...",
        en.text("a.one", java.util.Map.of("when", "7 p.m.", "what", "go")));
    assertEquals(
        "Wait until noon. Then go...",
        en.text("a.one", java.util.Map.of("when", "noon", "what", "go")));
  }

  @Test
  void severalThreadsMayShareALanguage() throws IOException {
    file("en/a.yaml", "n: \"{n, plural, one {# hour} other {# hours}} left\"\n");
    Words en = read().of("en");
    long wrong =
        java.util.stream.IntStream.range(2, 20_000)
            .parallel()
            .filter(
                n -> !en.text("n", Map.of("n", n % 900 + 2)).equals(n % 900 + 2 + " hours left"))
            .count();
    assertEquals(0, wrong);
  }

  @Test
  void aLanguageSaysItselfHowADayStandsInASentence() throws IOException {
    file("fr/language.yaml", "language:\n  locale: fr-CA\n  day-time: \"{weekday} à {time}\"\n");
    Words fr = read().of("fr");
    Instant at = Instant.parse("2026-12-03T14:00:00Z");
    java.time.ZoneId zone = java.time.ZoneOffset.UTC;
    assertEquals("jeudi à 14 h 00", fr.dayAndTime(at, zone).replace('\u00A0', ' '));
    assertEquals("jeudi 3 décembre", fr.day(at, zone), "left to the locale");
    file("fr/language.yaml", "language:\n  day: \"{jour}\"\n");
    read();
    assertTrue(found("unknown-value").get(0).message().contains("{jour}"));
  }

  /** The library that reads them ran out of stack. */
  @Test
  void aTextThatIsNestedTooDeepIsTold() throws IOException {
    file("en/z.yaml", "deep: \"" + "{a, select, other {".repeat(2_000) + "}}".repeat(2_000) + "\"");
    read();
    Problem p = found("malformed-text").get(0);
    assertEquals(1, p.line());
    assertTrue(p.message().contains("more than 40 { stand inside each other"), p::oneLine);
  }

  /** Checking 300,000 took 276 s. */
  @Test
  void aFileOfMoreTextsThanAnyLanguageNeedsIsTold() throws IOException {
    StringBuilder many = new StringBuilder();
    for (int i = 1; i <= 50_000; i++) {
      many.append("a%d: x\n".formatted(i));
    }
    file("en/z.yaml", many.toString());
    assertEquals("English", read().of("en").text("language.name"));
    assertEquals(List.of(), found("text-unused"));
    Problem p = found("too-many-texts").get(0);
    assertEquals(5_001, p.line());
    assertEquals("content/words/en/z.yaml", p.file());
  }

  /** What is read would not be what is written. */
  @Test
  void aTextWithASignThatTurnsItIsTold() throws IOException {
    file("en/z.yaml", "b: good\na: \"x \\u202e y\"\nc: x \u2067 y\n");
    Words en = read().of("en");
    assertEquals("good", en.text("b"));
    assertEquals(List.of(2, 3), found("turning-sign").stream().map(Problem::line).toList());
    assertFalse(en.has("a"));
  }
}
