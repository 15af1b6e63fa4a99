package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.HoldKind;
import curewindow.shop.Hold;
import java.io.IOException;
import java.nio.file.Files;
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
    return Files.writeString(folder.resolve("index.html"), demo.html());
  }

  /** Read as people read it: no space before a comma. */
  private static String answer() {
    return browser.seen(".answer .say").replace(" ,", ",");
  }

  @Test
  void withoutScriptTheAbsoluteDatesStand() throws IOException {
    Path page = file(Demo.tint());
    browser.scripts(false).screen(390, 844, true).go(page);
    assertTrue(sameDate(answer()), answer());
    assertEquals(1, browser.allSeen(".answer").size());
    assertEquals(3, browser.allSeen(".then li").size());
    assertTrue(browser.allSeen("#today, .freed li, [data-in]").isEmpty());
    assertEquals("wait until", browser.seen("tr[data-hold=windows-up] .state"));
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
    assertEquals("· over in 3 days", "· " + browser.seen(".answer [data-in]").replace("· ", ""));
    assertTrue(browser.allSeen("#today text").isEmpty(), "no marker before pickup");

    browser.later(Duration.between(BEFORE_PICKUP, WAITING));
    assertTrue(sameDate(answer()), answer());
    assertTrue(browser.seen(".answer [data-in]").endsWith("over in 19 hours"));
    assertEquals("now", browser.seen("#today text"));

    browser.later(Duration.ofHours(19).minusSeconds(1));
    assertTrue(sameDate(answer()), answer());
    browser.later(Duration.ofSeconds(1));
    assertTrue(answer().startsWith("Leave the rear window defroster off until"));
    assertTrue(answer().toUpperCase().contains("DECEMBER 19, 10 AM"), answer());
    assertEquals("You can roll the windows down.", browser.seen(".freed li"));
    assertEquals("go ahead", browser.seen("tr[data-hold=windows-up] .state"));
    assertEquals("wait until", browser.seen("tr[data-hold=hand-wash] .state"));
    assertFalse(browser.allSeen(".then li").toString().contains("windows"));
  }

  @Test
  void afterEverythingItSaysGoAheadAndShowUsWhatIsLeft() throws IOException {
    Path page = file(Demo.tint());
    browser.clock(Demo.at("2027-01-03T15:59")).screen(390, 844, true).go(page);
    assertEquals("All waits are over. GO AHEAD", answer());
    assertEquals(6, browser.allSeen(".freed li").size());
    assertTrue(browser.allSeen(".then li").isEmpty());
    assertEquals("normal until", browser.seen("tr[data-hold=haze] .state"));
    browser.later(Duration.ofMinutes(1));
    assertEquals("show us", browser.seen("tr[data-hold=haze] .state"));
    assertEquals("show us", browser.seen("summary .state"), "the first question is on haze");
  }

  @Test
  void whatEndsAtItsLimitIsFreedGently() throws IOException {
    browser.clock(Demo.at("2026-12-04T14:30")).screen(390, 844, true).go(file(Demo.atLimit()));
    assertEquals("go gently", browser.seen("tr[data-hold=windows-up] .state"));
    assertTrue(browser.seen(".freed li:not([hidden])").contains("Move the windows slowly"));
  }

  /** What stands fourth and later at pickup moves up as time passes. */
  @Test
  void whatComesNextIsFoundFromTheTimeAlone() throws IOException {
    Demo demo = Demo.coatedFilm();
    demo.language = "en";
    browser.clock(Demo.at("2026-12-01T16:30")).screen(390, 844, true).go(file(demo));
    assertEquals(
        List.of("No rain, no wet roads", "No hand wash", "No pressure washer"),
        next(),
        "at pickup");
    browser.later(Duration.ofDays(2));
    assertTrue(answer().startsWith("Do not wash the outside by hand"));
    assertEquals(List.of("No pressure washer", "No automatic wash", "No wax or sealant"), next());
    browser.later(Duration.ofDays(17));
    assertEquals(List.of("No wax or sealant", "No strong cleaners"), next());
  }

  private static List<String> next() {
    return browser.allSeen(".then li span");
  }

  @Test
  void nothingIsAllowedThatAStricterHoldForbids() throws IOException {
    Demo demo = Demo.coatedFilm();
    demo.language = "en";
    demo.releases.removeIf(r -> r.hold().equals("hand-wash") || r.hold().equals("keep-dry"));
    demo.safe("hand-wash", HoldKind.HOLD, "2026-12-02T19:00", "2026-12-02T18:00");
    demo.safe("keep-dry", HoldKind.HOLD, "2026-12-04T16:00", "2026-12-03T16:00");
    browser.clock(Demo.at("2026-12-03T12:00")).screen(390, 844, true).go(file(demo));
    assertEquals(List.of(), browser.allSeen(".freed li"));
    assertEquals("wait until", browser.seen("tr[data-hold=hand-wash] .state"));
    browser.later(Duration.ofHours(28));
    assertEquals("go ahead", browser.seen("tr[data-hold=hand-wash] .state"));
    assertEquals(3, browser.allSeen(".freed li").size());
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

  @Test
  void nothingLeavesThePageAndThePolicyHasNoComplaint() throws IOException {
    Path page = file(Demo.coatedFilm());
    browser.screen(390, 844, true).requests();
    browser.go(page);
    assertEquals(List.of(), browser.complaints());
    List<String> asked =
        browser.requests().stream().filter(r -> !r.startsWith("data:")).distinct().toList();
    assertEquals(List.of(page.toUri().toString()), asked);
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

  /** On the narrowest screen too, every name in the picture keeps clear of its date. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void nothingInThePictureIsPrintedOverAnythingElse(String language) throws IOException {
    Demo demo = Demo.nothingToHold();
    demo.releases.clear();
    demo.language = language;
    int day = 10;
    for (Hold hold : Demo.CATALOGUE.holds().values()) {
      demo.safe(hold.id(), hold.kind(), "2026-12-" + day++ + "T20:00", "2026-12-09T20:00");
    }
    browser.clock(Demo.at("2026-11-30T16:00")).screen(320, 800, true).go(file(demo));
    assertEquals(17, demo.releases.size());
    assertEquals(
        List.of(),
        browser.run(
            "var t=[...document.querySelectorAll('.strip .name,.strip .date,.strip .day')],"
                + "b=t.map(e=>e.getBoundingClientRect()),over=[];"
                + "b.forEach((p,i)=>b.forEach((q,k)=>{if(i<k&&p.left<q.right+2&&q.left<p.right+2"
                + "&&p.top<q.bottom-2&&q.top<p.bottom-2)"
                + "over.push(t[i].textContent+' / '+t[k].textContent)}));return over"));
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
                "var b=document.querySelector('.stamp b:nth-of-type(2)'),"
                    + "r=document.createRange();r.selectNodeContents(b);"
                    + "return new Set([...r.getClientRects()].map(c=>Math.round(c.top))).size");
        assertEquals(1L, lines, language + " " + day + " at " + width);
      }
    }
  }
}
