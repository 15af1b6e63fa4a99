package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.HoldKind;
import curewindow.shop.Hold;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The customer's page in a real browser, with the clock and time zone of our choice. */
class BrowserPageTest {

  private static final String WINDOWS = "Keep the windows up until FRIDAY, DECEMBER 4, 2 PM";
  private static final Instant BEFORE_PICKUP = Demo.at("2026-12-01T09:00");
  private static final Instant WAITING = Demo.at("2026-12-03T19:00");

  private static Browser browser;

  @TempDir Path folder;

  @BeforeAll
  static void open() {
    browser = Browser.open();
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void asNew() {
    browser.trueClock().zone("America/Denver").scripts(true).complaints();
  }

  private Path file(Demo demo) throws IOException {
    return file(demo.html());
  }

  private Path file(String html) throws IOException {
    return Demo.onDisk(folder, html);
  }

  /** Read as people read it: no space before a comma. */
  private static String answer() {
    return browser.seen("h1").replace(" ,", ",");
  }

  private static String row(String hold) {
    return browser.seen("li[data-hold=" + hold + "]").replace('\u00A0', ' ');
  }

  private static List<String> order() {
    return browser.allSeen(".rows .what");
  }

  @Test
  void withoutScriptTheAbsoluteDatesStand() throws IOException {
    Path page = file(Demo.tint());
    browser.scripts(false).screen(390, 844, true).go(page);
    assertTrue(sameDate(answer()), answer());
    assertEquals(1, browser.allSeen(".answer").size());
    assertEquals(List.of(), browser.allSeen(".over, .done"));
    assertTrue(browser.allSeen(".in").stream().allMatch(String::isEmpty));
    assertEquals("Windows stay up until Fri, Dec 4 2 PM likely Dec 3", row("windows-up"));
    assertEquals(8, order().size());
  }

  private static boolean sameDate(String answer) {
    return answer.equalsIgnoreCase(WINDOWS);
  }

  @ParameterizedTest
  @ValueSource(strings = {"America/Denver", "Asia/Tokyo", "Pacific/Kiritimati"})
  void firstAnswerIsTrueWhateverThePhonesZone(String zone) throws IOException {
    Path page = file(Demo.tint());
    browser.zone(zone).clock(BEFORE_PICKUP).screen(390, 844, true).go(page);
    assertTrue(sameDate(answer()), answer());
    assertEquals("in 3 days Emergency? Open the windows.", browser.seen(".rel"));
    assertEquals(0L, marks(), "no mark of the present before pickup");

    browser.later(Duration.between(BEFORE_PICKUP, WAITING));
    assertTrue(sameDate(answer()), answer());
    assertTrue(browser.seen(".rel").startsWith("in 19 hours "), browser.seen(".rel"));
    assertEquals(8L, marks());

    browser.later(Duration.ofHours(19).minusSeconds(1));
    assertTrue(sameDate(answer()), answer());
    browser.later(Duration.ofSeconds(1));
    assertTrue(answer().startsWith("Leave the rear window defroster off until"), answer());
    assertTrue(answer().toUpperCase().contains("DECEMBER 19, 10 AM"), answer());
    assertEquals("Windows can come down as of Fri, Dec 4", row("windows-up"));
    assertTrue(row("hand-wash").startsWith("No hand wash until"), row("hand-wash"));
    assertEquals("No hand wash", order().get(0), "what is ahead comes first");
    assertEquals("Windows can come down", order().get(7), "what is over comes last");
  }

  /** How many rows have the mark of the present. */
  private static Object marks() {
    return browser.run("return document.querySelectorAll('.at:not([display=none])').length");
  }

  @Test
  void afterEverythingItSaysAllClear() throws IOException {
    Path page = file(Demo.tint());
    browser.clock(Demo.at("2027-01-03T15:59")).screen(390, 844, true).go(page);
    assertEquals("All clear", answer());
    assertEquals("Nothing to wait for right now.", browser.seen(".rel"));
    assertEquals(6, browser.allSeen(".over").size());
    assertEquals("Haze is normal", order().get(0), "the last to end");
    assertEquals("Haze is normal until Sun, Jan 3 likely Dec 27", row("haze"));
    browser.run("document.querySelector('#normal details').open=true");
    assertTrue(browser.seen("#normal details").contains("Normal until"), "the first is on haze");
    browser.later(Duration.ofMinutes(1));
    assertEquals(8, browser.allSeen(".over").size());
    assertEquals(
        "Haze should be gone as of Sun, Jan 3 If you still see haze, show us.", row("haze"));
    assertEquals(List.of(), browser.allSeen(".axis"), "no line of time without bars");
    assertTrue(browser.seen("#normal details").contains("By now it should be gone. Show us."));
  }

  @Test
  void whatEndsAtItsLimitIsFreedGently() throws IOException {
    browser.clock(Demo.at("2026-12-04T14:30")).screen(390, 844, true).go(file(Demo.atLimit()));
    assertEquals(
        "Windows can come down as of Fri, Dec 4 Until about Dec 22, move the windows only if"
            + " you must. Never force a frozen one.",
        row("windows-up"));
    browser.later(Duration.ofDays(19));
    assertEquals("Windows can come down as of Fri, Dec 4", row("windows-up"));
  }

  @Test
  void nothingIsAllClearBeforeItIsFullySet() throws IOException {
    Demo demo = Demo.atLimit();
    demo.limit("inside-glass", 0.5, "2027-01-20T03:00");
    browser.clock(Demo.at("2026-12-26T09:00")).screen(390, 844, true).go(file(demo));
    assertEquals("Almost there. Take care until about JANUARY 20", answer().replace("\n", " "));
    browser.later(Duration.ofDays(26));
    assertEquals("All clear", answer());
  }

  /** Each time it is the most urgent of what is in force; the list goes by date. */
  @Test
  void theAnswerAndTheListAreFoundFromTheTimeAlone() throws IOException {
    Demo demo = Demo.coatedFilm();
    demo.language = "en";
    browser.clock(Demo.at("2026-12-01T16:30")).screen(390, 844, true).go(file(demo));
    List<String> pickup = order();
    assertEquals(
        List.of("Keep coating dry", "No rain, no wet roads", "No hand wash"), pickup.subList(0, 3));
    browser.later(Duration.ofDays(2));
    assertTrue(answer().startsWith("Do not wash the outside by hand"), answer());
    assertEquals(List.of("No hand wash", "No pressure washer"), order().subList(0, 2));
    assertEquals(List.of("Coating can get wet", "Rain won’t hurt the film"), order().subList(6, 8));
    browser.later(Duration.ofDays(17));
    assertTrue(answer().startsWith("No automatic car wash until"), answer());
    assertEquals(List.of("No automatic wash", "No wax or sealant"), order().subList(0, 2));
    assertEquals(4, browser.allSeen(".over").size());
  }

  @Test
  void nothingIsAllowedThatAStricterHoldForbids() throws IOException {
    Demo demo = Demo.coatedFilm();
    demo.language = "en";
    demo.releases.removeIf(r -> r.hold().equals("hand-wash") || r.hold().equals("keep-dry"));
    demo.safe("hand-wash", HoldKind.HOLD, "2026-12-02T19:00", "2026-12-02T18:00");
    demo.safe("keep-dry", HoldKind.HOLD, "2026-12-04T16:00", "2026-12-03T16:00");
    browser.clock(Demo.at("2026-12-03T12:00")).screen(390, 844, true).go(file(demo));
    assertEquals(List.of(), browser.allSeen(".over, .done"));
    assertTrue(row("hand-wash").contains("until Fri, Dec 4 4 PM"), row("hand-wash"));
    browser.later(Duration.ofHours(28));
    assertTrue(row("hand-wash").contains("Hand wash is fine as of Fri, Dec 4"), row("hand-wash"));
    assertEquals(3, browser.allSeen(".over").size());
  }

  @Test
  void timePassesWithoutReload() throws Exception {
    Path page = file(Demo.tint());
    browser.clock(Demo.at("2026-12-04T13:59")).screen(390, 844, true).go(page);
    assertTrue(sameDate(answer()));
    browser.run("__later(60000)");
    Instant giveUp = Instant.now().plusSeconds(40);
    while (sameDate(answer()) && Instant.now().isBefore(giveUp)) {
      Thread.sleep(500);
    }
    assertTrue(answer().startsWith("Leave the rear window defroster off"));
  }

  /** A job may have no dates at all; its page has a list without rows, or a shop's own has none. */
  @Test
  void aPageWithoutDatesWorks() throws IOException {
    Demo demo = Demo.nothingToHold();
    demo.releases.clear();
    String html = demo.html();
    for (String page : List.of(html, html.replaceFirst("(?s)<section id=dates.*?</section>", ""))) {
      Path file = file(page);
      browser.clock(BEFORE_PICKUP).screen(390, 844, true).go(file);
      assertEquals(List.of(), browser.complaints());
      assertEquals("All clear", answer());
      assertEquals("Nothing to wait for right now.", browser.seen(".rel"));
    }
  }

  @Test
  void nothingLeavesThePageAndThePolicyHasNoComplaint() throws IOException {
    Path page = file(Demo.coatedFilm());
    browser.screen(390, 844, true).requests();
    browser.go(page);
    assertEquals(List.of(), browser.complaints());
    List<String> asked =
        browser.requests().stream().filter(r -> !r.startsWith("data:")).distinct().toList();
    String site = folder.toUri().toString();
    assertEquals(5, asked.size(), "the page, its style, script, picture and icon: " + asked);
    assertTrue(asked.stream().allMatch(from -> from.startsWith(site)), asked.toString());
  }

  /** 320 is 1280 at 400 % zoom (WCAG 2.1, 1.4.10), 640 is 1280 at 200 % (1.4.4). */
  @ParameterizedTest
  @ValueSource(ints = {320, 390, 640, 832, 1280})
  void nothingIsWiderThanTheScreen(int width) throws IOException {
    for (Demo demo : List.of(Demo.tint(), Demo.coatedFilm())) {
      browser.screen(width, 800, width < 800).go(file(demo));
      assertEquals((long) width, browser.run("return document.documentElement.scrollWidth"));
    }
  }

  @Test
  void firstAnswerIsOnTheFirstScreenOfAPhone() throws IOException {
    for (Demo demo : List.of(Demo.tint(), Demo.coatedFilm(), Demo.atLimit())) {
      browser.scripts(false).screen(360, 640, true).go(file(demo));
      browser.scripts(true);
      Object bottom =
          browser.run("return document.querySelector('.stamp').getBoundingClientRect().bottom");
      assertTrue(((Number) bottom).doubleValue() <= 640, demo.car + " " + bottom);
    }
  }

  /** On the narrowest screen too, every name keeps clear of its date and its bar. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "es", "ar"})
  void nothingInTheListIsPrintedOverAnythingElse(String language) throws IOException {
    Demo demo = Demo.nothingToHold();
    demo.releases.clear();
    demo.language = language;
    int day = 10;
    for (Hold hold : Demo.CATALOGUE.holds().values()) {
      demo.safe(hold.id(), hold.kind(), "2026-12-" + day++ + "T20:00", "2026-12-09T20:00");
    }
    browser.clock(Demo.at("2026-12-18T16:00")).screen(320, 800, true).go(file(demo));
    assertEquals(18, demo.releases.size());
    assertEquals(
        List.of(),
        browser.run(
            "var t=[...document.querySelectorAll('.axis span,.what,.when,.bar,.rows p')]"
                + ".filter(e=>e.checkVisibility()),b=t.map(e=>e.getBoundingClientRect()),over=[];"
                + "b.forEach((p,i)=>{if(p.left<0||p.right>320)over.push(t[i].textContent+' is out');"
                + "b.forEach((q,k)=>{if(i<k&&p.left<q.right-1&&q.left<p.right-1"
                + "&&p.top<q.bottom-1&&q.top<p.bottom-1)"
                + "over.push(t[i].textContent+' / '+t[k].textContent)})});return over"));
  }

  /** September is the longest month in English; "30 de noviembre" is long enough for Spanish. */
  @ParameterizedTest
  @ValueSource(ints = {320, 390, 832, 1280})
  void theStampedDateStaysOnOneLine(int width) throws IOException {
    for (String language : List.of("en", "es")) {
      for (String day : List.of("2026-09-30", "2026-11-28", "2026-12-17")) {
        Demo demo = Demo.nothingToHold();
        demo.language = language;
        demo.pickup = Demo.at("2026-09-01T16:00");
        demo.safe("windows-up", HoldKind.HOLD, day + "T14:00", day + "T11:00");
        browser.clock(Demo.at("2026-09-01T17:00")).screen(width, 800, width < 800).go(file(demo));
        Object lines =
            browser.run(
                "var b=document.querySelector('.answer:not([hidden]) .stamp b:nth-of-type(2)'),"
                    + "r=document.createRange();r.selectNodeContents(b);"
                    + "return new Set([...r.getClientRects()].map(c=>Math.round(c.top))).size");
        assertEquals(1L, lines, language + " " + day + " at " + width);
      }
    }
  }
}
