package curewindow.why;

import curewindow.cure.AtPickup;
import curewindow.cure.CureCase;
import curewindow.told.BeforePickup;
import curewindow.told.JobView;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The advice to the shop before it hands a car over, in English.
 *
 * @param facts what is not set at pickup, a clause for each hold
 * @param advice what to do about it, without a full stop
 */
public record PickupAdvice(List<String> facts, String advice) {

  /** Refuses missing parts. */
  public PickupAdvice {
    facts = List.copyOf(facts);
    Objects.requireNonNull(advice, "advice");
  }

  /** What can be done for a job, which is in English, in words. */
  static PickupAdvice of(BeforePickup before, JobView view, CureCase curing) {
    PickupWords words = new PickupWords(before, view.job(), view.catalogue());
    return new PickupAdvice(words.facts(view.words()), words.advice(curing.bay()));
  }

  /**
   * The advice for a job as one note: what is not ready for the road, and what safety or plans hang
   * on and is hardly set when it ends.
   *
   * @param view the job in English
   * @param curing what its dates are computed from
   * @return the advice; empty where nothing is wrong with either
   */
  public static Optional<PickupAdvice> note(JobView view, CureCase curing) {
    Optional<BeforePickup> before = BeforePickup.of(curing, view.catalogue());
    Set<String> said =
        before.stream()
            .flatMap(b -> b.lacking().stream())
            .map(AtPickup::hold)
            .collect(Collectors.toSet());
    Optional<PickupAdvice> road = before.map(b -> of(b, view, curing));
    Optional<PickupAdvice> barely = BarelySetWords.of(view, curing, said);
    return road.map(r -> barely.map(r::and).orElse(r)).or(() -> barely);
  }

  /** What helps the way home helps the other as well. */
  private PickupAdvice and(PickupAdvice other) {
    return new PickupAdvice(Stream.concat(facts.stream(), other.facts.stream()).toList(), advice);
  }
}
