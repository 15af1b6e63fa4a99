package curewindow.site;

import curewindow.cure.Release;
import curewindow.page.JobView;
import curewindow.page.PrintedDate;
import java.time.Instant;

/** Finds out where a customer is asked to come in at a time that is over. */
final class MissedVisits {

  private MissedVisits() {}

  /**
   * A job with its printed dates, which then know whether the shop is to be asked in vain.
   *
   * @param view the job with its printed dates
   * @param now the time of reading
   */
  static JobView mark(JobView view, Instant now) {
    return view.withPrinted(
        view.printed().stream().map(d -> d.missed(isOver(d, view, now))).toList());
  }

  private static boolean isOver(PrintedDate date, JobView view, Instant now) {
    return view.timeline()
        .of(date.hold())
        .filter(r -> r.end() instanceof Release.AskUs && !r.end().at().isAfter(now))
        .isPresent();
  }
}
