package curewindow.calendar;

import curewindow.guide.ToLookAt;
import curewindow.told.JobView;
import curewindow.told.LaterCare;
import curewindow.told.VisitWords;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The shop's own calendar: whom to expect on which day. It names jobs and customers, so it never
 * leaves the office.
 */
public final class OfficeCalendar {

  private static final String MARK = "office\n";

  private OfficeCalendar() {}

  /**
   * The visits of a job: the one to which the customer is invited, and what is due later.
   *
   * @param view the job
   * @param words the words of the shop's language
   * @return the visits by date
   */
  public static List<CareEvent> visits(JobView view, Words words) {
    JobView ours = view.in(words);
    ToLookAt look = new ToLookAt(ours);
    List<CareEvent> visits = new ArrayList<>();
    view.visit()
        .ifPresent(
            visit -> {
              CareEvent.Day day = new CareEvent.Day(visit.day(), 1, 1);
              String what = VisitWords.title(visit, words);
              visits.add(event(ours, CareEvents.VISIT, day, what, look.at(visit.day())));
            });
    for (LaterCare later : LaterCare.of(view)) {
      CareEvent.Day day = new CareEvent.Day(later.day(), later.months(), later.times());
      visits.add(event(ours, later.name(), day, later.title(view, words), look.at(later)));
    }
    return visits;
  }

  /** An event with what it is about and what to look at. */
  private static CareEvent event(
      JobView ours, String name, CareEvent.Start start, String what, String look) {
    String who =
        Stream.of(ours.job().id(), ours.job().firstName(), ours.car())
            .filter(text -> !text.isBlank())
            .collect(Collectors.joining(", "));
    return new CareEvent(
        name, start, who + ": " + what, look + "\n" + ours.address(), Optional.empty(), false);
  }

  /**
   * The events of a job in the calendar of all visits.
   *
   * @param view the job
   * @param revisions how its visits were moved since they were first given out
   * @param words the words of the shop's language
   * @return a part of an iCalendar file; may be empty
   */
  public static String events(JobView view, Revisions revisions, Words words) {
    CalendarText text = new CalendarText("", words.language(), uid -> uid);
    for (CareEvent visit : visits(view, words)) {
      text.add(
          named(visit, view),
          revisions.of(visit, CalendarText.first(view.job().pickup())),
          view.address().toString());
    }
    for (Revisions.Gone gone : revisions.gone()) {
      Revisions.Gone named =
          new Revisions.Gone(uid(view, gone.name()), gone.start(), gone.revision());
      text.takeBack(
          named, view.address().toString(), view.job().id() + ": " + words.text("calendar.gone"));
    }
    return text.events();
  }

  /**
   * The calendar of all visits.
   *
   * @param events those of each job
   * @param words the words of the shop's language
   * @param shop the shop's name
   * @return the text of an iCalendar file; to be written as UTF-8
   */
  public static String text(Collection<String> events, Words words, String shop) {
    String name = words.text("calendar.office", Map.of("shop", shop));
    return new CalendarText(name, words.language(), uid -> uid).with(events);
  }

  /**
   * Takes such a calendar apart.
   *
   * @param text a text as of {@link #text}
   * @return the events of each job by the address of its page
   */
  public static Map<String, String> byAddress(String text) {
    return CalendarText.byAddress(text);
  }

  private static CareEvent named(CareEvent visit, JobView view) {
    return new CareEvent(
        uid(view, visit.name()),
        visit.start(),
        visit.summary(),
        visit.details(),
        visit.location(),
        visit.rings());
  }

  /** Not the name in the customer's calendar: whoever has both keeps both. */
  private static String uid(JobView view, String name) {
    return EventName.of(view.token(), MARK + name);
  }
}
