package curewindow.site;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Notices when the link ledger no longer knows the address of a page that the last press made, as
 * after a ledger was deleted or an older one was brought back: a new address would leave the
 * printed cards leading nowhere. So would a press into the output folder of another shop.
 */
final class LostAddresses {

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
    return lost;
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
        "bring the ledger back from a backup, or press into an empty folder to give new addresses");
  }
}
