package curewindow.handout;

import curewindow.words.Isolates;
import curewindow.words.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The values that the template of the office's paper can show: sections, tables, rows, cells. */
final class OfficeValues {

  /** What is drawn and has no text. */
  private static final Set<String> EMPTY = Set.of("box", "rule");

  /** How many of the jobs that are left out are named. */
  private static final int NAMED = 6;

  private final OfficeJobs jobs;
  private final OfficeDay day;
  private final Words words;

  /**
   * Whether columns are put from right to left here, as a PDF's tables do not turn by themselves.
   */
  private final boolean turned;

  private OfficeValues(OfficeJobs jobs, OfficeDay day, boolean turned) {
    this.jobs = jobs;
    this.day = day;
    this.words = jobs.words();
    this.turned = turned && words.rightToLeft();
  }

  /** The values of a day, for a PDF or for a screen. */
  static Map<String, Object> of(OfficeJobs jobs, OfficeDay day, boolean pdf) {
    return new OfficeValues(jobs, day, pdf).values();
  }

  private Map<String, Object> values() {
    LocalDate told = day.counter().orElse(day.day());
    Map<String, Object> page = new LinkedHashMap<>();
    page.put("language", words.language());
    page.put("direction", words.rightToLeft() ? "rtl" : "ltr");
    page.put("shop", own("", jobs.shop().name()));
    page.put("title", text("title"));
    page.put("weekday", words.fullWeekday(jobs.start(told), jobs.shop().zone()));
    page.put("number", words.number(told.getDayOfMonth(), 0));
    page.put("date", words.date(told));
    page.put("closed", closed());
    page.put("without", without());
    page.put("foot", joined(jobs.shop().name(), words.date(told), text("private")));
    page.put("sections", List.of(pickups(), visits(), calls(), callers()));
    return Map.of("page", page);
  }

  private String closed() {
    if (!day.isClosed()) {
      return "";
    }
    String asked = words.day(jobs.start(day.day()), jobs.shop().zone());
    return day.counter()
        .map(open -> words.day(jobs.start(open), jobs.shop().zone()))
        .map(open -> words.text("office.closed", Map.of("day", asked, "open", open)))
        .orElseGet(() -> words.text("office.closed-long", Map.of("day", asked)));
  }

  private String without() {
    List<String> all = day.leftOut();
    List<String> named = all.subList(0, Math.min(NAMED, all.size()));
    return all.isEmpty()
        ? ""
        : words.text(
            "office.without",
            Map.of(
                "jobs", own(", ", named.toArray(String[]::new)), "n", all.size() - named.size()));
  }

  private Map<String, Object> pickups() {
    List<List<Map<String, Object>>> rows =
        day.pickups().stream()
            .map(
                p ->
                    row(
                        Cell.of("time", strong(p.time()), accent(p.day())),
                        Cell.of(
                            "car",
                            strong(own(" ", p.job(), p.firstName())),
                            p(own("", p.car())),
                            p(p.language())),
                        new Cell("work", p.fitted().stream().map(OfficeValues::p).toList()),
                        new Cell("dates", said(p)),
                        Cell.of("stands", p(p.parking()), strong(p.give())),
                        Cell.of("sign", box(), rule())))
            .toList();
    List<String> heads = List.of("time", "car", "work", "dates", "stands", "sign");
    return section("pickups", List.of(table("", List.of(), heads, rows)), List.of());
  }

  private static List<Line> said(OfficeDay.Pickup pickup) {
    Stream<Line> dates =
        pickup.dates().stream().flatMap(d -> Stream.of(strong(d.what()), p(d.when())));
    return Stream.concat(dates, Stream.of(p(pickup.dates().isEmpty() ? "" : pickup.clock())))
        .toList();
  }

  private Map<String, Object> visits() {
    OfficeVisits visits = day.visits();
    List<Map<String, Object>> tables = new ArrayList<>();
    tables.add(visits("overdue", visits.overdue()));
    tables.add(visits("ahead", visits.ahead()));
    return section("visits", tables, notes("visits.older", visits.older()));
  }

  private Map<String, Object> visits(String which, List<OfficeVisits.Visit> visits) {
    List<List<Map<String, Object>>> rows =
        visits.stream()
            .map(
                v ->
                    row(
                        Cell.of("day", strong(v.day())),
                        Cell.of(
                            "car", strong(own(" ", v.job(), v.firstName())), p(own("", v.car()))),
                        Cell.of("look", strong(v.what()), p(v.look())),
                        Cell.of("sign", box())))
            .toList();
    List<String> heads = List.of("day", "car", "look", "came");
    return table(text("visits." + which), List.of(), heads, rows);
  }

