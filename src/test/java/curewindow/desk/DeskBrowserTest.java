package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.Npm;
import curewindow.handout.CodeReaders;
import curewindow.page.Browser;
import curewindow.shop.Job;
import curewindow.site.CalledShop;
import curewindow.site.LoadedShop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** The desk in a real browser: by mouse, by keys alone, by touch, and by two tablets at once. */
class DeskBrowserTest {

  /** The aim for a car with two services; our own. */
  private static final int MOST_INTERACTIONS = 20;

  /** What the first tappable part of the drawing looks like. */
  private static final String SKETCH =
      "return document.querySelector('#spots-1 .tap').getAttribute('d')";

  private static Browser browser;

  @TempDir Path folder;
  private DeskClient desk;
  private int interactions;

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
    browser.screen(1180, 820, false);
    browser.requests();
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private void go(String path) {
    browser.go(desk.at(path).toString());
  }

  private void click(String css) {
    browser.click(css);
    interactions++;
  }

  private void type(String css, String text) {
    browser.type(css, text);
    interactions++;
  }

  /** By script, as drop-down lists are drawn by the system; for a person it is one choice. */
  private void choose(String id, String value) {
    browser.run(
        "var s=document.getElementById(arguments[0]);s.value=arguments[1];"
            + "s.dispatchEvent(new Event('input',{bubbles:true}));"
            + "s.dispatchEvent(new Event('change',{bubbles:true}))",
        id,
        value);
    interactions++;
  }

  private Job saved(String id) {
    browser.until("location.pathname==='/job/" + id + "/hand-over'");
    LoadedShop shop = desk.loaded();
    assertEquals(List.of(), shop.errors());
    return shop.job(id).orElseThrow();
  }

  private static String spot(int item, String spot) {
    return "#item-" + item + " .picks label:has(input[value=" + spot + "])";
  }

  private static String waitFor(int item, String spot) {
    return "document.querySelector('#item-" + item + " .tap[data-spot=" + spot + "]')";
  }

  @Test
  void aCarWithTwoServicesFromScratchToTheCodeByMouse() throws IOException {
    go("/new");
    choose("items[1].film", "harbor-35");
    browser.until(waitFor(1, "front-door-glass"));
    click("#item-1 .tap[data-spot=front-door-glass]");
    click(spot(1, "rear-door-glass"));
    click("button[value=add]");
    browser.until("document.getElementById('items[2].film')");
    choose("items[2].film", "fieldcoat-gloss");
    browser.until(waitFor(2, "hood"));
    click(spot(2, "hood"));
    click(spot(2, "front-bumper"));
    type("[id='items[2].batch']", "FG-2210");
    click("label:has(input[value=wagon])");
    click("label:has(input[name='car.paint'][value=dark])");
    type("[id='car.text']", "red wagon");
    type("[id='first-name']", "Ines");
    click("label:has(input[name='parking.night'][value=garage])");
    browser.until("document.querySelectorAll('.holds li').length>5");
    click("button.main");
    Job job = saved("Q-3117");
    assertEquals(List.of("front-door-glass", "rear-door-glass"), job.items().get(0).spots());
    assertEquals(List.of("hood", "front-bumper"), job.items().get(1).spots());
    assertEquals("red wagon", job.car().text());
    click("button[data-busy]");
    browser.until("document.querySelector('.code')");
    assertTrue(interactions <= MOST_INTERACTIONS, interactions + " interactions");
    Path picture = folder.resolve("code.png");
    browser.picture(picture, true);
    String address = browser.seen(".address");
    assertEquals(
        address, CodeReaders.zxing(ImageIO.read(picture.toFile())).orElseThrow().getText());
    assertEquals(
        "https://care.quillhaven.example/"
            + desk.loaded().madePage(desk.out, "Q-3117").orElseThrow(),
        address);
  }

