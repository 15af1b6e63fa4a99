package curewindow.site;

import curewindow.cure.Release;
import curewindow.cure.Timeline;
import curewindow.told.CardChange;
import curewindow.told.JobView;
import curewindow.told.Printed;
import curewindow.told.PrintedDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Finds out which dates came too early onto a card because of the weather measured since. */
final class DelayedDates {

  private DelayedDates() {}

  /**
   * A job with its printed dates.
   *
   * @param view the job
   * @param told what its cards say
   * @param usual the job's dates as they would be had nothing been measured; asked for only where a
   *     date is too early
   */
  static JobView mark(JobView view, Printed told, Supplier<Timeline> usual) {
    JobView printed = view.withPrinted(told);
    List<PrintedDate> early = CardChange.later(printed).stream().map(CardChange::printed).toList();
    if (early.isEmpty()) {
      return printed;
    }
    Timeline unmeasured = view.told(usual.get());
    List<PrintedDate> marked =
        told.dates().stream().map(d -> d.slowed(early.contains(d) && held(d, unmeasured))).toList();
    return view.withPrinted(new Printed(marked, told.visit()));
  }

  private static boolean held(PrintedDate date, Timeline usual) {
    Optional<Release> release = usual.of(date.hold());
    return release.filter(r -> !r.end().at().isAfter(date.earliest())).isPresent();
  }
}
