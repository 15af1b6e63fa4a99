package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A press makes only what would come out other than it stands, and what it leaves alone is to the
 * byte what a press into an empty folder makes.
 */
class MadeBeforeTest {

  private static final String TINT = "Q-3101";
  private static final String SPANISH = "Q-3114";

  /** A film that no car has. */
  private static final String DUSK =
      "  dusk-20: {service: tint, name: Dusk 20, material: PET, thickness: 38, permeance: 13.6,"
          + " vlt: 20, metallised: false}\n";

  @TempDir Path temp;
  private Path shop;
  private Path out;
  private Clock clock = PressedDemo.CLOCK;

  @BeforeEach
  void pressTwoJobs() throws IOException {
    shop = temp.resolve("shop");
    out = temp.resolve("out");
    PressedDemo.layOutOpenPages(out);
    PressedDemo.layOutShop(shop, TINT, SPANISH);
    assertEquals(List.of(TINT, SPANISH), made());
  }

  private static String job(String id) {
    return "jobs/" + id + ".yaml";
  }

  /** Presses, and tells which jobs' pages were made. */
  private List<String> made() throws IOException {
    PressReport report = press(out);
    assertEquals(2, report.jobs());
    return report.made().stream().map(PressReport.Made::job).toList();
  }

  private PressReport press(Path to) throws IOException {
    Random random = new Random(7);
    LoadedShop loaded = LoadedShop.load(shop, clock);
    return Press.run(loaded, to, clock, () -> Tokens.from(random));
  }

  @Test
  void theAnswerSaysWhatWaitsUntilWhen() throws IOException {
    for (PressReport.Made made : press(out).made()) {
      assertTrue(made.firstAnswer().matches("[^:]+ until [A-Z].*\\d.*"), made::firstAnswer);
    }
  }

  @Test
  void theAnswerIsWrittenAsInTheShopsLanguage() throws IOException {
    edit("shop.yaml", "language: en", "language: ar");
    List<String> answers = press(out).made().stream().map(PressReport.Made::firstAnswer).toList();
    assertEquals(2, answers.size());
    for (String answer : answers) {
      assertTrue(!answer.contains(",") && answer.matches(".*\u060C.*\u060C.*"), answer);
    }
  }

  private void edit(String file, String from, String to) throws IOException {
    Path path = shop.resolve(file);
    String text = Files.readString(path);
    assertTrue(text.contains(from), file);
    Files.writeString(path, text.replace(from, to));
  }

