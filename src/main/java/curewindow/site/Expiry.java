package curewindow.site;

import curewindow.problem.Problem;
import curewindow.shop.Job;
import curewindow.shop.PastVisit;
import curewindow.shop.Shop;
import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The time for which a shop keeps customers' pages: it counts from the day on which the car was
 * last at the shop.
 */
final class Expiry {

  private final Shop shop;
  private final LocalDate today;

  Expiry(Shop shop, LocalDate today) {
    this.shop = shop;
    this.today = today;
  }

  /** Whether a page is kept no longer; never where the shop does not say how long. */
  boolean isPast(Job job) {
    return isPast(lastHere(job));
  }

  /** The same by the day from which the time counts. */
  boolean isPast(LocalDate from) {
    Optional<Period> keep = shop.keepPages();
    return keep.filter(time -> from.plus(time).isBefore(today)).isPresent();
  }

  /** The day of the last pickup or visit, by the shop's clock. */
  LocalDate lastHere(Job job) {
    LocalDate pickup = job.pickup().atZone(shop.zone()).toLocalDate();
    return Stream.concat(Stream.of(pickup), job.seen().stream().map(PastVisit::day))
        .max(LocalDate::compareTo)
        .orElseThrow();
  }

  /** Why a job gets no page where its time is over and it has no address. */
  Optional<Problem> problem(LoadedShop loaded, Job job) {
    return isPast(job) && loaded.knownToken(job.id()).isEmpty()
        ? Optional.of(
            Problem.error(
                "past-keeping",
                job.where(),
                "the car was last here on " + lastHere(job) + ", so its page is not kept any more",
                "check the dates of the job, or keep-pages in shop.yaml"))
        : Optional.empty();
  }
}
