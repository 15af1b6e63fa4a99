package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.Release;
import curewindow.page.Browser;
import curewindow.page.Pages;
import curewindow.page.SharedFile;
import curewindow.problem.Problems;
import curewindow.told.JobView;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A customer's page in a real browser at every time that matters and for every parking, held to the
 * computed dates and not to what the page says of itself: before pickup, a minute before and after
 * each release, and long after all of them.
 */
class TimeTravelTest {

  /** Far ahead of the car, far behind it, and by half an hour off. */
  private static final List<String> ZONES =
      List.of("Pacific/Kiritimati", "America/Los_Angeles", "Asia/Kolkata");

  private static final String LATER =
      "__later(arguments[0]);document.dispatchEvent(new Event('visibilitychange'));";

  private static final String CHOOSE = "document.querySelectorAll('#parking input')[%d].click();";

  private static Browser browser;
  private static LoadedShop shop;
  private static Pages pages;

  @TempDir Path temp;

  @BeforeAll
  static void open() throws IOException {
    browser = Browser.open();
    shop = PressedDemo.get().shop();
    pages =
        Pages.read(shop.files(), shop.shop().orElseThrow().look(), shop.guides(), new Problems());
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  private static List<JobView> cases(String id) throws IOException {
    String token = PressedDemo.get().job(id).getFileName().toString();
    List<JobView> cases = ParkedViews.of(shop, shop.view(shop.job(id).orElseThrow(), token));
    assertTrue(cases.size() > 2, id);
    return cases;
  }

  private static Path page(String id) throws IOException {
    return PressedDemo.get().job(id).resolve("index.html");
  }

  /** Opens a page as one that nobody opened before. */
  private static void openNew(Path page, Instant now, String zone) {
    browser.scripts(true).screen(390, 844, true).zone(zone).clock(now).go(page);
    browser.run("localStorage.clear()");
    browser.go(page);
  }

  @ParameterizedTest
  @ValueSource(strings = {"Q-3101", "Q-3108", "Q-3114", "Q-3117"})
  void atEveryTimeThePageSaysWhatIsTrue(String id) throws IOException {
    List<JobView> cases = cases(id);
    for (String zone : ZONES) {
      walk(cases, 0, page(id), zone);
    }
    for (int chosen = 1; chosen < cases.size(); chosen++) {
      walk(cases, chosen, page(id), ZONES.get(chosen % ZONES.size()));
    }
  }

  private static void walk(List<JobView> cases, int chosen, Path page, String zone) {
    List<Instant> times = times(cases.get(chosen));
    Instant now = times.get(0);
    openNew(page, now, zone);
    SeenPage last = SeenPage.of(browser, CHOOSE.formatted(chosen));
    for (Instant time : times) {
      last = SeenPage.of(browser, LATER, Duration.between(now, time).toMillis());
      now = time;
      String where = "%s, case %d in %s at %s".formatted(page, chosen, zone, now);
      TruePage truth = new TruePage(cases, chosen, now, true, where);
      truth.holds(last, away(truth));
    }
    assertEquals(last, openAnew(page, now, chosen), "opened anew it says the same");
  }

  /**
   * The page opened once more, as somebody who chose this parking. On a busy machine Chromium
   * forgets about one in five hundred things that a page of a file keeps; it is told again then,
   * twice at most.
   */
  private static SeenPage openAnew(Path page, Instant now, int chosen) {
    String isChosen = "return document.querySelectorAll('#parking input')[%d].checked";
    browser.clock(now).go(page);
    for (int i = 0; i < 2 && !(boolean) browser.run(isChosen.formatted(chosen)); i++) {
      browser.run(CHOOSE.formatted(chosen));
      browser.go(page);
    }
    return SeenPage.of(browser);
  }

  private static List<Instant> times(JobView view) {
    TreeSet<Instant> times = new TreeSet<>();
    Instant pickup = view.timeline().pickup();
    times.addAll(List.of(pickup.minus(Duration.ofDays(2)), pickup));
    for (Release release : view.timeline().releases()) {
      Instant end = release.end().at();
      times.addAll(List.of(end.minusSeconds(60), end.minusSeconds(1), end, end.plusSeconds(60)));
    }
    times.add(times.last().plus(Duration.ofDays(400)));
    return List.copyOf(times);
  }

  /** How long it is until the answer's date, in the browser's words and the page's digits. */
  static String away(TruePage truth) {
    if (truth.first().isEmpty()) {
      return "";
    }
    Duration left = Duration.between(truth.now(), truth.first().get().end().at());
    boolean isSoon = left.toMinutes() < 90;
    boolean isNear = left.toHours() < 48;
    double number = left.toSeconds() / (isSoon ? 60.0 : isNear ? 3600.0 : 86_400.0);
    return (String)
        browser.run(
            "return new Intl.RelativeTimeFormat(document.documentElement.lang+'-u-nu-latn')"
                + ".format(arguments[0],arguments[1]).replace(/\\s+/g,' ')",
            (long) (isNear ? Math.ceil(number) : Math.round(number)),
            isSoon ? "minute" : isNear ? "hour" : "day");
  }

  /** Whatever was chosen before, all that is seen is of the parking that is chosen now. */
  @ParameterizedTest
  @ValueSource(strings = {"Q-3101", "Q-3108", "Q-3114", "Q-3117"})
  void choosingAParkingChangesAllThatIsSeen(String id) throws IOException {
    List<JobView> cases = cases(id);
    Instant now = cases.get(0).timeline().pickup();
    openNew(page(id), now, ZONES.get(0));
    Map<Integer, List<List<String>>> said = new HashMap<>();
    int last = cases.size() - 1;
    for (int click = 0; click <= 2 * last; click++) {
      int chosen = Math.min(click, 2 * last - click);
      SeenPage seen = SeenPage.of(browser, CHOOSE.formatted(chosen));
      TruePage truth = new TruePage(cases, chosen, now, true, id + ", case " + chosen);
      truth.holds(seen, away(truth));
      List<List<String>> all = new ArrayList<>(seen.folds());
      all.addAll(List.of(seen.notes(), seen.parked(), List.of(seen.more())));
      assertEquals(said.computeIfAbsent(chosen, c -> all), all, truth.where());
    }
    assertEquals(said.size(), said.values().stream().distinct().count());
  }

  /** The page of all cases says in each what a page of that case alone says. */
  @ParameterizedTest
  @ValueSource(strings = {"Q-3101", "Q-3108", "Q-3114", "Q-3117"})
  void eachCaseSaysWhatAPageOfItsOwnSays(String id) throws IOException {
    List<JobView> cases = cases(id);
    for (SharedFile file : pages.shared()) {
      Files.writeString(temp.resolve(file.name()), file.text());
    }
    Path folder = Files.createDirectories(temp.resolve("C/X"));
    List<Path> own = new ArrayList<>();
    for (JobView view : cases) {
      String html = pages.customer(List.of(view), List.of(), new Problems()).orElseThrow();
      own.add(Files.writeString(folder.resolve(own.size() + ".html"), html));
    }
    Instant first = cases.get(0).timeline().releases().get(0).end().at();
    for (Instant now : List.of(first.minusSeconds(1), first, first.plus(Duration.ofDays(900)))) {
      openNew(page(id), now, ZONES.get(1));
      List<SeenPage> among = new ArrayList<>();
      own.forEach(f -> among.add(SeenPage.of(browser, CHOOSE.formatted(among.size()))));
      for (int chosen = 0; chosen < cases.size(); chosen++) {
        SeenPage alone = SeenPage.of(browser.go(own.get(chosen)));
        String where = id + ", case " + chosen + " at " + now;
        same(alone, among.get(chosen), where);
      }
    }
  }

  private static void same(SeenPage alone, SeenPage among, String where) {
    assertEquals(alone.answer() + alone.more(), among.answer() + among.more(), where);
    assertEquals(alone.notes(), among.notes(), where);
    assertTrue(alone.parked().get(0).endsWith(" · " + among.parked().get(1)), where);
    folds(alone, among, where);
  }

  /** A page of one case is lighter, so that it may have more of them. */
  private static void folds(SeenPage alone, SeenPage among, String where) {
    Map<String, String> texts = new HashMap<>();
    alone.folds().forEach(fold -> texts.put(fold.get(0), fold.get(1)));
    assertTrue(among.folds().size() > 3, where);
    among.folds().forEach(f -> assertEquals(texts.get(f.get(0)), f.get(1), where + f.get(0)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Q-3101", "Q-3108", "Q-3114", "Q-3117"})
  void withoutScriptItSaysWhatIsTrueAtPickup(String id) throws IOException {
    List<JobView> cases = cases(id);
    Path page = page(id);
    browser.trueClock().zone(ZONES.get(0)).scripts(false).go(page).scripts(true);
    SeenPage seen = SeenPage.of(browser);
    Instant pickup = cases.get(0).timeline().pickup();
    new TruePage(cases, 0, pickup, false, page.toString()).holds(seen, "");
    assertFalse(seen.rows().stream().anyMatch(SeenPage.Row::over));
    assertEquals("", browser.seen("#parking fieldset"), "what cannot be chosen is not offered");
    List<List<String>> told = stillDates();
    assertEquals(cases.size(), told.size());
    for (int i = 0; i < cases.size(); i++) {
      assertEquals(new TruePage(cases, i, pickup, false, id).differing(), told.get(i));
    }
  }

  /** The dates of each case as they stand on a page without a script. */
  @SuppressWarnings("unchecked")
  private static List<List<String>> stillDates() {
    return (List<List<String>>)
        browser.run(
            "return [...document.querySelectorAll('#parking .still tbody')].map(e=>"
                + "[...e.querySelectorAll('td')].filter(x=>x.checkVisibility())"
                + ".map(x=>x.previousElementSibling.textContent + ': '"
                + " + x.textContent.replace(/\\s+/g,' ').trim()))");
  }
}