  private Map<String, Object> calls() {
    List<List<Map<String, Object>>> rows =
        day.calls().stream()
            .map(
                c ->
                    row(
                        Cell.of("car", strong(c.who())),
                        Cell.of("told", p(c.told())),
                        Cell.of("now", strong(c.now())),
                        Cell.of("sign", box())))
            .toList();
    List<String> heads = List.of("car", "told", "now", "called");
    return section("calls", List.of(table("", List.of(), heads, rows)), List.of());
  }

  private Map<String, Object> callers() {
    List<Map<String, Object>> tables = new ArrayList<>();
    List<OfficeCallers.Caller> all = SaidOnce.of(day.callers().callers(), words);
    OfficeCallers.Why last = null;
    for (OfficeCallers.Caller caller : all) {
      Map<String, Object> table = caller(caller);
      if (caller.why() != last) {
        table.put("group", text("callers." + caller.why().id()));
      }
      last = caller.why();
      tables.add(table);
    }
    List<String> left = new ArrayList<>();
    left.addAll(notes("callers.questions", all.stream().mapToInt(c -> c.more()).sum()));
    left.addAll(notes("callers.more", day.callers().more()));
    return section("callers", tables, left);
  }

  private Map<String, Object> caller(OfficeCallers.Caller caller) {
    List<List<Map<String, Object>>> rows =
        caller.asked().stream()
            .map(
                a ->
                    row(
                        Cell.of("asked", p(a.question())),
                        Cell.of("answer", accent(a.stand()), p(a.answer()))))
            .toList();
    String who = joined(caller.job(), caller.firstName(), caller.car(), caller.language());
    return table(who, caller.reasons(), List.of(), rows);
  }

  /** Parts in the order of the paper's language, whatever letters they have. */
  private String joined(String... parts) {
    return own(" · ", parts);
  }

  private String own(String between, String... parts) {
    return Arrays.stream(parts)
        .filter(t -> !t.isEmpty())
        .map(t -> Isolates.own(t, words))
        .collect(Collectors.joining(between));
  }

  private List<String> notes(String key, int count) {
    return count == 0 ? List.of() : List.of(words.text("office." + key, Map.of("n", count)));
  }

  private Map<String, Object> section(
      String id, List<Map<String, Object>> tables, List<String> notes) {
    List<Map<String, Object>> filled =
        tables.stream()
            .filter(t -> id.equals("callers") || !((List<?>) t.get("rows")).isEmpty())
            .toList();
    Map<String, Object> section = new LinkedHashMap<>();
    section.put("id", id);
    section.put("title", text(id + ".title"));
    section.put("tables", filled);
    section.put("notes", notes);
    section.put("none", filled.isEmpty() ? text(id + ".none") : "");
    return section;
  }

  private Map<String, Object> table(
      String title, List<String> under, List<String> heads, List<List<Map<String, Object>>> rows) {
    Map<String, Object> table = new LinkedHashMap<>();
    table.put("group", "");
    table.put("title", title);
    table.put("under", under);
    table.put(
        "heads",
        turned(heads.stream().map(h -> Map.of("id", h, "text", text("head." + h))).toList()));
    table.put("rows", rows);
    return table;
  }

  /** A line of a cell: how it looks, and its text. */
  private record Line(String look, String text) {

    boolean isShown() {
      return !text.isBlank() || EMPTY.contains(look);
    }

    Map<String, String> values() {
      return Map.of("look", look, "text", text.strip());
    }
  }

  /** A cell of a table, with the id of its column. */
  private record Cell(String id, List<Line> lines) {

    static Cell of(String id, Line... lines) {
      return new Cell(id, Arrays.asList(lines));
    }

    Map<String, Object> values() {
      return Map.of(
          "id", id, "lines", lines.stream().filter(Line::isShown).map(Line::values).toList());
    }
  }

  private List<Map<String, Object>> row(Cell... cells) {
    return turned(Arrays.stream(cells).map(Cell::values).toList());
  }

  private <T> List<T> turned(List<T> columns) {
    List<T> order = new ArrayList<>(columns);
    if (turned) {
      Collections.reverse(order);
    }
    return order;
  }

  private static Line p(String text) {
    return new Line("plain", text);
  }

  private static Line strong(String text) {
    return new Line("strong", text);
  }

  private static Line accent(String text) {
    return new Line("accent", text);
  }

  /** An empty square to tick. */
  private static Line box() {
    return new Line("box", "");
  }

  /** An empty line to sign on. */
  private static Line rule() {
    return new Line("rule", "");
  }

  private String text(String key) {
    return words.text("office." + key);
  }
}
