package curewindow.calendar;

import curewindow.cure.Release;
import curewindow.shop.Hold;
import curewindow.told.JobView;
import curewindow.told.Urgency;
import curewindow.told.Visit;
import curewindow.told.VisitWords;
import curewindow.told.When;
import curewindow.words.Words;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The dates of a job as its customer's calendar tells them. */
public final class CareEvents {

  /** The name of the event that asks the customer to come in. */
  static final String VISIT = "visit";

  /** More and nobody looks: windows and the first wash, mostly. */
  private static final int MOST_HOLDS = 2;

  /** A title of more letters is cut off by a phone. */
  private static final int TITLE = 45;

  private final JobView view;
  private final Words words;
  private final String details;
  private final Optional<String> street;

  private CareEvents(JobView view) {
    this.view = view;
    this.words = view.words();
    this.details =
        words.text("calendar.details", Map.of("address", view.address().toString()))
            + "\n"
            + words.text("calendar.contact", names(view));
    this.street =
        Optional.of(String.join(", ", view.shop().street())).filter(text -> !text.isEmpty());
  }

  /**
   * One event for each hold that ends, and one for the visit. Those that matter most ring: up to
   * two holds that people plan by, and the visit.
   *
   * @param view the job
   * @return the events: the holds by date, then the visit
   */
  public static List<CareEvent> of(JobView view) {
    return new CareEvents(view).all(true);
  }

  /** The same events without the note of all other dates. */
  static List<CareEvent> brief(JobView view) {
    return new CareEvents(view).all(false);
  }

  private List<CareEvent> all(boolean noted) {
    List<Release> main =
        Urgency.holds(view).stream()
            .filter(r -> view.timeline().isAhead(r))
            .filter(r -> view.catalogue().is(r.hold(), Hold.Mark.MAIN))
            .limit(MOST_HOLDS)
            .toList();
    List<CareEvent> all = new ArrayList<>();
    view.timeline().releases().forEach(r -> all.add(event(r, main, noted)));
    view.visit().ifPresent(v -> all.add(event(v)));
    return List.copyOf(all);
  }

  /** The first that rings has a note of all other dates. */
  private CareEvent event(Release release, List<Release> main, boolean noted) {
    When when = new When(view);
    List<String> lines = new ArrayList<>();
    when.setByThen(release).or(() -> when.slowly(release)).ifPresent(lines::add);
    lines.add(when.done(release));
    if (noted && main.stream().findFirst().filter(release::equals).isPresent()) {
      view.timeline().releases().stream()
          .filter(r -> !main.contains(r))
          .forEach(r -> lines.add(words.text("calendar.other", other(r, when))));
    }
    lines.add(details);
    return new CareEvent(
        release.hold(),
        new CareEvent.At(release.end().at()),
        title(words.text("hold." + release.hold() + ".event")),
        String.join("\n", lines),
        Optional.empty(),
        main.contains(release));
  }

  private Map<String, String> other(Release release, When when) {
    return Map.of("label", When.shortLabel(release, words), "when", when.dayAndTime(release));
  }

  /**
   * The action, then the car, with as many of its words, or letters of its only one, as there is
   * room for.
   */
  private String title(String action) {
    String car = view.car();
    if (named(action, car).length() <= TITLE) {
      return named(action, car);
    }
    int room = TITLE - named(action, "\u2026").length();
    if (room <= 0) {
      return action;
    }
    int space = car.lastIndexOf(' ', room);
    BreakIterator letters = BreakIterator.getCharacterInstance(Locale.ROOT);
    letters.setText(car);
    int end = space > 0 ? space : letters.preceding(room + 1);
    return end > 0 ? named(action, car.substring(0, end) + "\u2026") : action;
  }

  private String named(String action, String car) {
    return words.text("calendar.title", Map.of("action", action, "car", car));
  }

  private CareEvent event(Visit visit) {
    return new CareEvent(
        VISIT,
        new CareEvent.Day(visit.day(), 1, 1),
        title(VisitWords.title(visit, words)),
        VisitWords.invitation(view).orElseThrow() + "\n" + details,
        visit.byPhoto() ? Optional.empty() : street,
        true);
  }

  static Map<String, String> names(JobView view) {
    return Map.of("shop", view.shop().name(), "phone", view.shop().phone());
  }
}
