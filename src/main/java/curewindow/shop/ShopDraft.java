package curewindow.shop;

import curewindow.shop.YamlWriting.Said;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A shop as somebody types it, before it is known whether it is right: everything is text as it was
 * typed, empty where nothing was. {@link ShopText} writes it as shop.yaml, which the one reader of
 * shops then checks. What is not here, such as the bay, is changed in the file.
 *
 * @param name the name shown to customers
 * @param phone the phone number
 * @param textNumber the number for text messages
 * @param email the mail address
 * @param street the lines of the street address
 * @param address where the site will be published
 * @param zone id of the time zone
 * @param language the language of jobs that name none
 * @param place id of the place of jobs that name none
 * @param opening the hours of each open day, such as 9:00-17:30, by {@link #days}
 * @param closed single days on which the shop is closed, such as 2026-12-25
 */
public record ShopDraft(
    String name,
    String phone,
    String textNumber,
    String email,
    List<String> street,
    String address,
    String zone,
    String language,
    String place,
    Map<String, String> opening,
    List<String> closed) {

  /** Takes spaces off the ends, and leaves out what is empty. */
  public ShopDraft {
    name = name.strip();
    phone = phone.strip();
    textNumber = textNumber.strip();
    email = email.strip();
    street = words(street);
    address = address.strip();
    zone = zone.strip();
    language = language.strip();
    place = place.strip();
    Map<String, String> open = new LinkedHashMap<>();
    for (String day : days()) {
      String hours = opening.getOrDefault(day, "").strip();
      if (!hours.isEmpty()) {
        open.put(day, hours);
      }
    }
    opening = Map.copyOf(open);
    closed = words(closed);
  }

  /**
   * The days of the week as shop.yaml calls them.
   *
   * @return seven names, Monday first
   */
  public static List<String> days() {
    return ShopReader.DAYS;
  }

  private static List<String> words(List<String> typed) {
    return typed.stream().map(String::strip).filter(w -> !w.isEmpty()).toList();
  }

  /** The keys and values of the file, in the order in which people write them. */
  Map<String, Object> tree() {
    Map<String, Object> tree = new LinkedHashMap<>();
    said(tree, "name", name);
    Typed.put(tree, "phone", phone);
    Typed.put(tree, "text-number", textNumber);
    Typed.put(tree, "email", email);
    Typed.put(tree, "street", street.stream().map(Said::new).toList());
    Typed.put(tree, "address", address);
    Typed.put(tree, "zone", zone);
    Typed.put(tree, "language", language);
    Typed.put(tree, "place", place);
    Map<String, Object> open = new LinkedHashMap<>();
    days().stream().filter(opening::containsKey).forEach(d -> open.put(d, opening.get(d)));
    Typed.put(tree, "opening", open);
    Typed.put(tree, "closed", closed);
    return tree;
  }

  private static void said(Map<String, Object> tree, String key, String text) {
    if (!text.isEmpty()) {
      tree.put(key, new Said(text));
    }
  }
}
