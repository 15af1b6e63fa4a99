package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.shop.BodyType;
import curewindow.shop.Finding;
import curewindow.shop.FindingKind;
import curewindow.shop.FittedItem;
import curewindow.told.JobView;
import curewindow.told.Visit;
import curewindow.words.Words;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TimeZone;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CustomerPageTest {

  private static Document page(Demo demo) {
    return Jsoup.parse(demo.html());
  }

  /** The text without what only a script shows. */
  private static Document still(Demo demo) {
    Document page = page(demo);
    page.select("[hidden]").remove();
    return page;
  }

  /** With common spaces in place of those that keep an hour and its half of the day together. */
  private static String plain(String text) {
    return text.replace('\u00A0', ' ').replace('\u202F', ' ');
  }

  @Test
  void firstAnswerSaysWhatAndUntilWhenAndIsTheHeading() {
    Document page = still(Demo.tint());
    assertEquals(1, page.select("h1 .answer").size());
    assertEquals(
        "Keep the windows up until Friday, December 4, 2 PM",
        page.select("h1").text().replace(" ,", ","));
    assertEquals("2026-12-04T14:00:00-07:00", page.select(".answer time").attr("datetime"));
    assertEquals("Emergency? Open the windows.", page.select(".rel").text());
  }

  @ParameterizedTest
  @CsvSource({"en, Your car:, coupe", "es, Su auto:, cupé", "ar, سيارتك:, كوبيه"})
  void aCarWithoutWordsIsCalledByItsBody(String language, String yours, String body) {
    Demo demo = Demo.tint();
    demo.language = language;
    demo.body = BodyType.COUPE;
    demo.car = "";
    demo.firstName = "";
    Document page = page(demo);
    String told = page.selectFirst(".for").text().replaceAll("[\u2068\u2069]", "");
    assertEquals(yours + " " + body, told);
    assertTrue(page.title().contains(body), page.title());
  }

  @Test
  void aLongDateIsStampedSmaller() {
    assertEquals("stamp", page(Demo.tint()).selectFirst(".stamp").className());
    Element spanish = page(Demo.coatedFilm()).select("[data-answer=hand-wash] .stamp").first();
    assertEquals("stamp long", spanish.className(), spanish.text());
  }

  @Test
  void aWashWaitsForTheCoatingThatHasToStayDry() {
    Demo demo = Demo.coatedFilm();
    demo.language = "en";
    demo.releases.removeIf(r -> r.hold().equals("keep-dry"));
    demo.safe("keep-dry", HoldKind.HOLD, "2026-12-30T16:00", "2026-12-29T11:00");
    Element row = page(demo).selectFirst("li[data-hold=machine-wash]");
    assertTrue(plain(row.text()).contains("Wed, Dec 30 4 PM"), row::text);
  }

  /** Each date once: a row a hold, by date. */
  @Test
  void eachHoldIsOneRowWithItsDateAndHour() {
    assertEquals(
        List.of(
            "Windows stay up until Fri, Dec 4 2 PM likely Dec 3 Emergency? Open the windows.",
            "No hand wash until Fri, Dec 4 3 PM likely Dec 3",
            "No automatic wash until Wed, Dec 9 11 AM likely Dec 7",
            "No pressure washer until Wed, Dec 9 11 AM likely Dec 7",
            "No rear defroster until Sat, Dec 19 10 AM likely Dec 15 Can’t see? Turn on the defroster.",
            "No cleaning inside glass until Fri, Dec 25 9 AM likely Dec 20",
            "Haze is normal until Sun, Jan 3 likely Dec 27",
            "Water bubbles are normal until Sun, Jan 3 likely Dec 27"),
        still(Demo.tint()).select(".rows li").eachText().stream()
            .map(CustomerPageTest::plain)
            .toList());
  }

  @Test
  void everyDateStandsInTheHtmlWithoutScript() {
    for (Demo demo :
        List.of(Demo.tint(), Demo.coatedFilm(), Demo.atLimit(), Demo.nothingToHold())) {
      JobView view = demo.view();
      Words words = view.words();
      Document page = still(demo);
      for (Release release : view.timeline().releases()) {
        Element row = page.selectFirst("li[data-hold=" + release.hold() + "]");
        String line = plain(row.text());
        assertTrue(line.contains(plain(words.shortDay(release.end().at(), demo.zone))), line);
        assertEquals(
            release.kind() == HoldKind.HOLD,
            line.contains(plain(words.time(release.end().at(), demo.zone))),
            line);
        assertEquals(
            release.end().at(),
            java.time.OffsetDateTime.parse(row.select("time").first().attr("datetime"))
                .toInstant());
        assertEquals(String.valueOf(release.end().at().getEpochSecond()), row.attr("data-end"));
      }
      assertEquals(view.timeline().releases().size(), page.select(".rows li").size());
    }
  }

  @Test
  void whatIsOverIsToldAsFree() {
    Document page = page(Demo.tint());
    Element row = page.selectFirst("li[data-hold=windows-up]");
    assertEquals(
        List.of("Windows stay up", "until", "2 PM", "Emergency? Open the windows."),
        row.select("[data-to]").eachText());
    assertEquals("likely Dec 3", row.select("small").text());
    assertEquals(
        List.of("Windows can come down", "as of"), row.select("[data-from][hidden]").eachText());
    Element haze = page.selectFirst("li[data-hold=haze]");
    assertEquals(
        List.of("Haze should be gone", "as of", "If you still see haze, show us."),
        haze.select("[data-from][hidden]").eachText());
  }

  @Test
  void whatEndsAtItsLimitIsFreeGently() {
    Document page = page(Demo.atLimit());
    Element row = page.selectFirst("li[data-hold=windows-up]");
    assertTrue(row.hasClass("first"), "the answer on top says how far it is set");
    assertEquals(
        "Until about Dec 22, move the windows only if you must. Never force a frozen one.",
        plain(row.select(".done[hidden]").text()));
    assertEquals(
        "Emergency? Open the windows. About 60% cured by then, fully about Dec 22.",
        plain(page.select(".also").text()));
    long set =
        Demo.atLimit().view().timeline().releases().stream()
            .flatMap(r -> r.gentleUntil().stream())
            .mapToLong(Instant::getEpochSecond)
            .max()
            .orElseThrow();
    Element almost = page.selectFirst("[data-answer=almost][hidden]");
    assertEquals(String.valueOf(set), almost.attr("data-end"));
    assertTrue(almost.text().startsWith("Almost there. Take care until about"), almost::text);
    assertEquals(
        "Some of it is still curing. The list shows where to go easy.",
        page.select("[data-of=almost]").text());
    assertTrue(page(Demo.tint()).select("[data-answer=almost]").isEmpty());
  }

  @Test
  void theVisitIsAnInvitationForADay() {
    Demo demo = Demo.tint();
    assertEquals(
        "Come in so we can check it any day we are open, starting Mon, Jan 4",
        plain(page(demo).select(".visit").text()));
    demo.visit = Optional.of(new Visit(LocalDate.of(2027, 1, 4), List.of("tint"), true));
    assertEquals(
        "Send us a photo starting Mon, Jan 4. If something looks odd, send one right away.",
        plain(page(demo).select(".visit").text()));
    demo.visit = Optional.empty();
    assertTrue(page(demo).select(".visit").isEmpty());
  }

  @Test
  void jobWithNothingToHoldSaysSo() {
    Document page = still(Demo.nothingToHold());
    assertEquals("All clear", page.select("h1").text());
    assertEquals("Nothing to wait for right now.", page.select(".rel").text());
    assertTrue(page.select("#normal").text().contains("Sunday, January 3."));
  }

  @Test
  void spanishPageIsSpanishThroughout() {
    Document page = still(Demo.coatedFilm());
    assertEquals("es", page.selectFirst("html").attr("lang"));
    assertEquals("ltr", page.selectFirst("html").attr("dir"));
    assertTrue(page.select(".answer").text().contains("hasta"), page.select(".answer").text());
    assertTrue(page.select(".answer .stamp").text().contains("2 de diciembre"));
    String text = page.text();
    for (String english : List.of(" until ", "Friday", "December", " the ", "[page.", "[hold.")) {
      assertFalse(text.contains(english), english);
    }
  }

  @Test
  void careIsForExactlyWhatWasFittedAndLeadsToTheWholeGuide() {
    Document page = still(Demo.tint());
    assertEquals(
        List.of("Cautions", "Window tint", "After old film came off", "Washing"),
        page.select("#care summary").eachText());
    assertFalse(page.select("#care").text().contains("coating over film"));
    assertEquals(
        List.of("cautions", "tint", "old-film", "washing").stream()
            .map(guide -> "../../en/" + guide + ".html")
            .toList(),
        page.select("#care a").eachAttr("href"));
    assertEquals(4, page(Demo.coatedFilm()).select("#care summary, #care .guide").size());
  }

  @Test
  void whatWasFittedNamesFilmLightBatchTimeAndWarranty() {
    Document page = still(Demo.tint());
    assertEquals(
        "Window tint front door windows and rear door windows Harbor 35"
            + " · Visible light (VLT) 31%, glass and film together, as measured",
        plain(page.selectFirst(".key li").text()));
    assertTrue(page.select(".key li").get(1).text().contains("20%, film alone"));
    String record = plain(page.select("#car .facts").text());
    assertTrue(
        record.startsWith(
            "Window tint Batch B-77310 · Warranty until December 1, 2036 · finished Tue, Dec 1, 2 PM"),
        record);
    assertTrue(
        record.contains(
            "Old film was taken off: rear window; on the car since 2017."
                + " Two heating lines were already broken"),
        record);
  }

  @Test
  void lightIsCalledComputedWhereItIsAndTheLocalLawIsNamedBesideFrontGlassOnly() {
    Demo demo = Demo.tint();
    FittedItem front = demo.items.get(0);
    demo.items.set(
        0,
        new FittedItem(
            front.service(),
            front.film(),
            front.spots(),
            front.finished(),
            OptionalDouble.empty(),
            OptionalDouble.of(80),
            front.batch(),
            front.warrantyYears(),
            Optional.empty()));
    String text = page(demo).select("#car").text();
    // A film maker's note to dealers: 35 percent film on 80 percent glass is 28 percent.
    assertTrue(
        text.contains("28%, glass and film together, worked out from 35% film on 80% glass"), text);
    assertTrue(text.contains("State and local laws limit"), text);
    assertFalse(text.toLowerCase(java.util.Locale.ROOT).contains("legal"), text);
    demo.items.remove(0);
    assertFalse(page(demo).select("#car").text().contains("law"));
  }

  @Test
  void twoCalendarsAreOfferedAndNoDateIsALink() {
    Document page = page(Demo.tint());
    assertEquals(List.of("care.ics", "all.ics"), page.select("#dates a").eachAttr("href"));
    assertTrue(page.select("a time, time a").isEmpty());
  }

  @Test
  void whatWasFoundHasItsColonInSpanishTooAndOnlyWhereMoreFollows() {
    Demo demo = Demo.tint();
    demo.language = "es";
    demo.found.add(new Finding(FindingKind.CHIP, List.of(), OptionalInt.empty(), ""));
    String record = page(demo).select("#car .facts").text();
    assertTrue(
        record.contains(
            "Se retiró película vieja: vidrio trasero; en el auto desde 2017."
                + " Two heating lines were already broken Golpe de piedra"),
        record);
  }

  @Test
  void shopCanBeReachedByCallTextAndMail() {
    Document page = page(Demo.tint());
    assertEquals("tel:+13035550142", page.select("#reach a").get(0).attr("href"));
    assertEquals(
        "sms:+13035550143?body=Job%20J-1042%2C%20the%20blue%20four-door%3A",
        page.select("#reach a").get(1).attr("href").replaceAll("%20$", ""));
    assertTrue(
        page.select("#reach a")
            .get(2)
            .attr("href")
            .startsWith("mailto:hello@care.example?subject=Job%20J-1042&body=Job%20J-1042"));
    assertTrue(page.select("#reach").text().contains("Monday to Friday 8 AM to 6 PM"));
    assertTrue(page.select("#reach").text().contains("Saturday 9 AM to 1:30 PM"));
    assertTrue(page.select("#reach").text().contains("Closed on Dec 25"));
  }

  @Test
  void nothingIsAskedForFromOutside() {
    for (Document page : everyPage()) {
      for (Element e :
          page.select("[src],link[rel=icon],use[href],image,iframe,object,embed,form")) {
        String from = e.hasAttr("src") ? e.attr("src") : e.attr("href");
        assertTrue(from.matches("#.*|[.][.]/[.][.]/[^/]+"), e.outerHtml());
      }
      assertFalse(
          page.select("style").html().matches("(?s).*(@import|url\\(\\s*(?!#|%23|\"data:)).*"));
      page.select("meta[property=og:image]").remove();
      assertFalse(page.outerHtml().matches("(?s).*https?://(?!www\\.w3\\.org/).*"));
      assertEquals("noindex,nofollow,noarchive", page.select("meta[name=robots]").attr("content"));
      assertEquals("no-referrer", page.select("meta[name=referrer]").attr("content"));
    }
  }

  @Test
  void theShopsNameLeadsToItsHomeInTheLanguageOfThePage() {
    Demo demo = Demo.tint();
    demo.language = "es";
    assertEquals("../../es/index.html", page(demo).select(".mast a").attr("href"));
  }

  /** The Open Graph protocol: what a message shows of an address that is sent. */
  @Test
  void anAddressThatIsSentTellsNothingOfTheJob() {
    Document page = page(Demo.tint());
    assertEquals(
        "Longs Peak Film & Coat: care dates for a car",
        page.select("meta[property=og:title]").attr("content"));
    assertEquals(
        "https://care.example/icon-512.png",
        page.select("meta[property=og:image]").attr("content"));
    String told = page.select("meta[property^=og:]").eachAttr("content").toString();
    for (String own : List.of("Ana", "blue", "J-1042", "December", "7F3K9QX2M4TB")) {
      assertFalse(told.contains(own), told);
    }
  }

  /** W3C Content Security Policy Level 3: base64 of SHA-256 of exactly the element's text. */
  @Test
  void policyAllowsExactlyTheInlineStyleAndWhatTheShopsSiteHas() throws Exception {
    Document page = page(Demo.tint());
    String policy = page.select("meta[http-equiv=Content-Security-Policy]").attr("content");
    assertEquals(1, page.select("style").size());
    assertEquals("", page.select("script").html());
    assertTrue(page.selectFirst("script").attr("src").matches("[.][.]/[.][.]/page[.]js[?]\\w{8}"));
    assertTrue(policy.startsWith("default-src 'none';"));
    assertTrue(
        policy.contains("style-src 'self' " + sha256(page.selectFirst("style").data()) + ";"));
    assertTrue(policy.contains("script-src 'self';"));
    assertFalse(policy.contains("unsafe"));
    assertEquals(0, page.select("[style]").size());
  }

  private static String sha256(String text) throws Exception {
    byte[] digest =
        MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
  }

  private static List<Document> everyPage() {
    return Stream.of(Demo.tint(), Demo.coatedFilm(), Demo.atLimit(), Demo.nothingToHold())
        .map(CustomerPageTest::page)
        .toList();
  }

  @Test
  void landmarksHeadingsAndReferencesAreInOrder() {
    for (Document page : everyPage()) {
      assertEquals(1, page.select("main").size());
      assertEquals(1, page.select("h1").size());
      assertEquals("#main", page.selectFirst("body > a").attr("href"));
      List<String> ids = page.select("[id]").eachAttr("id");
      assertEquals(ids.size(), ids.stream().distinct().count(), ids.toString());
      page.select("a[href^=#],use[href^=#]")
          .forEach(a -> assertTrue(ids.contains(a.attr("href").substring(1)), a.outerHtml()));
      page.select("[aria-labelledby]")
          .forEach(e -> assertTrue(ids.contains(e.attr("aria-labelledby")), e.outerHtml()));
      int level = 1;
      for (Element heading : page.select("h1,h2,h3,h4,h5,h6")) {
        int next = heading.tagName().charAt(1) - '0';
        assertTrue(next <= level + 1, heading.outerHtml());
        level = next;
      }
    }
  }

  @Test
  void sameInputGivesTheSameBytesWhateverTheMachine() {
    String expected = Demo.tint().html();
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("th-TH-u-ca-buddhist-nu-thai"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      assertEquals(expected, Demo.tint().html());
      Locale.setDefault(Locale.forLanguageTag("tr"));
      assertEquals(expected, Demo.tint().html());
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void aHeavyPageLeadsToGuidesRatherThanLoseItsQuestions() {
    for (String language : List.of("en", "es")) {
      Demo demo = Demo.coatedFilm();
      demo.language = language;
      demo.fit("tint", "harbor-35", "2026-12-01T14:00", 31, "front-door-glass", "back-glass");
      demo.fit("wrap", "harbor-wrap", "2026-12-01T14:00", -1, "roof");
      demo.safe("windows-up", HoldKind.HOLD, "2026-12-04T14:00", "2026-12-03T18:20");
      demo.safe("defroster", HoldKind.HOLD, "2026-12-19T10:00", "2026-12-15T13:00");
      demo.safe("inside-glass", HoldKind.HOLD, "2026-12-25T09:00", "2026-12-20T13:00");
      demo.safe("haze", HoldKind.SETTLE, "2027-01-03T16:00", "2026-12-27T12:00");
      assertTrue(Weight.of(demo.html()) <= Weight.MOST, language);
      Document page = page(demo);
      int questions = page.select("#normal details:not(.more)").size();
      assertTrue(questions >= 6 && questions <= 8, language + " " + questions);
      assertEquals(6, page.select("#care summary, #care .guide").size());
    }
  }

  /** Ten packets of 1460 bytes: what a new TCP connection sends at first (RFC 6928). */
  @Test
  void arrivesInTheFirstRoundTrip() throws IOException {
    for (Demo demo : List.of(Demo.tint(), Demo.coatedFilm(), Demo.atLimit())) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (GZIPOutputStream gzip = new GZIPOutputStream(bytes)) {
        gzip.write(demo.html().getBytes(StandardCharsets.UTF_8));
      }
      assertTrue(bytes.size() <= 14_600, demo.car + ": " + bytes.size() + " bytes");
    }
  }
}
