package curewindow.site;

import curewindow.problem.Faults;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.Job;
import curewindow.why.PickupAdvice;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What the shop is told before it hands cars over that are not ready for the road, or that will
 * hardly be set when their most important holds end.
 */
public final class PickupNotes {

  private PickupNotes() {}

  /**
   * The advice for all cars that have not left yet.
   *
   * @param shop a shop folder whose shop.yaml is right
   * @param now pickups before it are over
   * @return a note for each such car, by job
   */
  public static List<Problem> of(LoadedShop shop, Instant now) {
    return shop.jobs().stream()
        .filter(job -> !job.hasLeft(now))
        .flatMap(job -> note(shop, job).stream())
        .toList();
  }

  private static Optional<Problem> note(LoadedShop shop, Job job) {
    // A fault of the program was told with the job's page.
    return Faults.guard(
            job.where(),
            new Problems(),
            () -> PickupAdvice.note(shop.dates().english(job), shop.cureCase(job)))
        .flatMap(Function.identity())
        .map(
            told ->
                Problem.notice(
                    "before-pickup", job.where(), String.join("; ", told.facts()), told.advice()));
  }
}
