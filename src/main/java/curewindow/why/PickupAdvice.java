package curewindow.why;

import curewindow.cure.AtPickup;
import curewindow.cure.CureCase;
import curewindow.page.JobView;
import curewindow.shop.Catalogue;
import curewindow.shop.Job;
import curewindow.told.BeforePickup;
import curewindow.words.Words;
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

  /**
   * The advice for a job.
   *
   * @param job the job
   * @param catalogue the catalogue
   * @param curing what its dates are computed from
   * @param english the words of the shop's side
   * @return the advice; empty where the car can go home in any weather
   */
  public static Optional<PickupAdvice> of(
      Job job, Catalogue catalogue, CureCase curing, Words english) {
    return BeforePickup.of(curing, catalogue).map(b -> of(b, job, catalogue, curing, english));
  }

  private static PickupAdvice of(
      BeforePickup before, Job job, Catalogue catalogue, CureCase curing, Words english) {
    PickupWords words = new PickupWords(before, job, catalogue);
    return new PickupAdvice(words.facts(english), words.advice(curing.bay()));
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
    Optional<PickupAdvice> road =
        before.map(b -> of(b, view.job(), view.catalogue(), curing, view.words()));
    Optional<PickupAdvice> barely = BarelySetWords.of(view, curing, said);
    return road.map(r -> barely.map(r::and).orElse(r)).or(() -> barely);
  }

  /** What helps the way home helps the other as well. */
  private PickupAdvice and(PickupAdvice other) {
    return new PickupAdvice(Stream.concat(facts.stream(), other.facts.stream()).toList(), advice);
  }
}
