package curewindow.site;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import curewindow.shop.Job;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Notices when many jobs are gone at once, as where the folder of jobs is not mounted or a list of
 * jobs was cut off, and when one is gone whose card was handed over: their pages then stay until
 * somebody says that they may go.
 *
 * @param jobs ids of the jobs that are gone and whose pages stay
 * @param problems tells of them
 */
record Leaving(List<String> jobs, List<Problem> problems) {

  /** Fewer are a normal tidying up, unless they are all. */
  private static final int MANY = 3;

  private static final int NAMED = 3;

  /** Every page of a job that is gone may go. */
  static final Leaving FREELY = new Leaving(List.of(), List.of());

  /**
   * Looks for jobs that are gone.
   *
   * @param shop the shop folder
   * @param before the customers' pages of the last press
   * @return the jobs whose pages stay; without a card, none where no more than a tenth of the
   *     pages, or fewer than three that are not all, would go
   */
  static Leaving of(LoadedShop shop, List<PageList.Row> before) {
    Set<String> good = shop.jobs().stream().map(Job::id).collect(Collectors.toSet());
    List<PageList.Row> kept = new KeptPages(before, good, shop.brokenJobs(), false, false).rows();
    List<String> gone =
        before.stream()
            .filter(row -> !good.contains(row.job()) && !kept.contains(row))
            .map(PageList.Row::job)
            .toList();
    boolean all = !gone.isEmpty() && gone.size() == before.size();
    if (all || gone.size() >= MANY && gone.size() * 10 > before.size()) {
      return new Leaving(gone, List.of(stay(gone, before.size())));
    }
    List<String> withCard = gone.stream().filter(shop.ledgers().withCard()::contains).toList();
    if (!withCard.isEmpty()) {
      return new Leaving(withCard, withCard.stream().map(job -> cardIsOut(shop, job)).toList());
    }
    boolean noneNow = good.isEmpty() && shop.brokenJobs().isEmpty();
    return before.isEmpty() && noneNow && shop.hasGivenAddresses()
        ? new Leaving(List.of(), List.of(noJobs()))
        : FREELY;
  }

  private static Problem stay(List<String> gone, int all) {
    String rest = gone.size() > NAMED ? " and " + (gone.size() - NAMED) + " more" : "";
    return problem(
        gone.size()
            + " of "
            + all
            + " customers' pages would go, as their jobs are gone ("
            + gone.stream().limit(NAMED).collect(Collectors.joining(", "))
            + rest
            + "); they stay for now",
        "bring the jobs back (is the folder jobs there, and jobs.csv whole?)");
  }

  /** A card must not lead nowhere only because its job has another id, or was thrown away. */
  private static Problem cardIsOut(LoadedShop shop, String job) {
    String rename =
        likelyId(shop, job)
            .map(id -> "if it is " + id + " now, run rename " + job + " " + id)
            .orElse("if it has another id now, run rename " + job + " NEW");
    return Problem.error(
        "card-without-job",
        Where.file("jobs"),
        "job " + job + " is gone, but its card was handed over; its page stays as it was",
        "bring the job back; " + rename + "; to take the page down, run withdraw " + job);
  }

  /** The job that is for the same customer and car, and has no card. */
  private static Optional<String> likelyId(LoadedShop shop, String gone) {
    ZoneId zone = shop.shop().orElseThrow().zone();
    Set<String> withCard = shop.ledgers().withCard();
    Optional<HandedOver.Owner> owner = shop.ledgers().handedOver().flatMap(l -> l.of(gone));
    return shop.jobs().stream()
        .filter(job -> !withCard.contains(job.id()))
        .filter(job -> owner.equals(Optional.of(HandedOver.Owner.of(job, zone))))
        .map(Job::id)
        .findFirst();
  }

  private static Problem noJobs() {
    return problem(
        "there is no job at all, although " + LinkLedger.FILE + " knows some",
        "bring the folder jobs or jobs.csv back");
  }

  private static Problem problem(String message, String fix) {
    return Problem.error(
        "jobs-gone",
        Where.file("jobs"),
        message,
        fix + ", or press with --let-go if the pages may go");
  }

  /** The jobs whose pages stay: these, and those with problems. */
  List<String> with(List<String> leftOut) {
    return Stream.concat(jobs.stream(), leftOut.stream()).toList();
  }
}
