package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/**
 * The dates of one car agree with each other and with the shop's hours: Monday to Friday 8 to 18,
 * Saturday 9 to 13:30, in Denver.
 */
class AgreedTest {

  private static Instant end(Demo demo, String hold) {
    return demo.view().timeline().of(hold).orElseThrow().end().at();
  }

  private static String plain(String text) {
    return text.replace('\u00A0', ' ');
  }

  @Test
  void visitsAreAtTimesAtWhichTheShopIsOpen() {
    Demo demo = Demo.tint();
    assertEquals(
        Demo.at("2027-01-04T08:00"), end(demo, "inspection"), "computed for a Sunday at 16:00");
    assertEquals(Demo.at("2027-01-03T16:00"), end(demo, "haze"), "nobody has to come in for it");
    Document page = Jsoup.parse(demo.html());
    assertTrue(
        plain(page.select("tr[data-hold=inspection]").text()).contains("Mon, Jan 4 8 AM"),
        page.select("tr[data-hold=inspection]")::text);
  }

  @Test
  void whoIsAskedToComeInIsAskedForAnOpenDay() {
    Demo demo = Demo.tint();
    demo.releases.clear();
    Release.AskUs christmas = new Release.AskUs(Demo.at("2026-12-24T20:00"));
    demo.releases.add(
        demo.release("windows-up", HoldKind.HOLD, christmas, Demo.at("2026-12-24T20:00")));
    assertEquals(Demo.at("2026-12-26T09:00"), end(demo, "windows-up"));
    assertTrue(demo.view().timeline().of("windows-up").get().end() instanceof Release.AskUs);
    Document page = Jsoup.parse(demo.html());
    assertEquals("2026-12-26T09:00:00-07:00", page.select(".answer time").first().attr("datetime"));
  }

  @Test
  void aVisitIsToldInTheShopsTimeAndSaysSoWhereTheCarsDiffers() {
    Demo demo = Demo.askUs();
    demo.zone = ZoneId.of("America/New_York");
    Document page = Jsoup.parse(demo.html());
    assertEquals(
        "Before you roll the windows down, come and see us on Tuesday, December 15, 2 PM, our time",
        plain(page.select(".answer .say").first().text()).replace(" ,", ","));
    assertTrue(
        plain(page.select("tr[data-hold=windows-up]").text()).contains("2 PM, our time"),
        page.select("tr[data-hold=windows-up]")::text);
    assertTrue(plain(page.select("#twin").text()).contains("December 15, 2 PM, our time"));
    assertTrue(
        plain(page.select("tr[data-hold=pressure-wash]").text()).contains("1 PM"),
        "what ends by itself is told by the car's clock");
    assertFalse(page.select("tr[data-hold=pressure-wash]").text().contains("our time"));
    assertFalse(Demo.askUs().html().contains("our time"), "the same clock needs no word");
  }

  @Test
  void rainIsNotFineWhileACoatingHasToStayDry() {
    Demo demo = Demo.coatedFilm();
    demo.releases.removeIf(r -> r.hold().equals("rain"));
    demo.safe("rain", HoldKind.HOLD, "2026-12-02T09:00", "2026-12-02T08:00");
    assertEquals(Demo.at("2026-12-02T16:00"), end(demo, "rain"), "not before the coating is");
    demo.releases.removeIf(r -> r.hold().equals("rain"));
    demo.safe("rain", HoldKind.HOLD, "2026-12-01T09:00", "2026-12-01T08:00");
    assertEquals(Optional.empty(), demo.view().timeline().of("rain"), "it was over before pickup");
    assertFalse(demo.html().contains(demo.view().words().text("hold.rain.done")));
  }

