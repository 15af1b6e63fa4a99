package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The papers of the office on a copy of the demo shop. */
final class OfficeCommandsTest {

  private static final Path DEMO = Path.of("content/demo");

  @TempDir Path temp;
  private Path shop;
  private String said = "";

  @BeforeEach
  void copyDemo() throws IOException {
    shop = temp.resolve("shop");
    try (Stream<Path> files = Files.walk(DEMO)) {
      for (Path f : files.filter(f -> !f.endsWith("printed-dates.csv")).toList()) {
        Path target = shop.resolve(DEMO.relativize(f));
        if (Files.isDirectory(f)) {
          Files.createDirectories(target);
        } else {
          Files.copy(f, target);
        }
      }
    }
  }

  private int run(Object... args) {
    return run(Clock.systemUTC(), args);
  }

  private int run(Clock clock, Object... args) {
    Typed typed = Typed.run(clock, args);
    said = typed.said().replace('\u00A0', ' ');
    return typed.code();
  }

  private String paper(String at) throws IOException {
    Path file = temp.resolve("day.html");
    assertEquals(Exit.OK, run("due", "--shop", shop, "--at", at, "--out", file), () -> said);
    return Files.readString(file)
        .replace('\u00A0', ' ')
        .replaceFirst("(?s)<style>.*</style>", "")
        .replaceAll("<[^>]*>", "\n")
        .replaceAll("\\s*\\n\\s*", "\n");
  }

  private static void contains(String text, String... parts) {
    for (String part : parts) {
      assertTrue(text.contains(part), () -> part + " in " + text);
    }
  }

  @Test
  void theDayHasItsPickupsByTheShopsClock() throws IOException {
    String tuesday = paper("2026-11-24T08:00-08:00");
    contains(tuesday, "Tuesday\n24\nNovember 24, 2026", "5 PM\nQ-3101 Mara\nblack four-door");
    // Between isolates (UAX 9), as it runs the other way than its paper.
    contains(tuesday, "Q-3113 Hemi", "Q-3117 \u2068نادية\u2069", "العربية");
    contains(tuesday, "Hours by the clock in Auckland, New Zealand.");
    assertTrue(tuesday.indexOf("Q-3101 Mara") < tuesday.indexOf("Q-3113 Hemi"), "by time");
    assertFalse(tuesday.contains("Q-3102 Deshawn"), "picked up the day before");
    assertFalse(tuesday.contains("Closed"), tuesday);
    assertFalse(tuesday.contains("555"), "no phone number");
    assertEquals(tuesday, paper("2026-11-24T21:00-08:00"), "the same day is the same paper");
  }

  @Test
  void aClosedDayIsSaidAndTheNextOpenOneIsTold() throws IOException {
    String holiday = paper("2026-11-26T08:00-08:00");
    contains(holiday, "Closed on Thursday, November 26.", "next open day, Friday, November 27");
    contains(holiday, "No pickups.");
    // Sunday is closed; the wagon that is noted for that day all the same is not forgotten.
    Path job = shop.resolve("jobs/Q-3106.yaml");
    Files.writeString(
        job, Files.readString(job).replaceAll("(?m)^pickup: .*$", "pickup: 2026-12-13T12:00"));
    String sunday = paper("2026-12-13T08:00-08:00");
    contains(sunday, "Closed on Sunday, December 13.", "Monday\n14\nDecember 14, 2026");
    contains(sunday, "Sun, Dec 13\nQ-3106");
  }

  @Test
  void aShopThatNeverOpensIsTold() throws IOException {
    Path yaml = shop.resolve("shop.yaml");
    String text = Files.readString(yaml);
    Files.writeString(
        yaml,
        text.replaceAll("(?m)^  (mon|tue|wed|thu|fri): .*\n", "")
            .replaceFirst("sat: .*", "sat: 09:00-13:00")
            .replaceFirst("closed: .*", "closed: [" + saturdays() + "]"));
    contains(paper("2026-11-24T08:00-08:00"), "no open day is known", "Q-3101 Mara");
  }

  private static String saturdays() {
    return Stream.iterate(java.time.LocalDate.parse("2026-11-28"), d -> d.plusWeeks(1))
        .limit(60)
        .map(Object::toString)
        .collect(java.util.stream.Collectors.joining(", "));
  }

  @Test
  void visitsAndCallersFollowTheDay() throws IOException {
    String before = paper("2026-12-22T08:00-08:00");
    contains(before, "Next seven days", "Tue, Dec 29\nQ-3108 Ana", "Who may call");
    contains(paper("2027-01-05T08:00-08:00"), "Overdue\n", "Q-3108 Ana");
  }

