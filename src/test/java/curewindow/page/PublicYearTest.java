package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import curewindow.told.YearHere;
import curewindow.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** The year here: how long things take at the shop's place, for who has not bought anything yet. */
class PublicYearTest {

  private static final YearHere YEAR = Demo.year();
  private static final List<Words> LANGUAGES =
      List.of(Demo.WORDS.of("en"), Demo.WORDS.of("es"), Demo.WORDS.of("ar"));
  private static final SortedMap<String, String> PAGES = pages(Optional.of(YEAR));

  private static SortedMap<String, String> pages(Optional<YearHere> year) {
    Problems problems = new Problems();
    SortedMap<String, String> pages =
        Demo.PAGES.open(Demo.shop("Longs Peak"), year, LANGUAGES, problems);
    assertEquals(List.of(), problems.all());
    return pages;
  }

  private static Document page(String language) {
    return Jsoup.parse(PAGES.get(language + "/year.html"));
  }

  @Test
  void everyLanguageHasItAndHomeAndGuidesLeadToIt() {
    for (String page : List.of("en/index.html", "es/tint.html", "es/find.html")) {
      assertTrue(Jsoup.parse(PAGES.get(page)).select("a[href=year.html]").size() >= 1, page);
    }
    assertEquals(2, Jsoup.parse(PAGES.get("en/tint.html")).select("a[href=year.html]").size());
    assertTrue(PAGES.get("index.html").contains("en/year.html"));
    assertTrue(PAGES.get("sitemap.xml").contains("ar/year.html"));
    assertEquals("rtl", page("ar").selectFirst("html").attr("dir"));
    assertTrue(page("en").text().contains("Denver"));
  }

  @Test
  void whatLastsEquallyLongStandsTogetherAndNothingTwice() {
    List<String> services = page("en").select("article h2").eachText();
    assertTrue(services.contains("Window tint"), services.toString());
    assertTrue(
        services.stream().anyMatch(s -> s.contains("Paint coating · ")), services.toString());
    List<String> holds = page("en").select("article h3").eachText();
    assertTrue(holds.contains("Haze is normal Small water bubbles are normal"), holds.toString());
    assertTrue(holds.stream().noneMatch(h -> h.contains("defroster")), holds.toString());
  }

  /** The table has the very days, and the columns of the picture their heights. */
  @Test
  void pictureAndTableTellTheSameDays() {
    YearHere.Course windows =
        YEAR.services().get(0).courses().stream()
            .filter(c -> c.hold().equals("windows-up"))
            .findFirst()
            .orElseThrow();
    Element figure = page("en").selectFirst("figure");
    assertEquals("Windows stay up", figure.selectFirst("h3").text());
    List<String> outside = figure.select("tbody td:nth-of-type(1)").eachText();
    List<String> heights = figure.select("rect.out").eachAttr("height");
    int most =
        windows.months().stream()
            .mapToInt(m -> Math.max(m.outside().safe(), m.garage().safe()))
            .max()
            .orElseThrow();
    assertEquals(most + " days", figure.selectFirst("text.most").text());
    for (int month = 0; month < 12; month++) {
      YearHere.Days days = windows.months().get(month).outside();
      String cell =
          days.likely() == days.safe() ? "" + days.safe() : days.likely() + " to " + days.safe();
      assertEquals(cell, outside.get(month));
      assertEquals(
          Math.max(2, Math.round(64.0 * days.safe() / most)), Long.parseLong(heights.get(month)));
    }
    String said = figure.selectFirst("p").text();
    int longest = YEAR.range(windows).most().safe();
    assertTrue(said.matches("Outside \\d+ days? in \\w+, " + longest + " in \\w+\\."), said);
    assertEquals("Windows stay up: " + said, figure.selectFirst("svg").attr("aria-label"));
    assertEquals("img", figure.selectFirst("svg").attr("role"));
  }

  @Test
  void theYearRunsAsTheLanguageIsWritten() {
    Element first = page("en").selectFirst("rect.out");
    assertEquals("1.00%", first.attr("x"));
    assertEquals("96.00%", page("ar").selectFirst("rect.out").attr("x"));
    assertEquals("J", page("en").selectFirst("text[text-anchor]").text());
  }

  @Test
  void guidesQuoteTheShortestAndTheLongestMonth() {
    PublicYear year = new PublicYear(YEAR, Demo.WORDS.of("en"));
    YearHere.Range range = YEAR.of("tint", "windows-up").orElseThrow();
    String quoted = year.quoted("tint", "windows-up", "until").orElseThrow().year();
    assertEquals(
        range.least().safe()
            + (range.least().safe() == 1 ? " day" : " days")
            + " after the work in July, up to "
            + range.most().safe()
            + " in "
            + (range.longest() == java.time.Month.JANUARY ? "January" : "December"),
        quoted);
    String day = year.quoted("normal", "inside-glass", "day").orElseThrow().year();
    assertTrue(day.matches("day \\d+ after the work in \\w+, day \\d+ in \\w+"), day);
    assertTrue(year.quoted("tint", "no-such-hold", "until").isEmpty());
    for (Words words : LANGUAGES) {
      String tint = PAGES.get(words.language() + "/tint.html");
      assertTrue(
          !Jsoup.parse(tint)
              .select("article li")
              .text()
              .matches(".*(up until the date|cerradas hasta la fecha).*"),
          words.language());
    }
  }

  @Test
  void withoutAYearGuidesSendToOnesOwnPage() {
    SortedMap<String, String> pages = pages(Optional.empty());
    assertTrue(pages.get("en/tint.html").contains("the date on your own page"));
    assertTrue(pages.keySet().stream().noneMatch(path -> path.endsWith("/year.html")));
    pages.forEach(
        (path, text) -> assertTrue(Jsoup.parse(text).select("a[href=year.html]").isEmpty(), path));
  }
}
