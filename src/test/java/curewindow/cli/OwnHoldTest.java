package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.shop.Handout;
import curewindow.site.LoadedShop;
import curewindow.told.JobView;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A hold and a spot of a shop's own, with words and without, behave like any other. */
class OwnHoldTest {

  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T17:00:00Z"), ZoneOffset.UTC);

  /** A name of a text in brackets, as {@code [hold.foam.label]}, or a value left open. */
  private static final Pattern KEY =
      Pattern.compile(
          "\\[(hold|spot|service|finish|unnamed|page|office|handout|done|later|car|park(ed|ing)"
              + "|public|calendar|finding)[.][a-z0-9.-]+]|[{](when|full|share|what)[}]");

  private static final String JOB =
      """
      id: F-%s
      language: %<s
      car: {body: suv, paint: mid, text: the tall one}
      parking: outside
      pickup: 2026-11-25T17:00
      items:
        - {service: paint-coating, film: tidewater-paint, spots: [whole-body, hatch-glass], finished: 2026-11-25T15:00}
      """;

  private static final String WORDS =
      """
      hold:
        foam:
          label: "Snow foam"
          until: "No snow foam until {when}."
          done: "You can use snow foam."
          gently: "Foam gently until about {full}."
          short: "No foam"
          event: "Foam is fine"
      spot:
        hatch-glass: "hatch window"
      """;

  @TempDir Path temp;

  private Path shop;

  @BeforeEach
  void layOut() throws IOException {
    shop = temp.resolve("shop");
    assertEquals(Exit.OK, Typed.run("new-shop", shop).code());
    for (String name : List.of("holds", "spots", "services")) {
      String file = "content/catalogue/" + name + ".yaml";
      assertEquals(Exit.OK, Typed.run("edit", file, "--shop", shop).code());
    }
    Files.createDirectories(shop.resolve("content/words/en"));
    edit(
        "content/catalogue/holds.yaml",
        "\nrules:\n",
        """

        rules:
          - {service: paint-coating, hold: foam, need: {crosslink: 1}, floor: 1, limit: 1}
        """);
    edit(
        "content/catalogue/holds.yaml",
        "holds:\n",
        "holds:\n  foam: {kind: hold, rank: 10, brings: [water], after: [rinse]}\n");
    edit("content/catalogue/spots.yaml", "spots:\n", "spots:\n  hatch-glass: {faces: side}\n");
    edit(
        "content/catalogue/services.yaml",
        "taillight, whole-body]\n    guide: coating",
        "taillight, whole-body, hatch-glass]\n    guide: coating");
    for (String language : new String[] {"en", "es", "ar"}) {
      Files.writeString(shop.resolve("jobs/F-" + language + ".yaml"), JOB.formatted(language));
    }
  }

  private void edit(String file, String from, String to) throws IOException {
    String text = Files.readString(shop.resolve(file));
    assertTrue(text.contains(from), file);
    Files.writeString(shop.resolve(file), text.replace(from, to));
  }

  /** File and line of an entry of the catalogue. */
  private String place(String catalogue, String entry) throws IOException {
    String file = "content/catalogue/" + catalogue + ".yaml";
    List<String> lines = Files.readAllLines(shop.resolve(file));
    int line = 1;
    while (!lines.get(line - 1).startsWith(entry)) {
      line++;
    }
    return file + ":" + line;
  }

  @Test
  void withoutWordsItIsAProblemWithFileAndLineAndNoKeyIsShown() throws Exception {
    Typed check = Typed.run(CLOCK, "check", "--shop", shop);
    assertEquals(Exit.PROBLEMS, check.code(), check::said);
    assertTrue(check.said().contains(place("holds", "  foam:") + ":3"), check::said);
    assertTrue(check.said().contains("the hold foam lacks texts"), check::said);
    assertTrue(
        check
            .said()
            .contains(
                "add hold.foam.label, .until, .done, .short, .event, .gently to"
                    + " content/words/en/catalogue.yaml"),
        check::said);
    assertTrue(check.said().contains(place("spots", "  hatch-glass:") + ":3"), check::said);
    assertTrue(check.said().contains("add spot.hatch-glass to"), check::said);
    noKeyIsShown();
  }

