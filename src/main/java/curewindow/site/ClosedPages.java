package curewindow.site;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What stands at addresses whose page was taken down, and at those of cards whose page cannot be
 * made: how to reach the shop, and nothing of anybody.
 */
final class ClosedPages {

  private ClosedPages() {}

  /**
   * Puts the page where it has to stand.
   *
   * @param shop the shop folder
   * @param output where it is put
   * @param pages the customers' pages that stand from now on
   * @param last the customers' pages of the last press
   * @param html the page, or empty where it could not be made
   */
  static void put(
      LoadedShop shop,
      Output output,
      List<PageList.Row> pages,
      List<PageList.Row> last,
      Optional<byte[]> html) {
    Set<String> before = folders(last);
    Set<String> now = folders(pages);
    for (String token : tokens(shop)) {
      String folder = PagePaths.folder(token);
      String file = "site/" + folder + "index.html";
      if (now.contains(folder)) {
        continue;
      }
      if (html.isPresent()) {
        output.put(file, html.get());
      } else if (!before.contains(folder)) {
        output.leave(file);
      }
    }
  }

  private static Set<String> folders(List<PageList.Row> pages) {
    Set<String> folders = new HashSet<>();
    pages.forEach(row -> folders.add(row.folder()));
    return folders;
  }

  private static List<String> tokens(LoadedShop shop) {
    List<String> tokens = new ArrayList<>();
    Set<String> withCard = shop.ledgers().withCard();
    shop.ledgers()
        .links()
        .ifPresent(
            links -> {
              tokens.addAll(links.closed());
              withCard.forEach(job -> links.known(job).ifPresent(tokens::add));
            });
    return tokens;
  }
}
