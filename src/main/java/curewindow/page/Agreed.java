package curewindow.page;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.cure.Timeline;
import curewindow.shop.OpenDays;
import curewindow.shop.Shop;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Brings the computed dates of a car into agreement with each other and with the shop's opening
 * hours, so that page, card, calendar and explanation all say the same.
 */
final class Agreed {

  private static final String RAIN = "rain";
  private static final String KEEP_DRY = "keep-dry";

  private Agreed() {}

  /**
   * The dates as they are told.
   *
   * <ul>
   *   <li>Who is asked to come in is asked for a time at which the shop is open, the first at or
   *       after the computed one.
   *   <li>Rain is not said to be fine while a fresh coating on the outside has to stay dry: that
   *       hold then ends with the other, or is left out where it was over before pickup. Whom it
   *       asks to come in, it still asks, though later.
   * </ul>
   *
   * @param computed the dates as computed
   * @param shop the shop
   * @param dryOutside whether what has to stay dry is on the outside of the car
   */
  static Timeline of(Timeline computed, Shop shop, boolean dryOutside) {
    OpenDays open = new OpenDays(shop);
    Optional<Release> dry = dryOutside ? computed.of(KEEP_DRY) : Optional.empty();
    List<Release> told = new ArrayList<>();
    for (Release release : computed.releases()) {
      boolean wet = release.hold().equals(RAIN) && dry.filter(d -> isLater(d, release)).isPresent();
      if (!wet) {
        told.add(open(release, open));
      } else if (isOpenAt(computed.pickup(), release)) {
        told.add(open(until(release, dry.get()), open));
      }
    }
    return new Timeline(computed.pickup(), computed.zone(), told);
  }

  private static boolean isOpenAt(Instant pickup, Release rain) {
    return rain.end() instanceof Release.AskUs || rain.end().at().isAfter(pickup);
  }

  private static boolean isLater(Release dry, Release rain) {
    return dry.end().at().isAfter(rain.end().at());
  }

  /** Rain that waits for the coating; whose own need may not be met still has to be asked. */
  private static Release until(Release rain, Release dry) {
    boolean ask = rain.end() instanceof Release.AskUs;
    boolean rainIsLikelyLast = dry.likely().isBefore(rain.likely());
    boolean rainIsNotLikely = !rain.becauseLikely().isMet();
    return new Release(
        rain.hold(),
        rain.kind(),
        ask ? new Release.AskUs(dry.end().at()) : dry.end(),
        rainIsLikelyLast ? rain.likely() : dry.likely(),
        ask ? rain.because() : dry.because(),
        rainIsLikelyLast || rainIsNotLikely ? rain.becauseLikely() : dry.becauseLikely());
  }

  private static Release open(Release release, OpenDays open) {
    if (!comesIn(release)) {
      return release;
    }
    var at = open.notBefore(release.end().at());
    return new Release(
        release.hold(),
        release.kind(),
        release.end() instanceof Release.AskUs ? new Release.AskUs(at) : new Release.SafeBy(at),
        release.likely(),
        release.because(),
        release.becauseLikely());
  }

  /** Whether the customer is asked to come to the shop at the date of a release. */
  static boolean comesIn(Release release) {
    return release.kind() == HoldKind.VISIT || release.end() instanceof Release.AskUs;
  }
}
