package curewindow.site;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Notices when the link ledger no longer knows the address of a page that the last press made, as
 * after a ledger was deleted or an older one was brought back: a new address would leave the
 * printed cards leading nowhere. The same for the memory of the dates on them.
 */
final class LostAddresses {

  private LostAddresses() {}

  static List<Problem> of(LoadedShop shop, List<PageList.Row> before) {
    List<Problem> lost = new ArrayList<>();
    boolean cardsWereMade = before.stream().anyMatch(row -> shop.job(row.job()).isPresent());
    if (cardsWereMade && !shop.remembersCards()) {
      lost.add(
          Problem.error(
              "printed-dates",
              Where.file(PrintedDates.FILE),
              "the file is gone, although the last press made cards",
              "bring it back from a backup, or press into an empty folder to begin anew"));
    }
    Optional<LinkLedger> ledger = LinkLedger.read(shop.files().root(), new Problems());
    for (PageList.Row row : before) {
      boolean wanted = shop.job(row.job()).isPresent();
      Optional<String> folder = ledger.flatMap(l -> l.known(row.job())).map(PagePaths::folder);
      if (wanted && !folder.equals(Optional.of(row.folder()))) {
        lost.add(problem(row));
      }
    }
    return lost;
  }

  private static Problem problem(PageList.Row row) {
    return Problem.error(
        "link-ledger",
        Where.file(LinkLedger.FILE),
        "job " + row.job() + " had its page at " + row.address() + ", and the ledger lost it",
        "bring the ledger back from a backup, or press into an empty folder to give new addresses");
  }
}
