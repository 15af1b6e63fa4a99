package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.site.PressedDemo;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Measured weather and dates on cards, through the commands, on the demo shop with few jobs. */
class ObservedWeatherTest {

  /** Tint in Seattle, picked up on November 24, 2026, at 17:00; it stands outside. */
  private static final String JOB = "Q-3101";

  private static final List<String> FILES =
      List.of(
          "shop.yaml", "logo.svg", "link-ledger.csv", "Q-3101.yaml", "Q-3102.yaml", "Q-3108.yaml");

  private static final String PICKUP = "2026-11-24T17:00";

  /** After all that is called measured here. */
  private Clock clock = at("2026-12-05T18:00-08:00");

  @TempDir Path temp;
  private Path shop;
  private Path out;
  private String said = "";

  @BeforeEach
  void copyDemo() throws IOException {
    shop = temp.resolve("shop");
    out = temp.resolve("out");
    PressedDemo.layOutOpenPages(out);
    try (Stream<Path> files = Files.walk(Path.of("content/demo"))) {
      for (Path f : files.filter(Files::isRegularFile).toList()) {
        Path target = shop.resolve(Path.of("content/demo").relativize(f).toString());
        if (FILES.contains(f.getFileName().toString())) {
          Files.createDirectories(target.getParent());
          Files.copy(f, target);
        }
      }
    }
    Files.createDirectories(shop.resolve("weather"));
  }

  private static Clock at(String time) {
    return Clock.fixed(OffsetDateTime.parse(time).toInstant(), ZoneOffset.UTC);
  }

  /** A week from pickup on in which every hour is the same. */
  private void week(double air, double dewPoint) throws IOException {
    days(7, air, dewPoint);
  }

  private void days(int count, double air, double dewPoint) throws IOException {
    StringBuilder rows = new StringBuilder("place,time,air,dew-point\n");
    for (int hour = 0; hour < 24 * count; hour++) {
      LocalDateTime start = LocalDateTime.parse(PICKUP).plusHours(hour);
      rows.append("seattle,%s,%s,%s%n".formatted(start, air, dewPoint).replace("\r", ""));
    }
    Files.writeString(shop.resolve("weather/observed.csv"), rows);
  }

  private int press() {
    return run("press", "--shop", shop, "--out", out);
  }

  /** The customer gets the card, then the site is pressed. */
  private int handOver() {
    assertEquals(
        Exit.OK, run("card", JOB, "--shop", shop, "--out", temp.resolve("c.pdf")), () -> said);
    return press();
  }

  private Document page(String job) throws IOException {
    Document page = Jsoup.parse(Files.readString(folder(job).resolve("index.html")));
    page.select("[hidden]").remove();
    return page;
  }

  private Path folder(String job) throws IOException {
    return Files.readAllLines(out.resolve("office/pages.csv")).stream()
        .filter(l -> l.startsWith(job + ","))
        .map(l -> out.resolve("site").resolve(l.split(",")[2]))
        .findFirst()
        .orElseThrow();
  }

  private OffsetDateTime windows() throws IOException {
    return OffsetDateTime.parse(
        page(JOB).select("li[data-hold=windows-up] time").first().attr("datetime"));
  }

  @Test
  void aWarmWeekMovesTheDateEarlierAndThePageSaysSo() throws IOException {
    assertEquals(Exit.OK, handOver(), () -> said);
    OffsetDateTime usual = windows();
    assertTrue(page(JOB).select("main > .card").isEmpty());
    week(16, 8);
    assertEquals(Exit.OK, press(), () -> said);
    assertTrue(windows().isBefore(usual), windows() + " against " + usual);
    assertTrue(page(JOB).select(".now .note").text().contains("sooner than the card says"));
    assertTrue(page(JOB).select("main > .card").isEmpty());
    assertEquals(Exit.OK, run("due", "--shop", shop, "--at", "2026-11-25T08:00-08:00"));
    assertTrue(said.contains("No one to call"), said);
    assertTrue(said.contains("May go ahead sooner than they were told:"), said);
    String sooner = "(?s).*sooner  Q-3101 +Mara +Windows stay up\\R    the card says .*";
    assertTrue(said.matches(sooner), said);
    assertTrue(said.contains("now free from "), said);
    run("due", "--shop", shop, "--at", usual.toString());
    assertFalse(said.matches(sooner), "what the card says has come: " + said);
  }

