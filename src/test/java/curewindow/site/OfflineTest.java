package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.page.Browser;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job's pages in a real browser over a network that comes and goes, and from a disk. */
class OfflineTest {

  private static final String TOKEN = "7F3K9QX2M4TBAAAA";
  private static final Path JOB = Path.of("jobs/Q-3101.yaml");

  @TempDir Path temp;
  private Path shop;
  private Path out;
  private Browser browser;

  @BeforeEach
  void pressOneJob() throws IOException {
    browser = Browser.open();
    shop = temp.resolve("shop");
    out = temp.resolve("out");
    Files.createDirectories(shop.resolve("jobs"));
    Files.copy(Path.of("content/demo/shop.yaml"), shop.resolve("shop.yaml"));
    Files.copy(Path.of("content/demo").resolve(JOB), shop.resolve(JOB));
    press();
  }

  @AfterEach
  void close() {
    if (browser != null) {
      browser.close();
    }
  }

  private PressReport press() throws IOException {
    Clock clock = Clock.fixed(Instant.parse("2026-11-25T00:00:00Z"), ZoneOffset.UTC);
    PressReport report = Press.run(LoadedShop.load(shop, clock), out, clock, () -> TOKEN);
    assertFalse(report.hasErrors(), () -> report.problems().toString());
    return report;
  }

  private Path folder() {
    return out.resolve("site/C/" + TOKEN);
  }

  private void edit(String from, String to) throws IOException {
    String text = Files.readString(shop.resolve(JOB));
    assertTrue(text.contains(from), text);
    Files.writeString(shop.resolve(JOB), text.replace(from, to));
  }

  private void waitFor(String condition) throws InterruptedException {
    for (int i = 0; i < 300 && !Boolean.TRUE.equals(browser.run("return " + condition)); i++) {
      Thread.sleep(100);
    }
    assertEquals(true, browser.run("return " + condition), condition);
  }

  @Test
  void whatWasOpenedOnceOpensWithoutNetworkAndFollowsWhenItIsBack() throws Exception {
    URI page;
    int port;
    try (ViewServer view = ViewServer.start(out, 0)) {
      port = view.address().getPort();
      page = view.address().resolve("C/" + TOKEN + "/");
      browser.go(page.toString());
      waitFor("!!navigator.serviceWorker.controller");
      assertTrue(browser.seen("h1").startsWith("Mara"), browser.seen("h1"));
      assertEquals(List.of(), browser.complaints());
      for (String asked : browser.requests()) {
        boolean own = asked.startsWith(view.address().toString());
        assertTrue(own || asked.startsWith("data:") || asked.startsWith("chrome:"), asked);
      }
    }
    for (String file :
        List.of("", "index.html", "care.html", "heated/", "heated/index.html#main")) {
      browser.go("about:blank").go(page.resolve(file).toString());
      assertTrue(browser.seen("body").contains("Mara"), file + ": " + browser.seen("body"));
    }
    assertKept(true);
    aNetworkThatAnswersNothingDoesNotKeepAnyoneWaiting(page, port);
    edit("first-name: Mara", "first-name: Noor");
    press();
    try (ViewServer again = ViewServer.start(out, port)) {
      assertEquals(port, again.address().getPort());
      browser.go("about:blank").go(page + "#main");
      assertTrue(browser.seen("h1").startsWith("Noor"), "the network comes first");
      assertKept(false);
      browser.go(page + "?again");
      waitFor(
          "(window.names||(caches.keys().then(k=>window.names=k),[])).length===1"
              + "&&window.names[0].startsWith('"
              + page
              + "')");
    }
    browser.go("about:blank").go(page.toString() + "#main");
    assertTrue(browser.seen("h1").startsWith("Noor"), "the copy follows the network");
  }

  /** Connections are taken, and then nothing comes, as where a network has no way on. */
  private void aNetworkThatAnswersNothingDoesNotKeepAnyoneWaiting(URI page, int port)
      throws IOException {
    try (ServerSocket silent = new ServerSocket(port, 50, InetAddress.getLoopbackAddress())) {
      Instant start = Instant.now();
      browser.clock(Instant.parse("2026-11-25T00:00:00Z")).go("about:blank").go(page.toString());
      assertTrue(browser.seen("h1").startsWith("Mara"), browser.seen("h1"));
      assertTrue(Duration.between(start, Instant.now()).toSeconds() < 15, "shown soon");
      assertKept(true);
      String soon = browser.seen(".answer [data-in]");
      browser.later(Duration.ofDays(2));
      assertNotEquals(soon, browser.seen(".answer [data-in]"), "a copy goes by the clock, too");
      browser.trueClock();
      assertFalse(silent.isClosed());
    }
  }

