package curewindow.site;

import curewindow.calendar.OfficeCalendar;
import curewindow.shop.Job;
import curewindow.shop.Shop;
import curewindow.words.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/** The office's calendar of all visits, put together from the events of each job. */
final class Inspections {

  /** The file, relative to the output folder. */
  static final String FILE = "office/inspections.ics";

  private final LoadedShop shop;

  /** By the job's id; may be empty. */
  private final SortedMap<String, String> events = new TreeMap<>();

  Inspections(LoadedShop shop) {
    this.shop = shop;
  }

  /** Takes the events of jobs that were noted now. */
  void add(Calendars noted) {
    events.putAll(noted.office());
  }

  /**
   * Takes the events of jobs from the calendar of the last press.
   *
   * @param jobs the jobs
   * @param tokens the secret part of each job's address
   * @param before the calendar, as of {@link #text}
   */
  void keep(List<Job> jobs, Function<Job, String> tokens, String before) {
    Map<String, String> kept = OfficeCalendar.byAddress(before);
    for (Job job : jobs) {
      String address = shop.dates().address(tokens.apply(job)).toString();
      Optional.ofNullable(kept.get(address)).ifPresent(e -> events.put(job.id(), e));
    }
  }

  /** The text of the file. */
  String text() {
    Shop own = shop.shop().orElseThrow();
    Words words = shop.words().of(own.language());
    return OfficeCalendar.text(events.values(), words, own.name());
  }
}