  @Test
  void aColdSnapMovesTheDateLaterAndThePageSaysSoFirst() throws IOException {
    handOver();
    OffsetDateTime usual = windows();
    String before = Files.readString(folder(JOB).resolve("care.ics"));
    week(-6, -9);
    press();
    assertTrue(windows().isAfter(usual), windows() + " against " + usual);
    String first = page(JOB).selectFirst("main").child(0).text();
    assertTrue(first.startsWith("The card says "), first);
    assertTrue(first.contains("It has been colder or damper than usual: please wait until"), first);
    String after = Files.readString(folder(JOB).resolve("care.ics"));
    assertFalse(before.equals(after), "the calendar moves along");
    assertEquals(uids(before), uids(after), "under the same names");
  }

  @Test
  void aVisitThatMovedIsSaidByThePageAndByDue() throws IOException {
    handOver();
    assertFalse(page(JOB).text().contains("That has moved"));
    LocalDate asked = told(JOB);
    days(11, 24, 5);
    press();
    assertTrue(
        page(JOB)
            .text()
            .matches(".*Come in so we can check it any .*We told you .*That has moved.*"));
    assertEquals(Exit.OK, run("due", "--shop", shop, "--at", "2026-11-25T08:00-08:00"));
    String visits = said.substring(said.indexOf("The visit has moved to another day:"));
    assertTrue(
        visits.matches("(?s).*visit  Q-3101 +Mara +Come in so we can check it\\R    we said .*"),
        said);
    assertTrue(visits.contains("now from "), said);
    run("due", "--shop", shop, "--at", asked.plusDays(1) + "T08:00-08:00");
    assertFalse(said.contains("visit  Q-3101"), "both days are over: " + said);
  }

  /** The day for which the shop asked when it handed over a job's card. */
  private LocalDate told(String job) throws IOException {
    return Files.readAllLines(shop.resolve("printed-dates.csv")).stream()
        .filter(l -> l.startsWith(job + ",,visit,"))
        .map(l -> LocalDate.parse(l.split(",")[3]))
        .reduce((a, b) -> b)
        .orElseThrow();
  }

  private static List<String> uids(String calendar) {
    return Pattern.compile("(?m)^UID:.*$")
        .matcher(calendar)
        .results()
        .map(r -> r.group().strip())
        .sorted()
        .toList();
  }

  @Test
  void inTheLanguageOfTheJob() throws IOException {
    Path job = shop.resolve("jobs/" + JOB + ".yaml");
    Files.writeString(job, Files.readString(job) + "language: es\n");
    handOver();
    week(-6, -9);
    press();
    String first = page(JOB).selectFirst("main").child(0).text();
    assertTrue(first.startsWith("La tarjeta dice "), first);
    assertTrue(first.contains("más frío"), first);
  }