  @Test
  void englishWordsAreEnough() throws IOException {
    Files.writeString(shop.resolve("content/words/en/own.yaml"), WORDS);
    Typed check = Typed.run(CLOCK, "check", "--shop", shop);
    assertEquals(Exit.OK, check.code(), check::said);
  }

  /** It needs an hour, but nothing wet comes near a coating that has to stay dry. */
  @Test
  void itWaitsForTheCoatingAndTheRinse() throws IOException {
    Files.writeString(shop.resolve("content/words/en/own.yaml"), WORDS);
    LoadedShop loaded = LoadedShop.load(shop, CLOCK);
    JobView view = loaded.view(loaded.job("F-en").orElseThrow(), "7K3MPQ9W2XHTR4VBD6NC");
    assertEquals(end(view, "rinse"), end(view, "foam"));
    assertFalse(end(view, "foam").isBefore(end(view, "keep-dry")));
    assertFalse(end(view, "topper").isBefore(end(view, "hand-wash")));
  }

  private static Instant end(JobView view, String hold) {
    return view.timeline().of(hold).orElseThrow().end().at();
  }

  @Test
  void aFactThatNoHoldForbidsIsNoticed() throws IOException {
    edit(
        "content/catalogue/holds.yaml", "brings: [water], after: [rinse]}\n", "brings: [watre]}\n");
    Typed check = Typed.run(CLOCK, "check", "--notes", "--shop", shop);
    assertTrue(check.said().contains("brings watre, which no hold forbids"), check::said);
    assertTrue(check.said().contains("did you mean water?"), check::said);
    assertTrue(check.said().contains(place("holds", "  foam:") + ":"), check::said);
  }

  @Test
  void whatNothingBringsIsForbiddenInVain() throws IOException {
    edit(
        "content/catalogue/holds.yaml",
        "brings: [water], after: [rinse]}\n",
        "forbids: [wtaer], brings: [water]}\n");
    Typed check = Typed.run(CLOCK, "check", "--notes", "--shop", shop);
    assertTrue(check.said().contains("forbids wtaer, which no hold brings or wants"), check::said);
    assertTrue(check.said().contains("did you mean water?"), check::said);
  }

  /** Many holds bring water; the one that forbids it is misspelt, and they are not. */
  @Test
  void aMisspeltWordIsNoticedOnceWhereItStands() throws IOException {
    edit("content/catalogue/holds.yaml", "forbids: [water, sun]", "forbids: [watr, sun]");
    Typed check = Typed.run(CLOCK, "check", "--notes", "--shop", shop);
    String told =
        "the hold keep-dry forbids watr, which no hold brings or wants  did you mean water?";
    assertTrue(check.said().contains(told), check::said);
    assertTrue(check.said().contains(place("holds", "  keep-dry:") + ":"), check::said);
    assertFalse(check.said().contains("which no hold forbids"), check::said);
  }

  @Test
  void holdsThatWaitForEachOtherAreNoticedOnce() throws IOException {
    edit("content/catalogue/holds.yaml", "after: [rain]}", "after: [foam]}");
    Typed check = Typed.run(CLOCK, "check", "--notes", "--shop", shop);
    assertTrue(check.said().contains("foam after rinse after foam: they wait"), check::said);
    assertEquals(2, check.said().split("they wait for each other").length);
    LoadedShop loaded = LoadedShop.load(shop, CLOCK);
    JobView view = loaded.view(loaded.job("F-en").orElseThrow(), "7K3MPQ9W2XHTR4VBD6NC");
    assertEquals(end(view, "rinse"), end(view, "foam"));
  }

  /** The page's rows, by the epoch seconds from which each is free, and the list of dates. */
  @Test
  void nothingSaysGoAheadWhileTheCoatingStaysDry() throws IOException {
    Files.writeString(shop.resolve("content/words/en/own.yaml"), WORDS);
    Path out = temp.resolve("out");
    assertEquals(Exit.OK, Typed.run(CLOCK, "press", "--shop", shop, "--out", out).code());
    int pages = 0;
    for (Map.Entry<String, byte[]> file : Typed.contents(out).entrySet()) {
      Document page = Jsoup.parse(new String(file.getValue(), StandardCharsets.UTF_8));
      if (file.getKey().endsWith("/index.html") && !goesAhead(page, "foam").isEmpty()) {
        pages++;
        for (int parked = 0; parked < goesAhead(page, "foam").size(); parked++) {
          int at = parked;
          ordered(hold -> at(goesAhead(page, hold), at));
        }
        assertFalse(page.select("[data-answer=foam]").isEmpty(), "it is told as well");
      }
    }
    assertTrue(pages >= 3, "a page for each language");
    for (String job : List.of("F-en", "F-es", "F-ar")) {
      Map<String, Long> dates = dates(job);
      ordered(dates::get);
    }
  }

