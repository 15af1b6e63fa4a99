package curewindow.page;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.cure.Release.AskUs;
import curewindow.words.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
  private final Stricter stricter;

  Dated(JobView view) {
    this.view = view;
    this.words = view.words();
    this.when = new When(view);
    this.stricter = new Stricter(view);
  }

  List<CustomerView.Answer> answers() {
    List<CustomerView.Answer> answers = new ArrayList<>();
    for (Release release : Urgency.holds(view)) {
      answers.add(answer(release, !answers.isEmpty()));
    }
    return answers;
  }

  private CustomerView.Answer answer(Release release, boolean hidden) {
    boolean ask = release.end() instanceof AskUs;
    Instant at = release.end().at();
    String key = "hold." + release.hold() + (ask ? ".ask" : ".until");
    String[] parts = words.text(key, Map.of("when", DATE)).split(DATE, 2);
    ZoneId there = when.zone(release);
    String date = words.fullMonthDay(at, there);
    return new CustomerView.Answer(
        release.hold(),
        parts[0].strip(),
        words.fullWeekday(at, there),
        date,
        when.time(release),
        parts.length == 2 ? rest(parts[1]) : "",
        dateClass(date),
        iso(at, there),
        at.getEpochSecond(),
        lasting(release),
        ask ? "ask" : "wait",
        words.text(ask ? "page.state.hold-ask" : "page.state.hold-wait"),
        words.text(ask ? "page.state.soon" : "page.state.over"),
        missed(release),
        words.text(
            "page.now.call", Map.of("label", words.text("hold." + release.hold() + ".label"))),
        hidden);
  }

  private static String dateClass(String date) {
    return date.length() > LONG_DATE ? "long" : date.length() > MID_DATE ? "mid" : "";
  }

  /** The end of the day on which the customer was asked to come in; empty where nobody was. */
  Optional<Long> missed(Release release) {
    ZoneId shop = when.zone(release);
    return release.end() instanceof AskUs ask
        ? Optional.of(
            ask.at().atZone(shop).toLocalDate().plusDays(1).atStartOfDay(shop).toEpochSecond())
        : Optional.empty();
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
    boolean ask = release.end() instanceof AskUs;
    return new CustomerView.Next(
        release.hold(),
        shortLabel(release, words),
        words.text(
            ask ? "page.then.ask" : "page.then.until", Map.of("when", when.shortDay(release))),
        lasting(release),
        missed(release),
        room,
        hidden);
  }

  List<CustomerView.Freed> freed() {
    List<CustomerView.Freed> freed = new ArrayList<>();
    for (Release release : Urgency.holds(view)) {
      over(release)
          .ifPresent(
              at ->
                  freed.add(
                      new CustomerView.Freed(at, words.text("hold." + release.hold() + ".done"))));
    }
    return freed;
  }

  /** When time alone ends the state, and no stricter hold forbids any longer what that allows. */
  Optional<Long> over(Release release) {
    return stricter.over(release).map(Instant::getEpochSecond);
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
    boolean ask = Stricter.asks(release);
    State now = ask ? State.ASK : State.before(release.kind());
    State then = State.after(release.kind());
    Optional<Release> longer = ask ? Optional.empty() : stricter.than(release);
    return new CustomerView.Row(
        release.hold(),
        words.text("hold." + release.hold() + ".label"),
        now.shape,
        longer.map(l -> see(l, words)).orElseGet(() -> words.text(now.key)),
        then.shape,
        words.text(then.key),
        over(release),
        ask,
        iso(at, when.zone(release)),
        clasped(when.shortDay(release)),
        when.time(release),
        when.likelyDay(release).map(Dated::clasped).orElse("–"));
  }

  /** Until when in few words, or which stricter hold to see; a day to come in where so. */
  String until(Release release) {
    boolean ask = release.end() instanceof AskUs;
    Optional<Release> longer = ask ? Optional.empty() : stricter.than(release);
    return longer
        .map(longest -> see(longest, words))
        .orElseGet(
            () ->
                words.text(
                    ask ? "car.ask" : "page.then.until", Map.of("when", when.shortDay(release))));
  }

  /** That another hold has to be awaited. */
  static String see(Release longer, Words words) {
    String label = words.text("hold." + longer.hold() + ".label");
    return words.text("page.state.wait-see", Map.of("label", label));
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

  /** When time alone ends the state; never where the shop must be asked. */
  private static Optional<Long> lasting(Release release) {
    return release.end() instanceof AskUs
        ? Optional.empty()
        : Optional.of(release.end().at().getEpochSecond());
  }

  private static String iso(Instant at, ZoneId there) {
    return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at.atZone(there).withNano(0));
  }

  /** How a hold stands: a word and a shape. */
  private enum State {
    WAIT("wait", "page.state.wait"),
    GO("go", "page.state.go"),
    ASK("ask", "page.state.ask"),
    NORMAL("rest", "page.state.normal"),
    SHOW("ask", "page.state.show"),
    VISIT("visit", "page.state.visit"),
    OPEN("visit", "page.state.open");

    private final String shape;
    private final String key;

    State(String shape, String key) {
      this.shape = shape;
      this.key = key;
    }

    static State before(HoldKind kind) {
      return switch (kind) {
        case HOLD -> WAIT;
        case SETTLE -> NORMAL;
        case VISIT -> VISIT;
      };
    }

    static State after(HoldKind kind) {
      return switch (kind) {
        case HOLD -> GO;
        case SETTLE -> SHOW;
        case VISIT -> OPEN;
      };
    }
  }
}
