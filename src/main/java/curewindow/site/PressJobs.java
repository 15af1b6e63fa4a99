package curewindow.site;

import curewindow.problem.Problem;
import curewindow.shop.Job;
import curewindow.shop.Shop;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The jobs that get a page: not those of another than their card's, nor what is long over.
 *
 * @param good the jobs
 * @param over ids of those that have no page any more, as the time is over for which the shop keeps
 *     it
 * @param problems tells of jobs that are another's than their card's
 */
record PressJobs(List<Job> good, Set<String> over, List<Problem> problems) {

  /**
   * Finds them.
   *
   * @param shop a shop folder whose shop.yaml and ledgers are right
   * @param same ids of jobs that are said to be the same customer's as their cards
   * @param clock tells the day
   */
  static PressJobs of(LoadedShop shop, Set<String> same, Clock clock) {
    Shop own = shop.shop().orElseThrow();
    Expiry expiry = new Expiry(own, LocalDate.now(clock.withZone(own.zone())));
    List<Job> good = new ArrayList<>();
    Set<String> over = new HashSet<>();
    List<Problem> problems = new ArrayList<>();
    for (Job job : shop.jobs()) {
      Optional<Problem> reused =
          same.contains(job.id()) ? Optional.empty() : ReusedIds.of(shop, job);
      reused.ifPresent(problems::add);
      if (expiry.problem(shop, job).isPresent()) {
        over.add(job.id());
      } else if (reused.isEmpty()) {
        good.add(job);
      }
    }
    return new PressJobs(good, over, problems);
  }

  /**
   * The jobs that should have a page beside those that have: broken ones, and those with faults.
   */
  List<String> leftOut(LoadedShop shop, Set<String> made) {
    return shop.leftOut(made).stream().filter(id -> !over.contains(id)).toList();
  }
}
