package curewindow.page;

import curewindow.guide.GuideFacts;
import curewindow.guide.JobFacts;
import curewindow.shop.Shop;
import curewindow.words.Quantity;
import curewindow.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a guide may ask where no job is known, on the shop's public pages: every clause is shown,
 * and in place of a job's own dates stand the shortest and the longest month of the year at the
 * shop's place, until the page's script knows better; other values are words such as "your film".
 */
final class PublicFacts implements GuideFacts {

  private final Shop shop;
  private final Words words;
  private final String guide;
  private final Optional<PublicYear> year;
  private final SortedMap<String, List<String>> months = new TreeMap<>();

  /**
   * The facts of no job in particular.
   *
   * @param shop the shop
   * @param words the words of the page's language
   * @param guide id of the guide that asks
   * @param year the year at the shop's place, where it could be computed
   */
  PublicFacts(Shop shop, Words words, String guide, Optional<PublicYear> year) {
    this.shop = shop;
    this.words = words;
    this.guide = guide;
    this.year = year;
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
      case "hold" -> quoted(name, parts[1], last).or(() -> Optional.of(generic(last)));
      case "job", "visit" -> Optional.of(generic(last));
      default -> Optional.of(generic(parts[0]));
    };
  }

  private Optional<String> quoted(String name, String hold, String what) {
    Optional<PublicYear.Quote> days = year.flatMap(y -> y.quoted(guide, hold, what));
    days.ifPresent(quote -> months.put(name, quote.months()));
    return days.map(PublicYear.Quote::year);
  }

  @Override
  public boolean changes(String name) {
    return months.containsKey(name);
  }

  /** What was quoted, and how it is said of work in each month, January first. */
  SortedMap<String, List<String>> months() {
    return months;
  }

  /** What the days mean that were quoted; empty where none were. */
  Optional<String> basis() {
    return year.filter(y -> !months.isEmpty()).map(y -> y.basis(guide));
  }

  private String generic(String what) {
    String key = "page.public." + what;
    return words.text(words.has(key) ? key : "page.public.other");
  }
}
