package curewindow.calendar;

import curewindow.cure.Release;
import curewindow.page.CalendarFile;
import curewindow.page.JobView;
import curewindow.page.LaterCare;
import curewindow.page.VisitWords;
import curewindow.page.When;
import curewindow.shop.Hold;
import curewindow.told.Visit;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The dates of a job as its customer's calendar tells them. */
public final class CareEvents {

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
   * One event for each hold that ends, one for the visit, and one for each thing that is due later.
   *
   * @param view the job
   * @return the events: the holds by date, then the visit, then what is due later by date
   */
  public static List<CareEvent> of(JobView view) {
    CareEvents events = new CareEvents(view);
    List<CareEvent> all = new ArrayList<>();
    view.timeline().releases().forEach(r -> all.add(events.event(r)));
    view.visit().ifPresent(v -> all.add(events.event(v)));
    LaterCare.of(view).forEach(l -> all.add(events.event(l)));
    return List.copyOf(all);
  }

  private CareEvent event(Release release) {
    When when = new When(view);
    return new CareEvent(
        release.hold(),
        new CareEvent.At(release.end().at()),
        when.gently(release).orElseGet(() -> words.text("hold." + release.hold() + ".done")),
        when.setByThen(release)
            .or(() -> when.slowly(release))
            .map(besides -> besides + "\n" + details)
            .orElse(details),
        Optional.empty(),
        view.catalogue().is(release.hold(), Hold.Mark.MAIN));
  }

  private CareEvent event(Visit visit) {
    return new CareEvent(
        CalendarFile.VISIT,
        new CareEvent.Day(visit.day(), 1, 1),
        VisitWords.title(visit, words),
        VisitWords.invitation(view).orElseThrow() + "\n" + details,
        visit.byPhoto() ? Optional.empty() : street,
        true);
  }

  private CareEvent event(LaterCare later) {
    return new CareEvent(
        later.name(),
        new CareEvent.Day(later.day(), later.months(), later.times()),
        words.text("later.calendar", Map.of("what", later.title(view, words))),
        details,
        street,
        true);
  }

  static Map<String, String> names(JobView view) {
    return Map.of("shop", view.shop().name(), "phone", view.shop().phone());
  }
}
