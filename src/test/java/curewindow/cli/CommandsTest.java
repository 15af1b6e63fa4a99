package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands as a user types them, on a copy of the demo shop. */
class CommandsTest {

  private static final Path DEMO = Path.of("content/demo");

  @TempDir Path temp;
  private Path shop;
  private Path out;
  private String said = "";

  @BeforeEach
  void copyDemo() throws IOException {
    shop = temp.resolve("shop");
    out = temp.resolve("out");
    copy(DEMO, shop);
  }

  @Test
  void pressBuildsEveryJobOfTheDemoSaysWhereItIsAndGivesTheSameBytesAgain() throws IOException {
    assertEquals(Exit.OK, run("press", "--shop", shop, "--out", out), () -> said);
    for (String id : List.of("Q-3101", "Q-3114", "Q-3117")) {
      assertTrue(said.contains(id), said);
    }
    assertTrue(said.contains("view --out"), said);
    List<String> pages = Files.readAllLines(out.resolve("office/pages.csv"));
    assertEquals(18, pages.size(), "a header and 17 jobs");
    for (String page : pages.subList(1, pages.size())) {
      Path folder = out.resolve("site").resolve(page.split(",")[2]);
      assertTrue(Files.readString(folder.resolve("index.html")).contains("noindex"), page);
      arrivesInTheFirstRoundTrip(folder.resolve("index.html"));
      fewFilesAndSmall(folder);
      assertTrue(Files.readString(folder.resolve("care.ics")).startsWith("BEGIN:VCALENDAR"), page);
    }
    run("press", "--shop", shop, "--out", temp.resolve("again"));
    TreeMap<String, byte[]> first = Typed.contents(out);
    TreeMap<String, byte[]> second = Typed.contents(temp.resolve("again"));
    assertEquals(first.keySet(), second.keySet());
    first.forEach((name, bytes) -> assertArrayEquals(bytes, second.get(name), name));
    run("press", "--shop", shop, "--out", out);
    assertTrue(said.contains("17 jobs, none new or changed"), said);
    assertFalse(said.contains("  Q-3101 "), said);
  }

  @Test
  void aCarThatLeavesWhenAllIsOverHasItsPageAndStopsNoOther() throws IOException {
    Files.writeString(
        shop.resolve("jobs/Q-1.yaml"),
        """
        id: Q-1
        first-name: Ann
        car: {body: sedan, paint: dark, text: old sedan}
        place: phoenix
        parking: outside
        pickup: 2026-07-30T17:00
        items:
          - {service: fabric-coating, film: tidewater-fabric, spots: [seats], finished: 2026-06-10T10:00}
        """);
    run("press", "--shop", shop, "--out", out);
    assertTrue(said.matches("(?s).*: 18 jobs\\R.*  Q-1  +Ann  +All clear\\R.*"), said);
    assertTrue(said.contains("  Q-3101 "), said);
    assertTrue(Files.readString(out.resolve("office/pages.csv")).contains("Q-1,Ann,C/"));
  }

