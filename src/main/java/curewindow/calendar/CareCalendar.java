package curewindow.calendar;

import curewindow.told.JobView;
import java.time.Instant;
import java.util.List;
import java.util.function.Predicate;

/**
 * The dates of one job for the customer's own calendar, as RFC 5545 has it: those that matter most,
 * and all of them. The texts depend on the job and its revisions alone, so that pressing twice
 * gives the same files.
 */
public final class CareCalendar {

  private CareCalendar() {}

  /** The file of the dates that matter most. */
  public static final String MAIN = "care.ics";

  /** The file of all dates. */
  public static final String ALL = "all.ics";

  /**
   * The calendar of the dates that matter most.
   *
   * @param view the job
   * @param revisions how its dates were moved since they were first given out
   * @return the text of an iCalendar file, lines ended by CR LF and folded at 75 octets; to be
   *     written as UTF-8
   */
  public static String main(JobView view, Revisions revisions) {
    return calendar(view, revisions, CareEvents.of(view), CareEvent::rings).text();
  }

  /**
   * The same calendar with no note of the other dates, so that it is short enough for a link.
   *
   * @param view the job
   * @param revisions how its dates were moved since they were first given out
   * @return the text, as of {@link #main}
   */
  public static String brief(JobView view, Revisions revisions) {
    return calendar(view, revisions, CareEvents.brief(view), CareEvent::rings).text();
  }

  /**
   * The calendar of all dates. What was given out before and is no longer there is taken back.
   *
   * @param view the job
   * @param revisions how its dates were moved since they were first given out
   * @return the text, as of {@link #main}
   */
  public static String all(JobView view, Revisions revisions) {
    CalendarText all = calendar(view, revisions, CareEvents.of(view), e -> true);
    String gone = view.words().text("calendar.gone");
    revisions.gone().forEach(g -> all.takeBack(g, view.address().toString(), gone));
    return all.text();
  }

  private static CalendarText calendar(
      JobView view, Revisions revisions, List<CareEvent> events, Predicate<CareEvent> wanted) {
    String name = view.words().text("calendar.name", CareEvents.names(view));
    CalendarText text =
        new CalendarText(name, view.words().language(), event -> EventName.of(view.token(), event));
    Instant first = CalendarText.first(view.job().pickup());
    for (CareEvent event : events) {
      if (wanted.test(event)) {
        text.add(event, revisions.of(event, first), view.address().toString());
      }
    }
    return text;
  }
}
