package curewindow.page;

import curewindow.guide.GuideFacts;
import curewindow.shop.Shop;
import curewindow.words.Quantity;
import curewindow.words.Words;
import java.util.Optional;

/**
 * What a guide may ask where no job is known, on the shop's public pages: every clause is shown,
 * and in place of a job's own dates stand words such as "the date on your own page".
 */
public final class PublicFacts implements GuideFacts {

  private final Shop shop;
  private final Words words;

  /**
   * The facts of no job in particular.
   *
   * @param shop the shop
   * @param words the words of the page's language
   */
  public PublicFacts(Shop shop, Words words) {
    this.shop = shop;
    this.words = words;
  }

  @Override
  public boolean has(String kind, String name) {
    return true;
  }

  @Override
  public Optional<String> value(String name) {
    Optional<Quantity> quantity = Quantity.of(name);
    if (quantity.isPresent()) {
      return quantity.map(words::quantity);
    }
    String[] parts = name.split("\\.", 3);
    String last = parts[parts.length - 1];
    return switch (parts[0]) {
      case "shop" -> JobFacts.shop(shop, last, words);
      case "hold", "job", "visit" -> Optional.of(generic(last));
      default -> Optional.of(generic(parts[0]));
    };
  }

  private String generic(String what) {
    String key = "page.public." + what;
    return words.text(words.has(key) ? key : "page.public.other");
  }
}