  private static void ordered(ToLongFunction<String> end) {
    assertTrue(end.applyAsLong("foam") >= end.applyAsLong("keep-dry"), "foam brings water");
    assertTrue(end.applyAsLong("foam") >= end.applyAsLong("rinse"), "foam comes after the rinse");
    assertTrue(end.applyAsLong("topper") >= end.applyAsLong("hand-wash"), "no wax before a wash");
    assertTrue(end.applyAsLong("topper") >= end.applyAsLong("keep-dry"), "no wax on wet paint");
  }

  /** When a hold is free in each case of parking; one time where that makes no difference. */
  private static List<Long> goesAhead(Document page, String hold) {
    return page.select(".rows li[data-hold=" + hold + "]").stream()
        .flatMap(row -> Stream.of(row.attr("data-end").split(",")))
        .map(Long::parseLong)
        .toList();
  }

  private static long at(List<Long> times, int parked) {
    return times.get(times.size() == 1 ? 0 : parked);
  }

  /** The dates by hold, in epoch seconds, as the command tells them. */
  private Map<String, Long> dates(String job) {
    Map<String, Long> dates = new HashMap<>();
    for (String line :
        Typed.run(CLOCK, "dates", job, "--csv", "--shop", shop).said().lines().skip(1).toList()) {
      String[] cells = line.split(",");
      if (cells[4].contains("T")) {
        dates.put(cells[1], OffsetDateTime.parse(cells[4]).toEpochSecond());
      }
    }
    return dates;
  }

  private void noKeyIsShown() throws Exception {
    Path out = temp.resolve("out");
    assertTrue(Files.notExists(out));
    Typed press = Typed.run(CLOCK, "press", "--shop", shop, "--out", out);
    clean("press", press.said());
    List<String> read = new ArrayList<>();
    for (Map.Entry<String, byte[]> file : Typed.contents(out).entrySet()) {
      boolean paper = file.getKey().endsWith(".pdf");
      if (paper || file.getKey().matches(".*\\.(html|ics|webmanifest|csv|json|js|vcf)")) {
        String text = new String(file.getValue(), StandardCharsets.UTF_8);
        clean(file.getKey(), paper ? text(file.getValue()) : text);
        read.add(file.getKey());
      }
    }
    assertTrue(read.containsAll(List.of("office/cards.pdf", "office/today.pdf")), read::toString);
    for (String language : List.of("en", "es", "ar")) {
      for (Handout handout : Handout.values()) {
        handout(handout, "F-" + language);
      }
      clean("why", Typed.run(CLOCK, "why", "F-" + language, "--shop", shop).said());
      clean("dates", Typed.run(CLOCK, "dates", "F-" + language, "--shop", shop).said());
    }
    for (String command : List.of("due", "questions")) {
      clean(command, Typed.run(CLOCK, command, "--shop", shop).said());
    }
  }

  private void handout(Handout handout, String job) throws IOException {
    Path pdf = temp.resolve(handout.id() + job + ".pdf");
    Typed card = Typed.run(CLOCK, "card", job, "--as", handout.id(), "--shop", shop, "--out", pdf);
    clean(handout.id(), card.said());
    // Window stickers are for windows that must stay up, which these cars have none of.
    assertEquals(handout != Handout.WINDOW_UP, Files.exists(pdf), card::said);
    if (Files.exists(pdf)) {
      clean(handout.id(), text(Files.readAllBytes(pdf)));
    }
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }

  private static void clean(String where, String text) {
    Matcher key = KEY.matcher(text);
    assertFalse(key.find(), () -> where + ": " + key.group());
  }
}
