package curewindow.calendar;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.page.JobView;
import curewindow.page.LaterCare;
import curewindow.page.When;
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
   * One event for each hold that ends, and one for each thing that is due later.
   *
   * @param view the job
   * @return the events: the holds by date, then what is due later by date
   */
  public static List<CareEvent> of(JobView view) {
    CareEvents events = new CareEvents(view);
    List<CareEvent> all = new ArrayList<>();
    view.timeline().releases().forEach(r -> all.add(events.event(r)));
    LaterCare.of(view).forEach(l -> all.add(events.event(l)));
    return List.copyOf(all);
  }

  private CareEvent event(Release release) {
    boolean visit = comesIn(release);
    return new CareEvent(
        release.hold(),
        new CareEvent.At(release.end().at()),
        summary(release),
        details,
        visit ? street : Optional.empty(),
        visit || release.hold().equals("windows-up"));
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

  /** Whether a release asks the customer to come to the shop. */
  static boolean comesIn(Release release) {
    return release.kind() == HoldKind.VISIT || release.end() instanceof Release.AskUs;
  }

  private String summary(Release release) {
    String hold = "hold." + release.hold();
    if (release.end() instanceof Release.AskUs) {
      return words.text(hold + ".ask", Map.of("when", new When(view).dayAndTime(release)));
    }
    return words.text(hold + ".done");
  }

  static Map<String, String> names(JobView view) {
    return Map.of("shop", view.shop().name(), "phone", view.shop().phone());
  }
}