  /** Ten packets of 1460 bytes: what a new TCP connection sends at first (RFC 6928). */
  private static void arrivesInTheFirstRoundTrip(Path page) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip = new GZIPOutputStream(bytes)) {
      gzip.write(Files.readAllBytes(page));
    }
    assertTrue(bytes.size() <= 14_600, page + ": " + bytes.size() + " bytes");
  }

  private static void fewFilesAndSmall(Path folder) throws IOException {
    long size = 0;
    List<String> names = new ArrayList<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        size += Files.size(file);
        names.add(folder.relativize(file).toString());
      }
    }
    assertEquals(List.of("all.ics", "care.ics", "care.webmanifest", "index.html"), names);
    assertTrue(size <= 80_000, folder + ": " + size + " bytes");
  }

  @Test
  void pressingTwiceChangesNothing() throws IOException {
    keepTwoJobs();
    assertEquals(Exit.OK, run("press", "--shop", shop, "--out", out), () -> said);
    assertEquals(Exit.OK, run("press", "--shop", shop, "--out", out));
    assertTrue(said.contains(", 0 of them new or changed, 0 old ones removed"), said);
  }

  @Test
  void aBrokenJobIsLeftOutNamedAndKeepsItsPage() throws IOException {
    keepTwoJobs();
    run("press", "--shop", shop, "--out", out);
    String row = pageRow("Q-3101");
    Path page = out.resolve("site").resolve(row.split(",")[2]).resolve("index.html");
    Path job = shop.resolve("jobs/Q-3101.yaml");
    Files.writeString(job, Files.readString(job).replace("harbor-35", "harbour-35"));
    assertEquals(Exit.PROBLEMS, run("press", "--shop", shop, "--out", out));
    assertTrue(said.contains("jobs/Q-3101.yaml:"), said);
    assertTrue(said.contains("harbor-35"), said);
    assertTrue(said.contains("Left out: Q-3101"), said);
    assertTrue(said.matches("(?s).*: 1 job, none new or changed\\R.*"), said);
    assertTrue(Files.exists(page), "the customer's page from before stays");
  }

  @Test
  void theJobThatIsTakenAwayLosesItsPage() throws IOException {
    keepTwoJobs();
    run("press", "--shop", shop, "--out", out);
    Path page = out.resolve("site").resolve(pageRow("Q-3102").split(",")[2]).resolve("index.html");
    assertTrue(Files.exists(page));
    Files.delete(shop.resolve("jobs/Q-3102.yaml"));
    assertEquals(Exit.OK, run("press", "--shop", shop, "--out", out));
    assertFalse(Files.exists(page));
  }

  @Test
  void checkNamesFileLineColumnAndFixAndExitsWithOne() throws IOException {
    assertEquals(Exit.OK, run("check", "--shop", shop), () -> said);
    keepTwoJobs("Q-3103", "Q-3102");
    Path job = shop.resolve("jobs/Q-3103.yaml");
    Files.writeString(job, Files.readString(job).replace("minneapolis", "mineapolis"));
    assertEquals(Exit.PROBLEMS, run("check", "--shop", shop));
    assertTrue(said.matches("(?s).*jobs/Q-3103\\.yaml:\\d+:\\d+  .*minneapolis.*"), said);
  }

  @Test
  void whyExplainsInWordsAndAsData() {
    assertEquals(Exit.OK, run("why", "Q-3101", "--shop", shop), () -> said);
    assertTrue(said.contains("reference hours"), said);
    assertTrue(said.contains("[windows-up]"), said);
    assertEquals(Exit.OK, run("why", "Q-3101", "--json", "--shop", shop));
    for (String field :
        List.of("\"because\"", "\"referenceHours\"", "\"realHours\"", "\"driver\" : \"bond\"")) {
      assertTrue(said.contains(field), field + " in " + said);
    }
    assertEquals(Exit.PROBLEMS, run("why", "Q-3110x", "--shop", shop));
    assertTrue(said.contains("did you mean Q-3110?"), said);
  }

  @Test
  void cardMakesAPdfOfTheNamedJobs() throws IOException {
    Path pdf = temp.resolve("two.pdf");
    assertEquals(
        Exit.OK, run("card", "Q-3101", "Q-3111", "--shop", shop, "--out", pdf), () -> said);
    assertTrue(said.contains("wallet cards for 2 jobs"), said);
    assertTrue(
        Files.readString(pdf, java.nio.charset.StandardCharsets.ISO_8859_1).startsWith("%PDF"));
    assertEquals(Exit.PROBLEMS, run("card", "nobody", "--shop", shop, "--out", pdf));
  }

  @Test
  void newShopCanBePressedAtOnce() {
    Path fresh = temp.resolve("fresh");
    assertEquals(Exit.OK, run("new-shop", fresh), () -> said);
    assertEquals(Exit.OK, run("check", "--shop", fresh), () -> said);
    assertEquals(Exit.OK, run("press", "--shop", fresh, "--out", out), () -> said);
    assertTrue(said.contains("2 jobs"), said);
    assertEquals(Exit.DISK, run("new-shop", fresh), "a folder with files is refused");
  }

  @Test
  void whatCannotBeUsedIsSaidInASentence() throws IOException {
    keepTwoJobs();
    assertEquals(Exit.USAGE, run("pres"));
    assertEquals(Exit.USAGE, run("press", "--shopp", shop));
    assertEquals(Exit.DISK, run("press", "--shop", temp.resolve("nowhere"), "--out", out));
    assertTrue(said.contains("--shop"), said);
    Path file = Files.writeString(temp.resolve("file"), "x");
    assertEquals(Exit.DISK, run("press", "--shop", shop, "--out", file));
    assertEquals(Exit.DISK, run("press", "--shop", shop, "--out", shop));
    assertEquals(Exit.DISK, run("view", "--out", temp.resolve("nowhere")));
    assertTrue(said.contains("press it first"), said);
    assertFalse(said.contains("\tat "), said);
  }

  @Test
  void aLedgerThatIsGoneOrEmptyOrOlderNeverLosesThePrintedAddresses() throws IOException {
    keepTwoJobs();
    run("press", "--shop", shop, "--out", out);
    TreeMap<String, byte[]> pressed = Typed.contents(out);
    Path ledger = shop.resolve("link-ledger.csv");
    String whole = Files.readString(ledger);
    String older = whole.replaceFirst("(?m)^Q-3101,.*\n", "");
    Files.delete(ledger);
    assertEquals(Exit.PROBLEMS, run("press", "--shop", shop, "--out", out));
    assertTrue(said.contains("the link ledger is gone"), said);
    for (String damaged : List.of("", older, "job,token,since\n")) {
      Files.writeString(ledger, damaged);
      assertEquals(Exit.PROBLEMS, run("press", "--shop", shop, "--out", out), damaged);
      assertTrue(said.contains("link-ledger.csv"), said);
      assertEquals(damaged, Files.readString(ledger));
    }
    assertEquals(pressed.keySet(), Typed.contents(out).keySet());
    Files.writeString(ledger, whole);
    assertEquals(Exit.OK, run("press", "--shop", shop, "--out", out), () -> said);
  }

  /** Q-3101 is picked up on November 24, 2026, at 17:00, Q-3102 the day before. */
  @Test
  void pressMakesCardsToLookAtForTheCarsStillToBePickedUp() throws IOException {
    keepTwoJobs();
    Path cards = out.resolve("office/cards.pdf");
    assertEquals(1, sheetsPressed("2026-11-23T23:59:59-08:00", cards), "by the shop's clock");
    assertTrue(said.contains("cards.pdf  preview only: the 2 cars still to be picked up"), said);
    assertEquals(1, sheetsPressed("2026-11-24T23:59:59-08:00", cards), "later on its day");
    assertTrue(said.contains("cards.pdf  preview only: the car still to be picked up"), said);
    assertEquals(0, sheetsPressed("2026-11-25T00:00:00-08:00", cards));
    assertFalse(said.contains("cards.pdf"), said);
    assertTrue(said.contains("card JOB --shop "), said);
    assertFalse(Files.exists(shop.resolve("printed-dates.csv")), "nothing was handed over");
  }

  private int sheetsPressed(String at, Path cards) throws IOException {
    Clock clock = Clock.fixed(OffsetDateTime.parse(at).toInstant(), ZoneOffset.UTC);
    Typed typed = Typed.run(clock, "press", "--shop", shop, "--out", out);
    said = typed.said();
    assertEquals(Exit.OK, typed.code(), said);
    if (!Files.exists(cards)) {
      return 0;
    }
    try (PDDocument pdf = Loader.loadPDF(cards.toFile())) {
      return pdf.getNumberOfPages();
    }
  }

  @Test
  void aBrokenGuideIsToldAndNoPageLosesItsCareText() throws IOException {
    keepTwoJobs();
    Path guide = shop.resolve("content/guides/en/tint.md");
    Files.createDirectories(guide.getParent());
    Files.writeString(guide, "# Our tint\n\n(? bogus x ?)\n\nText\n\n(? end ?)\n");
    assertEquals(Exit.PROBLEMS, run("press", "--shop", shop, "--out", out));
    assertTrue(said.contains("content/guides/en/tint.md:3:"), said);
    Path page = out.resolve("site").resolve(pageRow("Q-3101").split(",")[2]).resolve("index.html");
    assertTrue(Files.readString(page).contains("Window tint"), "the program's own guide stands in");
    assertTrue(Files.exists(out.resolve("site/en/tint.html")));
  }

  @Test
  void checkAndPressTellAMistakeInATemplateAndOldPagesStay() throws IOException {
    keepTwoJobs();
    run("press", "--shop", shop, "--out", out);
    TreeMap<String, byte[]> pressed = Typed.contents(out.resolve("site"));
    Path template = shop.resolve("site-templates/customer.html");
    Files.createDirectories(template.getParent());
    String own = Files.readString(Path.of("site-templates/customer.html"));
    Files.writeString(template, own.replace("<body", "<body th:id=\"${a.before\""));
    assertEquals(Exit.PROBLEMS, run("check", "--shop", shop));
    assertTrue(said.contains("site-templates/customer.html:"), said);
    assertEquals(Exit.PROBLEMS, run("press", "--shop", shop, "--out", out));
    assertTrue(said.contains("Left out: Q-3101"), said);
    assertEquals(pressed.keySet(), Typed.contents(out.resolve("site")).keySet());
  }

  @Test
  void whatIsTakenAwayGoesThoughAnotherJobIsBroken() throws IOException {
    keepTwoJobs();
    run("press", "--shop", shop, "--out", out);
    Path gone = out.resolve("site").resolve(pageRow("Q-3102").split(",")[2]).resolve("index.html");
    Path kept = out.resolve("site").resolve(pageRow("Q-3101").split(",")[2]).resolve("index.html");
    Files.delete(shop.resolve("jobs/Q-3102.yaml"));
    Path job = shop.resolve("jobs/Q-3101.yaml");
    Files.writeString(job, Files.readString(job).replace("harbor-35", "harbour-35"));
    for (int press = 0; press < 2; press++) {
      assertEquals(Exit.PROBLEMS, run("press", "--shop", shop, "--out", out));
      assertFalse(Files.exists(gone), "withdrawn");
      assertTrue(Files.exists(kept), "broken, press " + press);
    }
    Files.write(job, new byte[] {(byte) 0xff, (byte) 0xfe});
    assertEquals(Exit.PROBLEMS, run("press", "--shop", shop, "--out", out));
    assertTrue(Files.exists(kept), "unreadable");
  }

  @Test
  void cardReplacesNothingButPdfs() throws IOException {
    keepTwoJobs();
    Path yaml = shop.resolve("shop.yaml");
    String before = Files.readString(yaml);
    assertEquals(Exit.DISK, run("card", "Q-3101", "--shop", shop, "--out", yaml));
    assertEquals(before, Files.readString(yaml));
    Path letter = Files.writeString(temp.resolve("letter.pdf"), "Dear ...");
    assertEquals(Exit.DISK, run("card", "Q-3101", "--shop", shop, "--out", letter));
    assertEquals("Dear ...", Files.readString(letter));
  }

  @Test
  void aBrokenLedgerStopsThePressAndStaysAsItIs() throws IOException {
    keepTwoJobs();
    Path ledger = Files.writeString(shop.resolve("link-ledger.csv"), "job,token,since\nQ,x,y\n");
    assertEquals(Exit.PROBLEMS, run("press", "--shop", shop, "--out", out));
    assertTrue(said.contains("link-ledger.csv:2:1"), said);
    assertEquals("job,token,since\nQ,x,y\n", Files.readString(ledger));
    assertFalse(Files.exists(out));
  }

  /** Most faults show on two jobs as well as on all. */
  private void keepTwoJobs() throws IOException {
    keepTwoJobs("Q-3101", "Q-3102");
  }

  private void keepTwoJobs(String one, String other) throws IOException {
    Files.delete(shop.resolve("jobs.csv"));
    try (Stream<Path> jobs = Files.list(shop.resolve("jobs"))) {
      for (Path job : jobs.toList()) {
        if (!job.endsWith(one + ".yaml") && !job.endsWith(other + ".yaml")) {
          Files.delete(job);
        }
      }
    }
  }

  private String pageRow(String job) throws IOException {
    return Files.readAllLines(out.resolve("office/pages.csv")).stream()
        .filter(l -> l.startsWith(job + ","))
        .findFirst()
        .orElseThrow();
  }

  private int run(Object... args) {
    Typed typed = Typed.run(args);
    said = typed.said();
    return typed.code();
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path f : files.toList()) {
        Path target = to.resolve(from.relativize(f).toString());
        if (Files.isDirectory(f)) {
          Files.createDirectories(target);
        } else if (!f.endsWith("printed-dates.csv")) {
          Files.copy(f, target);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"card", "press", "quick-start", "places"})
  void everyCommandTellsTheVersion(String command) {
    Typed typed = Typed.run(command, "--version");
    assertEquals(Exit.OK, typed.code());
    assertTrue(typed.said().startsWith("curewindow "), typed.said());
  }

  @Test
  void tooLittleMemoryIsSaid() {
    StringWriter said = new StringWriter();
    int code =
        Curewindow.enough(
            new PrintWriter(said, true),
            () -> {
              throw new OutOfMemoryError("Java heap space");
            });
    assertEquals(Exit.DISK, code);
    assertTrue(said.toString().contains("-Xmx4g"), said.toString());
  }
}
