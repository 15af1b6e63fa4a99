package curewindow.handout;

import curewindow.guide.ToLookAt;
import curewindow.told.JobView;
import curewindow.told.VisitWords;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Who is asked to come in.
 *
 * @param overdue those whose day is past, by at most 30 days, and that have not come
 * @param ahead those of this day and the seven after it
 * @param older how many are left out, as their day is past by more, up to {@value #OLDEST} days
 */
public record OfficeVisits(List<Visit> overdue, List<Visit> ahead, int older) {

  private static final int AHEAD = 7;

  /** As long as a missed visit is still worth a call. */
  private static final int OVERDUE = 30;

  /** After how many days a missed visit is not even counted. */
  public static final int OLDEST = 90;

  /** Copies the lists. */
  public OfficeVisits {
    overdue = List.copyOf(overdue);
    ahead = List.copyOf(ahead);
  }

  /**
   * A visit.
   *
   * @param day the day in few letters
   * @param job the job's id
   * @param firstName who comes; may be empty
   * @param car the car's text
   * @param what what it is about, in few words
   * @param look what to look at
   */
  public record Visit(
      String day, String job, String firstName, String car, String what, String look) {}

  /** A job with its visit. */
  private record Due(JobView view, curewindow.told.Visit visit) {

    LocalDate day() {
      return visit.day();
    }
  }

  static OfficeVisits of(OfficeJobs jobs, LocalDate today) {
    List<Due> past = new ArrayList<>();
    List<Due> ahead = new ArrayList<>();
    int older = 0;
    for (Due due : all(jobs)) {
      if (due.day().isBefore(today.minusDays(OVERDUE))) {
        older += due.day().isBefore(today.minusDays(OLDEST)) ? 0 : 1;
      } else if (due.day().isBefore(today)) {
        past.add(due);
      } else if (!due.day().isAfter(today.plusDays(AHEAD))) {
        ahead.add(due);
      }
    }
    return new OfficeVisits(told(past, jobs), told(ahead, jobs), older);
  }

  private static List<Due> all(OfficeJobs jobs) {
    List<Due> all = new ArrayList<>();
    for (JobView view : jobs.views()) {
      view.visit().ifPresent(visit -> all.add(new Due(view, visit)));
    }
    return all;
  }

  private static List<Visit> told(List<Due> due, OfficeJobs jobs) {
    return due.stream()
        .sorted(Comparator.comparing(Due::day).thenComparing(d -> d.view().job().id()))
        .map(d -> visit(d.view().in(jobs.words()), d.visit()))
        .toList();
  }

  private static Visit visit(JobView ours, curewindow.told.Visit visit) {
    return new Visit(
        VisitWords.shortDay(visit.day(), ours),
        ours.job().id(),
        ours.job().firstName().strip(),
        ours.car(),
        VisitWords.title(visit, ours.words()),
        new ToLookAt(ours).at(visit.day()));
  }
}
