package curewindow.why;

import curewindow.cure.CureCase;
import curewindow.shop.Catalogue;
import curewindow.shop.Job;
import curewindow.told.BeforePickup;
import curewindow.words.Words;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

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
    return BeforePickup.of(curing, catalogue.holds())
        .map(before -> new PickupWords(before, job, catalogue))
        .map(words -> new PickupAdvice(words.facts(english), words.advice(curing.bay())));
  }
}
