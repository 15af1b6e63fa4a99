package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.Release;
import curewindow.guide.JobFacts;
import curewindow.page.Browser;
import curewindow.told.JobView;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The care texts and answers of a customer's page in a real browser, at every time that matters and
 * for every parking: each date that they quote stands there until it has passed and not a moment
 * longer, and no heading is left over what is gone.
 */
class PassedDatesTest {

  private static final String LATER =
      "__later(arguments[0]);document.dispatchEvent(new Event('visibilitychange'));";

  private static final String SEEN =
      "document.querySelectorAll('details').forEach(d=>d.open=true);"
          + "var V=e=>{var t='',w=document.createTreeWalker(e,4),n;"
          + "while(n=w.nextNode())if(n.parentElement.checkVisibility())t+=n.data;"
          + "return t.replace(/\\s+/g,' ').trim()},S=s=>[...document.querySelectorAll(s)],"
          + "level=e=>/^H[1-6]$/.test(e.tagName)?+e.tagName[1]:9,"
          + "bare=h=>{for(var n=h.nextElementSibling;n&&level(n)>level(h);n=n.nextElementSibling)"
          + "if(level(n)===9&&V(n))return false;return true};"
          + "return {text:S('#normal,#care').map(V).join(' '),bare:"
          + "S('.care :is(h3,h4)').filter(h=>h.checkVisibility()&&bare(h)).map(V).concat("
          + "S('#normal details,#care details').filter(d=>"
          + "![...d.querySelectorAll(':scope>div')].some(V)&&!d.matches('.more')).map(V))}";

  /** What can be seen of the care texts and answers, and the headings with nothing under them. */
  private record Seen(String text, List<String> bare) {}

  private static Browser browser;
  private static LoadedShop shop;

  @BeforeAll
  static void open() throws IOException {
    browser = Browser.open();
    shop = PressedDemo.get().shop();
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  @SuppressWarnings("unchecked")
  private static Seen see(String first, Object... arguments) {
    Map<String, Object> seen = (Map<String, Object>) browser.run(first + SEEN, arguments);
    return new Seen((String) seen.get("text"), (List<String>) seen.get("bare"));
  }

  /** Each date in the words of a guide, and the last time at which it means anything. */
  private static Map<String, Instant> quotes(JobView view) {
    JobFacts facts = new JobFacts(view);
    Map<String, Instant> ends = new TreeMap<>();
    for (Release release : view.timeline().releases()) {
      String hold = "hold." + release.hold();
      ends.merge(
          plain(facts.value(hold + ".until").orElseThrow()),
          release.end().at(),
          PassedDatesTest::last);
      ends.merge(
          plain(facts.value(hold + ".full").orElseThrow()), release.setAt(), PassedDatesTest::last);
    }
    return ends;
  }

  private static Instant last(Instant a, Instant b) {
    return a.isAfter(b) ? a : b;
  }

  private static String plain(String text) {
    return text.replaceAll("[\\s\u00A0\u202F]+", " ").strip();
  }

  /** How often each date is quoted, the longest first, so that a day is no part of its hour. */
  private static Map<String, Integer> counted(String text, Map<String, Instant> quotes) {
    Map<String, Integer> counts = new HashMap<>();
    String rest = text;
    for (String quote :
        quotes.keySet().stream().sorted((a, b) -> b.length() - a.length()).toList()) {
      String[] parts =
          Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(quote) + "(?![\\p{L}\\p{N}])")
              .split(rest, -1);
      if (parts.length > 1) {
        counts.put(quote, parts.length - 1);
        rest = String.join("*", parts);
      }
    }
    return counts;
  }

  private static List<Instant> times(JobView view) {
    TreeSet<Instant> ends = new TreeSet<>();
    view.timeline().releases().forEach(r -> ends.addAll(List.of(r.end().at(), r.setAt())));
    TreeSet<Instant> times = new TreeSet<>();
    ends.forEach(end -> times.addAll(List.of(end.minusSeconds(1), end)));
    times.add(times.last().plus(Duration.ofDays(400)));
    return List.copyOf(times);
  }

  @ParameterizedTest
  @ValueSource(strings = {"Q-3101", "Q-3108", "Q-3114", "Q-3117"})
  void aDateIsQuotedUntilItHasPassed(String id) throws IOException {
    Path job = PressedDemo.get().job(id);
    Path page = job.resolve("index.html");
    List<JobView> cases =
        ParkedViews.of(shop, shop.view(shop.job(id).orElseThrow(), job.getFileName().toString()));
    assertTrue(cases.size() > 2, id);
    for (int chosen = 0; chosen < cases.size(); chosen++) {
      walk(page, cases.get(chosen), chosen);
    }
  }

  private static void walk(Path page, JobView view, int chosen) {
    Map<String, Instant> quotes = quotes(view);
    List<Instant> times = times(view);
    Instant now = times.get(0);
    browser.scripts(true).screen(390, 844, true).zone("Asia/Kolkata").clock(now).go(page);
    Seen first = see("document.querySelectorAll('#parking input')[%d].click();".formatted(chosen));
    Map<String, Integer> all = counted(first.text(), quotes);
    assertTrue(all.size() >= 3, all::toString);
    for (Instant time : times) {
      Seen seen = see(LATER, Duration.between(now, time).toMillis());
      now = time;
      String where = "%s, case %d at %s".formatted(page, chosen, now);
      Map<String, Integer> left = new HashMap<>(all);
      left.keySet().removeIf(quote -> !quotes.get(quote).isAfter(time));
      assertEquals(left, counted(seen.text(), quotes), where);
      assertEquals(List.of(), seen.bare(), where);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"Q-3101", "Q-3117"})
  void withoutScriptEachDateIsQuoted(String id) throws IOException {
    Path job = PressedDemo.get().job(id);
    JobView view = shop.view(shop.job(id).orElseThrow(), job.getFileName().toString());
    Path page = job.resolve("index.html");
    browser.screen(390, 844, true).clock(times(view).get(0)).scripts(true).go(page);
    browser.run("localStorage.clear()");
    browser.go(page);
    String first = see("").text();
    browser.trueClock().scripts(false).go(page).scripts(true);
    Seen still = see("");
    assertEquals(counted(first, quotes(view)), counted(still.text(), quotes(view)));
    assertEquals(List.of(), still.bare());
  }
}
