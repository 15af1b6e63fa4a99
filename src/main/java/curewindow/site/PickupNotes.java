package curewindow.site;

import curewindow.problem.Problem;
import curewindow.shop.Job;
import curewindow.why.PickupAdvice;
import curewindow.words.WordsLibrary;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What the shop is told before it hands cars over that are not ready for the road. */
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
        .filter(job -> !job.pickup().isBefore(now))
        .flatMap(job -> note(shop, job).stream())
        .toList();
  }

  private static Optional<Problem> note(LoadedShop shop, Job job) {
    return PickupAdvice.of(
            job,
            shop.read().catalogue(),
            shop.cureCase(job),
            shop.words().of(WordsLibrary.FALLBACK))
        .map(
            told ->
                Problem.notice(
                    "before-pickup", job.where(), String.join("; ", told.facts()), told.advice()));
  }
}
