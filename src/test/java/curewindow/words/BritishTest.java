package curewindow.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.PlacedText;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import curewindow.shop.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** American words for American shops, and British ones for a shop with {@code locale: en-GB}. */
final class BritishTest {

  /** Words of one side of the sea alone, from memory of both languages' dictionaries. */
  private static final Pattern AMERICAN =
      words(
          "windshields?|hood|trunk|fenders?|rocker|taillights?|mirror caps?|sedan|wagon|defog\\w*|"
              + "defrost\\w*|fogs up|gray|colors?|\\w*fiber|tires?|licensed|kids?|install(ed|s)?|"
              + "antenna|air (it )?out|paper towels?|cargo|(?<!it )back up|rocks?|bugs?|dash cam|washer fluid|pros?|"
              + "pickup truck|at pickup|pickups|(a|hard) freezes?|roll(s|ed)? (it|the|a|down|back)|gas|gasoline|parking lot|"
              + "license plates?|center|favorite|mom|fall|vacation|touchless|last name|outward|"
              + "(?<!garden )sprinklers?|toll tags?|valet|slush\\w*|quarter panels?|rid(e|es|ing) (along|with)|right away|"
              + "chatter|phone mount|\\w+ opener|out the back|as of|stop by|come by|\\w+colored|sidewalk|truck|driveway|"
              + "rear deck|meters?|feet|foot|inch(es)?|\\w+(iz(e|es|ed|ing))(?<!size)");

  private static final Pattern BRITISH =
      words(
          "windscreens?|bonnet|boot|wings?|sills?|saloon|estate|demist\\w*|mists?|grey|colours?|"
              + "\\w*fibre|tyres?|aerial|kitchen roll|dashcam|screenwash|stones?|petrol|"
              + "car park|number plates?|centre|favourite|mum|autumn|holiday|surname|whilst|metres?|"
              + "outwards|parcel shelf|collections?");

  private static final ShopFiles FILES = new ShopFiles(Path.of("no-such-shop"));

  @TempDir Path shop;

  private static Pattern words(String any) {
    return Pattern.compile("(?i)(?<![\\p{L}-])(" + any + ")(?![\\p{L}-])");
  }

  private static WordsLibrary british(ShopFiles files) {
    return WordsLibrary.open(files, Optional.of("en-GB"), Optional.empty());
  }

  private static Map<String, PlacedText> texts(ShopFiles files, Optional<String> locale) {
    return LanguageReading.english(files, locale).texts();
  }

  private static Dialect dialect(ShopFiles files, Problems problems) {
    return Dialect.read(files, "en-GB", problems);
  }

  /** All that is shown of the texts and guides: without values, clauses and ids. */
  private static Map<String, String> shown(Optional<String> locale) {
    Map<String, String> shown = new TreeMap<>();
    texts(FILES, locale)
        .forEach((key, text) -> shown.put(key, text.text().replaceAll("\\{[a-z-]+[,}]", "")));
    // What other programs call a column is shown nowhere.
    shown.keySet().removeIf(key -> key.startsWith("import."));
    // What people type for a word of the index is shown nowhere.
    shown.computeIfPresent(
        "public.index-words", (key, text) -> text.replaceAll("(?m)^([^:\n]*:[^:\n]*):.*$", "$1"));
    WordsLibrary words = WordsLibrary.open(FILES, locale, Optional.empty());
    for (String file : FILES.list("content/guides/en", ".md")) {
      String text = FILES.original(file).orElseThrow();
      shown.put(
          file,
          words
              .guide("en", text, () -> text)
              .replaceAll("(?m)^\\(\\?.*$|\\(=.*?=\\)|(?s)<!--.*?-->", ""));
    }
    return shown;
  }

  private static Map<String, String> found(Map<String, String> shown, Pattern words) {
    Map<String, String> found = new TreeMap<>();
    shown.forEach(
        (name, text) ->
            words
                .matcher(text)
                .results()
                .forEach(r -> found.merge(name, r.group(), (a, b) -> a + ", " + b)));
    return found;
  }

  @Test
  void noPageMixesTheTwo() {
    assertEquals(Map.of(), found(shown(Optional.of("en-GB")), AMERICAN));
    assertEquals(Map.of(), found(shown(Optional.empty()), BRITISH));
  }

  /** A text of the file that English lacks, or says the same way, is there in vain. */
  @Test
  void theFileHasOnlyWhatDiffers() {
    Problems problems = new Problems();
    Dialect british = dialect(FILES, problems);
    Map<String, PlacedText> english = texts(FILES, Optional.empty());
    british.tell(english.keySet(), problems);
    assertEquals(List.of(), problems.all());
    british
        .texts()
        .forEach(
            (key, text) ->
                assertNotEquals(british.swaps().in(english.get(key).text()), text.text(), key));
  }

  /** A word of the list that stands nowhere is there in vain too. */
  @Test
  void eachWordOfTheListStandsSomewhere() {
    String shown = String.join("\n", shown(Optional.empty()).values());
    String typed = texts(FILES, Optional.empty()).get("public.index-words").text();
    String all = (shown + typed).toLowerCase(Locale.ROOT);
    String list =
        curewindow.shop.YamlTexts.read(FILES, "content/words/en-GB.yaml", new Problems())
            .orElseThrow()
            .get(Dialect.SWAPS);
    list.lines()
        .map(line -> line.substring(0, line.indexOf(" = ")))
        .forEach(word -> assertTrue(all.contains(word), word));
  }

