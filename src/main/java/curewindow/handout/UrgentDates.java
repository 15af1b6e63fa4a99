package curewindow.handout;

import curewindow.cure.Release;
import curewindow.shop.Hold;
import curewindow.told.JobView;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** Chooses the dates that stand on a card. */
final class UrgentDates {

  private UrgentDates() {}

  /**
   * The most urgent dates: those that end after pickup before those that are over by then; what
   * must not be done yet, by rank and date, then what is normal for a while.
   *
   * @param view the job
   * @param most how many at most
   */
  static List<Release> of(JobView view, int most) {
    Map<String, Hold> holds = view.catalogue().holds();
    return view.timeline().releases().stream()
        .sorted(
            Comparator.comparing((Release r) -> !r.end().at().isAfter(view.timeline().pickup()))
                .thenComparing(Release::kind)
                .thenComparing(
                    r -> holds.containsKey(r.hold()) ? holds.get(r.hold()).rank() : 1_000)
                .thenComparing(r -> r.end().at())
                .thenComparing(Release::hold))
        .limit(most)
        .toList();
  }
}
