package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The public pages in a real browser, from a disk, with and without script. */
class FindPageTest {

  private static Browser browser;

  @TempDir static Path site;

  @BeforeAll
  static void open() throws IOException {
    browser = Browser.open();
    Map<String, String> pages =
        Demo.PAGES.open(
            Demo.shop("Longs Peak"),
            Optional.of(Demo.year()),
            List.of(Demo.WORDS.of("en"), Demo.WORDS.of("es")),
            new Problems());
    for (Map.Entry<String, String> page : pages.entrySet()) {
      Path file = site.resolve(page.getKey());
      Files.createDirectories(file.getParent());
      Files.writeString(file, page.getValue());
    }
    Files.writeString(
        site.resolve("icon.svg"), Files.readString(Path.of("site-templates/icon.svg")));
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void asNew() {
    browser.trueClock().scripts(true).screen(390, 844, true).complaints();
    browser.requests();
  }

  private static void ask(String page, String words) throws InterruptedException {
    browser.go(site.resolve(page));
    browser.run(
        "document.querySelector('#q').value = arguments[0];"
            + "document.querySelector('.ask button').click();",
        words);
    Thread.sleep(700);
  }

  @Test
  void aQuestionAskedAtHomeLeadsToItsAnswer() throws InterruptedException {
    ask("index.html", "bubles");
    String address = (String) browser.run("return location.href");
    assertTrue(address.endsWith("/en/find.html?q=bubles"), address);
    assertTrue(browser.seen("#found li").contains("bubbles"), browser.seen("#found"));
    assertEquals(browser.seen("#said"), browser.run("return document.all.tell.textContent"));
    browser.run("document.querySelector('#found a').click()");
    Thread.sleep(500);
    assertTrue(browser.seen(":target").contains("bubble"), browser.seen(":target"));
  }

  @Test
  void accentsNeedNotBeTypedAndTheAddressKeepsWhatWasAsked() throws InterruptedException {
    ask("es/find.html", "desempanador");
    assertTrue(browser.seen("#found").contains("desempañador"), browser.seen("#found"));
    String address = (String) browser.run("return location.href");
    assertTrue(address.endsWith("?q=desempanador"), address);
    ask("es/find.html", "<img src=x onerror=boom()>");
    assertEquals(0L, browser.run("return document.querySelectorAll('main img').length"));
  }

  @Test
  void withoutScriptThePrintedIndexStands() {
    browser.scripts(false);
    browser.go(site.resolve("en/find.html"));
    assertTrue(browser.allSeen("#hits").isEmpty());
    assertTrue(browser.allSeen(".index dt").size() > 50);
  }

  /** The index is heavy; who reads the printed one does not load it. */
  @Test
  void theIndexIsLoadedWhenSomebodyStartsToAsk() throws Exception {
    browser.go(site.resolve("en/find.html"));
    Thread.sleep(300);
    assertEquals(List.of(), loaded());
    browser.run("document.querySelector('#q').focus()");
    Thread.sleep(500);
    assertEquals(List.of("find-index.js"), loaded());
    browser.run("document.querySelector('#q').blur();document.querySelector('#q').focus()");
    browser.run("document.querySelector('.ask button').click()");
    Thread.sleep(300);
    assertEquals(List.of(), loaded(), "once is enough");
    String page = Files.readString(site.resolve("en/find.html"));
    assertTrue(Weight.of(page) < 12_000, "the page alone weighs " + Weight.of(page));
    assertEquals(List.of(), browser.complaints());
  }

  private static List<String> loaded() {
    return browser.requests().stream()
        .filter(r -> r.endsWith(".js"))
        .map(r -> r.replaceFirst(".*/", ""))
        .toList();
  }

  @Test
  void noPageAsksForAnythingElseOrIsStoppedByItsPolicy() {
    for (String page :
        List.of("index.html", "en/tint.html", "en/normal.html", "es/find.html", "404.html")) {
      browser.go(site.resolve(page));
      // On a disk the page for lost visitors has no top of a host to take the icon from.
      assertEquals(
          List.of(),
          browser.complaints().stream().filter(c -> !c.startsWith("file:///icon.svg")).toList(),
          page);
      assertTrue(
          browser.requests().stream()
              .allMatch(
                  r ->
                      r.startsWith("file:") && (r.endsWith(page) || r.endsWith("/icon.svg"))
                          || r.startsWith("data:")),
          page);
      Object wide = browser.run("return document.documentElement.scrollWidth > window.innerWidth");
      assertEquals(false, wide, page);
    }
  }
}