  /** The phone keeps its copy today, by the machine's clock. */
  private void assertKept(boolean expected) {
    String today =
        LocalDate.now().format(DateTimeFormatter.ofPattern("EEEE, MMMM d", Locale.ENGLISH));
    String line = browser.seen("#kept");
    assertEquals(expected, line.contains("the copy that your phone kept on " + today), line);
    assertEquals(expected, !line.isEmpty(), line);
  }

  @Test
  void theChosenParkingOpensAgainWithAWayBackAndNoLoop() throws Exception {
    try (ViewServer view = ViewServer.start(out, 0)) {
      walkThroughParkings(view.address().resolve("C/" + TOKEN + "/").toString());
    }
    browser.go("about:blank").complaints();
    walkThroughParkings(folder().resolve("index.html").toUri().toString());
  }

  private void walkThroughParkings(String page) {
    browser.go(page);
    assertFalse(browser.seen("#parking").isEmpty());
    assertEquals("", browser.seen("main > .note"), "nothing is chosen yet");
    browser.run("document.querySelector('#parking a[href^=heated]').click()");
    assertTrue(browser.seen("main > .note").contains("in a heated garage"));
    browser.go("about:blank").go(page);
    assertTrue(browser.seen("main > .note").contains("in a heated garage"), "as chosen");
    browser.run("document.querySelector('main > .note a').click()");
    assertEquals("", browser.seen("main > .note"), "as noted");
    browser.go("about:blank").go(page);
    assertEquals("", browser.seen("main > .note"), "the choice is forgotten");
    assertEquals(List.of(), browser.complaints());
  }

  @Test
  void aFolderThatIsNoLongerACaseGoes() throws IOException {
    assertTrue(Files.exists(folder().resolve("heated/index.html")));
    assertTrue(Files.exists(folder().resolve("heated/care.ics")));
    edit("parking: {day: outside, night: outside}", "parking: {day: heated, night: heated}");
    press();
    assertFalse(Files.exists(folder().resolve("heated")), "the noted parking has no folder");
    assertTrue(Files.exists(folder().resolve("outside/index.html")));
    Files.delete(shop.resolve(JOB));
    Files.writeString(
        shop.resolve("jobs.csv"),
        Files.readAllLines(Path.of("content/demo/jobs.csv")).get(0) + "\n");
    press();
    assertFalse(Files.exists(folder()), "with the job all of it goes");
  }

  @Test
  void aBrokenJobKeepsThePagesOfAllParkings() throws IOException {
    edit("harbor-35", "harbour-35");
    Press.run(LoadedShop.load(shop, Clock.systemUTC()), out, Clock.systemUTC(), () -> TOKEN);
    assertTrue(Files.exists(folder().resolve("heated/index.html")));
    assertTrue(Files.exists(folder().resolve("offline.js")));
  }

  /** RFC 5545 section 3.8.4.7: the same UID is the same event, so another file moves the dates. */
  @Test
  void calendarsOfAllParkingsNameTheSameEvents() throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(folder())) {
      files = all.filter(f -> f.endsWith("care.ics")).toList();
    }
    assertTrue(files.size() > 2, files.toString());
    List<String> noted = lines(folder().resolve("care.ics"), "UID:");
    assertFalse(noted.isEmpty());
    for (Path file : files) {
      assertEquals(noted, lines(file, "UID:"), file.toString());
    }
    assertFalse(
        lines(folder().resolve("care.ics"), "DTSTART")
            .equals(lines(folder().resolve("heated/care.ics"), "DTSTART")));
  }

  private static List<String> lines(Path file, String start) throws IOException {
    return Files.readAllLines(file).stream().filter(l -> l.startsWith(start)).sorted().toList();
  }

  @Test
  void theHomeScreenEntryIsOfThisCarAndStaysInItsFolder() throws IOException {
    String manifest = Files.readString(folder().resolve("care.webmanifest"));
    assertTrue(manifest.contains("\"start_url\":\"./\""), manifest);
    assertTrue(manifest.contains("black four-door, "), manifest);
    assertFalse(manifest.contains("://"), manifest);
    for (int size : List.of(180, 512)) {
      var icon = javax.imageio.ImageIO.read(out.resolve("site/icon-" + size + ".png").toFile());
      assertEquals(size, icon.getWidth());
      assertEquals(size, icon.getHeight());
    }
    assertEquals(0, press().files().changed(), "the same bytes again");
  }
}
