package curewindow.why;

import curewindow.cure.AtPickup;
import curewindow.cure.Bay;
import curewindow.cure.CureCase;
import curewindow.cure.Release;
import curewindow.told.BarelySet;
import curewindow.told.JobView;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Says to the shop which of a job's holds end at their limit with hardly anything set. */
final class BarelySetWords {

  /** Reference hours an hour that the bay should give at least; our own estimate, no source. */
  private static final double WORTH_WAITING = 0.5;

  private BarelySetWords() {}

  /**
   * What is hardly set, and what would help.
   *
   * @param view the job in English
   * @param curing what its dates are computed from
   * @param said ids of holds that need no more to be said of
   * @return a fact for each such hold; empty where there is none
   */
  static Optional<PickupAdvice> of(JobView view, CureCase curing, Set<String> said) {
    List<Release> barely =
        BarelySet.of(view.timeline(), view.catalogue().holds()).stream()
            .filter(r -> !said.contains(r.hold()))
            .toList();
    SpokenDates told = SpokenDates.besidePickup(view);
    return barely.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new PickupAdvice(
                barely.stream().map(r -> fact(r, told)).toList(), advice(barely, view, curing)));
  }

  private static String fact(Release release, SpokenDates told) {
    long percent = Math.max(1, Math.round(100 * ((Release.AtLimit) release.end()).share()));
    return String.format(
        Locale.ROOT,
        "%s: ends at its limit, %s, only about %d%% cured",
        told.label(release),
        told.endDay(release),
        percent);
  }

  /** Air that is damp or cold sets next to nothing, however long the car stays in it. */
  private static String advice(List<Release> barely, JobView view, CureCase curing) {
    List<AtPickup> needs =
        AtPickup.of(curing).stream()
            .filter(n -> !n.isMet() && barely.stream().anyMatch(r -> r.hold().equals(n.hold())))
            .toList();
    boolean bay = needs.stream().anyMatch(n -> n.bayRate() >= WORTH_WAITING);
    boolean cold = !needs.isEmpty() && curing.bay().temperature() < Bay.USUAL_TEMPERATURE;
    boolean lamp = needs.stream().anyMatch(n -> n.restHours() * n.lampRate() > 0);
    List<String> helps =
        Stream.of(bay ? "longer in the bay" : cold ? "a warmer bay" : "", lamp ? "the lamp" : "")
            .filter(help -> !help.isEmpty())
            .toList();
    return helps.isEmpty()
        ? "a warmer or drier place to park would help"
        : String.join(" or ", helps)
            + " would help"
            + (lamp ? PickupWords.caution(needs, view.job(), view.catalogue()) : "");
  }
}
