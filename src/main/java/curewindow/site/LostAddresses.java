package curewindow.site;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Notices when the link ledger no longer knows the address of a page that the last press made, as
 * after a ledger was deleted or an older one was brought back: a new address would leave the
 * printed cards leading nowhere.
 */
final class LostAddresses {

  private LostAddresses() {}

  static List<Problem> of(LoadedShop shop, List<PageList.Row> before) {
    List<Problem> lost = new ArrayList<>();
    List<PageList.Row> wanted =
        before.stream().filter(row -> shop.job(row.job()).isPresent()).toList();
    for (PageList.Row row : wanted) {
      Optional<String> folder = shop.knownToken(row.job()).map(PagePaths::folder);
      if (!folder.equals(Optional.of(row.folder()))) {
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
