package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The command {@code card} as a user types it, on a copy of the demo shop. */
final class CardCommandTest {

  @TempDir Path temp;
  private Path shop;
  private Path folder;
  private Path pdf;

  @BeforeEach
  void copyDemo() throws IOException {
    shop = temp.resolve("shop");
    folder = Files.createDirectories(temp.resolve("out"));
    pdf = folder.resolve("cards.pdf");
    for (Map.Entry<String, byte[]> file : Typed.contents(Path.of("content/demo")).entrySet()) {
      Path to = shop.resolve(file.getKey());
      Files.createDirectories(to.getParent());
      Files.write(to, file.getValue());
    }
  }

  private Typed card(String... words) {
    Stream<String> rest = Stream.of("--shop", shop.toString(), "--out", pdf.toString());
    return Typed.run(
        Stream.concat(Stream.of("card"), Stream.concat(Stream.of(words), rest)).toArray());
  }

  private static void says(Typed typed, int code, String... parts) {
    assertEquals(code, typed.code(), typed.said());
    for (String part : parts) {
      assertTrue(typed.said().contains(part), () -> part + " is not in: " + typed.said());
    }
  }

  private void edit(String name, String from, String to) throws IOException {
    Path file = shop.resolve(name);
    String before = Files.readString(file);
    assertTrue(before.contains(from), name);
    Files.writeString(file, before.replace(from, to));
  }

  private List<String> written() throws IOException {
    return List.copyOf(Typed.contents(folder).keySet());
  }

  @Test
  void allJobsOfADay() throws IOException {
    says(card("--pickup", "2026-11-21"), Exit.OK, "wallet cards for ");
    says(card("--pickup", "2026-11-21T08:00"), Exit.OK, "wallet cards for ");
    assertEquals(List.of("cards.pdf"), written());
    says(card("Q-3111", "--pickup", "2026-11-21", "--sheet", "a4"), Exit.OK, "wallet cards for ");
  }

  @Test
  void aDayWithoutJobsAndWhatIsNoDay() throws IOException {
    says(card("--pickup", "2020-01-01"), Exit.PROBLEMS, "No job is picked up on 2020-01-01");
    says(
        card("--pickup", "tomorrow"), Exit.USAGE, "--pickup is not a time: tomorrow", "a day such");
    says(card(), Exit.USAGE, "name one or more jobs");
    assertEquals(List.of(), written());
  }

  /** A car that is named beside a day is told with all others that are left out, and only there. */
  @Test
  void theErrorsOfACarThatIsNamedBesideADayAreToldOnce() throws IOException {
    edit("jobs/Q-3101.yaml", "vlt: 28", "vlt: 280");
    for (String id : List.of("Q-3101", "Q-3111")) {
      String said = card(id, "Q-9", "--pickup", "2026-11-21").said();
      assertEquals(2, said.split("vlt is 280", -1).length, said);
      assertEquals(2, said.split("There is no job Q-9", -1).length, said);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "wallet, wallet cards",
    "wallet-inch, wallet cards",
    "hang-tag, hang tags",
    "care-a5, care sheets",
    "care-letter, care sheets"
  })
  void everyHandoutByItsName(String handout, String many) throws IOException {
    says(card("Q-3111", "--as", handout), Exit.OK, many + " for 1 job");
    assertEquals(List.of("cards.pdf"), written());
  }

  @Test
  void anUnknownHandoutOrPaper() throws IOException {
    says(card("Q-3111", "--as", "walet"), Exit.USAGE, "did you mean wallet?");
    says(card("Q-3111", "--sheet", "a5"), Exit.USAGE, "--sheet takes");
    assertEquals(List.of(), written());
  }

  /** Three by three cards of 85 by 55 mm with their bleed fill 210 by 297 mm (ISO 216, A4). */
  @Test
  void aPlaceThatNoSheetHasIsTold() throws IOException {
    says(card("Q-3111", "--sheet", "a4", "--start", "10"), Exit.PROBLEMS, "has 9 places", "10");
    says(card("Q-3111", "--sheet", "none", "--start", "2"), Exit.PROBLEMS, "page of its own");
    says(card("Q-3111", "--as", "label-62", "--start", "2"), Exit.PROBLEMS, "page of its own");
    assertEquals(List.of(), written(), "another place may be used already");
    says(card("Q-3111", "--sheet", "a4", "--start", "9"), Exit.OK, "for 1 job");
    says(card("Q-3111", "--as", "label-62", "--sheet", "a4"), Exit.USAGE, "leave out --sheet");
  }

  @Test
  void aCardWithoutTheShopsLogoOrInAnotherColorIsTold() throws IOException {
    edit("shop.yaml", "logo: ", "logo: no-such-");
    says(card("Q-3111"), Exit.PROBLEMS, "shop.yaml", "logo", "wallet cards for 1 job");
    assertEquals(List.of("cards.pdf"), written());
  }

  @ParameterizedTest
  @ValueSource(strings = {"screen", "black", "process"})
  void everyInkByItsName(String ink) throws IOException {
    says(card("Q-3111", "--ink", ink), Exit.OK, "wallet cards for 1 job");
    assertEquals(List.of("cards.pdf"), written());
  }

  @Test
  void theInkOfTheShopsColorNeedsItsName() throws IOException {
    says(card("Q-3111", "--ink", "blak"), Exit.USAGE, "did you mean black?");
    says(card("Q-3111", "--ink", "spot"), Exit.USAGE, "spot: and the name", "in shop.yaml");
    assertEquals(List.of(), written());
    Path file = shop.resolve("shop.yaml");
    String own = Files.readString(file).replaceAll("(?m)^handout:.*\\R", "");
    Files.writeString(file, own + "handout: {spot: Quillhaven Rust}\n");
    says(card("Q-3111", "--ink", "spot"), Exit.OK, "wallet cards for 1 job");
    String made = Files.readString(pdf, StandardCharsets.ISO_8859_1);
    assertTrue(made.contains("Quillhaven#20Rust"));
    assertTrue(made.contains("(CGATS TR 006)"), "the demo shop is in Washington");
  }