  /** Values are put in by the program, whatever they are called. */
  @Test
  void everyTextHasTheSameValues() {
    Map<String, PlacedText> english = texts(FILES, Optional.empty());
    texts(FILES, Optional.of("en-GB"))
        .forEach(
            (key, text) -> {
              if (!LanguageFacts.VALUES.containsKey(key)) {
                assertEquals(
                    Message.of(english.get(key).text(), com.ibm.icu.util.ULocale.UK).values(),
                    Message.of(text.text(), com.ibm.icu.util.ULocale.UK).values(),
                    key);
              }
            });
  }

  @Test
  void datesHoursAndUnitsAreThoseOfBritain() {
    Words words = british(FILES).of("en");
    ZoneId london = ZoneId.of("Europe/London");
    Instant two = Instant.parse("2026-12-02T14:00:00Z");
    assertEquals("Wed 2 Dec", words.shortDay(two, london));
    assertEquals("6 December", words.fullMonthDay(Instant.parse("2026-12-06T08:00:00Z"), london));
    assertEquals("14:00", words.time(two, london));
    assertEquals("12:00", words.time(Instant.parse("2026-12-02T12:00:00Z"), london));
    assertEquals("Wednesday 2 December", words.day(two, london));
    assertEquals("Wednesday 2 December, 14:00", words.dayAndTime(two, london));
    assertEquals("21°C", words.temperature(21));
    assertEquals(Units.METRIC, words.units());
    assertTrue(
        words.text("hold.pressure-wash.done").contains("0.9\u00A0metres"),
        words.text("hold.pressure-wash.done"));
    assertEquals("bonnet", words.text("spot.hood"));
    assertEquals("Windscreen protection film", words.text("service.windshield-film"));
  }

  /** The units are the country's in every language; the words and dates are those of its own. */
  @Test
  void otherLanguagesOfTheShopHaveItsUnits() {
    Words spanish = british(FILES).of("es");
    assertEquals("21\u00A0°C", spanish.temperature(21));
    assertEquals(WordsLibrary.open(FILES).of("es").text("spot.hood"), spanish.text("spot.hood"));
    Words feet = WordsLibrary.open(FILES, Optional.of("en-GB"), Optional.of(Units.US)).of("en");
    assertEquals("70°F", feet.temperature(21));
  }

  @Test
  void whatAShopHasWrittenStandsAsItIs() throws IOException {
    write(
        "content/words/en/car.yaml",
        FILES
            .original("content/words/en/car.yaml")
            .orElseThrow()
            .replace("title: The car", "title: The car with its hood"));
    Words words = british(new ShopFiles(shop)).of("en");
    assertEquals("The car with its hood", words.text("car.title"));
    assertEquals("saloon", words.text("car.body.sedan"));
    String own = "# Wash\n\nThe hood of a roadster.\n\n- No scraper.\n";
    String guide = "# Wash\n\nThe hood.\n\n- No scraper.\n";
    assertEquals(own, british(FILES).guide("en", own, () -> guide));
    assertEquals(
        "# Wash\n\nThe bonnet.\n\n- No scraper.\n", british(FILES).guide("en", guide, () -> guide));
  }

  @Test
  void aShopHasItsOwnWordsForItsCountry() throws IOException {
    write(
        "content/words/en-AU.yaml",
        "language:\n  swaps: |\n    pickup truck = ute\ncar:\n  title: The motor\n  titel: x\n");
    ShopFiles files = new ShopFiles(shop);
    WordsLibrary library = WordsLibrary.open(files, Optional.of("en-AU"), Optional.empty());
    assertEquals("ute", library.of("en").text("car.body.pickup"));
    assertEquals("The motor", library.of("en").text("car.title"));
    Problems problems = new Problems();
    library.check(ShopFolder.read(files, Instant.EPOCH).catalogue(), Set.of(), problems);
    List<Problem> told = problems.all();
    assertEquals(1, told.size(), told::toString);
    assertEquals("content/words/en-AU.yaml", told.get(0).file());
    assertEquals(6, told.get(0).line());
    assertTrue(told.get(0).fix().contains("car.title"), told::toString);
  }

  @Test
  void aBadLineOfTheListIsTold() throws IOException {
    write("content/words/en-GB.yaml", "language:\n  swaps: |\n    hood - bonnet\n");
    ShopFiles files = new ShopFiles(shop);
    Problems problems = new Problems();
    WordsLibrary library = british(files);
    library.check(ShopFolder.read(files, Instant.EPOCH).catalogue(), Set.of(), problems);
    assertEquals("hood", library.of("en").text("spot.hood"));
    assertEquals(1, problems.errorCount());
    assertEquals("malformed-swap", problems.all().get(0).code());
  }

  @Test
  void onlyRunningTextIsSwapped() {
    Swaps swaps = Swaps.of("hood = bonnet\nrock chips = stone chips\nrock = stone\n");
    assertEquals(
        "Hood-scoop, hoods, bonnet. Bonnet (= spots.hood =) `hood` [bonnet](#hood) {hood}",
        swaps.in("Hood-scoop, hoods, hood. Hood (= spots.hood =) `hood` [hood](#hood) {hood}"));
    assertEquals("(? spot hood ?)", swaps.in("(? spot hood ?)"));
    assertEquals("Stone chips and stone", swaps.in("Rock chips and rock"));
    assertFalse(Swaps.NONE.in("hood").isEmpty());
  }

  private void write(String name, String text) throws IOException {
    Path file = shop.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}
