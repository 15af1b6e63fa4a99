package curewindow.calendar;

import curewindow.page.CalendarFile;
import curewindow.page.JobView;
import java.time.Instant;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * The dates of one job for the customer's own calendar, as RFC 5545 has it: all of them in one
 * file, and each in a file of its own. The texts depend on the job and its revisions alone, so that
 * pressing twice gives the same files.
 */
public final class CareCalendar {

  private CareCalendar() {}

  /**
   * All calendar files that stand beside a job's page.
   *
   * @param view the job
   * @param revisions how its dates were moved since they were first given out
   * @return the text of each file by its name; to be written as UTF-8
   */
  public static SortedMap<String, String> files(JobView view, Revisions revisions) {
    SortedMap<String, String> files = new TreeMap<>();
    List<CareEvent> events = CareEvents.of(view);
    for (CareEvent event : events) {
      files.put(
          CalendarFile.of(event.name()), calendar(view, revisions, e -> e == event, events).text());
    }
    CalendarText all = calendar(view, revisions, e -> true, events);
    String gone = view.words().text("calendar.gone");
    revisions.gone().forEach(g -> all.takeBack(g, gone));
    files.put(CalendarFile.ALL, all.text());
    return files;
  }

  /**
   * The calendar of a job whose dates were never moved, stamped with its pickup time.
   *
   * @param view the job
   * @return the text of an iCalendar file, lines ended by CR LF and folded at 75 octets; to be
   *     written as UTF-8
   */
  public static String text(JobView view) {
    return files(view, Revisions.FIRST).get(CalendarFile.ALL);
  }

  private static CalendarText calendar(
      JobView view, Revisions revisions, Predicate<CareEvent> wanted, List<CareEvent> events) {
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
