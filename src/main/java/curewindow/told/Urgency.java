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
   * All dates of a job, the most important first: what is still to come at pickup before what is
   * over by then; what must not be done yet before what is normal for a while; then by the
   * catalogue's rank, then by published end.
   *
   * @param view the job
   * @return its releases
   */
  public static List<Release> all(JobView view) {
    return view.timeline().releases().stream()
        .sorted(
            Comparator.comparing((Release r) -> !view.timeline().isAhead(r))
                .thenComparing(Release::kind)
                .thenComparingInt(r -> rank(view, r))
                .thenComparing(r -> r.end().at())
                .thenComparing(Release::hold))
        .toList();
  }

  /**
   * What the customer must not do yet, in the same order. What is merely normal, and visits, are
   * not among them.
   *
   * @param view the job
   * @return the releases of kind {@link HoldKind#HOLD}
   */
  public static List<Release> holds(JobView view) {
    return all(view).stream().filter(r -> r.kind() == HoldKind.HOLD).toList();
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