  private static Map<String, String> contents(Path folder) throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        all.put(folder.relativize(file).toString(), MadeBefore.print(Files.readAllBytes(file)));
      }
    }
    return all;
  }

  private void isAsMadeAnew() throws IOException {
    Path fresh = temp.resolve("fresh");
    press(fresh);
    assertEquals(contents(fresh), contents(out));
    try (Stream<Path> files = Files.walk(fresh)) {
      files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
    }
  }

  private Path page(String id) throws IOException {
    PageList.Row row =
        PageList.read(out).stream().filter(r -> r.job().equals(id)).findFirst().orElseThrow();
    return out.resolve("site").resolve(row.folder()).resolve("index.html");
  }

  @Test
  void nothingIsMadeWhereNothingChanged() throws IOException {
    Map<String, String> before = contents(out);
    PressReport report = press(out);
    assertEquals(List.of(), report.made());
    assertEquals(0, report.files().changed());
    assertEquals(0, report.files().removed());
    assertEquals(before.size() - 3, report.files().made(), "all but two lists and the lock");
    assertEquals(before, contents(out));
  }

  @Test
  void onlyTheJobThatChangedIsMade() throws IOException {
    edit(job(TINT), "Mara", "Mira");
    assertEquals(List.of(TINT), made());
    assertTrue(Files.readString(page(TINT)).contains("Mira"));
    Files.writeString(shop.resolve(job(TINT)), "\n\n" + Files.readString(shop.resolve(job(TINT))));
    assertEquals(List.of(), made(), "where a job stands in its file is no change");
  }

  /** A file that nobody made anew is known by what was put in its place. */
  @Test
  void cardsToLookAtAreMadeOnlyWhereOneWouldDiffer() throws IOException {
    clock = Clock.fixed(Instant.parse("2026-11-20T00:00:00Z"), ZoneOffset.UTC);
    press(out);
    Path cards = out.resolve("office/cards.pdf");
    byte[] right = Files.readAllBytes(cards);
    byte[] other = new byte[right.length];
    FileTime written = Files.getLastModifiedTime(cards);
    Files.write(cards, other);
    Files.setLastModifiedTime(cards, written);
    press(out);
    assertArrayEquals(other, Files.readAllBytes(cards), "left alone");
    edit(job(TINT), "first-name: Mara", "first-name: Nora");
    press(out);
    assertFalse(Arrays.equals(other, Files.readAllBytes(cards)));
    isAsMadeAnew();
  }

  @Test
  void aVisitMakesItsOwnJobAlone() throws IOException {
    clock = Clock.offset(clock, Duration.ofDays(60));
    made();
    String visits = "job,day,what,result,finished,pickup,note\nQ-3101,2027-01-12,,fine,,,\n";
    Files.writeString(shop.resolve("visits.csv"), visits);
    assertEquals(List.of(TINT), made());
    isAsMadeAnew();
  }

  @Test
  void whatAllPagesAreMadeFromMakesAll() throws IOException {
    edit("shop.yaml", "Quillhaven Film", "Quillhaven Window Film");
    assertEquals(List.of(TINT, SPANISH), made());
    isAsMadeAnew();
  }

  /** Of the catalogue, the words and the places a page depends on what it uses. */
  @Test
  void aFilmOrRuleMakesTheJobsThatUseItAlone() throws IOException {
    own("content/catalogue/films.yaml");
    own("content/catalogue/holds.yaml");
    assertEquals(List.of(), made(), "the same text");
    edit("content/catalogue/films.yaml", "films:\n", "films:\n" + DUSK);
    assertEquals(List.of(), made(), "no car has it");
    edit(
        "content/catalogue/holds.yaml", "paint-film, hold: rinse,", "paint-film, hold: hand-wash,");
    assertEquals(List.of(), made(), "no car has paint film");
    isAsMadeAnew();
    edit("content/catalogue/films.yaml", "name: Harbor 35", "name: Harbor 36");
    assertEquals(List.of(TINT, SPANISH), made());
    edit("content/catalogue/holds.yaml", "floor: 24, limit: 4}", "floor: 24, limit: 5}");
    assertEquals(List.of(TINT, SPANISH), made());
    isAsMadeAnew();
  }

  @Test
  void wordsAndPlacesMakeTheJobsThatUseThemAlone() throws IOException {
    Path words = own("content/words/es/page.yaml");
    Files.writeString(words, Files.readString(words) + "\n");
    assertEquals(List.of(SPANISH), made());
    Path place = shop.resolve("content/places/mill-creek.yaml");
    Files.createDirectories(place.getParent());
    String creek = "name: Mill Creek\nlatitude: 47.86\nlongitude: -122.20\nheight: 110\n";
    Files.writeString(place, creek + "zone: America/Los_Angeles\n");
    assertEquals(List.of(), made());
    edit(job(TINT), "place: seattle", "place: mill-creek");
    assertEquals(List.of(TINT), made());
    edit("content/places/mill-creek.yaml", "height: 110", "height: 310");
    assertEquals(List.of(TINT), made());
    isAsMadeAnew();
  }

  private Path own(String file) throws IOException {
    Path own = shop.resolve(file);
    Files.createDirectories(own.getParent());
    return Files.copy(Path.of(file), own);
  }

  /** Somebody waits for one page; the others stay as they are until it is their turn. */
  @Test
  void somePagesAreMadeBeforeTheOthers() throws IOException {
    edit("shop.yaml", "Quillhaven Film", "Quillhaven Window Film");
    Files.copy(Path.of("content/demo/jobs/Q-3103.yaml"), shop.resolve(job("Q-3103")));
    Map<String, String> before = contents(out);
    PressReport first = press(new Press.Extent(Set.of(SPANISH), 0));
    assertEquals(List.of(SPANISH), first.made().stream().map(PressReport.Made::job).toList());
    assertEquals(2, first.jobs(), "the new one has no page yet");
    assertEquals(2, first.later());
    assertEquals(List.of(), first.leftOut());
    assertTrue(Files.readString(page(SPANISH)).contains("Quillhaven Window Film"));
    String tint = out.relativize(page(TINT)).toString();
    Map<String, String> after = contents(out);
    for (String file : List.of(tint, "site/en/tint.html")) {
      assertEquals(before.get(file), after.get(file), file);
    }
    PressReport second = press(new Press.Extent(Set.of(), 1));
    assertEquals(List.of("Q-3103"), second.made().stream().map(PressReport.Made::job).toList());
    assertEquals(1, second.later(), "the last pickup comes first");
    PressReport third = press(new Press.Extent(Set.of(), 1));
    assertEquals(List.of(TINT), third.made().stream().map(PressReport.Made::job).toList());
    assertEquals(0, third.later());
    isAsMadeAnew();
  }

  /** The jobs of a large shop are made some at a time; what comes out does not tell. */
  @Test
  void someAtATimeComeOutAsAllTogether() throws IOException {
    for (String id : List.of("Q-3103", "Q-3108", "Q-3117")) {
      Files.copy(Path.of("content/demo", job(id)), shop.resolve(job(id)));
    }
    PagesMade.Batch few = new PagesMade.Batch(2, 1);
    assertEquals(3, press(Press.Extent.ALL, few).made().size());
    for (String id : List.of(TINT, "Q-3103", "Q-3117")) {
      edit(job(id), "first-name: ", "first-name: O");
    }
    assertEquals(3, press(Press.Extent.ALL, few).made().size());
    isAsMadeAnew();
  }

  private PressReport press(Press.Extent extent) throws IOException {
    return press(extent, PagesMade.Batch.USUAL);
  }

  private PressReport press(Press.Extent extent, PagesMade.Batch batch) throws IOException {
    try (Output output = Output.open(out)) {
      Random random = new Random(8);
      Press.Wish wish = new Press.Wish(Press.Allowed.NOTHING, extent);
      LoadedShop loaded = LoadedShop.load(shop, clock);
      return Press.run(loaded, output, clock, () -> Tokens.from(random), wish, batch);
    }
  }

  /** A guide is made into the pages that show it, its own public one among them. */
  @Test
  void aGuideMakesTheJobsThatShowItAlone() throws IOException {
    change("tint", "so leave it alone", "so let it be");
    assertEquals(List.of(TINT), made(), "the other page has the guide in Spanish");
    assertTrue(Files.readString(page(TINT)).contains("so let it be"));
    change("paint-film", "The film", "This film");
    assertEquals(List.of(), made());
    assertTrue(Files.readString(out.resolve("site/en/paint-film.html")).contains("This film"));
    isAsMadeAnew();
    change("normal", "[.] The", ". A");
    assertEquals(List.of(TINT), made());
    Files.writeString(shop.resolve("content/guides/en/parade.md"), "# Parade\n\nWave.\n");
    assertEquals(List.of(TINT, SPANISH), made(), "a guide more may be led to by any");
  }

  /** Weather that was measured moves the dates of young work alone, and no page for anyone. */
  @Test
  void measuredWeatherMakesTheJobsWhoseDatesItMoves() throws IOException {
    assertTrue(Files.readString(shop.resolve(job(TINT))).contains("place: seattle"));
    clock = Clock.offset(clock, Duration.ofDays(60));
    made();
    measured("2026-11-24T17:00", 12);
    assertEquals(List.of(TINT), made());
    clock = Clock.offset(clock, Duration.ofDays(300));
    measured("2027-11-20T12:00", 12);
    assertEquals(List.of(), made());
    isAsMadeAnew();
  }

  private void measured(String hour, double air) throws IOException {
    Path file = shop.resolve("weather/observed.csv");
    Files.createDirectories(file.getParent());
    String rows = Files.exists(file) ? Files.readString(file) : "place,time,air,dew-point\n";
    Files.writeString(file, rows + "seattle," + hour + "," + air + ",4\n");
  }

  private void change(String guide, String from, String to) throws IOException {
    Path own = own("content/guides/en/" + guide + ".md");
    String text = Files.readString(own);
    assertNotEquals(text, text.replaceAll(from, to));
    Files.writeString(own, text.replaceAll(from, to));
  }

  @Test
  void whatSomebodyElseTouchedIsMadeAgain() throws IOException {
    String page = Files.readString(page(TINT));
    Files.writeString(page(TINT), page.replace("Mara", "Nora"));
    Files.setLastModifiedTime(page(TINT), FileTime.from(Instant.now().plus(Duration.ofSeconds(5))));
    assertEquals(List.of(TINT), made());
    assertEquals(page, Files.readString(page(TINT)));
    Files.delete(page(SPANISH).resolveSibling("care.ics"));
    assertEquals(List.of(SPANISH), made());
  }

  @Test
  void withoutAWholeMemoryAllIsMade() throws IOException {
    Path memory = out.resolve(MadeBefore.FILE);
    String rows = Files.readString(memory);
    Files.delete(memory);
    assertEquals(List.of(TINT, SPANISH), made());
    assertEquals(rows, Files.readString(memory));
    for (String broken : List.of("job", rows + "Q,x,site/y,many\n")) {
      Files.writeString(memory, broken);
      assertEquals(List.of(TINT, SPANISH), made(), broken);
      assertEquals(rows, Files.readString(memory));
    }
  }

  @Test
  void aMemoryOfCalendarsThatWasLostIsMadeAgain() throws IOException {
    Path ledger = shop.resolve(CalendarDates.FILE);
    Files.delete(ledger);
    assertEquals(List.of(TINT, SPANISH), made());
    assertTrue(Files.exists(ledger));
    assertNotEquals("", Files.readString(ledger));
    assertEquals(List.of(), made());
  }
}
