package curewindow.handout;

import curewindow.cure.Release;
import curewindow.guide.JobFacts;
import curewindow.guide.ToLookAt;
import curewindow.shop.Handout;
import curewindow.shop.Hold;
import curewindow.told.JobView;
import curewindow.told.OtherClock;
import curewindow.told.Urgency;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** The cars that are picked up, and what to say and give to each customer. */
final class OfficePickups {

  /** How many dates are said aloud at the counter; the others stand on the card's page. */
  private static final int DATES = 3;

  private final OfficeJobs jobs;
  private final LocalDate counter;

  private OfficePickups(OfficeJobs jobs, LocalDate counter) {
    this.jobs = jobs;
    this.counter = counter;
  }

  /** The pickups from a day to the day that is told for, both included, by time. */
  static List<OfficeDay.Pickup> of(OfficeJobs jobs, LocalDate from, LocalDate counter) {
    OfficePickups pickups = new OfficePickups(jobs, counter);
    return jobs.views().stream()
        .filter(v -> !day(jobs, v).isBefore(from) && !day(jobs, v).isAfter(counter))
        .sorted(
            Comparator.comparing((JobView v) -> v.job().pickup()).thenComparing(v -> v.job().id()))
        .map(pickups::pickup)
        .toList();
  }

  private static LocalDate day(OfficeJobs jobs, JobView view) {
    return jobs.day(view.job().pickup());
  }

  private OfficeDay.Pickup pickup(JobView view) {
    JobView ours = view.in(jobs.words());
    LocalDate day = day(jobs, view);
    return new OfficeDay.Pickup(
        day.equals(counter) ? "" : jobs.shortDay(day),
        jobs.words().time(view.job().pickup(), jobs.shop().zone()),
        view.job().id(),
        view.job().firstName().strip(),
        ours.car(),
        jobs.speaks(view),
        new ToLookAt(ours).fitted(),
        new JobFacts(ours).value("job.parking").orElse(""),
        give(view),
        dates(ours),
        OtherClock.of(ours).orElse(""));
  }

  private String give(JobView view) {
    Handout usual = jobs.shop().handout().as();
    return jobs.words()
        .text("office.give." + (HandoutPress.isFor(view, usual) ? usual.id() : "none"));
  }

  private static List<OfficeDay.Said> dates(JobView ours) {
    return Urgency.all(ours).stream()
        .filter(ours.timeline()::isAhead)
        .sorted(Comparator.comparing(r -> !isMain(ours, r)))
        .limit(DATES)
        .sorted(Comparator.comparing(r -> r.end().at()))
        .map(r -> said(ours, r))
        .toList();
  }

  /** What customers do first of all, such as windows and wash, is among what is said. */
  private static boolean isMain(JobView ours, Release release) {
    return ours.catalogue().is(release.hold(), Hold.Mark.MAIN);
  }

  /** A date in few words, such as "Windows stay up" and "until Thu, Dec 3 · 2 PM". */
  static OfficeDay.Said said(JobView ours, Release release) {
    Map<String, String> line = CommonWords.line(ours, release);
    return new OfficeDay.Said(line.get("what"), line.get("link") + " " + line.get("when"));
  }
}
