package curewindow.site;

import curewindow.problem.Problem;
import curewindow.shop.Job;
import curewindow.site.HandedOver.Owner;
import java.io.IOException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Notices where the id of a job whose card was handed over is now another person's or car's: the
 * card would lead its holder to a stranger's page.
 */
final class ReusedIds {

  private ReusedIds() {}

  /**
   * What is wrong with the ids of a shop folder.
   *
   * @param shop a shop folder whose shop.yaml and ledgers are right
   * @return a problem for each job whose id is most likely used again
   */
  static List<Problem> of(LoadedShop shop) {
    List<Problem> problems = new ArrayList<>();
    shop.jobs().forEach(job -> of(shop, job).ifPresent(problems::add));
    return problems;
  }

  /** What is wrong with the id of a job, if anything is. */
  static Optional<Problem> of(LoadedShop shop, Job job) {
    Owner now = Owner.of(job, shop.shop().orElseThrow().zone());
    return shop.ledgers()
        .handedOver()
        .flatMap(list -> list.of(job.id()))
        .filter(now::isOther)
        .map(before -> problem(job, before, now));
  }

  private static Problem problem(Job job, Owner before, Owner now) {
    String id = job.id();
    return Problem.error(
        "id-reused",
        job.where(),
        "the card of "
            + id
            + " was for someone else ("
            + before.shown()
            + "; now "
            + now.shown()
            + "), so its page stays as it was",
        "give this job another id, or run withdraw "
            + id
            + " to give it a new address; if it is the same car, press with --same "
            + id);
  }

  /**
   * Notes whose cards are out: of cards that earlier versions made, and where a name or a car was
   * put right since.
   *
   * @param shop the shop folder
   * @param jobs the jobs that have their page
   * @throws IOException where it cannot be written
   */
  static void note(LoadedShop shop, Collection<Job> jobs) throws IOException {
    Set<String> withCard = shop.ledgers().withCard();
    List<Job> some = jobs.stream().filter(job -> withCard.contains(job.id())).toList();
    if (!some.isEmpty()) {
      ZoneId zone = shop.shop().orElseThrow().zone();
      try (FolderLock lock = FolderLock.on(shop.files().root())) {
        HandedOver list = Ledgers.handedOver(lock);
        some.forEach(job -> list.note(job, zone));
        list.save();
      }
    }
  }
}
