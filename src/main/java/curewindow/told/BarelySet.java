package curewindow.told;

import curewindow.cure.Release;
import curewindow.cure.Timeline;
import curewindow.shop.Hold;
import java.util.List;
import java.util.Map;

/**
 * The holds that safety or the customer's plans hang on, and that end at their limit though hardly
 * anything is set by then.
 */
public final class BarelySet {

  /** Less than this share of the need is hardly anything; our own estimate, no source. */
  private static final double HARDLY = 0.25;

  private BarelySet() {}

  /**
   * The holds of a job that the shop had better do something about before the car leaves.
   *
   * @param told the job's dates
   * @param holds the holds by id
   * @return those that end at their own limit, by date
   */
  public static List<Release> of(Timeline told, Map<String, Hold> holds) {
    return told.releases().stream()
        .filter(r -> r.end() instanceof Release.AtLimit limit && limit.share() < HARDLY)
        .filter(r -> r.waitsFor().isEmpty() && matters(holds.get(r.hold())))
        .toList();
  }

  private static boolean matters(Hold hold) {
    return hold != null && (hold.is(Hold.Mark.SAFETY) || hold.is(Hold.Mark.MAIN));
  }
}
