package curewindow.told;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.shop.Hold;
import java.util.Comparator;
import java.util.List;

/** In which order the holds of a job are put before its customer. */
public final class Urgency {

  private Urgency() {}

  /**
   * What the customer must not do yet, the most important first: what is still to wait for at
   * pickup, then by the catalogue's rank, then by published end. What is merely normal, and visits,
   * are not among them.
   *
   * @param view the job
   * @return the releases of kind {@link HoldKind#HOLD}
   */
  public static List<Release> holds(JobView view) {
    return view.timeline().releases().stream()
        .filter(r -> r.kind() == HoldKind.HOLD)
        .sorted(
            Comparator.comparing((Release r) -> !r.end().at().isAfter(view.timeline().pickup()))
                .thenComparingInt(r -> rank(view, r))
                .thenComparing(r -> r.end().at())
                .thenComparing(Release::hold))
        .toList();
  }

  /**
   * The catalogue's rank of a hold.
   *
   * @param view the job
   * @param release one of its releases
   * @return the most urgent least; last where it has none
   */
  public static int rank(JobView view, Release release) {
    Hold hold = view.catalogue().holds().get(release.hold());
    return hold == null ? Integer.MAX_VALUE : hold.rank();
  }
}