  @Test
  void whoHasComeIsNotOverdue() throws IOException {
    Files.writeString(shop.resolve("visits.csv"), "job,day,result\nQ-3108,2026-12-18,fine\n");
    Path file = temp.resolve("seen.html");
    Clock clock = Clock.fixed(Instant.parse("2026-12-24T16:00:00Z"), ZoneOffset.UTC);
    assertEquals(Exit.OK, run(clock, "due", "--shop", shop, "--out", file), () -> said);
    String paper = Files.readString(file);
    String visits = paper.substring(paper.indexOf("Visits due"), paper.indexOf("Who may call"));
    assertFalse(visits.contains("Q-3108"), visits);
  }

  @Test
  void theShopsOwnLanguageIsUsed() throws IOException {
    Path yaml = shop.resolve("shop.yaml");
    Files.writeString(yaml, Files.readString(yaml).replace("language: en", "language: es"));
    String paper = paper("2026-11-24T08:00-08:00");
    contains(paper, "El día en el mostrador", "Entregar: tarjeta", "Quién puede llamar");
    contains(paper, "Q-3101 Mara", "hasta el mié, 2 de dic");
    assertEquals(Exit.OK, run("questions", "--shop", shop, "--day", "2026-11-25"), () -> said);
    contains(said, "Q-3114  Joaquín", "¿");
  }

  @Test
  void aPrintedDateThatBecameTooEarlyIsOnThePaper() throws IOException {
    Files.writeString(
        shop.resolve("printed-dates.csv"),
        "job,hold,state,date,printed\n"
            + "Q-3101,windows-up,safe-by,2026-11-26T14:00-08:00,2026-11-24\n");
    String paper = paper("2026-11-24T08:00-08:00");
    contains(paper, "The card says Thursday, November 26, 2 PM for “Windows stay up”.");
    contains(paper, "Wait until Wednesday, December 2, 10 AM");
  }

  @Test
  void pressWritesItBesideTheCardsAndNothingOfItIntoTheSite() throws IOException {
    Clock clock = Clock.fixed(Instant.parse("2026-11-24T18:00:00Z"), ZoneOffset.UTC);
    keepFewJobs();
    Path out = temp.resolve("out");
    assertEquals(Exit.OK, run(clock, "press", "--shop", shop, "--out", out), () -> said);
    TreeMap<String, byte[]> first = Typed.contents(out);
    assertTrue(first.containsKey("office/today.html"));
    assertTrue(new String(first.get("office/today.pdf"), 0, 4).equals("%PDF"));
    List<String> lines = Files.readAllLines(out.resolve("office/files.txt"));
    assertTrue(lines.containsAll(List.of("office/today.html", "office/today.pdf")));
    first.forEach(
        (name, bytes) ->
            assertFalse(
                name.startsWith("site/") && (name.contains("today") || names(bytes)), name));
    assertEquals(Exit.OK, run(clock, "press", "--shop", shop, "--out", out), () -> said);
    assertTrue(said.contains(", 0 of them new or changed"), said);
    assertEquals(Exit.OK, run(clock, "press", "--shop", shop, "--out", temp.resolve("b")));
    TreeMap<String, byte[]> second = Typed.contents(temp.resolve("b"));
    for (String name : List.of("office/today.html", "office/today.pdf")) {
      assertArrayEquals(first.get(name), second.get(name), name);
    }
    Path alone = temp.resolve("alone.pdf");
    run("due", "--shop", shop, "--at", "2026-11-24T10:00-08:00", "--out", alone);
    assertArrayEquals(first.get("office/today.pdf"), Files.readAllBytes(alone));
  }

  private static boolean names(byte[] bytes) {
    return new String(bytes, java.nio.charset.StandardCharsets.UTF_8).contains("at the counter");
  }

  @Test
  void aShopWithoutJobsHasAPaperToo() throws IOException {
    Files.delete(shop.resolve("jobs.csv"));
    try (Stream<Path> jobs = Files.list(shop.resolve("jobs"))) {
      for (Path job : jobs.toList()) {
        Files.delete(job);
      }
    }
    contains(paper("2026-11-24T08:00-08:00"), "No pickups.", "No one has a date coming up.");
    assertEquals(Exit.OK, run("questions", "--shop", shop, "--day", "2026-11-24"));
    assertTrue(said.contains("Nobody is likely to call on 2026-11-24"), said);
  }

