package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.page.Browser;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Keys alone lead everywhere, in the order of reading, and show where they are (WCAG 2.1, 2.1.1,
 * 2.4.3 and 2.4.7); and no page asks for anything from elsewhere.
 */
class KeyboardTest {

  /** What can be used, in the order in which it stands. */
  private static final String USABLE =
      "window.usable=[...document.querySelectorAll('a[href],summary,button,input')]"
          + ".filter(e=>e.checkVisibility()&&e.getAttribute('tabindex')!=='-1');"
          + "return usable.length";

  /** Where the keys are, and whether that can be seen. */
  private static final String HERE =
      "var e=document.activeElement,c=getComputedStyle(e),m=e.querySelector('circle');"
          + "return [String(usable.indexOf(e)),c.outlineStyle!=='none'&&parseFloat(c.outlineWidth)>=2"
          + "||m&&parseFloat(getComputedStyle(m).strokeWidth)>=3?'seen':e.outerHTML]";

  private static Browser browser;
  private static ViewServer view;

  @BeforeAll
  static void open() throws IOException {
    browser = Browser.open();
    view = ViewServer.start(PressedDemo.get().out(), 0);
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
    if (view != null) {
      view.close();
    }
  }

  private static String address(Path page) throws IOException {
    URI relative = PressedDemo.get().site().toUri().relativize(page.toUri());
    return view.address().resolve(relative).toString();
  }

  @ParameterizedTest
  @CsvSource({"en, job", "en, home", "en, guide", "ar, job"})
  void tabReachesEverythingInOrderAndCanBeSeen(String language, String kind) throws IOException {
    Path page = PressedDemo.get().kinds(language).get(kind);
    browser.screen(390, 844, true).go(address(page));
    long usable = (Long) browser.run(USABLE);
    assertTrue(usable > 8, kind + " " + usable);
    for (int i = 0; i < usable; i++) {
      assertEquals(List.of(String.valueOf(i), "seen"), browser.key("Tab", 9).run(HERE), kind);
    }
  }

  @Test
  void enterOpensAQuestionAndLeadsFromTheDrawingToItsEntry() throws IOException {
    browser.go(address(PressedDemo.get().kinds("en").get("job")));
    browser.run("document.querySelector('summary').focus()");
    browser.key("Enter", 13);
    assertEquals(true, browser.run("return document.querySelector('details').open"));
    browser.run("document.querySelector('.fig a:not([tabindex])').focus()");
    browser.key("Enter", 13);
    assertEquals("#f1", browser.run("return location.hash"));
    browser.run("document.querySelector('.skip').focus()");
    browser.key("Enter", 13);
    assertEquals("main", browser.run("return document.activeElement.id"));
  }

  /** The choice is one stop among the keys, and the arrows choose, as of all radio buttons. */
  @Test
  void aParkingIsChosenByKeysAlone() throws IOException {
    browser.go(address(PressedDemo.get().kinds("en").get("job")));
    String noted = browser.seen("li[data-hold=windows-up] time");
    browser.run("document.querySelector('#parking summary').focus()");
    browser.key("Enter", 13);
    assertTrue(browser.seen("#parking fieldset").contains("Where do you park?"));
    for (int choice = 1; choice <= 2; choice++) {
      browser.key(choice == 1 ? "Tab" : "ArrowDown", choice == 1 ? 9 : 40).run(USABLE);
      assertEquals("seen", ((List<?>) browser.run(HERE)).get(1));
    }
    assertEquals(
        1L,
        browser.run(
            "return [...document.querySelectorAll("
                + "'#parking input')].indexOf(document.activeElement)"));
    assertEquals(true, browser.run("return document.activeElement.checked"));
    assertNotEquals(noted, browser.seen("li[data-hold=windows-up] time"));
    browser.key("Tab", 9);
    assertEquals("care.ics", browser.run("return document.activeElement.download"));
    assertTrue(((String) browser.run("return document.activeElement.href")).startsWith("data:"));
    browser.run("localStorage.clear()");
  }

  @Test
  void whatIsTypedIsLookedUp() throws Exception {
    browser.go(address(PressedDemo.get().kinds("en").get("find")));
    browser.run("document.querySelector('#q').focus()");
    for (String letter : "haze".split("")) {
      browser.key(letter, letter.toUpperCase(java.util.Locale.ROOT).charAt(0));
    }
    browser.key("Enter", 13);
    Thread.sleep(700); // the index is loaded and asked
    assertTrue(browser.seen("#found").toLowerCase(java.util.Locale.ROOT).contains("haz"));
    browser.key("Tab", 9).key("Tab", 9);
    assertEquals(true, browser.run("return !!document.activeElement.closest('#found')"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es", "ar"})
  void noRequestLeavesTheSite(String language) throws IOException {
    browser.go("about:blank").requests();
    browser.complaints();
    Map<String, Path> kinds = PressedDemo.get().kinds(language);
    for (Map.Entry<String, Path> kind : kinds.entrySet()) {
      browser.go(address(kind.getValue()));
      browser.run("document.querySelectorAll('details').forEach(d=>d.open=true)");
    }
    List<String> away = new ArrayList<>(browser.requests());
    assertTrue(away.size() >= kinds.size(), away.toString());
    away.removeIf(a -> a.startsWith(view.address().toString()) || a.startsWith("data:"));
    assertEquals(List.of(), away);
    assertEquals(List.of(), browser.complaints());
  }
}
