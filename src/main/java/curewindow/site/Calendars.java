package curewindow.site;

import curewindow.calendar.CareCalendar;
import curewindow.calendar.CareEvent;
import curewindow.calendar.CareEvents;
import curewindow.calendar.OfficeCalendar;
import curewindow.calendar.Revisions;
import curewindow.problem.Faults;
import curewindow.problem.Problems;
import curewindow.told.JobView;
import curewindow.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** The calendars of some jobs, with what the shop folder remembers of earlier ones. */
final class Calendars {

  private static final String OFFICE = "office";

  private final Map<String, Revisions> customers = new TreeMap<>();
  private final Map<String, String> said = new HashMap<>();
  private final SortedMap<String, String> office = new TreeMap<>();
  private final List<List<JobView>> noted = new ArrayList<>();

  private Calendars() {}

  /** Calendars whose dates were never given out. */
  static Calendars unnoted() {
    return new Calendars();
  }

  /**
   * Where and when dates are noted.
   *
   * @param shop the shop folder
   * @param now the time of this press, in seconds
   * @param lost whether the memory of earlier calendars was lost
   */
  record Notes(LoadedShop shop, Instant now, boolean lost) {

    /**
     * Looks at the shop folder before anything is noted.
     *
     * @param pressedBefore whether an earlier press made calendars
     */
    static Notes of(LoadedShop shop, boolean pressedBefore, Clock clock) {
      boolean lost =
          pressedBefore && !Files.exists(shop.files().root().resolve(CalendarDates.FILE));
      return new Notes(shop, clock.instant().truncatedTo(ChronoUnit.SECONDS), lost);
    }

    private Words words() {
      return shop.words().of(shop.shop().orElseThrow().language());
    }

    /**
     * How a calendar begins. Where the memory of earlier ones was lost, it begins with the days
     * since the pickup, which is more than the dates can have moved if they are pressed once a day.
     */
    private Revisions.Revision first(JobView view) {
      Instant pickup = view.job().pickup().truncatedTo(ChronoUnit.SECONDS);
      long days = Math.max(0, Duration.between(pickup, now).toDays());
      return lost && days > 0
          ? new Revisions.Revision((int) Math.min(days, 1_000_000), now)
          : new Revisions.Revision(0, pickup);
    }
  }

  /**
   * Compares the dates of some jobs with those given out before, and remembers them: they are on
   * disk when this returns, so that a date that moves is always seen to move.
   *
   * @param notes where and when
   * @param jobs the jobs, each in all cases of parking, the noted one first
   * @param problems where faults are told; a job with one has no calendar
   * @return the calendars
   * @throws IOException where the shop folder cannot be written
   */
  static Calendars note(Notes notes, List<List<JobView>> jobs, Problems problems)
      throws IOException {
    return noted(
        notes,
        jobs,
        problems,
        (calendars, cases, dates) -> {
          calendars.noteCustomer(cases, dates, notes);
          calendars.noteOffice(cases.get(0), dates, notes);
        });
  }

  /**
   * The same for the office's calendar alone.
   *
   * @param notes where and when
   * @param jobs jobs whose own calendars stand as they would be made
   * @param problems where faults are told; a job with one is not in the calendar
   * @return the calendars, without those of customers
   * @throws IOException where the shop folder cannot be written
   */
  static Calendars noteOffice(Notes notes, List<JobView> jobs, Problems problems)
      throws IOException {
    List<List<JobView>> alone = jobs.stream().map(List::of).toList();
    return noted(
        notes,
        alone,
        problems,
        (calendars, cases, dates) -> calendars.noteOffice(cases.get(0), dates, notes));
  }

  private interface Noting {
    void note(Calendars calendars, List<JobView> cases, CalendarDates dates);
  }

  private static Calendars noted(
      Notes notes, List<List<JobView>> jobs, Problems problems, Noting noting) throws IOException {
    Calendars calendars = new Calendars();
    try (FolderLock lock = FolderLock.on(notes.shop().files().root())) {
      CalendarDates dates = notes.shop().ledgers().calendars(lock);
      for (List<JobView> job : jobs) {
        Faults.guard(
                job.get(0).job().where(),
                problems,
                () -> {
                  noting.note(calendars, job, dates);
                  return job;
                })
            .ifPresent(calendars.noted::add);
      }
      dates.save();
    }
    return calendars;
  }

  private void noteCustomer(List<JobView> cases, CalendarDates dates, Notes notes) {
    JobView noted = cases.get(0);
    for (JobView parked : cases) {
      String name = parked.parkings().name();
      customers.put(
          key(parked),
          dates.note(
              noted.job().id(), name, CareEvents.of(parked), notes.now(), notes.first(noted)));
    }
  }

  private void noteOffice(JobView view, CalendarDates dates, Notes notes) {
    String id = view.job().id();
    Words words = notes.words();
    List<CareEvent> visits = OfficeCalendar.visits(view, words);
    Revisions noted = dates.note(id, OFFICE, visits, notes.now(), notes.first(view));
    office.put(id, OfficeCalendar.events(view, noted, words));
    said.put(id, dates.said(id));
  }

  /** All that the calendars of a job gave out, this time too. */
  String said(String job) {
    return said.getOrDefault(job, "");
  }

  /** The events of each job in the office's calendar, by its id; may be empty. */
  SortedMap<String, String> office() {
    return Collections.unmodifiableSortedMap(office);
  }

  /** The jobs whose dates were noted, each in all cases of parking. */
  List<List<JobView>> noted() {
    return List.copyOf(noted);
  }

  private static String key(JobView view) {
    return view.token() + "/" + view.parkings().name();
  }

  private Revisions revisions(JobView view) {
    return customers.getOrDefault(key(view), Revisions.FIRST);
  }

  /** The calendar of a job's page with the dates that matter most. */
  String main(JobView noted) {
    return CareCalendar.main(noted, revisions(noted));
  }

  /** The calendar of a job's page with all dates. */
  String all(JobView noted) {
    return CareCalendar.all(noted, revisions(noted));
  }

  /** The calendar with the dates that matter most of each case but the noted one. */
  List<String> others(List<JobView> cases) {
    return cases.stream().skip(1).map(v -> CareCalendar.brief(v, revisions(v))).toList();
  }
}
