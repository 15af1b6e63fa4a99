package curewindow.page;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.cure.Release.AskUs;
import curewindow.shop.Catalogue;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.shop.Service;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which hold forbids what the end of another would allow. While the stricter one runs, the page
 * does not say of the other that it is over: no washing while a coating has to stay dry, and no
 * driving in the rain while the wipers stay off. The table is common practice, no source.
 */
final class Stricter {

  private static final String KEEP_DRY = "keep-dry";
  private static final Set<String> WASHES = Set.of("hand-wash", "pressure-wash", "machine-wash");

  private static final Map<String, Set<String>> FORBIDS =
      Map.of(
          "wipers", Set.of("rain"),
          "rain", WASHES,
          "hand-wash", Set.of("pressure-wash", "machine-wash"),
          "pressure-wash", Set.of("machine-wash"),
          "normal-use", Set.of("wet-clean"));

  private static final Set<String> WATER_OUTSIDE =
      Set.of("rain", "hand-wash", "pressure-wash", "machine-wash", "topper");
  private static final Set<String> WATER_INSIDE = Set.of("wet-clean");

  private final List<Release> holds;
  private final boolean dryOutside;
  private final boolean dryInside;

  Stricter(JobView view) {
    holds = view.timeline().releases().stream().filter(r -> r.kind() == HoldKind.HOLD).toList();
    dryOutside = keepsDryOutside(view.job(), view.catalogue());
    dryInside = coated(view.job(), view.catalogue(), true);
  }

  /** Whether a coating was laid on the outside of the car. */
  static boolean keepsDryOutside(Job job, Catalogue catalogue) {
    return coated(job, catalogue, false);
  }

  private static boolean coated(Job job, Catalogue catalogue, boolean inside) {
    for (FittedItem item : job.items()) {
      Service service = catalogue.services().get(item.service());
      if (service != null && !service.film() && service.inside() == inside) {
        return true;
      }
    }
    return false;
  }

  /**
   * The hold that still runs when a release says that its own is over.
   *
   * @return the one that runs longest, one without a certain end before all others; empty where
   *     none forbids what the release allows
   */
  Optional<Release> than(Release release) {
    return holds.stream()
        .filter(h -> !h.hold().equals(release.hold()) && forbids(h.hold(), release.hold()))
        .filter(h -> end(h).isAfter(release.end().at()))
        .max(Comparator.comparing(Stricter::end));
  }

  /** When time alone ends a hold, and no stricter one forbids any longer what that allows. */
  Optional<Instant> over(Release release) {
    Optional<Instant> own = certain(release);
    return own.isEmpty() ? own : than(release).map(Stricter::certain).orElse(own);
  }

  /**
   * Whether a hold may not go by time alone, as the shop must be asked. What is merely normal, and
   * a visit, wait for nobody: past their date there is something to show, or a day to come.
   */
  static boolean asks(Release release) {
    return release.kind() == HoldKind.HOLD && release.end() instanceof AskUs;
  }

  private static Optional<Instant> certain(Release release) {
    return asks(release) ? Optional.empty() : Optional.of(release.end().at());
  }

  private boolean forbids(String stricter, String other) {
    if (stricter.equals(KEEP_DRY)) {
      return dryOutside && WATER_OUTSIDE.contains(other)
          || dryInside && WATER_INSIDE.contains(other);
    }
    if (other.equals(KEEP_DRY)) {
      return dryOutside && stricter.equals("rain");
    }
    return FORBIDS.getOrDefault(stricter, Set.of()).contains(other);
  }

  /** When a hold is over for certain; no time is late enough where the shop must be asked. */
  private static Instant end(Release release) {
    return release.end() instanceof AskUs ? Instant.MAX : release.end().at();
  }
}
