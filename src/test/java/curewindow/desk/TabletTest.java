package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.page.Browser;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** The desk on a tablet or a phone: wet fingers hit what they aim at, and see what matters. */
class TabletTest {

  /** WCAG 2.2, 2.5.5 asks for 44 by 44 CSS pixels. */
  private static final int FINGER = 44;

  private static Browser browser;

  @TempDir Path folder;
  private DeskClient desk;

  @BeforeAll
  static void openBrowser() {
    browser = Browser.open();
  }

  @AfterAll
  static void closeBrowser() {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void open() throws IOException {
    desk = DeskClient.open(folder);
    browser.screen(768, 1024, true);
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private void go(String path) {
    browser.go(desk.at(path).toString());
  }

  /** What is lower than a finger, without what stands inside a sentence. */
  private static final String SMALL =
      "return [...document.querySelectorAll('a,button,input:not([type=hidden]),select,summary')]"
          + ".filter(e=>e.checkVisibility()&&e.tabIndex>=0&&!e.closest('.skip,.warn,.vh'))"
          + ".map(e=>[e,(e.closest('label')||e).getBoundingClientRect().height])"
          + ".filter(([e,h])=>Math.round(h)<arguments[0]).map(([e,h])=>e.textContent.trim()+' '+h)";

  @Test
  void aWetFingerHitsEveryLink() {
    desk.post("/job/Q-3101/press");
    for (String path :
        List.of(
            "/",
            "/new?as=Q-3101",
            "/find?q=q",
            "/job/Q-3101",
            "/job/Q-3101/hand-over",
            "/films",
            "/film/harbor-35",
            "/film/harbor-35/remove",
            "/calls",
            "/shop")) {
      go(path);
      assertEquals(List.of(), browser.run(SMALL, FINGER), path);
    }
  }

  /** The head is one line, in either language. */
  @Test
  void theHeadIsOneLine() {
    for (String language : List.of("en", "es")) {
      go("/");
      browser.run("document.cookie='language='+arguments[0]+'; path=/'", language);
      go("/");
      assertEquals(
          1L,
          browser.run(
              "return new Set([...document.querySelectorAll('.mast nav a:not(.quiet),.mast input')]"
                  + ".map(e=>Math.round(e.getBoundingClientRect().top))).size"),
          language);
    }
    browser.run("document.cookie='language=en; path=/'");
  }

  /** Who is closed on a day is not asked when; who opens is. */
  @Test
  void hoursAreAskedOfDaysThatAreOpen() {
    go("/shop");
    List<String> before = browser.allSeen("input[type=time]");
    browser.run(
        "var d=document.getElementById('opening.sun');d.value='open';"
            + "d.dispatchEvent(new Event('change',{bubbles:true}))");
    assertEquals(before.size() + 2, browser.allSeen("input[type=time]").size());
    browser.run("document.getElementById('opening.sun').value='closed'");
    assertEquals(before.size(), browser.allSeen("input[type=time]").size());
    assertTrue(before.size() < 14, before::toString);
    assertEquals(
        true,
        browser.run(
            "return [...document.querySelectorAll('input[type=time]')].filter(e=>e.checkVisibility())"
                + ".every(e=>e.clientWidth>=150)"),
        "an hour is read to its end");
  }

  /** On a phone all stands below each other: that the car is not ready comes before its code. */
  @Test
  void whatHasToBeDoneBeforeItLeavesIsSeenFirst() {
    browser.screen(390, 844, true);
    desk.post(
        "/new",
        DeskClient.car(
            "Q-3200", "fieldcoat-gloss", "items[1].spots", "hood", "pickup", "2026-11-25T12:15"));
    go("/job/Q-3200/hand-over");
    String before =
        "var a=document.querySelector('[role=note]'),b=document.querySelector('[data-busy]');"
            + "return a.getBoundingClientRect().top<b.getBoundingClientRect().top";
    assertEquals(true, browser.run(before));
  }

  /** A shop's network has no https, where browsers keep their newer clipboard to themselves. */
  @Test
  void theMessageIsCopiedOnATabletToo() throws IOException {
    Assumptions.assumeFalse(OwnNames.inNetwork().isEmpty(), "Skipped: no network but the loopback");
    desk.post("/job/Q-3101/press");
    Desk.Setting own = desk.setting(DeskClient.NOW);
    Optional<String> passcode = Optional.of("heron7rq");
    try (Desk open = Desk.open(new Desk.Setting(own.shop(), own.out(), 0, passcode, own.clock()))) {
      browser.go(open.others().get(0).resolve("/job/Q-3101/hand-over").toString());
      browser.type("[name=passcode]", "heron7rq").click("button.main");
      browser.until("document.querySelector('.code')");
      browser.click("[data-copy]");
      browser.until("document.querySelector('[data-copy]').textContent==='Copied'");
      browser.run("document.querySelector('.mast input').focus()");
      browser.keys(Keys.chord(Keys.CONTROL, "v"));
      String pasted = (String) browser.run("return document.querySelector('.mast input').value");
      assertTrue(pasted.startsWith("Hi Mara, here is the care page"), pasted);
    }
  }

  /** Who calls asks first; the customer's own dates stand beside it on their page. */
  @Test
  void onTheScreenOfACarQuestionsAreSeenWithoutScrolling() {
    desk.post("/job/Q-3101/press");
    go("/job/Q-3101");
    assertEquals(
        true,
        browser.run(
            "return document.querySelector('.asks button').getBoundingClientRect().bottom"
                + "<=innerHeight"));
  }
}
