package curewindow.page;

import curewindow.shop.Shop;
import curewindow.words.Words;
import java.util.List;

/** How to reach a shop, as plain text for other things than pages. */
public final class ContactText {

  private ContactText() {}

  /**
   * The opening hours, one line for days with the same ones.
   *
   * @param shop the shop
   * @param words the words of any language
   * @return the lines, none where the shop states no hours
   */
  public static List<String> hours(Shop shop, Words words) {
    if (shop.opening().isEmpty()) {
      return List.of();
    }
    return new Contact(shop, words)
        .card("", "").hours().stream().map(h -> h.name() + ": " + h.text()).toList();
  }
}
