package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.page.Browser;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The dates in the shop's guides: of the car whose page led there, else of the present month. */
class GuideDatesTest {

  private static final String WINDOWS = "[data-date='hold.windows-up.until']";

  private static PressedDemo demo;
  private static Browser browser;

  @BeforeAll
  static void open() throws IOException {
    demo = PressedDemo.get();
    browser = Browser.open();
    browser.zone("America/Los_Angeles").screen(390, 844, true);
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  private static Path guide(String language, String id) {
    return demo.site().resolve(language + "/" + id + ".html");
  }

  private static void at(String day) {
    browser.clock(Instant.parse(day + "T20:00:00Z"));
  }

  @Test
  void withoutACarTheDaysAreThoseOfThisMonth() {
    browser.scripts(false).go(guide("en", "tint"));
    String year = browser.seen(WINDOWS);
    assertTrue(year.matches("\\d+ days after the work in July, up to \\d+ in December"), year);
    browser.scripts(true);
    for (String month : List.of("07 July", "12 December")) {
      at("2026-" + month.substring(0, 2) + "-15");
      browser.run("sessionStorage.clear()");
      browser.go(guide("en", "tint"));
      String now = browser.seen(WINDOWS);
      assertTrue(now.matches("\\d+ days after the work in " + month.substring(3)), now);
      String days = now.replaceAll("\\D", "");
      assertTrue(year.matches(".*\\b" + days + "\\b.*"), now + " is not of " + year);
      assertEquals("", browser.seen("#own"));
    }
    assertFalse(browser.seen("article").contains("up to"), "no range is left");
  }

  /** Every question has this car's dates, those beside the ones on its own page too. */
  @Test
  void fromACarsPageTheyHaveItsDates() throws IOException {
    at("2026-11-26");
    browser.go(demo.job("Q-3101").resolve("index.html"));
    String row = date("windows-up");
    String inside = date("inside-glass");
    browser.run("document.querySelector('.more').open = true");
    browser.run("document.querySelector('.more > p a').click()");
    awaitTitle("Is this normal?");
    assertEquals(inside, browser.seen("#q-dog ~ p [data-date='hold.inside-glass.until']"));
    assertEquals(
        "Dates on this page are for your car. Day counts are general. Back to your page",
        browser.seen("#own"));
    browser.go(guide("en", "tint"));
    assertEquals(row, browser.seen(WINDOWS), "as long as the window is open");
    browser.go(guide("es", "tint"));
    assertFalse(browser.seen(WINDOWS).contains(row), "not in another language");
    assertEquals("", browser.seen("#own"));
    browser.go(guide("en", "tint"));
    browser.run("document.querySelector('#own a').click()");
    browser.until(
        "document.readyState === 'complete' && document.querySelector('li[data-hold=windows-up]')");
    assertEquals(row, date("windows-up"));
  }

  @Test
  void theyFollowTheParkingThatWasChosen() throws IOException {
    at("2026-11-26");
    browser.go(demo.job("Q-3101").resolve("index.html"));
    browser.run("document.querySelector('#parking').open = true");
    browser.run("document.querySelectorAll('#parking input')[1].click()");
    String row = date("haze");
    browser.run("document.querySelector('.more').open = true");
    browser.run("document.querySelector('.more > p a').click()");
    awaitTitle("Is this normal?");
    assertEquals(row, browser.seen("[data-date='hold.haze.until']"));
    browser.run("localStorage.clear(); sessionStorage.clear()");
  }

  /** A date of a car's own page, as it reads in a sentence. */
  private static String date(String hold) {
    String time = browser.seen("li[data-hold=" + hold + "] time [data-to]");
    String day = browser.seen("li[data-hold=" + hold + "] time b");
    return time.isEmpty() ? day : day + ", " + time;
  }

  private static void awaitTitle(String title) {
    browser.until(
        "document.readyState === 'complete' && document.querySelector('h1').textContent.trim() === '"
            + title
            + "'");
    assertEquals(title, browser.seen("h1"));
  }
}
