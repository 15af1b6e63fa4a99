package curewindow.handout;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.page.JobView;
import curewindow.shop.Hold;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** Chooses the dates that stand on a card. */
final class UrgentDates {

  private static final String FIRST = "windows-up";

  private UrgentDates() {}

  /**
   * The most urgent dates: those that end after pickup before those that are over by then; windows
   * before all, then what must not be done yet, by rank and date, then visits, then what is normal
   * for a while.
   *
   * @param view the job
   * @param most how many at most
   */
  static List<Release> of(JobView view, int most) {
    Map<String, Hold> holds = view.catalogue().holds();
    return view.timeline().releases().stream()
        .sorted(
            Comparator.comparing((Release r) -> !r.end().at().isAfter(view.timeline().pickup()))
                .thenComparing(r -> !r.hold().equals(FIRST))
                .thenComparing(r -> kind(r.kind()))
                .thenComparing(
                    r -> holds.containsKey(r.hold()) ? holds.get(r.hold()).rank() : 1_000)
                .thenComparing(r -> r.end().at())
                .thenComparing(Release::hold))
        .limit(most)
        .toList();
  }

  private static int kind(HoldKind kind) {
    return switch (kind) {
      case HOLD -> 0;
      case VISIT -> 1;
      case SETTLE -> 2;
    };
  }
}
