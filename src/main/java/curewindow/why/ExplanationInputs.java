package curewindow.why;

import curewindow.cure.CureCase;
import curewindow.cure.Explanation;
import curewindow.told.BeforePickup;
import curewindow.told.JobView;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * What an explanation is made from.
 *
 * @param view the job with its dates, after what is tried, in English whatever the customer speaks
 * @param curing what the dates were computed from
 * @param explanations how the end of a hold comes about, by the hold's id
 * @param before what the shop can do before the car leaves; empty where nothing is needed, or the
 *     car has left
 * @param trial what is tried instead of what the files say
 */
public record ExplanationInputs(
    JobView view,
    CureCase curing,
    Function<String, Explanation> explanations,
    Optional<BeforePickup> before,
    Trial trial) {

  /** Refuses missing parts. */
  public ExplanationInputs {
    Objects.requireNonNull(view, "view");
    Objects.requireNonNull(curing, "curing");
    Objects.requireNonNull(explanations, "explanations");
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(trial, "trial");
  }
}