  /** From a folder that is not there to a code that a phone can read. */
  @Test
  void theFirstRunEndsWithTheFirstCode() throws IOException {
    Path own = folder.resolve("first");
    try (DeskClient first = DeskClient.open(own, DeskClient.NOW)) {
      browser.go(first.at("/").toString());
      type("[id=name]", "Quillhaven Film & Coatings");
      type("[id=phone]", "+1 206 555 0142");
      type("[id=address]", "https://care.quillhaven.example/");
      type("[id=town]", "Seattle");
      browser.until("document.getElementById('place-seattle')");
      click(".towns label:has([id=place-seattle])");
      browser.until("document.getElementById('place-seattle')?.checked");
      assertEquals(
          "Quillhaven Film & Coatings",
          browser.run("return document.getElementById('name').value"));
      click("button.main");
      browser.until("location.pathname==='/new'");
      choose("items[1].film", "harbor-35");
      browser.until(waitFor(1, "front-door-glass"));
      click("#item-1 .tap[data-spot=front-door-glass]");
      type("[id='first-name']", "Ines");
      click("button.main");
      browser.until("location.pathname.endsWith('/hand-over')");
      click("button[data-busy]");
      browser.until("document.querySelector('.code')");
      assertTrue(interactions <= 12, interactions + " interactions");
      Path picture = folder.resolve("first.png");
      browser.picture(picture, true);
      String read = CodeReaders.zxing(ImageIO.read(picture.toFile())).orElseThrow().getText();
      assertEquals(browser.seen(".address"), read);
      assertEquals(List.of(), first.loaded().errors());
    }
  }

  @Test
  void theSameWorkAgainTakesFewTouches() {
    browser.screen(768, 1024, true);
    go("/new");
    browser.tap("button[value='usual:Q-3108']");
    browser.until("document.getElementById('items[2].film')?.value==='tidewater-paint'");
    browser.type("[id='items[1].batch']", "FL-1000").type("[id='first-name']", "Ines");
    String coupe = (String) browser.run(SKETCH);
    browser.tap("label:has(input[value=suv])");
    browser.until("'" + coupe + "'!==(()=>{" + SKETCH + "})()");
    browser.until("document.querySelectorAll('.holds li').length>5");
    browser.tap("#item-1 .tap[data-spot=roof], " + spot(1, "roof"));
    browser.tap("button.main");
    Job job = saved("Q-3117");
    assertEquals("FL-1000", job.items().get(0).batch().orElse(""));
    assertTrue(job.items().get(0).spots().contains("roof"), job.items()::toString);
    assertTrue(job.items().get(1).batch().isEmpty(), "another bottle");
    assertEquals(true, browser.run("return document.documentElement.scrollWidth<=innerWidth"));
  }

  /** Tabs to an element, as somebody does who has no mouse. */
  private void tabTo(String css) {
    for (int i = 0; i < 150; i++) {
      if (Boolean.TRUE.equals(
          browser.run("return document.activeElement.matches(arguments[0])", css))) {
        assertEquals(
            true,
            browser.run(
                "var c=getComputedStyle(document.activeElement);"
                    + "return c.outlineStyle!=='none'&&parseFloat(c.outlineWidth)>=1"),
            css + " is not seen to be in focus");
        return;
      }
      browser.keys(Keys.TAB);
    }
    throw new AssertionError("no key leads to " + css);
  }

  @Test
  void keysAloneDoItAll() {
    go("/new");
    tabTo("select");
    browser.keys("Harbor 35");
    browser.until(waitFor(1, "back-glass"));
    tabTo("input[value=back-glass]");
    browser.keys(Keys.SPACE);
    tabTo("[id='items[1].batch']");
    // A scanner types and ends with Enter, which only goes on to the next field.
    browser.keys("H35-0900", Keys.ENTER);
    assertEquals(
        false, browser.run("return document.activeElement.id==='items[1].batch'"), "goes on");
    tabTo("[id='first-name']");
    browser.keys("Ines");
    tabTo("button.main");
    browser.keys(Keys.ENTER);
    Job job = saved("Q-3117");
    assertEquals(List.of("back-glass"), job.items().get(0).spots());
    assertEquals("H35-0900", job.items().get(0).batch().orElse(""));
    tabTo("button[data-busy]");
    browser.keys(Keys.ENTER);
    browser.until("document.querySelector('.code')");
  }

  /** Some scanners end with a carriage return and a line feed, which are two Enters. */
  @Test
  void aScannerThatEndsWithTwoEntersPressesNothing() {
    go("/new?as=Q-3108");
    tabTo("[id='items[1].batch']");
    browser.keys("FL-1000", Keys.ENTER, Keys.ENTER);
    tabTo("[id='first-name']");
    browser.keys("Ines", Keys.ENTER, Keys.ENTER);
    browser.until("!document.querySelector('#job').dataset.busy");
    assertEquals(2L, browser.run("return document.querySelectorAll('.item').length"));
    assertEquals("FL-1000", browser.run("return document.getElementById('items[1].batch').value"));
    assertTrue(browser.address().contains("/new"), browser.address());
  }

