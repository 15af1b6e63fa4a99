package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.Stay;
import curewindow.shop.PastVisit;
import curewindow.shop.PastVisit.Result;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a page says of visits. */
class SeenWordsTest {

  private static PastVisit visit(String day, Result result, String... what) {
    return new PastVisit(LocalDate.parse(day), List.of(what), result, "their own note");
  }

  private static Document page(String language, PastVisit... seen) {
    Demo demo = Demo.tint();
    demo.language = language;
    demo.seen = List.of(seen);
    String html = demo.html();
    assertEquals(-1, html.indexOf("their own note"), "the note is the shop's");
    return Jsoup.parse(html);
  }

  private static String note(Document page) {
    return page.select(".now p.note").text().replace('\u00A0', ' ');
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en | FINE | We checked it on December 8: all good.",
        "en | MENDED | We checked it on December 8 and fixed something. Your dates stay the same.",
        "en | REFITTED | We redid it on December 8. Its dates count from then.",
        "es | REFITTED | Lo colocamos de nuevo el 8 de diciembre: sus fechas cuentan desde"
            + " entonces.",
        "ar | REFITTED | ركّبناه من جديد يوم 8 ديسمبر: تُحسب مواعيده من ذلك اليوم.",
        "es | FINE | Lo revisamos el 8 de diciembre: todo bien.",
        "es | MENDED | Lo revisamos el 8 de diciembre y corregimos un detalle. Sus fechas no cambian.",
        "ar | FINE | فحصناه يوم 8 ديسمبر: كل شيء على ما يرام.",
        "ar | MENDED | فحصناه يوم 8 ديسمبر وأصلحنا ما لزم. المواعيد لا تتغيّر."
      })
  void theTopSaysWhatCameOfIt(String language, Result result, String said) {
    assertEquals(said, note(page(language, visit("2026-12-08", result))));
  }

  @Test
  void onlyTheLastVisitIsNewsAndOnlyForAMonth() {
    Document page =
        page("en", visit("2026-12-08", Result.MENDED), visit("2026-12-20", Result.FINE, "tint"));
    Element note = page.select(".now p.note").first();
    assertEquals("Window tint. We checked it on December 20: all good.", note.text());
    long month =
        LocalDate.parse("2027-01-19").atStartOfDay(ZoneId.of("America/Denver")).toEpochSecond();
    assertEquals(String.valueOf(month), note.attr("data-to"));
  }

  @Test
  void whatWasFittedAnewIsNamedByItsSpots() {
    assertEquals(
        "Front door windows. We redid it on December 8. Its dates count from then.",
        note(page("en", visit("2026-12-08", Result.REFITTED, "tint", "front-door-glass"))));
  }

  @Test
  void whatIsFreeByTheVisitIsSaid() {
    Demo demo = Demo.tint();
    demo.seen = List.of(visit("2026-12-02", Result.FINE, "windows-up", "inside-glass"));
    demo.seenOver("windows-up");
    assertEquals(
        "We checked it on December 2: all good. You can roll the windows down.",
        note(Jsoup.parse(demo.html())),
        "only what is over by it");
  }

  @Test
  void theRecordKeepsAllVisits() {
    Document page =
        page("en", visit("2026-12-08", Result.MENDED, "tint"), visit("2026-12-20", Result.FINE));
    String record = page.select("#car .facts").text().replace('\u00A0', ' ');
    assertTrue(
        record.contains("December 8, 2026 Window tint. Fixed. December 20, 2026 All fine."),
        record);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en | In the shop | Nov 20 to Nov 21; Dec 1",
        "es | En el taller | del 20 nov al 21 nov; 1 dic",
        "ar | في الورشة | من 20 نوفمبر إلى 21 نوفمبر؛ 1 ديسمبر"
      })
  void theRecordTellsWhenACarCameBack(String language, String label, String said) {
    Demo demo = Demo.tint();
    demo.language = language;
    assertFalse(Jsoup.parse(demo.html()).select("#car .facts").text().contains(label));
    demo.before =
        List.of(
            new Stay(Instant.parse("2026-11-20T16:00:00Z"), Instant.parse("2026-11-21T23:00:00Z")));
    String record = Jsoup.parse(demo.html()).select("#car .facts").text().replace('\u00A0', ' ');
    assertTrue(record.contains(label + " " + said), record);
  }

  @Test
  void withoutVisitsNothingIsSaid() {
    Document page = page("en");
    assertEquals("", note(page));
    assertFalse(page.select("#car .facts").text().contains("All fine."));
  }
}