  @Test
  void dueListsWhomToCallTheEarliestPromiseFirst() throws IOException {
    handOver();
    week(-6, -9);
    press();
    assertEquals(Exit.OK, run("due", "--shop", shop, "--at", "2026-11-25T08:00-08:00"));
    List<String> calls = said.lines().filter(l -> l.startsWith("call  ")).toList();
    assertTrue(
        calls.stream().anyMatch(c -> c.matches("call +Q-3101 +Mara +Windows stay up")), said);
    assertTrue(said.contains("the card says "), said);
    assertTrue(said.contains("now wait until "), said);
    assertFalse(said.contains("Q-3102"), "Phoenix had no cold snap: " + said);
    run("check", "--shop", shop, "--at", "2026-11-25T08:00-08:00");
    assertTrue(said.contains("To call: " + calls.size() + " date"), said);
    run("due", "--shop", shop, "--at", "2027-11-25T08:00-08:00");
    assertTrue(said.contains("No one to call"), "it is too late to call: " + said);
    run("check", "--shop", shop, "--at", "2027-11-25T08:00-08:00");
    assertFalse(said.contains("To call"), said);
    assertEquals(Exit.USAGE, run("due", "--shop", shop, "--at", "tomorrow"));
    assertTrue(said.contains("--at is not a time: tomorrow"), said);
    assertEquals(Exit.USAGE, run("check", "--shop", shop, "--at", "12/2/26"));
    assertTrue(said.contains("2026-12-02 or 2026-02-12: write the one you mean"), said);
    run("due", "--shop", shop, "--at", "2026-11-25T08:00-08:00");
    String full = said;
    for (String form : List.of("2026-11-25", "2026-11-25T08:00", "2026-11-25T16:00Z")) {
      run("due", "--shop", shop, "--at", form);
      assertEquals(full, said, form);
    }
  }

  /**
   * The clock of the machine tells the day that is written beside a date, and which hours are over;
   * it must not change anything else.
   */
  @Test
  void pressingAgainChangesNothing() throws IOException {
    handOver();
    for (double air : new double[] {16, -6}) {
      week(air, -9);
      press();
      TreeMap<String, byte[]> first = Typed.contents(out);
      byte[] printed = Files.readAllBytes(shop.resolve("printed-dates.csv"));
      press();
      assertTrue(said.contains(", 0 of them new or changed, 0 old ones removed"), said);
      Typed.contents(out).forEach((name, bytes) -> assertArrayEquals(first.get(name), bytes, name));
      assertArrayEquals(printed, Files.readAllBytes(shop.resolve("printed-dates.csv")));
    }
  }

  @Test
  void rowsOfPrintedDatesAreAddedAndNeverChanged() throws IOException {
    handOver();
    String first = Files.readString(shop.resolve("printed-dates.csv"));
    assertTrue(first.startsWith("job,hold,state,date,printed\n"), first);
    assertTrue(first.contains(JOB + ",windows-up,safe-by,"), first);
    week(-6, -9);
    handOver();
    String second = Files.readString(shop.resolve("printed-dates.csv"));
    assertTrue(second.startsWith(first) && second.length() > first.length(), second);
    assertFalse(Typed.contents(out).keySet().stream().anyMatch(n -> n.contains("printed")));
  }

  @Test
  void aCardThatWasMadeCountsAsPrintedWithTheVisit() throws IOException {
    run("card", JOB, "--shop", shop, "--out", temp.resolve("card.pdf"));
    String printed = Files.readString(shop.resolve("printed-dates.csv"), StandardCharsets.UTF_8);
    assertEquals(4, printed.lines().count(), "a header, the two dates of one card, the visit");
    week(-6, -9);
    press();
    assertTrue(page(JOB).selectFirst("main").child(0).text().startsWith("The card says "));
  }

  /** What a press made was given to nobody, so nobody is told that it was wrong. */
  @Test
  void onlyWhatWasHandedOverCountsAsPrinted() throws IOException {
    clock = at("2026-11-24T12:00-08:00");
    assertEquals(Exit.OK, press(), () -> said);
    assertTrue(Files.exists(out.resolve("office/cards.pdf")), "its pickup is to come");
    assertTrue(said.contains("card JOB --shop "), "how to print one: " + said);
    assertFalse(Files.exists(shop.resolve("printed-dates.csv")));
    clock = at("2026-12-05T18:00-08:00");
    week(-6, -9);
    assertEquals(Exit.OK, press(), () -> said);
    assertFalse(Files.exists(shop.resolve("printed-dates.csv")));
    assertTrue(page(JOB).select("main > .card").isEmpty());
    run("due", "--shop", shop, "--at", "2026-11-25T08:00-08:00");
    assertTrue(said.contains("No one to call: no card was made yet"), said);
  }

