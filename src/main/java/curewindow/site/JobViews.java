package curewindow.site;

import curewindow.page.JobView;
import curewindow.shop.Job;
import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;

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
   * @return the views, in the order of the jobs
   * @throws IOException where the ledger cannot be written
   */
  static List<JobView> of(LoadedShop shop, List<Job> jobs, Clock clock, Supplier<String> tokens)
      throws IOException {
    LocalDate today = LocalDate.now(clock.withZone(shop.shop().orElseThrow().zone()));
    List<String> given = new ArrayList<>();
    try (ShopLock lock = ShopLock.on(shop.files().root())) {
      LinkLedger ledger = Ledgers.links(lock);
      for (Job job : jobs) {
        given.add(ledger.tokenOf(job.id(), tokens, today));
      }
      ledger.save();
    }
    return IntStream.range(0, jobs.size())
        .parallel()
        .mapToObj(i -> shop.view(jobs.get(i), given.get(i)))
        .toList();
  }
}
