package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.page.Browser;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who leaves a form half filled in, by a slip of a wet hand or for a call, finds it again. */
class HalfFilledFormTest {

  private static final String NAME = "document.getElementById('first-name').value";

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

  /** A new car with the two films of another, an owner, and a place for the second. */
  private void begin() {
    browser.go(desk.at("/new").toString());
    browser.click("button[value='usual:Q-3108']");
    browser.until("document.getElementById('items[2].film')");
    browser.until("!document.getElementById('job').dataset.busy");
    browser.type("[id='first-name']", "Ines").type("[id='items[2].batch']", "TP-77");
  }

  private void isThere() {
    browser.until(NAME + "==='Ines'");
    assertEquals("TP-77", browser.run("return document.getElementById('items[2].batch').value"));
    browser.until("document.querySelectorAll('.holds li').length>5");
  }

  private void toToday() {
    browser.click("nav a[href='/']");
    browser.until("location.pathname==='/'");
  }

  @Test
  void whoComesBackGoesOn() {
    begin();
    toToday();
    browser.run("history.back()");
    browser.until("location.pathname==='/new'");
    isThere();
    browser.run("location.reload()");
    isThere();
    browser.click("button.main");
    browser.until("location.pathname==='/job/Q-3117/hand-over'");
    assertEquals(2, desk.loaded().job("Q-3117").orElseThrow().items().size());
  }

  @Test
  void whoOpensTheScreenAnewIsAskedAndNotForced() {
    begin();
    toToday();
    browser.click("nav a[href='/new']");
    browser.until("location.pathname==='/new'");
    assertEquals("", browser.run("return " + NAME));
    browser.until("!document.getElementById('begun').hidden");
    assertEquals("Go on with what was typed before", browser.seen("#begun"));
    browser.click("#begun");
    isThere();
    assertEquals("", browser.seen("#begun"));
    browser.click("button.main");
    browser.until("location.pathname==='/job/Q-3117/hand-over'");
    browser.click("nav a[href='/new']");
    browser.until("location.pathname==='/new'");
    assertEquals("Q-3118", browser.run("return document.getElementById('id').value"));
    assertEquals("", browser.seen("#begun"), "what was saved is not begun any more");
  }

  /** Each car has its own, and what others change meanwhile is put together with it. */
  @Test
  void aChangeThatWasLeftIsFoundAtItsOwnCar() {
    browser.go(desk.at("/job/Q-3101/change").toString());
    browser.type("[id='first-name']", "Odette");
    toToday();
    browser.go(desk.at("/job/Q-3102/change").toString());
    assertEquals("", browser.seen("#begun"));
    browser.go(desk.at("/job/Q-3101/change").toString());
    browser.click("#begun");
    browser.until(NAME + "==='Odette'");
    browser.click("button.main");
    browser.until("location.pathname==='/job/Q-3101/hand-over'");
    assertEquals("Odette", desk.loaded().job("Q-3101").orElseThrow().firstName());
  }

  /** With two cars open side by side, the head of the form tells them apart. */
  @Test
  void theFormOfAChangeSaysWhoseCarItIs() {
    browser.go(desk.at("/job/Q-3101/change").toString());
    String head = browser.seen("h1");
    assertTrue(head.contains("Q-3101") && head.contains("Mara"), head);
  }
}
