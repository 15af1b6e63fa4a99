package curewindow.site;

import curewindow.calendar.CareCalendar;
import curewindow.calendar.CareEvent;
import curewindow.calendar.CareEvents;
import curewindow.calendar.OfficeCalendar;
import curewindow.calendar.Revisions;
import curewindow.page.JobView;
import curewindow.problem.Faults;
import curewindow.problem.Problems;
import curewindow.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** The calendars of a press, with what the shop folder remembers of earlier ones. */
final class Calendars {

  private static final Revisions NEW = new Revisions(Map.of(), List.of());
  private static final String OFFICE = "office";

  private final Map<String, Revisions> customers = new TreeMap<>();
  private final List<OfficeCalendar.Entry> office = new ArrayList<>();
  private final List<Rendering.Customer> noted = new ArrayList<>();
  private final Words words;
  private final Instant now;

  private Calendars(Words words, Instant now) {
    this.words = words;
    this.now = now;
  }

  /**
   * Compares the dates of some jobs with those given out before, and remembers them: they are on
   * disk when this returns.
   *
   * @param shop the shop folder
   * @param jobs the jobs, each with its dates for every parking
   * @param pressedBefore whether an earlier press made calendars
   * @param clock gives the time of a change
   * @param problems where faults are told; a job with one has no calendar
   * @return the calendars
   * @throws IOException where the shop folder cannot be written
   */
  static Calendars note(
      LoadedShop shop,
      List<Rendering.Customer> jobs,
      boolean pressedBefore,
      Clock clock,
      Problems problems)
      throws IOException {
    Words words = shop.words().of(shop.shop().orElseThrow().language());
    Calendars calendars = new Calendars(words, clock.instant().truncatedTo(ChronoUnit.SECONDS));
    boolean lost = pressedBefore && !Files.exists(shop.files().root().resolve(CalendarDates.FILE));
    try (ShopLock lock = ShopLock.on(shop.files().root())) {
      CalendarDates dates = Ledgers.calendars(lock);
      for (Rendering.Customer job : jobs) {
        Faults.guard(job.view().job().where(), problems, () -> calendars.note(job, dates, lost))
            .ifPresent(calendars.noted::add);
      }
      dates.save();
    }
    calendars.office.sort(Comparator.comparing(e -> e.view().job().id()));
    return calendars;
  }

  private Rendering.Customer note(Rendering.Customer job, CalendarDates dates, boolean lost) {
    String id = job.view().job().id();
    Revisions.Revision first = first(job.view(), lost, now);
    for (JobView parked : job.cases()) {
      String name = parked.parkings().folder();
      customers.put(key(parked), dates.note(id, name, CareEvents.of(parked), now, first));
    }
    List<CareEvent> visits = OfficeCalendar.visits(job.view(), words);
    office.add(new OfficeCalendar.Entry(job.view(), dates.note(id, OFFICE, visits, now, first)));
    return job;
  }

  /** The jobs whose dates were noted. */
  List<Rendering.Customer> noted() {
    return List.copyOf(noted);
  }

  /**
   * How a calendar begins. Where the memory of earlier ones was lost, it begins with the days since
   * the pickup, which is more than the dates can have moved if they are pressed once a day.
   */
  private static Revisions.Revision first(JobView view, boolean lost, Instant now) {
    Instant pickup = view.job().pickup().truncatedTo(ChronoUnit.SECONDS);
    long days = Math.max(0, Duration.between(pickup, now).toDays());
    return lost && days > 0
        ? new Revisions.Revision((int) Math.min(days, 1_000_000), now)
        : new Revisions.Revision(0, pickup);
  }

  private static String key(JobView view) {
    return view.address().toString();
  }

  /**
   * The calendar files that stand beside a page.
   *
   * @param view the job
   * @return the files by name
   */
  SortedMap<String, String> files(JobView view) {
    return CareCalendar.files(view, customers.getOrDefault(key(view), NEW));
  }

  /** The office's calendar of all visits. */
  String office(String shop, Problems problems) {
    return Faults.spare(
        office,
        entry -> entry.view().job().where(),
        problems,
        (entries, found) -> OfficeCalendar.text(entries, words, shop));
  }
}
