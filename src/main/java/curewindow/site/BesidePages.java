package curewindow.site;

import curewindow.calendar.ShopCard;
import curewindow.page.HomeScreen;
import curewindow.problem.Problems;
import curewindow.shop.Shop;
import java.util.List;

/**
 * What stands in the site beside its pages: the shop's card and logo, icons, the worker, headers.
 */
final class BesidePages {

  private static final List<String> ICONS = List.of("icon.svg", "icon-180.png", "icon-512.png");

  private BesidePages() {}

  /**
   * Puts them.
   *
   * @param shop a shop folder whose shop.yaml is right
   * @param output where they are put
   * @param problems where it is told which cannot be read
   */
  static void put(LoadedShop shop, Output output, Problems problems) {
    Shop own = shop.shop().orElseThrow();
    output.put("site/" + HomeScreen.WORKER, HomeScreen.worker(shop.files(), problems));
    own.look().logo().ifPresent(logo -> output.put("site/" + logo.name(), logo.bytes()));
    output.put("site/" + PagePaths.HEADERS, PagePaths.headers(own.address()));
    for (String icon : ICONS) {
      shop.files()
          .bytes("site-templates/" + icon, problems)
          .ifPresent(bytes -> output.put("site/" + icon, bytes));
    }
    output.put("site/" + ShopCard.FILE, ShopCard.text(own, shop.words().of(own.language())));
  }
}
