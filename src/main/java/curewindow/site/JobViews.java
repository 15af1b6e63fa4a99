package curewindow.site;

import curewindow.problem.Faults;
import curewindow.problem.Problems;
import curewindow.shop.Job;
import curewindow.told.JobView;
import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** Gives jobs their secret addresses, for good, and computes their dates. */
final class JobViews {

  private JobViews() {}

  /**
   * The views of some jobs. The link ledger is on disk before any page that it fixes is made.
   *
   * @param shop the shop folder; its ledger is right
   * @param jobs some of its good jobs
   * @param clock gives the date written beside new tokens
   * @param tokens makes new tokens
   * @param problems where faults are told; a job with one has no view
   * @return the views, in the order of the jobs
   * @throws IOException where the ledger cannot be written
   */
  static List<JobView> of(
      LoadedShop shop, List<Job> jobs, Clock clock, Supplier<String> tokens, Problems problems)
      throws IOException {
    return of(shop, jobs, tokens(shop, jobs, clock, tokens), problems);
  }

  /** The secret part of the address of each of some jobs, old or new; it is in the ledger. */
  static Function<Job, String> tokens(
      LoadedShop shop, List<Job> jobs, Clock clock, Supplier<String> tokens) throws IOException {
    LocalDate today = LocalDate.now(clock.withZone(shop.shop().orElseThrow().zone()));
    Map<String, String> given = new HashMap<>();
    try (FolderLock lock = FolderLock.on(shop.files().root())) {
      LinkLedger ledger = Ledgers.links(lock);
      for (Job job : jobs) {
        given.put(job.id(), ledger.tokenOf(job.id(), tokens, today));
      }
      ledger.save(today);
    }
    return job -> given.get(job.id());
  }

  /**
   * The views of some jobs where no address is shown, or only that of a sample.
   *
   * @param shop the shop folder
   * @param jobs some of its good jobs
   * @param token stands for the secret part of each address
   * @param problems where faults are told; a job with one has no view
   * @return the views, in the order of the jobs
   */
  static List<JobView> of(LoadedShop shop, List<Job> jobs, String token, Problems problems) {
    return of(shop, jobs, job -> token, problems);
  }

  /** The same, each with an address of its own, which is only looked up. */
  static List<JobView> of(
      LoadedShop shop, List<Job> jobs, Function<Job, String> tokens, Problems problems) {
    return Faults.guardEach(
            jobs, Job::where, problems, (job, found) -> shop.view(job, tokens.apply(job)))
        .stream()
        .flatMap(Optional::stream)
        .toList();
  }
}
