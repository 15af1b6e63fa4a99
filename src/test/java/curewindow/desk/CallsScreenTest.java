package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import curewindow.site.CallReport;
import curewindow.site.CallReportText;
import curewindow.site.CallReports;
import curewindow.site.CalledShop;
import curewindow.site.LoadedShop;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The screen of calls has the numbers of the report, in words and in pictures. */
class CallsScreenTest {

  /** The evening of October 5, on which 19 cars are too few to tell anything. */
  private static final Instant EARLY = Instant.parse("2026-10-06T06:59:59Z");

  private static final String CHANGED = "2026-10-16";

  @TempDir Path folder;
  private DeskClient desk;

  @BeforeEach
  void open() throws IOException {
    CalledShop.layOut(Files.createDirectories(folder.resolve("shop")));
    desk = DeskClient.open(folder, CalledShop.CLOCK.instant());
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private CallReport report(Optional<String> since) {
    return CallReports.of(
        LoadedShop.load(desk.shop, CalledShop.CLOCK),
        new CallReport.Asked(
            CalledShop.CLOCK.instant(),
            since.map(LocalDate::parse),
            Optional.of(LocalDate.parse(CHANGED))),
        new Problems());
  }

  private static Document page(DeskClient desk, String path) {
    return Jsoup.parse(desk.page(path));
  }

  /** The rows of a table as the screen has them: label and numbers, as in the text report. */
  private static List<String> shown(Document page, String table) {
    List<String> rows = new ArrayList<>();
    for (Element row : page.select("#" + table + " tbody tr")) {
      List<String> cells = new ArrayList<>();
      cells.add(row.selectFirst("th").text());
      row.select("td:not(.pic):not(.told) span:not(.head)").forEach(c -> cells.add(c.text()));
      row.select("td.told").forEach(c -> cells.add(c.text()));
      cells.removeIf(String::isEmpty);
      rows.add(String.join(" | ", cells));
    }
    return rows;
  }

  /** The rows of a table of the text report, by its title, in the order of the screen. */
  private static List<String> told(String report, String title, String order) {
    Matcher found =
        Pattern.compile("(?m)^" + title + ".*\\n\\S.*\\n.*\\n((?:  .*\\n)+)").matcher(report);
    assertTrue(found.find(), title + "\n" + report);
    List<String> rows = new ArrayList<>();
    for (String line : found.group(1).lines().toList()) {
      Matcher numbers = Pattern.compile(order).matcher(line);
      assertTrue(numbers.matches(), line);
      String few = numbers.group("few") == null ? "" : " | too few to tell";
      String range =
          few.isEmpty() ? " | " + numbers.group("rate") + " | " + numbers.group("likely") : "";
      rows.add(
          numbers.group("label")
              + " | "
              + numbers.group("calls")
              + " of "
              + numbers.group("of")
              + range
              + few);
    }
    return rows;
  }

  private static final String GROUP =
      "  \\S+ +(?<calls>\\d+) of (?<of>\\d+) +(?:(?<few>too few to tell)|(?<rate>\\d+) +(?<likely>\\d+ to"
          + " \\d+))  (?<label>.*)";

  @Test
  void everyNumberIsThatOfTheTextReport() {
    Document page = page(desk, "/calls?since=&changed=" + CHANGED);
    String text = CallReportText.of(report(Optional.empty()), desk.loaded().words().of("en"));
    assertEquals(told(text, "By service", GROUP), shown(page, "services"));
    assertEquals("Window tint | 7 of 25 | 28 | 11 to 58", shown(page, "services").get(0));
    assertEquals(
        told(text, "By question", GROUP).toString().toLowerCase(Locale.ROOT),
        shown(page, "questions").toString().toLowerCase(Locale.ROOT));
    assertEquals(
        told(text, "By days", GROUP).toString().toLowerCase(Locale.ROOT),
        shown(page, "days").toString().toLowerCase(Locale.ROOT));
    String lead = page.selectFirst(".lede").text();
    assertEquals("9 calls from 54 cars handed over: 17 per 100, likely 7 to 32.", lead);
    assertTrue(text.startsWith(lead + "\n"), text);
    assertEquals(4, page.select("ul.note li").size(), "what is left out, and why");
  }

  @Test
  void holdsPlacesAndTheChangeAreThoseOfTheReport() {
    Document page = page(desk, "/calls?changed=" + CHANGED);
    CallReport report = report(Optional.empty());
    assertEquals(
        report.pages().holds().stream()
            .map(h -> h.label() + " | " + h.share().part() + " of 8 | too few to tell")
            .toList(),
        shown(page, "holds"));
    assertEquals(
        report.pages().places().stream()
            .map(
                p ->
                    p.label()
                        + " | "
                        + (p.place().isPresent() ? p.place().getAsInt() : "-")
                        + " | "
                        + p.atAGlance()
                        + " | "
                        + p.folded()
                        + " | "
                        + p.off()
                        + (p.isTooLow() ? " | stands too low" : ""))
            .toList(),
        shown(page, "places"));
    List<String> change = shown(page, "change");
    assertEquals("All calls | 5 of 22 | 1 of 23 | 19 | 0 to 171 | may be chance", change.get(0));
    assertEquals(report.change().orElseThrow().compared().size(), change.size());
    String text = CallReportText.of(report, desk.loaded().words().of("en"));
    for (int i = 0; i < change.size(); i++) {
      var ratio = report.change().orElseThrow().compared().get(i).ratio();
      String numbers =
          ratio.percent().getAsInt()
              + " +"
              + ratio.low().getAsInt()
              + " to "
              + ratio.high().getAsInt();
      assertTrue(
          Pattern.compile(numbers).matcher(text.replace(",", "")).find(), numbers + "\n" + text);
      assertTrue(
          change.get(i).replace(",", "").contains(numbers.replace(" +", " | ")), change.get(i));
    }
    assertTrue(page.text().contains("picked up October 1, 2026 to October 8, 2026"), page.text());
  }

  @Test
  void aQuestionThatStandsTooLowIsMarked() throws IOException {
    desk.close();
    Path calls = desk.shop.resolve("callbacks.csv");
    StringBuilder more = new StringBuilder(Files.readString(calls));
    for (int day = 3; day < 7; day++) {
      more.append("Q-32%02d,2026-10-1%dT10:00:00,windows,solved\n".formatted(day + 3, day));
    }
    Files.writeString(calls, more);
    try (DeskClient again = DeskClient.open(folder, CalledShop.CLOCK.instant())) {
      List<String> low =
          shown(page(again, "/calls"), "places").stream()
              .filter(r -> r.endsWith(" | stands too low"))
              .toList();
      assertEquals(
          List.of("When can I roll the windows down? | - | 0 | 0 | 5 | stands too low"), low);
    }
  }

  /** Of every row that tells something there is a line and a dot, at the place of its numbers. */
  @Test
  void thePictureStandsWhereTheNumbersSay() {
    Document page = page(desk, "/calls?changed=" + CHANGED);
    for (String table : List.of("services", "questions", "days")) {
      double top = Double.parseDouble(page.select("#" + table + " thead text").last().text());
      for (Element row : page.select("#" + table + " tbody tr")) {
        List<String> cells = row.select("td span:not(.head)").eachText();
        boolean few = row.select("td.told").text().equals("too few to tell");
        assertEquals(few ? 0 : 1, row.select("svg").size(), row.text());
        if (!few) {
          String[] likely = cells.get(2).split(" to ");
          assertEquals(at(cells.get(1), top), row.selectFirst("circle").attr("cx"), row.text());
          Element line = row.selectFirst("line.span");
          assertEquals(at(likely[0], top), line.attr("x1"), row.text());
          assertEquals(at(likely[1], top), line.attr("x2"), row.text());
          assertTrue(row.selectFirst("svg").hasAttr("aria-hidden"));
        }
      }
    }
    assertEquals(0, page.select("#holds svg").size(), "8 calls are too few");
  }

  /** From 4 to 96 percent of the width. */
  private static String at(String number, double top) {
    return String.format(Locale.ROOT, "%.2f%%", 4 + 92 * Double.parseDouble(number) / top);
  }

  @Test
  void ofTooFewNothingIsDrawn() throws IOException {
    desk.close();
    try (DeskClient early = DeskClient.open(folder, EARLY)) {
      Document page = page(early, "/calls?changed=2026-10-03");
      assertEquals(
          "3 calls from 19 cars handed over, which is too few to tell.",
          page.selectFirst(".lede").text());
      assertEquals(0, page.select("svg").size(), page.html());
      assertTrue(page.select("#services tbody tr").size() > 1);
      page.select("#services tbody tr, #places tbody tr")
          .forEach(r -> assertEquals("too few to tell", r.select("td.told").text(), r.text()));
      assertFalse(page.text().contains("The true number"), page.text());
      assertTrue(page.text().contains("it is too soon to tell"), page.text());
    }
  }

  @Test
  void aShopWithoutCallsHasNoTables() throws IOException {
    Files.delete(desk.shop.resolve("callbacks.csv"));
    desk.close();
    try (DeskClient none = DeskClient.open(folder, CalledShop.CLOCK.instant())) {
      Document page = page(none, "/calls");
      assertEquals(0, page.select("table").size());
      assertTrue(page.selectFirst(".lede").text().startsWith("0 calls from 0 cars"), page.text());
    }
  }

  @Test
  void aDayMayBeChosenAndAWrongOneIsTold() {
    assertTrue(page(desk, "/calls?since=2026-09-15").text().contains("10 calls from 55 cars"));
    for (String wrong : List.of("2026-12-01", "soon", "2026-02-30")) {
      assertEquals(422, desk.get("/calls?since=" + wrong).statusCode(), wrong);
      Document page = page(desk, "/calls?since=" + wrong + "&changed=" + CHANGED);
      assertEquals("true", page.selectFirst("#since").attr("aria-invalid"));
      assertEquals("", page.selectFirst("#changed").attr("aria-invalid"));
      assertTrue(page.text().contains("9 calls from 54 cars"), "all else is told");
      assertEquals(4, shown(page, "change").size());
    }
  }

  @Test
  void itSpeaksSpanish() {
    String page =
        desk.send(
                HttpRequest.newBuilder(desk.at("/calls?changed=" + CHANGED))
                    .header("Cookie", "language=es"))
            .body()
            .replace('\u00A0', ' ');
    Document spanish = Jsoup.parse(page);
    assertEquals("es", spanish.selectFirst("html").attr("lang"));
    assertTrue(spanish.text().contains("9 llamadas de 54 autos entregados"), spanish.text());
    assertTrue(shown(spanish, "services").get(0).endsWith("7 de 25 | 28 | 11 a 58"));
    assertEquals("El día de la entrega | 1 de 54 | 2 | 0 a 11", shown(spanish, "days").get(0));
  }

  @Test
  void aLineBeginsAtZeroAndEndsRound() {
    assertEquals(List.of("0", "1"), ticks(0));
    assertEquals(List.of("0", "1", "2", "3"), ticks(3));
    assertEquals(List.of("0", "2", "4", "6"), ticks(5));
    assertEquals(List.of("0", "20", "40", "60"), ticks(58));
    assertEquals(List.of("0", "100", "200", "300", "400"), ticks(400));
    CallsPicture.Mark open =
        CallsPicture.upTo(400).mark(OptionalInt.empty(), 5, OptionalInt.of(7509));
    assertTrue(open.open());
    assertEquals("96.00%", open.high());
    assertEquals(Optional.empty(), open.at());
    assertTrue(CallsPicture.upTo(400).mark(OptionalInt.of(1), 0, OptionalInt.empty()).open());
  }

  private static List<String> ticks(int most) {
    return CallsPicture.upTo(most).axis(OptionalInt.empty()).ticks().stream()
        .map(CallsPicture.Tick::text)
        .toList();
  }
}
