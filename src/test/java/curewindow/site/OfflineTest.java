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
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
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
    PressedDemo.layOutShop(shop, "Q-3101");
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

  /** The addresses of all that the phone has kept, from the top of the site. */
  private static final String KEPT =
      "caches.keys().then(k=>Promise.all(k.map(n=>caches.open(n).then(c=>c.keys()))))"
          + ".then(a=>a.flat().map(r=>new URL(r.url).pathname).sort().join(' '))";

  private static final String FOLDER = "/C/" + TOKEN + "/";

  private static final String ALL =
      Stream.of("", "all.ics", "care.ics", "care.webmanifest")
          .map(FOLDER::concat)
          .collect(Collectors.joining(" ", "", " /below.css /car-sedan.svg /logo.svg /page.js"));

  private void waitForCopies() throws InterruptedException {
    waitFor("!!navigator.serviceWorker.controller");
    waitFor(KEPT + ".then(k=>k==='" + ALL + "')");
  }

  @Test
  void whatWasOpenedOnceOpensWithoutNetworkAndFollowsWhenItIsBack() throws Exception {
    URI page;
    int port;
    try (ViewServer view = ViewServer.start(out, 0)) {
      port = view.address().getPort();
      page = view.address().resolve("C/" + TOKEN + "/");
      browser.go(view.address() + "en/index.html").go(page.toString());
      waitForCopies();
      assertTrue(browser.seen(".for").startsWith("Mara"), browser.seen(".for"));
      assertEquals(List.of(), browser.complaints());
      for (String asked : browser.requests()) {
        boolean own = asked.startsWith(view.address().toString());
        assertTrue(own || asked.startsWith("data:") || asked.startsWith("chrome:"), asked);
      }
    }
    for (String file : List.of("", "index.html", "?from=mail", "index.html#main")) {
      browser.go("about:blank").go(page.resolve(file).toString());
      assertTrue(browser.seen("body").contains("Mara"), file + ": " + browser.seen("body"));
    }
    assertKept(true);
    assertCalendarsAreKept();
    aNetworkThatAnswersNothingDoesNotKeepAnyoneWaiting(page, port);
    edit("first-name: Mara", "first-name: Noor");
    press();
    try (ViewServer again = ViewServer.start(out, port)) {
      assertEquals(port, again.address().getPort());
      browser.go("about:blank").go(page + "#main");
      assertTrue(browser.seen(".for").startsWith("Noor"), "the network comes first");
      assertKept(false);
      browser.go(page + "?again");
      waitForCopies();
    }
    browser.go("about:blank").go(page.toString() + "#main");
    assertTrue(browser.seen(".for").startsWith("Noor"), "the copy follows the network");
  }

  /** A car with so much on it that its page leads to guides, which then have this car's dates. */
  @Test
  void whatAPageHasNoRoomForOpensWithoutANetworkToo() throws Exception {
    edit("parking: {day: outside, night: outside}", "parking: {day: outside, night: heated}");
    edit(
        "items:\n",
        """
        items:
          - {service: paint-coating, film: tidewater-paint, spots: [hood, door], finished: 2026-11-24T10:00}
          - {service: fabric-coating, film: tidewater-fabric, spots: [seats], finished: 2026-11-24T09:00}
          - {service: paint-film, film: fieldcoat-gloss, spots: [hood, mirror], finished: 2026-11-24T09:00}
          - {service: wrap, film: colorway-gloss, spots: [roof], finished: 2026-11-24T11:00}
        """);
    press();
    String page;
    String guide;
    try (ViewServer view = ViewServer.start(out, 0)) {
      page = view.address().resolve("C/" + TOKEN + "/").toString();
      browser.go(page);
      guide = (String) browser.run("return document.querySelector('.guide a').href");
      waitFor("caches.match(arguments[0]||'" + guide + "').then(r=>!!r)");
    }
    browser.go("about:blank").go(page);
    browser.run(
        "document.querySelector('#care').scrollIntoView();document.querySelector('.guide a').click()");
    waitFor("location.href==='" + guide + "'&&document.readyState==='complete'");
    assertTrue(browser.seen("#own").contains("for your car"), browser.seen("main"));
    assertFalse(browser.seen("#own").contains("saved on"), "only a page tells of its copy");
  }

  private void assertCalendarsAreKept() throws IOException {
    for (String file : List.of("care.ics", "all.ics")) {
      assertEquals(
          Files.readAllLines(folder().resolve(file)),
          browser.run(
              "return caches.match(arguments[0]).then(r=>r.text()).then(t=>t.trim().split('\\r\\n'))",
              FOLDER + file));
    }
  }

  @Test
  void theCopyOfAPageThatIsNoLongerThereGoes() throws Exception {
    try (ViewServer view = ViewServer.start(out, 0)) {
      String page = view.address().resolve("C/" + TOKEN + "/").toString();
      browser.go(page);
      waitForCopies();
      Files.delete(folder().resolve("index.html"));
      browser.go("about:blank").go(page);
      assertFalse(browser.seen("body").contains("Mara"), browser.seen("body"));
      assertFalse(((String) browser.run("return " + KEPT)).startsWith(FOLDER + " "));
    }
  }

  /** Connections are taken, and then nothing comes, as where a network has no way on. */
  private void aNetworkThatAnswersNothingDoesNotKeepAnyoneWaiting(URI page, int port)
      throws IOException {
    try (ServerSocket silent = new ServerSocket(port, 50, InetAddress.getLoopbackAddress())) {
      Instant start = Instant.now();
      browser.clock(Instant.parse("2026-11-25T00:00:00Z")).go("about:blank").go(page.toString());
      assertTrue(browser.seen(".for").startsWith("Mara"), browser.seen(".for"));
      assertTrue(Duration.between(start, Instant.now()).toSeconds() < 15, "shown soon");
      assertKept(true);
      String soon = browser.seen(".rel .in");
      browser.later(Duration.ofDays(2));
      assertNotEquals(soon, browser.seen(".rel .in"), "a copy goes by the clock, too");
      browser.trueClock();
      assertFalse(silent.isClosed());
    }
  }

  /** The phone keeps its copy today, by the machine's clock. */
  private void assertKept(boolean expected) {
    String today =
        LocalDate.now().format(DateTimeFormatter.ofPattern("EEEE, MMMM d", Locale.ENGLISH));
    String line = browser.seen("#kept");
    assertEquals(expected, line.contains("the copy your phone saved on " + today), line);
    assertEquals(expected, !line.isEmpty(), line);
  }

  @Test
  void theChosenParkingIsRememberedByThePhoneWithANetworkWithoutAndFromADisk() throws Exception {
    String page;
    try (ViewServer view = ViewServer.start(out, 0)) {
      page = view.address().resolve("C/" + TOKEN + "/").toString();
      browser.go(page);
      waitForCopies();
      choose(page);
      assertEquals(List.of(), browser.complaints());
    }
    choose(page);
    browser.complaints();
    choose(folder().resolve("index.html").toUri().toString());
    assertEquals(List.of(), browser.complaints());
  }

  private static final String HEATED = "in a heated garage";

  private void choose(String page) {
    browser.go("about:blank").go(page);
    assertTrue(browser.seen("#parking summary").contains("outside"), "nothing is chosen yet");
    List<String> noted = dates();
    browser.run("document.querySelector('#parking').open=true");
    browser.run(
        "[...document.querySelectorAll('#parking label')].find(e=>"
            + "e.textContent.toLowerCase().includes('"
            + HEATED
            + "')).click()");
    List<String> heated = dates();
    assertEquals(noted.size(), heated.size());
    assertFalse(noted.stream().anyMatch(heated::contains), "each date is another: " + heated);
    for (String again : List.of(page, page + "#main")) {
      browser.go("about:blank").go(again);
      assertTrue(browser.seen("#parking summary").contains(HEATED), "as chosen");
      assertEquals(heated, dates());
    }
    browser.run("document.querySelector('#parking input').click()");
    browser.go("about:blank").go(page);
    assertEquals(noted, dates(), "the choice is taken back");
  }

  /** The list of parkings begins with the one that the shop noted, so that it may be another. */
  @Test
  void theChosenParkingStaysTheOneWhenTheShopNotesAnother() throws IOException {
    Path page = folder().resolve("index.html");
    browser.go(page);
    browser.run(
        "[...document.querySelectorAll('#parking label')].find(e=>"
            + "e.textContent.includes('in the shade')).click()");
    List<String> shade = dates();
    edit("parking: {day: outside, night: outside}", "parking: {day: garage, night: garage}");
    press();
    browser.go("about:blank").go(page);
    assertTrue(browser.seen("#parking summary").contains("in the shade"));
    assertEquals(shade, dates());
  }

  private List<String> dates() {
    return Stream.of("h1 .answer", "li[data-hold=windows-up] .when", "li[data-hold=haze] .when")
        .map(browser::seen)
        .toList();
  }

  @Test
  void aJobIsFourFilesAndGoesWhole() throws IOException {
    try (Stream<Path> files = Files.walk(folder())) {
      assertEquals(
          List.of("all.ics", "care.ics", "care.webmanifest", "index.html"),
          files
              .filter(Files::isRegularFile)
              .map(f -> folder().relativize(f).toString())
              .sorted()
              .toList());
    }
    Files.delete(shop.resolve(JOB));
    Files.writeString(
        shop.resolve("jobs.csv"),
        Files.readAllLines(Path.of("content/demo/jobs.csv")).get(0) + "\n");
    Clock clock = Clock.systemUTC();
    try (Output output = Output.open(out)) {
      Press.run(
          LoadedShop.load(shop, clock),
          output,
          clock,
          () -> TOKEN,
          new Press.Wish(new Press.Allowed(true, Set.of()), Press.Extent.ALL));
    }
    assertFalse(Files.exists(folder()), "with the job all of it goes");
  }

  @Test
  void aBrokenJobKeepsItsPageAndCalendars() throws IOException {
    edit("harbor-35", "harbour-35");
    Press.run(LoadedShop.load(shop, Clock.systemUTC()), out, Clock.systemUTC(), () -> TOKEN);
    for (String file : List.of("index.html", "care.ics", "all.ics", "care.webmanifest")) {
      assertTrue(Files.exists(folder().resolve(file)), file);
    }
    assertTrue(Files.exists(out.resolve("site/offline.js")));
  }

  /** RFC 5545 section 3.8.4.7: the same UID is the same event, so another file moves the dates. */
  @Test
  void calendarsOfAllParkingsNameTheSameEvents() throws IOException {
    List<String> noted = Files.readAllLines(folder().resolve("care.ics"));
    assertFalse(starting(noted, "UID:").isEmpty());
    List<List<String>> others =
        ParkedCalendars.of(Jsoup.parse(Files.readString(folder().resolve("index.html"))));
    assertTrue(others.size() > 2, others.toString());
    for (List<String> lines : others) {
      assertEquals("BEGIN:VCALENDAR", lines.get(0));
      assertEquals("END:VCALENDAR", lines.get(lines.size() - 1));
      assertEquals(starting(noted, "UID:"), starting(lines, "UID:"));
      assertFalse(starting(noted, "DTSTART").equals(starting(lines, "DTSTART")));
    }
    List<String> all = starting(Files.readAllLines(folder().resolve("all.ics")), "UID:");
    assertTrue(all.containsAll(starting(noted, "UID:")) && all.size() > 5, all.toString());
  }

  private static List<String> starting(List<String> lines, String start) {
    return lines.stream().filter(line -> line.startsWith(start)).sorted().toList();
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
