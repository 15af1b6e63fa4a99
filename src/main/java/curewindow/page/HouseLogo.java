package curewindow.page;

import curewindow.shop.Shop;
import java.util.Optional;

/**
 * The shop's logo on a page.
 *
 * @param src its address
 * @param width in pixels where it is {@link #HEIGHT} pixels high, so that nothing jumps before it
 *     is loaded
 * @param height pixels
 */
record HouseLogo(String src, long width, int height) {

  /** As much as the masthead has room for without growing. */
  static final int HEIGHT = 32;

  /**
   * The logo of a shop.
   *
   * @param top what leads from the page to the top of the site
   */
  static Optional<HouseLogo> of(Shop shop, String top) {
    return shop.look()
        .logo()
        .map(
            logo ->
                new HouseLogo(
                    top + SharedFile.address(logo.name(), logo.bytes()),
                    Math.max(1, Math.round(HEIGHT * logo.width() / logo.height())),
                    HEIGHT));
  }
}
