package curewindow.page;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.words.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The parts of a customer's page that say until when. */
final class Dated {

  /** Stands for the date while a sentence is taken apart around it; no text contains it. */
  private static final String DATE = "\uE000";

  /** How many are shown of what comes next: on a phone, and beside the stamp on a wide screen. */
  private static final int SHOWN_NEXT = 3;

  private static final int SHOWN_WIDE = 6;

  /** A date of more letters is stamped smaller, and of still more, smaller again. */
  private static final int MID_DATE = 11;

  private static final int LONG_DATE = 13;

  private final JobView view;
  private final Words words;
  private final When when;

  Dated(JobView view) {
    this.view = view;
    this.words = view.words();
    this.when = new When(view);
  }

  List<CustomerView.Answer> answers() {
    List<CustomerView.Answer> answers = new ArrayList<>();
    for (Release release : Urgency.holds(view)) {
      answers.add(answer(release, !answers.isEmpty()));
    }
    return answers;
  }

  private CustomerView.Answer answer(Release release, boolean hidden) {
    Instant at = release.end().at();
    ZoneId there = view.timeline().zone();
    String[] parts =
        words.text("hold." + release.hold() + ".until", Map.of("when", DATE)).split(DATE, 2);
    String date = words.fullMonthDay(at, there);
    return new CustomerView.Answer(
        release.hold(),
        parts[0].strip(),
        words.fullWeekday(at, there),
        date,
        when.time(release),
        after(release, parts.length == 2 ? rest(parts[1]) : ""),
        dateClass(date),
        iso(at, there),
        at.getEpochSecond(),
        words.text("page.state.hold-wait"),
        words.text("page.state.over"),
        hidden);
  }

  /** What else there is to say of a hold: of danger, and of care once it is over. */
  private List<String> after(Release release, String rest) {
    return Stream.of(
            Optional.of(rest).filter(text -> !text.isEmpty()),
            Safety.of(release, view),
            when.setByThen(release),
            when.gently(release))
        .flatMap(Optional::stream)
        .toList();
  }

  private static String dateClass(String date) {
    return date.length() > LONG_DATE ? "long" : date.length() > MID_DATE ? "mid" : "";
  }

  /** What a sentence says after its date, as a sentence of its own. */
  private static String rest(String after) {
    return Listing.capital(after.replaceFirst("^[\\s.,:;\u060C\u061B]+", ""));
  }

  List<CustomerView.Next> then() {
    List<CustomerView.Next> next = new ArrayList<>();
    List<Release> holds = Urgency.holds(view);
    List<Release> byDate =
        view.timeline().releases().stream().filter(r -> r.kind() == HoldKind.HOLD).toList();
    for (Release release : byDate) {
      boolean first = release.equals(holds.get(0));
      long shown = next.stream().filter(n -> !n.hidden()).count();
      boolean wide = !first && shown >= SHOWN_NEXT;
      next.add(
          next(
              release,
              first || shown >= SHOWN_WIDE,
              wide ? Optional.of("wide") : Optional.empty()));
    }
    return next.size() < 2 ? List.of() : next;
  }

  private CustomerView.Next next(Release release, boolean hidden, Optional<String> room) {
    return new CustomerView.Next(
        release.hold(),
        shortLabel(release, words),
        until(release),
        release.end().at().getEpochSecond(),
        room,
        hidden);
  }

  List<CustomerView.Freed> freed() {
    return Urgency.holds(view).stream()
        .map(
            release ->
                new CustomerView.Freed(
                    release.end().at().getEpochSecond(), doneWords(release, when, words)))
        .toList();
  }

  List<CustomerView.Group> groups() {
    List<CustomerView.Group> groups = new ArrayList<>();
    for (HoldKind kind : HoldKind.values()) {
      List<CustomerView.Row> rows =
          view.timeline().releases().stream().filter(r -> r.kind() == kind).map(this::row).toList();
      if (!rows.isEmpty()) {
        groups.add(new CustomerView.Group(words.text("page.dates." + kind.id()), rows));
      }
    }
    return groups;
  }

  private CustomerView.Row row(Release release) {
    Instant at = release.end().at();
    boolean hold = release.kind() == HoldKind.HOLD;
    return new CustomerView.Row(
        release.hold(),
        words.text("hold." + release.hold() + ".label"),
        hold ? "wait" : "rest",
        words.text(hold ? "page.state.wait" : "page.state.normal"),
        hold ? "go" : "ask",
        hold ? free(release) : words.text("page.state.show"),
        at.getEpochSecond(),
        iso(at, view.timeline().zone()),
        clasped(when.shortDay(release)),
        when.time(release),
        likely(release));
  }

  private String likely(Release release) {
    return when.fullBy(release)
        .map(full -> words.text("page.dates.full", Map.of("day", full)))
        .or(() -> when.likelyDay(release).map(Dated::clasped))
        .orElse("–");
  }

  /** Until when in few words. */
  private String until(Release release) {
    return words.text("page.then.until", Map.of("when", when.shortDay(release)));
  }

  /** What is said of a hold from its end on. */
  private String free(Release release) {
    return freeWords(release, when, words);
  }

  /** What may be done once a hold is over: gently, where it ended at its limit. */
  static String doneWords(Release release, When when, Words words) {
    return when.gently(release).orElseGet(() -> words.text("hold." + release.hold() + ".done"));
  }

  static String freeWords(Release release, When when, Words words) {
    return words.text(when.fullBy(release).isPresent() ? "page.state.gently" : "page.state.go");
  }

  /** Breaks, where it must, after the weekday only. */
  private static String clasped(String day) {
    int comma = day.indexOf(' ');
    return day.substring(0, comma + 1) + day.substring(comma + 1).replace(' ', '\u00A0');
  }

  /** A hold's name in few words, where the language has one. */
  static String shortLabel(Release release, Words words) {
    String key = "hold." + release.hold() + ".short";
    return words.text(words.has(key) ? key : "hold." + release.hold() + ".label");
  }

  private static String iso(Instant at, ZoneId there) {
    return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at.atZone(there).withNano(0));
  }
}
