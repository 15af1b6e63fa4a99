package curewindow.site;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import curewindow.shop.Job;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Notices when the link ledger no longer knows the address of a page that the last press made, as
 * after a ledger was deleted or an older one was brought back: a new address would leave the
 * printed cards leading nowhere. So would a press into the output folder of another shop.
 */
final class LostAddresses {

  private static final String RESTORE =
      "run restore --out with the folder of the last press, which puts the ledger together again";

  private LostAddresses() {}

  static List<Problem> of(LoadedShop shop, List<PageList.Row> before) {
    if (isOfAnotherShop(shop, before)) {
      return List.of(anotherShop(before));
    }
    List<Problem> lost = new ArrayList<>();
    List<PageList.Row> wanted =
        before.stream().filter(row -> shop.job(row.job()).isPresent()).toList();
    for (PageList.Row row : wanted) {
      Optional<String> folder = shop.knownToken(row.job()).map(PagePaths::folder);
      if (!folder.equals(Optional.of(row.folder()))) {
        lost.add(problem(row));
      }
    }
    Set<String> told = wanted.stream().map(PageList.Row::job).collect(Collectors.toSet());
    Set<String> withCard = shop.ledgers().withCard();
    shop.jobs().stream()
        .filter(job -> withCard.contains(job.id()) && !told.contains(job.id()))
        .forEach(job -> of(shop, job).ifPresent(lost::add));
    return lost;
  }

  /** What is wrong where a card of a job was handed over, and the ledger does not know the job. */
  static Optional<Problem> of(LoadedShop shop, Job job) {
    return shop.knownToken(job.id()).isEmpty() && shop.ledgers().withCard().contains(job.id())
        ? Optional.of(
            Problem.error(
                "link-ledger",
                Where.file(LinkLedger.FILE),
                "a card of job " + job.id() + " was handed over, and the ledger lost its address",
                RESTORE + "; where it is nowhere to be found, run withdraw " + job.id()))
        : Optional.empty();
  }

  /** An own ledger knows all pages ever made, and a shop that lost it still has its address. */
  private static boolean isOfAnotherShop(LoadedShop shop, List<PageList.Row> before) {
    String address = shop.shop().orElseThrow().address().toString();
    return !before.isEmpty()
        && before.stream().noneMatch(row -> shop.knowsFolder(row.folder()))
        && (before.stream().noneMatch(row -> row.address().startsWith(address))
            || before.stream().noneMatch(row -> shop.job(row.job()).isPresent()));
  }

  private static Problem anotherShop(List<PageList.Row> before) {
    return Problem.error(
        "other-shop",
        Where.file(LinkLedger.FILE),
        "the output folder holds "
            + (before.size() == 1 ? "a page" : before.size() + " pages")
            + " of another shop, such as "
            + before.get(0).address(),
        "press into the folder of this shop, or into an empty one; name it with --out");
  }

  private static Problem problem(PageList.Row row) {
    return Problem.error(
        "link-ledger",
        Where.file(LinkLedger.FILE),
        "job " + row.job() + " had its page at " + row.address() + ", and the ledger lost it",
        RESTORE + ", or bring the ledger back from a backup");
  }
}