  @Test
  void rainThatHasToBeAskedForIsStillAskedForWhereACoatingDriesLonger() {
    Demo demo = Demo.coatedFilm();
    demo.releases.removeIf(r -> r.hold().equals("rain"));
    Release.AskUs ask = new Release.AskUs(Demo.at("2026-12-02T09:00"));
    demo.releases.add(demo.release("rain", HoldKind.HOLD, ask, Demo.at("2026-12-02T09:00")));
    Release rain = demo.view().timeline().of("rain").orElseThrow();
    assertEquals(new Release.AskUs(Demo.at("2026-12-02T16:00")), rain.end());
    assertEquals("front-door-glass", rain.because().spot());
    demo.pickup = Demo.at("2026-12-02T09:00");
    assertTrue(demo.view().timeline().of("rain").isPresent(), "nobody saw it over at pickup");
  }

  /** The car is in Tokyo, where it is Wednesday already; the shop in Denver asks on Tuesday. */
  @Test
  void theLikelyDayNeverReadsLaterThanTheDayToAsk() {
    Demo demo = Demo.tint();
    demo.zone = ZoneId.of("Asia/Tokyo");
    demo.releases.clear();
    Release.AskUs ask = new Release.AskUs(Demo.at("2026-12-15T09:00"));
    demo.releases.add(demo.release("windows-up", HoldKind.HOLD, ask, Demo.at("2026-12-15T08:30")));
    Document page = Jsoup.parse(demo.html());
    String row = plain(page.select("tr[data-hold=windows-up]").text());
    assertTrue(row.contains("Tue, Dec 15 9 AM, our time Tue, Dec 15"), row);
    String twin = plain(page.select("#twin").text());
    assertTrue(twin.contains("likely over Tue, Dec 15; ask us on Tuesday, December 15"), twin);
    assertEquals(
        Optional.of("Tuesday, December 15"),
        new JobFacts(demo.view()).value("hold.windows-up.likely"));
  }

  @Test
  void rainThatEndsLaterAndCoatingsInsideAreLeftAlone() {
    assertEquals(Demo.at("2026-12-02T18:00"), end(Demo.coatedFilm(), "rain"));
    Demo inside = Demo.tint();
    inside.fit("fabric-coating", "tidewater-paint", "2026-12-01T12:00", -1, "seats");
    inside.safe("keep-dry", HoldKind.HOLD, "2026-12-03T16:00", "2026-12-02T11:00");
    inside.safe("rain", HoldKind.HOLD, "2026-12-02T09:00", "2026-12-02T08:00");
    assertEquals(Demo.at("2026-12-02T09:00"), end(inside, "rain"));
    assertEquals(Optional.empty(), new Order(inside.view()).text());
  }

  @Test
  void aFreshCoatingComesBeforeADryingFilmAndThePageSaysSo() {
    Demo demo = Demo.coatedFilm();
    demo.language = "en";
    assertEquals(
        "In this order: the fresh coating first, so dry and out of strong sun until Wednesday,"
            + " December 2, 4 PM. Then the film: warmth and sun help it dry, which takes until"
            + " Monday, December 28.",
        plain(new Order(demo.view()).text().orElseThrow()));
    var note = Jsoup.parse(demo.html()).select(".now .note");
    assertTrue(note.text().contains("In this order"));
    long dry = Demo.at("2026-12-28T10:00").getEpochSecond();
    assertEquals(String.valueOf(dry), note.attr("data-to"), "no longer than the film dries");
    demo.language = "es";
    assertTrue(new Order(demo.view()).text().orElseThrow().startsWith("En este orden: primero"));
    demo.pickup = Demo.at("2026-12-03T09:00");
    assertEquals(Optional.empty(), new Order(demo.view()).text(), "the coating was dry by pickup");
    assertEquals(Optional.empty(), new Order(Demo.tint().view()).text());
  }

  @Test
  void theOrderHasNoDateWhereTheCoatingHasToBeSeen() {
    Demo demo = Demo.coatedFilm();
    demo.language = "en";
    demo.releases.replaceAll(
        r ->
            r.hold().equals("keep-dry")
                ? demo.release(r.hold(), r.kind(), new Release.AskUs(r.end().at()), r.end().at())
                : r);
    assertTrue(new Order(demo.view()).text().orElseThrow().contains("until we have seen it."));
  }
}
