package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.page.Browser;
import curewindow.page.JobView;
import curewindow.page.Urgency;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A customer's page in a real browser at every time that matters, held to the computed dates and
 * not to what the page says of itself: before pickup, a minute before and after each release, and
 * long after all of them.
 */
class TimeTravelTest {

  /** Far ahead of the car, far behind it, and by half an hour off. */
  private static final List<String> ZONES =
      List.of("Pacific/Kiritimati", "America/Los_Angeles", "Asia/Kolkata");

  /** What can be seen in the parts of the page that say how things stand. */
  private static final String SEEN =
      "document.querySelectorAll('details').forEach(d=>d.open=true);"
          + "var S=(s,e)=>[...(e||document).querySelectorAll(s)].filter(x=>x.checkVisibility()),"
          + "T=(s,e)=>S(s,e).map(x=>x.textContent.trim());return {"
          + "answers:S('.answer').map(e=>e.dataset.answer),say:T('.answer .say'),"
          + "stamps:S('.answer time').map(e=>e.dateTime),freed:T('.freed li'),"
          + "next:S('.then li').map(e=>e.dataset.next),"
          + "rows:[...document.querySelectorAll('tr[data-hold]')].map(r=>[r.dataset.hold,"
          + "T('.state',r).join('|'),r.querySelector('time').dateTime,"
          + "String((r.querySelector('[data-to]')||{dataset:{}}).dataset.to||'')]),"
          + "asked:[...document.querySelectorAll('summary')].map(s=>[T('.state',s).join('|'),"
          + "String((s.querySelector('[data-to]')||{dataset:{}}).dataset.to||'')])}";

  private static final String LATER =
      "__later(arguments[0]);document.dispatchEvent(new Event('visibilitychange'));";

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

  @ParameterizedTest
  @ValueSource(strings = {"Q-3101", "Q-3108", "Q-3114", "Q-3117"})
  void atEveryTimeThePageSaysWhatIsTrue(String id) throws IOException {
    JobView view = shop.view(shop.job(id).orElseThrow(), Tokens.SAMPLE);
    Path folder = PressedDemo.get().job(id);
    for (String zone : ZONES) {
      walk(view, folder.resolve("index.html"), zone);
    }
    List<JobView> cases = ParkedViews.of(shop, view);
    assertTrue(cases.size() > 2, id);
    JobView parked = cases.get(cases.size() - 1);
    walk(parked, folder.resolve("index.html"), ZONES.get(0));
  }