  @Test
  void whatIsNoPaperIsNotReplacedAndNoHalfIsLeft() throws IOException {
    Path yaml = shop.resolve("shop.yaml");
    String before = Files.readString(yaml);
    assertEquals(Exit.DISK, run("due", "--shop", shop, "--out", yaml));
    assertEquals(before, Files.readString(yaml));
    Path letter = Files.writeString(temp.resolve("letter.pdf"), "Dear ...");
    assertEquals(Exit.DISK, run("due", "--shop", shop, "--out", letter));
    assertEquals("Dear ...", Files.readString(letter));
    Path page = Files.writeString(temp.resolve("letter.html"), "Dear ...");
    assertEquals(Exit.DISK, run("due", "--shop", shop, "--out", page));
    Path folder = Files.createDirectories(temp.resolve("folder.pdf"));
    assertEquals(Exit.DISK, run("due", "--shop", shop, "--out", folder));
    // The folder to write into is a file, which no user, however mighty, can write into.
    TreeMap<String, byte[]> all = Typed.contents(temp);
    assertEquals(Exit.DISK, run("due", "--shop", shop, "--out", letter.resolve("day.pdf")));
    assertTrue(said.contains("cannot be written"), said);
    assertEquals(all.keySet(), Typed.contents(temp).keySet());
  }

  /** It is as whole as without the note. */
  @Test
  void aNoteOnThePaperIsNoFailure() throws IOException {
    keepFewJobs();
    Path job = shop.resolve("jobs/Q-3101.yaml");
    Files.writeString(job, Files.readString(job).replace("Mara", "Mara\u4E2D"));
    Path file = temp.resolve("day.pdf");
    assertEquals(
        Exit.OK, run("due", "--shop", shop, "--at", "2026-11-24", "--out", file), () -> said);
    contains(said, "note: jobs/Q-3101.yaml:", "day.pdf: the day of 2026-11-24");
  }

  @Test
  void aBrokenJobIsNamedOnThePaper() throws IOException {
    keepFewJobs();
    Path job = shop.resolve("jobs/Q-3102.yaml");
    Files.writeString(job, Files.readString(job).replace("pickup:", "pick-up:"));
    Path out = temp.resolve("out");
    assertEquals(Exit.PROBLEMS, run("press", "--shop", shop, "--out", out), said);
    String paper = Files.readString(out.resolve("office/today.html"));
    contains(paper, ">Left off this page until fixed: Q-3102. Run check to see why.<");
  }

  @Test
  void aMistakeInTheTemplateIsToldAndNothingIsWritten() throws IOException {
    Path template = shop.resolve("site-templates/office-day.html");
    Files.createDirectories(template.getParent());
    String own = Files.readString(Path.of("site-templates/office-day.html"));
    Files.writeString(template, own.replace("${page.title}", "${page.title"));
    Path file = temp.resolve("day.pdf");
    assertEquals(Exit.PROBLEMS, run("due", "--shop", shop, "--out", file));
    assertTrue(said.contains("site-templates/office-day.html"), said);
    assertFalse(Files.exists(file));
    keepFewJobs();
    assertEquals(Exit.PROBLEMS, run("check", "--shop", shop));
    assertTrue(said.contains("site-templates/office-day.html"), said);
  }

  @Test
  void questionsAreToldForADay() {
    assertEquals(Exit.OK, run("questions", "--shop", shop, "--day", "2026-11-25"), () -> said);
    contains(
        said, "Who may call on 2026-11-25", "Q-3113  Hemi", "I rolled a window down too soon.");
    contains(said, "left out; --all tells them", "until Thursday, November 26, 10 AM");
    int brief = said.length();
    assertEquals(Exit.OK, run("questions", "--shop", shop, "--day", "2026-11-25", "--all"));
    assertTrue(said.length() > 2 * brief, said);
    assertFalse(said.contains("left out"), said);
    assertEquals(Exit.OK, run("questions", "--shop", shop, "--day", "2026-11-26"));
    assertTrue(said.startsWith("The shop is closed on 2026-11-26."), said);
    assertEquals(Exit.USAGE, run("questions", "--shop", shop, "--day", "tomorrow"));
    contains(said, "--day is not a time: tomorrow", "write a day such as 2026-12-02");
    String day = "Who may call on 2026-11-25";
    for (String form : List.of("2026-11-25T09:00", "2026-11-26T07:30Z", "2026-11-25")) {
      assertEquals(Exit.OK, run("questions", "--shop", shop, "--day", form), form);
      contains(said, day);
    }
    Clock clock = Clock.fixed(Instant.parse("2026-11-26T07:30:00Z"), ZoneOffset.UTC);
    run(clock, "questions", "--shop", shop);
    assertTrue(said.contains("Who may call on 2026-11-25"), "by the shop's clock: " + said);
  }

  private void keepFewJobs() throws IOException {
    Files.delete(shop.resolve("jobs.csv"));
    try (Stream<Path> jobs = Files.list(shop.resolve("jobs"))) {
      for (Path job : jobs.toList()) {
        if (!job.toString().contains("Q-3101") && !job.toString().contains("Q-3102")) {
          Files.delete(job);
        }
      }
    }
  }
}
