package curewindow.told;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.cure.Timeline;
import curewindow.shop.Hold;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * In which order things become free: nobody waxes a car that may not be washed, and nobody washes
 * one whose coating has to stay dry. Each hold is told to end with the last of those that hold it
 * back, so that page, card, calendar and explanation all say one date.
 */
public final class HoldOrder {

  private final Map<String, Hold> catalogue;

  private HoldOrder(Map<String, Hold> catalogue) {
    this.catalogue = catalogue;
  }

  /**
   * The dates as they are told. A hold that is over by pickup is left out: nobody has to keep it
   * any more. One that waits for another that forbids the same is left out too, as that one says it
   * all, unless people plan by it.
   *
   * @param computed the dates as computed, each hold by itself
   * @param catalogue the holds by id; those it lacks hold nothing back
   * @return the dates in agreement with each other
   */
  public static Timeline of(Timeline computed, Map<String, Hold> catalogue) {
    return new HoldOrder(catalogue).told(computed);
  }

  private Timeline told(Timeline computed) {
    Map<String, Release> told = new LinkedHashMap<>();
    computed.releases().forEach(r -> told.put(r.hold(), r));
    List<Release> holds =
        computed.releases().stream().filter(r -> r.kind() == HoldKind.HOLD).toList();
    // Each round carries a date one step on; holds that wait for each other all get the latest.
    for (int round = 0; round < holds.size(); round++) {
      boolean moved = false;
      for (Release own : holds) {
        Release now = told.get(own.hold());
        Optional<Release> last = last(own, holds, told).filter(l -> isLater(l, now));
        if (last.isPresent()) {
          told.put(own.hold(), own.waitingFor(last.get()));
          moved = true;
        }
      }
      if (!moved) {
        break;
      }
    }
    List<Release> releases = told.values().stream().filter(r -> !isOver(r, computed)).toList();
    return new Timeline(computed.pickup(), computed.zone(), releases);
  }

  /** The one that ends last of those that hold another back. */
  private Optional<Release> last(Release own, List<Release> holds, Map<String, Release> told) {
    return holds.stream()
        .filter(other -> holdsBack(other.hold(), own.hold()))
        .map(other -> told.get(other.hold()))
        .max(Comparator.comparing((Release r) -> r.end().at()).thenComparing(Release::hold));
  }

  private static boolean isLater(Release one, Release other) {
    return one.end().at().isAfter(other.end().at());
  }

  private boolean holdsBack(String one, String other) {
    Hold stricter = catalogue.get(one);
    Hold waiting = catalogue.get(other);
    return stricter != null && waiting != null && stricter.holdsBack(waiting);
  }

  private boolean isOver(Release told, Timeline computed) {
    Release own = computed.of(told.hold()).orElseThrow();
    return told.kind() == HoldKind.HOLD
        && !own.end().at().isAfter(computed.pickup())
        && told.waitsFor().filter(by -> isMain(told) || !forbids(by, told.hold())).isEmpty();
  }

  private boolean isMain(Release release) {
    return catalogue.get(release.hold()).is(Hold.Mark.MAIN);
  }

  private boolean forbids(String one, String other) {
    return catalogue.get(other).brings().stream().anyMatch(catalogue.get(one).forbids()::contains);
  }
}