  private static void walk(JobView view, Path page, String zone) {
    List<Instant> times = times(view);
    browser.scripts(true).screen(390, 844, true).zone(zone).clock(times.get(0)).go(page);
    browser.run("try{localStorage.clear()}catch(e){}");
    Instant now = times.get(0);
    Seen last = seen(SEEN);
    for (Instant time : times) {
      last = seen(LATER + SEEN, Duration.between(now, time).toMillis());
      now = time;
      new Truth(view, now, page + " in " + zone + " at " + now).holds(last);
    }
    browser.clock(now).go(page);
    assertEquals(last, seen(SEEN), "opened anew it says the same");
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

  @ParameterizedTest
  @ValueSource(strings = {"Q-3101", "Q-3108", "Q-3114", "Q-3117"})
  void withoutScriptItSaysWhatIsTrueAtPickup(String id) throws IOException {
    JobView view = shop.view(shop.job(id).orElseThrow(), Tokens.SAMPLE);
    for (JobView parked : ParkedViews.of(shop, view)) {
      Path page = PressedDemo.get().job(id).resolve("index.html");
      browser.trueClock().zone(ZONES.get(0)).scripts(false).go(page).scripts(true);
      Seen seen = seen(SEEN);
      new Truth(parked, parked.timeline().pickup(), page.toString()).stands(seen);
      Release first = Urgency.holds(parked).get(0);
      assertEquals(List.of(first.hold()), seen.answers());
      assertEquals(first.end().at(), OffsetDateTime.parse(seen.stamps().get(0)).toInstant());
      String go = parked.words().text("page.state.go");
      seen.rows().forEach(row -> assertFalse(row.get(1).equals(go), row.toString()));
      seen.asked().forEach(row -> assertFalse(row.get(0).equals(go), row.toString()));
      assertEquals(List.of(), seen.freed());
    }
  }

  /** Rows: hold, state, date, and when the script changes it; questions: state and that. */
  private record Seen(
      List<String> answers,
      List<String> say,
      List<String> stamps,
      List<String> freed,
      List<String> next,
      List<List<String>> rows,
      List<List<String>> asked) {}

  @SuppressWarnings("unchecked")
  private static Seen seen(String script, Object... arguments) {
    Map<String, Object> seen = (Map<String, Object>) browser.run(script, arguments);
    return new Seen(
        (List<String>) seen.get("answers"),
        (List<String>) seen.get("say"),
        (List<String>) seen.get("stamps"),
        (List<String>) seen.get("freed"),
        (List<String>) seen.get("next"),
        (List<List<String>>) seen.get("rows"),
        (List<List<String>>) seen.get("asked"));
  }

  /** What may be said at a time, by the dates alone. */
  private record Truth(JobView view, Instant now, String where) {

    private boolean over(Release release) {
      return !now.isBefore(release.end().at());
    }

    private String word(String state) {
      return view.words().text("page.state." + state);
    }

    void holds(Seen seen) {
      stands(seen);
      Optional<Release> first = Urgency.holds(view).stream().filter(r -> !over(r)).findFirst();
      assertEquals(List.of(first.map(Release::hold).orElse("")), seen.answers(), where);
      Set<String> free = new HashSet<>();
      for (List<String> row : seen.rows()) {
        state(row, view.timeline().of(row.get(0)).orElseThrow());
        if (List.of(word("go"), word("gently")).contains(row.get(1))) {
          free.add(row.get(0));
        }
      }
      assertEquals(
          free.stream().map(h -> view.words().text("hold." + h + ".done")).sorted().toList(),
          seen.freed().stream().map(this::withoutGently).sorted().toList(),
          where);
      assertTrue(seen.next().stream().noneMatch(seen.answers()::contains), where);
      assertTrue(
          seen.next().stream().noneMatch(h -> over(view.timeline().of(h).orElseThrow())), where);
      seen.asked().forEach(asked -> agrees(asked, seen));
    }

    /** What stands on the page for a hold that ended gently, as if it had ended fully. */
    private String withoutGently(String freed) {
      return view.timeline().releases().stream()
          .filter(r -> r.end() instanceof Release.AtLimit limit && limit.isGentle())
          .map(Release::hold)
          .filter(hold -> freed.startsWith(untilFull(hold)))
          .map(hold -> view.words().text("hold." + hold + ".done"))
          .findFirst()
          .orElse(freed);
    }

    private String untilFull(String hold) {
      String text = view.words().text("hold." + hold + ".gently", Map.of("full", "|"));
      return text.substring(0, text.indexOf('|'));
    }

    /** One answer, and a table of exactly the computed dates, each with one state. */
    void stands(Seen seen) {
      assertEquals(1, seen.say().size(), where);
      assertEquals(view.timeline().releases().size(), seen.rows().size(), where);
      for (List<String> row : seen.rows()) {
        assertFalse(row.get(1).isEmpty() || row.get(1).contains("|"), where + " " + row);
        assertEquals(
            view.timeline().of(row.get(0)).orElseThrow().end().at().getEpochSecond(),
            OffsetDateTime.parse(row.get(2)).toEpochSecond(),
            where + " " + row);
      }
    }

    private void state(List<String> row, Release release) {
      String state = row.get(1);
      String told = where + " " + row;
      if (release.kind() == HoldKind.SETTLE) {
        assertEquals(word(over(release) ? "show" : "normal"), state, told);
      } else {
        assertEquals(over(release) ? goes(release) : word("wait"), state, told);
      }
    }

    /** What is said of a hold that is over: gently, where it ended at its limit. */
    private String goes(Release release) {
      boolean gently = release.end() instanceof Release.AtLimit limit && limit.isGentle();
      return word(gently ? "gently" : "go");
    }

    /** What changes at the same time as a row of the table says the same word as that row. */
    private void agrees(List<String> said, Seen seen) {
      assertFalse(said.get(0).contains("|"), where + " " + said);
      List<String> rows =
          seen.rows().stream()
              .filter(row -> !said.get(1).isEmpty() && row.get(3).equals(said.get(1)))
              .map(row -> row.get(1))
              .toList();
      Set<String> then = Set.of(word("go"), word("show"), word("open"));
      String told = where + " " + said + " " + seen.rows();
      if (said.get(1).isEmpty()) {
        assertFalse(then.contains(said.get(0)), told);
      } else if (rows.isEmpty()) {
        assertFalse(said.get(0).equals(word("go")), told);
        assertTrue(seen.rows().stream().anyMatch(r -> r.get(1).equals(word("ask"))), told);
      } else if (then.contains(said.get(0))) {
        assertTrue(then.containsAll(rows), told);
        assertTrue(said.get(0).equals(word("show")) || rows.contains(word("go")), told);
      } else {
        assertTrue(rows.stream().noneMatch(then::contains), told);
      }
    }
  }
}