  @Test
  void aRefusedSaveLeadsToTheFirstFieldWithAProblem() {
    go("/new?as=Q-3101");
    browser.type("[id='id']", "Q 31").click("button.main");
    browser.until("document.activeElement.id==='id'");
    assertTrue(browser.seen("[data-field=id] .wrong").contains("letters, digits"));
  }

  /** A finger leaves no pointer behind, but browsers act as if it did. */
  @Test
  void aPartThatIsTappedIsRedAtOnce() {
    go("/new?as=Q-3101");
    String fill =
        "return getComputedStyle(document.querySelector('#item-1 .tap[data-spot=quarter-glass]'))"
            + ".fill";
    browser.click("#item-1 .tap[data-spot=quarter-glass]");
    browser.until("document.querySelector('#item-1 .tap[data-spot=quarter-glass].on')");
    String stamp =
        (String)
            browser.run(
                "return getComputedStyle(document.querySelector("
                    + "'#item-1 .tap[data-spot=back-glass].on')).fill");
    assertEquals(stamp, browser.run(fill));
  }

  /** All of what the field asks for can be read on a phone. */
  @Test
  void theFindFieldIsWholeOnASmallScreen() {
    browser.screen(390, 820, true);
    go("/");
    assertEquals(
        true,
        browser.run(
            "var i=document.querySelector('.mast input'),c=document.createElement('canvas')"
                + ".getContext('2d'),s=getComputedStyle(i);c.font=s.font;"
                + "return c.measureText(i.placeholder).width<=i.clientWidth"
                + "-parseFloat(s.paddingLeft)-parseFloat(s.paddingRight)"));
  }

  /** The desk again on the same port, after a while. */
  private Desk after(Duration time, Desk.Setting was, int port) throws IOException {
    Instant then = DeskClient.NOW.plus(time);
    return Desk.open(
        new Desk.Setting(was.shop(), was.out(), port, was.passcode(), DeskClient.clock(then)));
  }

  @Test
  void aTimeThatNobodyTouchedIsShownAsItWillBeSaved() throws IOException {
    go("/new?as=Q-3101");
    int port = desk.desk.address().getPort();
    desk.close();
    try (Desk later = after(Duration.ofMinutes(47), desk.setting(DeskClient.NOW), port)) {
      assertEquals(port, later.address().getPort());
      browser.type("[id='first-name']", "Ines");
      browser.until("document.getElementById('items[1].finished').value==='2026-11-25T12:45'");
      browser.until("document.getElementById('pickup').value==='2026-11-25T13:00'");
      browser.run(
          "var p=document.getElementById('pickup');p.value='2026-11-25T14:20';"
              + "p.dispatchEvent(new Event('input',{bubbles:true}))");
      browser.click("button.main");
      Job job = saved("Q-3117");
      assertEquals(Instant.parse("2026-11-25T22:20:00Z"), job.pickup());
      assertEquals(Instant.parse("2026-11-25T20:45:00Z"), job.items().get(0).finished());
    }
  }

  /** On a tablet: the session ends while a form is filled in, and the form stays. */
  @Test
  void whereTheSessionEndsTheFormStays() throws IOException {
    Assumptions.assumeFalse(OwnNames.inNetwork().isEmpty(), "Skipped: no network but the loopback");
    Desk.Setting own = desk.setting(DeskClient.NOW);
    Desk.Setting open =
        new Desk.Setting(own.shop(), own.out(), 0, Optional.of("heron7rq"), own.clock());
    int port;
    try (Desk first = Desk.open(open)) {
      port = first.address().getPort();
      browser.go(first.others().get(0).resolve("/new?as=Q-3101").toString());
      assertTrue(browser.seen("h1").contains("Passcode"), browser.seen("h1"));
      browser.type("[name=passcode]", "heron7rq").click("button.main");
      browser.until("location.pathname==='/new'&&location.search==='?as=Q-3101'");
      browser.type("[id='first-name']", "Ines");
    }
    try (Desk again = after(Duration.ofHours(13), open, port)) {
      assertEquals(port, again.address().getPort());
      browser.click("button.main");
      browser.until("document.querySelector('#away a[target=_blank][href=\"/enter\"]')");
      assertTrue(browser.seen("#away").contains("Nothing here is lost"), browser.seen("#away"));
      // As in the other window.
      browser.run(
          "return fetch('/enter',{method:'POST',"
              + "body:new URLSearchParams({passcode:'heron7rq',back:'/enter'})})"
              + ".then(r=>r.text())");
      browser.click("button.main");
      assertEquals("Ines", saved("Q-3117").firstName());
    }
  }

