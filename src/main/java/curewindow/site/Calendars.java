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
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The calendars of a press, with what the shop folder remembers of earlier ones. */
final class Calendars {

  private static final String OFFICE = "office";

  private final Map<String, Revisions> customers = new TreeMap<>();
  private final Map<String, String> said = new HashMap<>();
  private final List<OfficeCalendar.Entry> office = new ArrayList<>();
  private final List<List<JobView>> noted = new ArrayList<>();
  private final Words words;
  private final Instant now;

  /** The calendars of a shop whose dates were never given out. */
  static Calendars unnoted(Words words) {
    return new Calendars(words, Instant.EPOCH);
  }

  private Calendars(Words words, Instant now) {
    this.words = words;
    this.now = now;
  }

  /**
   * Compares the dates of some jobs with those given out before, and remembers them: they are on
   * disk when this returns.
   *
   * @param shop the shop folder
   * @param jobs the jobs whose calendars are made, each in all cases of parking, the noted one
   *     first
   * @param standing the other jobs, whose calendars stand as they would be made
   * @param pressedBefore whether an earlier press made calendars
   * @param clock gives the time of a change
   * @param problems where faults are told; a job with one has no calendar
   * @return the calendars
   * @throws IOException where the shop folder cannot be written
   */
  static Calendars note(
      LoadedShop shop,
      List<List<JobView>> jobs,
      List<JobView> standing,
      boolean pressedBefore,
      Clock clock,
      Problems problems)
      throws IOException {
    Words words = shop.words().of(shop.shop().orElseThrow().language());
    Calendars calendars = new Calendars(words, clock.instant().truncatedTo(ChronoUnit.SECONDS));
    boolean lost = pressedBefore && !Files.exists(shop.files().root().resolve(CalendarDates.FILE));
    try (FolderLock lock = FolderLock.on(shop.files().root())) {
      CalendarDates dates = shop.ledgers().calendars(lock);
      for (List<JobView> job : jobs) {
        Faults.guard(job.get(0).job().where(), problems, () -> calendars.note(job, dates, lost))
            .ifPresent(calendars.noted::add);
      }
      for (JobView view : standing) {
        Faults.guard(view.job().where(), problems, () -> calendars.noteOffice(view, dates, lost));
      }
      dates.save();
    }
    calendars.office.sort(Comparator.comparing(e -> e.view().job().id()));
    return calendars;
  }

  private List<JobView> note(List<JobView> cases, CalendarDates dates, boolean lost) {
    JobView noted = cases.get(0);
    String id = noted.job().id();
    Revisions.Revision first = first(noted, lost, now);
    for (JobView parked : cases) {
      String name = parked.parkings().name();
      customers.put(key(parked), dates.note(id, name, CareEvents.of(parked), now, first));
    }
    noteOffice(noted, dates, lost);
    said.put(id, dates.said(id));
    return cases;
  }

  private JobView noteOffice(JobView view, CalendarDates dates, boolean lost) {
    List<CareEvent> visits = OfficeCalendar.visits(view, words);
    Revisions.Revision first = first(view, lost, now);
    Revisions noted = dates.note(view.job().id(), OFFICE, visits, now, first);
    office.add(new OfficeCalendar.Entry(view, noted));
    return view;
  }

  /** All that the calendars of a job gave out, this time too. */
  String said(String job) {
    return said.getOrDefault(job, "");
  }

  /** The jobs whose dates were noted, each in all cases of parking. */
  List<List<JobView>> noted() {
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

  /** The office's calendar of all visits. */
  String office(String shop, Problems problems) {
    return Faults.spare(
        office,
        entry -> entry.view().job().where(),
        problems,
        (entries, found) -> OfficeCalendar.text(entries, words, shop));
  }
}