  /** Q-3108 is picked up on November 18, 2026, at 16:00, with a coating over fresh film. */
  @Test
  void theCardAndTheFirstAnswerAreOfWhatIsStillAheadAtPickup() throws IOException {
    run("card", "Q-3108", "--shop", shop, "--out", temp.resolve("c.pdf"));
    press();
    OffsetDateTime pickup = OffsetDateTime.parse("2026-11-18T16:00-08:00");
    List<String> printed =
        Files.readAllLines(shop.resolve("printed-dates.csv")).stream()
            .filter(l -> l.startsWith("Q-3108,") && !l.contains(",visit,"))
            .toList();
    assertEquals(2, printed.size(), printed::toString);
    for (String row : printed) {
      assertTrue(OffsetDateTime.parse(row.split(",")[3]).isAfter(pickup), row);
      assertFalse(row.contains(",rain,"), row);
    }
    Document page = page("Q-3108");
    assertTrue(page.select(".now").text().contains("keep it out of strong sun too"));
    assertTrue(page.select("li[data-hold=rain]").isEmpty(), "keeping it dry says it all");
    assertTrue(
        OffsetDateTime.parse(page.select(".answer time").first().attr("datetime")).isAfter(pickup));
  }

  /** A day of the week is over by the clock; the rest was typed from a forecast. */
  @Test
  void hoursThatAreNotOverDoNotCount() throws IOException {
    days(1, 16, 8);
    clock = at("2026-11-25T17:00-08:00");
    assertEquals(Exit.OK, press(), () -> said);
    OffsetDateTime measured = windows();
    week(16, 8);
    assertEquals(Exit.OK, press(), () -> said);
    assertEquals(measured, windows());
    assertEquals(Exit.OK, run("check", "--notes", "--shop", shop), () -> said);
    List<String> told = said.lines().filter(l -> l.contains("observed.csv")).toList();
    assertEquals(1, told.size(), told::toString);
    assertTrue(
        told.get(0).startsWith("note: weather/observed.csv:26:1  this hour is not over yet"), said);
    clock = at("2026-12-01T17:00-08:00");
    assertEquals(Exit.OK, press(), () -> said);
    assertTrue(windows().isBefore(measured), windows() + " against " + measured);
    run("check", "--notes", "--shop", shop);
    assertFalse(said.contains("observed.csv"), said);
  }

  @Test
  void brokenRowsAreToldAndBreakNoJob() throws IOException {
    week(16, 8);
    Path file = shop.resolve("weather/observed.csv");
    Files.writeString(
        file, Files.readString(file) + "seattle,2026-12-05T14:00,warm,8\nnowhere,x,1,1\n");
    assertEquals(Exit.PROBLEMS, press());
    assertTrue(said.contains("weather/observed.csv:170:26  air should be a number"), said);
    assertTrue(said.contains("weather/observed.csv:171:1  no place is called nowhere"), said);
    assertTrue(said.contains("3 jobs"), said);
    assertEquals(4, Files.readAllLines(out.resolve("office/pages.csv")).size());
  }

  @Test
  void brokenPrintedDatesStopEverythingAndStayAsTheyAre() throws IOException {
    String broken = "job,hold,state,date,printed\nQ,rain,maybe,x,y\n";
    Path file = Files.writeString(shop.resolve("printed-dates.csv"), broken);
    Path none = temp.resolve("none");
    for (List<Object> command :
        List.of(
            List.<Object>of("press", "--shop", shop, "--out", none),
            List.<Object>of("card", JOB, "--shop", shop, "--out", temp.resolve("c.pdf")),
            List.<Object>of("due", "--shop", shop))) {
      assertEquals(Exit.PROBLEMS, run(command.toArray()), command::toString);
      assertTrue(said.contains("printed-dates.csv:2:1"), said);
    }
    assertEquals(broken, Files.readString(file));
    assertFalse(Files.exists(none));
    assertEquals(Exit.PROBLEMS, run("check", "--shop", shop));
  }

  private int run(Object... args) {
    Typed typed = Typed.run(clock, args);
    said = typed.said();
    return typed.code();
  }
}