  @Test
  void whatIsWrongStandsAtItsFieldAsOneTypes() {
    go("/new?as=Q-3101");
    browser.run("document.querySelector('#item-1 details').open=true");
    browser.type("[id='items[1].vlt']", "140");
    browser.until("document.querySelector('[data-field=\"items[1].vlt\"] .wrong')");
    browser.type("[id='items[1].vlt']", "30");
    browser.until("!document.querySelector('[data-field=\"items[1].vlt\"] .wrong')");
    browser.until("document.querySelectorAll('.holds li').length>5");
  }

  @Test
  void withoutAScriptTheFormWorksToo() throws InterruptedException {
    browser.scripts(false);
    try {
      go("/new?as=Q-3101");
      browser.type("[id='first-name']", "Ines").click("button.main");
      String next = "/job/Q-3117/hand-over";
      for (int i = 0; i < 100 && !browser.address().contains(next); i++) {
        Thread.sleep(100);
      }
      assertTrue(browser.address().contains(next), browser.address());
    } finally {
      browser.scripts(true);
    }
  }

  @Test
  void whereTheDeskIsAwayNothingThatWasTypedIsLost() throws IOException {
    go("/new?as=Q-3101");
    browser.type("[id='first-name']", "Ines");
    desk.close();
    browser.click("button.main");
    browser.until("!document.getElementById('away').hidden");
    assertEquals("Ines", browser.run("return document.getElementById('first-name').value"));
    int port = desk.desk.address().getPort();
    Desk.Setting same = desk.setting(DeskClient.NOW);
    try (Desk again =
        Desk.open(new Desk.Setting(same.shop(), same.out(), port, same.passcode(), same.clock()))) {
      assertEquals(port, again.address().getPort());
      browser.click("button.main");
      assertEquals("Ines", saved("Q-3117").firstName());
    }
  }

  @Test
  void ofTwoTabletsOnOneCarNoneLosesAnything() {
    try (Browser second = Browser.open()) {
      go("/job/Q-3101/change");
      second.screen(768, 1024, true).go(desk.at("/job/Q-3101/change").toString());
      second.type("[id='first-name']", "Odette").click("button.main");
      second.until("location.pathname.endsWith('/hand-over')");
      browser.type("[id='first-name']", "Marta").click("button.main");
      browser.until("document.querySelector('[data-field=first-name] .wrong')");
      String told = browser.seen("[data-field=first-name] .wrong");
      assertTrue(told.contains("Somebody else"), told);
      assertEquals("Odette", desk.loaded().job("Q-3101").orElseThrow().firstName());
      browser.click("button.main");
      assertEquals("Marta", saved("Q-3101").firstName());
    }
  }

  private static final List<Integer> WIDTHS = List.of(1180, 768, 390);

  /** What axe has against the page that is shown, and whether it is too wide. */
  private List<String> against(String axe, String name) {
    browser.run("document.querySelectorAll('details').forEach(d=>d.open=true)");
    if (Boolean.FALSE.equals(browser.run("return 'axe' in window"))) {
      browser.run(axe);
    }
    List<?> violations =
        (List<?>)
            browser.run(
                "return axe.run(document,{iframes:false}).then(r=>r.violations.flatMap(v=>"
                    + "v.nodes.map(n=>v.id+' '+n.target)))");
    List<String> found = new ArrayList<>();
    violations.forEach(v -> found.add(name + ": " + v));
    if (!Boolean.TRUE.equals(
        browser.run("return document.documentElement.scrollWidth<=innerWidth"))) {
      found.add(name + " is wider than the screen");
    }
    return found;
  }

  private static String axe() throws IOException {
    return Files.readString(Npm.file("axe-core/axe.min.js"));
  }

  @Test
  void everyScreenIsAccessibleAndAsksForNothingFromElsewhere() throws IOException {
    String axe = axe();
    desk.post("/job/Q-3101/press");
    List<String> found = new ArrayList<>();
    for (String path :
        List.of(
            "/",
            "/new?as=Q-3108",
            "/find?q=h",
            "/job/Q-3101",
            "/job/Q-3101/hand-over",
            "/calls",
            "/import",
            "/shop",
            "/films",
            "/film/harbor-35",
            "/film/harbor-35/remove",
            "/film/harbor-5/remove",
            "/rules/tint",
            "/none")) {
      go(path);
      for (int width : WIDTHS) {
        browser.screen(width, 820, width < 800);
        found.addAll(against(axe, path + " " + width));
      }
      browser.prefers("prefers-color-scheme", "dark");
      found.addAll(against(axe, path + " dark"));
      browser.prefers("prefers-color-scheme", "light");
    }
    assertEquals(List.of(), found, () -> String.join("\n", found));
    String own = desk.desk.address().toString();
    List<String> others =
        browser.requests().stream()
            .filter(a -> !a.startsWith(own) && !a.startsWith("data:"))
            .toList();
    assertEquals(List.of(), others);
  }

