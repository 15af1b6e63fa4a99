package curewindow.site;

import curewindow.shop.BrokenJob;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Which files of the last press stay although this press did not make them again: the pages of jobs
 * that have problems now, and public pages or cards whose template has a mistake. What a job that
 * was taken away leaves behind does not stay.
 */
final class KeptPages implements Predicate<String> {

  private final List<PageList.Row> rows = new ArrayList<>();
  private final boolean open;
  private final boolean cards;

  /**
   * Decides what stays.
   *
   * @param before the customers' pages of the last press
   * @param good ids of the jobs whose page was made now
   * @param broken ids, or files, of jobs with problems
   * @param open whether public pages of the last press stay
   * @param cards whether cards of the last press stay
   */
  KeptPages(
      List<PageList.Row> before,
      Set<String> good,
      List<String> broken,
      boolean open,
      boolean cards) {
    this.open = open;
    this.cards = cards;
    Set<String> known = new HashSet<>();
    before.forEach(r -> known.add(r.job()));
    // A file that cannot be read may hold any job, so none of the missing ones loses its page.
    boolean unknown = broken.stream().map(BrokenJob::likelyId).anyMatch(b -> !known.contains(b));
    Set<String> named = new HashSet<>();
    broken.forEach(b -> named.add(BrokenJob.likelyId(b)));
    for (PageList.Row row : before) {
      if (!good.contains(row.job()) && (unknown || named.contains(row.job()))) {
        rows.add(row);
      }
    }
  }

  /** The customers' pages that stay. */
  List<PageList.Row> rows() {
    return List.copyOf(rows);
  }

  @Override
  public boolean test(String name) {
    if (name.startsWith("site/" + PagePaths.CUSTOMERS)
        && !name.equals("site/" + PagePaths.NO_LIST)) {
      return rows.stream().anyMatch(r -> name.startsWith("site/" + r.folder()));
    }
    return name.startsWith("site/") ? open : cards && name.startsWith("office/cards");
  }
}