  @Test
  void explainTellsOfEveryCodeAndWritesNothing() throws IOException {
    var before = Typed.contents(shop).keySet();
    Typed told = card("Q-3111", "--explain");
    says(told, Exit.OK, "wallet ", "window-up ", "care-letter ", "level ", "quiet zone", "modules");
    says(card("Q-3111", "--explain", "--as", "wallet"), Exit.OK, "wallet ");
    assertEquals(List.of(), written());
    assertEquals(before, Typed.contents(shop).keySet());
  }

  /** People type the address: it is printed whole, or not at all. */
  @ParameterizedTest
  @ValueSource(strings = {"wallet", "wallet-inch", "hang-tag", "care-a5", "care-letter"})
  void anAddressThatDoesNotFitWholeIsRefused(String handout) throws IOException {
    String address = "https://" + "care.".repeat(28) + "example/";
    edit("shop.yaml", "https://care.quillhaven.example/", address);
    says(
        card("Q-3111", "--as", handout),
        Exit.PROBLEMS,
        "shop.yaml",
        "address is too long",
        "does not fit whole",
        "shorten");
    assertEquals(List.of(), written());
  }

  @ParameterizedTest
  @CsvSource({
    "'<p>\n<b th:text=\"${cards.size(}\"/></p>', card.html:2",
    "'<p>\n\n</b>', card.html:3",
  })
  void aMistakeInTheTemplateNamesItsLineAndKeepsTheOldFile(String template, String place)
      throws IOException {
    says(card("Q-3111"), Exit.OK);
    byte[] before = Files.readAllBytes(pdf);
    Path templates = Files.createDirectories(shop.resolve("site-templates"));
    Files.writeString(templates.resolve("card.html"), template);
    says(card("Q-3111"), Exit.PROBLEMS, "site-templates/" + place);
    assertArrayEquals(before, Files.readAllBytes(pdf));
    assertEquals(List.of("cards.pdf"), written());
  }

  @Test
  void oneBadJobDoesNotStopTheOthers() throws IOException {
    Files.writeString(shop.resolve("jobs/BAD.yaml"), "id: BAD\n");
    says(card("BAD", "Q-3111"), Exit.PROBLEMS, "Job BAD has to be mended first", "for 1 job");
    says(card("NONE", "Q-3111"), Exit.PROBLEMS, "There is no job NONE", "for 1 job");
    assertEquals(List.of("cards.pdf"), written());
    says(card("BAD"), Exit.PROBLEMS, "Job BAD has to be mended first");
  }

  /** Such a job gets no page, so a card of it would lead nowhere. */
  @Test
  void aJobWhoseServiceHasNoGuideGetsNoCard() throws IOException {
    Path services = Files.createDirectories(shop.resolve("content/catalogue"));
    String all = Files.readString(Path.of("content/catalogue/services.yaml"));
    assertTrue(all.contains("guide: wrap"), all);
    Files.writeString(
        services.resolve("services.yaml"), all.replace("guide: wrap", "guide: vinyl"));
    String problem = "the care guide vinyl cannot be used in en";
    Typed check = Typed.run("check", "--shop", shop);
    String line = check.said().lines().filter(l -> l.contains(problem)).findFirst().orElseThrow();
    String ledger = Files.readString(shop.resolve("link-ledger.csv"));
    says(card("Q-3106"), Exit.PROBLEMS, line, "content/guides/en/vinyl.md");
    assertEquals(List.of(), written());
    assertEquals(ledger, Files.readString(shop.resolve("link-ledger.csv")));
    says(card("Q-3101", "Q-3106"), Exit.PROBLEMS, line, "wallet cards for 1 job");
    assertEquals(List.of("cards.pdf"), written());
  }

  /** Before the customer stands at the counter. */
  @Test
  void checkNotesTellOfSignsThatNoFontHas() throws IOException {
    edit("jobs/Q-3111.yaml", "first-name: ", "first-name: \u6F22");
    Typed check = Typed.run("check", "--notes", "--shop", shop);
    assertTrue(
        check.said().lines().anyMatch(l -> l.contains("Q-3111.yaml") && l.contains("U+6F22")),
        check.said());
    assertFalse(Typed.run("check", "--shop", shop).said().contains("U+6F22"));
  }

  @Test
  void aSignThatNoFontHasIsToldWithItsFile() throws IOException {
    edit("shop.yaml", "name: ", "name: \u6F22 ");
    Typed told = card("Q-3111");
    assertEquals(Exit.OK, told.code(), "a note stops nobody");
    assertTrue(told.said().contains("U+6F22") && told.said().contains("shop.yaml"), told.said());
    assertEquals(List.of("cards.pdf"), written());
  }

  /** The folder to write in is a file, which no permission can change. */
  @Test
  void aPlaceThatCannotBeWrittenIsToldAndNothingIsLeft() throws IOException {
    Path file = Files.writeString(folder.resolve("full"), "a file");
    pdf = file.resolve("cards.pdf");
    Typed told = card("Q-3111");
    says(told, Exit.DISK, "cannot be written");
    assertFalse(told.said().contains("Exception"), told.said());
    assertEquals(List.of("full"), written());
    pdf = folder.resolve("cards.txt");
    says(card("Q-3111"), Exit.DISK, "does not end in .pdf");
    assertEquals(List.of("full"), written());
  }
}