  /** A file of another program: chosen, told how it is read, looked at, imported. */
  @Test
  void aFileIsImportedOnAnyScreen() throws IOException {
    String axe = axe();
    Path file = Files.write(folder.resolve("Diary.csv"), ImportedTable.bytes());
    List<String> found = new ArrayList<>();
    for (int width : WIDTHS) {
      browser.screen(width, 820, width < 800);
      browser.prefers("prefers-color-scheme", width == 768 ? "dark" : "light");
      go("/import");
      browser.type("#import-file input", file.toAbsolutePath().toString());
      browser.until("!document.querySelector('.main').disabled");
      browser.click("button.main");
      browser.until("document.querySelector('.pairs')");
      found.addAll(against(axe, "map " + width));
      browser.run("document.querySelector('[name=\"fixed.service\"]').value='tint'");
      browser.click("button.main");
      browser.until("document.querySelector('.rows')");
      found.addAll(against(axe, "rows " + width));
      assertEquals(
          true,
          browser.run(
              "return [...document.querySelectorAll('.rows td:nth-child(n+3)')]"
                  + ".every(e=>e.clientWidth>=64)"),
          "words are not broken into letters at " + width);
    }
    browser.prefers("prefers-color-scheme", "light");
    assertEquals(List.of(), found, () -> String.join("\n", found));
    browser.click("button[value=take]");
    browser.until("!document.querySelector('button[value=take]')");
    assertEquals("Jörg", desk.loaded().job("Q-3140").orElseThrow().firstName());
    assertTrue(browser.seen(".counts").contains("1 job imported"), browser.seen(".counts"));
  }

  @Test
  void aFileThatIsTooLargeIsNotSent() throws IOException {
    Path file = Files.write(folder.resolve("Diary.csv"), new byte[SentTable.MOST + 1]);
    go("/import");
    browser.type("#import-file input", file.toAbsolutePath().toString());
    browser.until("!document.getElementById('import-large').hidden");
    assertEquals(true, browser.run("return document.querySelector('.main').disabled"));
  }

  /** The pictures of calls: seen where colors are forced, and true to their numbers anywhere. */
  @Test
  void thePicturesOfCallsAreSeenAndTrue() throws IOException {
    String axe = axe();
    Path called = folder.resolve("called");
    CalledShop.layOut(Files.createDirectories(called.resolve("shop")));
    List<String> found = new ArrayList<>();
    try (DeskClient other = DeskClient.open(called, CalledShop.CLOCK.instant())) {
      for (int width : WIDTHS) {
        browser.screen(width, 820, width < 800);
        for (String colors : List.of("light", "dark")) {
          browser.prefers("prefers-color-scheme", colors);
          browser.go(other.at("/calls?changed=2026-10-16").toString());
          found.addAll(against(axe, "calls " + width + " " + colors));
        }
      }
      browser.prefers("prefers-color-scheme", "light");
      assertEquals(List.of(), found, () -> String.join("\n", found));
      // 28 of an axis to 60: as far from 0 as from 60, within a pixel.
      assertEquals(
          true,
          browser.run(
              "var t=document.querySelectorAll('#services thead text'),"
                  + "m=e=>{var r=e.getBoundingClientRect();return (r.left+r.right)/2},"
                  + "c=m(document.querySelector('#services circle')),a=m(t[0]),"
                  + "b=m(t[t.length-1]);"
                  + "return t[t.length-1].textContent==='60'&&Math.abs((c-a)/(b-a)-28/60)*(b-a)<2"));
      browser.prefers("forced-colors", "active");
      assertEquals(
          true,
          browser.run(
              "var s=e=>getComputedStyle(document.querySelector('#services '+e));"
                  + "return s('circle').fill!==getComputedStyle(document.body).backgroundColor"
                  + "&&s('.span').stroke!==getComputedStyle(document.body).backgroundColor"));
      browser.prefers("forced-colors", "none");
    }
  }
}
