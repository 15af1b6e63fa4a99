package curewindow.shop;

import curewindow.shop.YamlWriting.Said;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A shop as somebody types it, before it is known whether it is right: everything is text as it was
 * typed, empty where nothing was. {@link ShopText} writes it as shop.yaml, which the one reader of
 * shops then checks. What is not here, such as what is handed out, is changed in the file.
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
 * @param locale the language and country whose words and dates are used, such as en-GB
 * @param units the units shown to customers
 * @param bay the air in the bay, and its lamp
 * @param send where the site is sent to
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
    List<String> closed,
    String locale,
    String units,
    BayDraft bay,
    SendDraft send) {

  /**
   * The bay as somebody types it.
   *
   * @param temperature degrees Celsius
   * @param humidity percent
   * @param lamp what the lamp heats a film to, degrees Celsius
   */
  public record BayDraft(String temperature, String humidity, String lamp) {

    /** Nothing is said of it. */
    public static final BayDraft NONE = new BayDraft("", "", "");

    /** Takes spaces off the ends. */
    public BayDraft {
      temperature = temperature.strip();
      humidity = humidity.strip();
      lamp = lamp.strip();
    }

    private Map<String, Object> tree() {
      Map<String, Object> tree = new LinkedHashMap<>();
      Typed.put(tree, "temperature", temperature);
      Typed.put(tree, "humidity", humidity);
      Typed.put(tree, "lamp", lamp);
      return tree;
    }
  }

  /**
   * Where the site is sent to, as somebody types it; secrets are no part of it.
   *
   * @param to a folder, or a folder on a host
   * @param hostKey the fingerprint of the host's key
   * @param keyFile the file of a private key
   */
  public record SendDraft(String to, String hostKey, String keyFile) {

    /** It is sent nowhere. */
    public static final SendDraft NONE = new SendDraft("", "", "");

    /** Takes spaces off the ends. */
    public SendDraft {
      to = to.strip();
      hostKey = hostKey.strip();
      keyFile = keyFile.strip();
    }

    private Map<String, Object> tree() {
      Map<String, Object> tree = new LinkedHashMap<>();
      Typed.put(tree, "to", to);
      Typed.put(tree, "host-key", hostKey);
      Typed.put(tree, "key-file", keyFile);
      return tree;
    }
  }

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
    locale = locale.strip();
    units = units.strip();
  }

  /**
   * The days of the week as shop.yaml calls them.
   *
   * @return seven names, Monday first
   */
  public static List<String> days() {
    return ShopReader.DAYS;
  }

  /**
   * The same shop, sent elsewhere.
   *
   * @param other where to
   * @return a copy
   */
  public ShopDraft withSend(SendDraft other) {
    return new ShopDraft(
        name,
        phone,
        textNumber,
        email,
        street,
        address,
        zone,
        language,
        place,
        opening,
        closed,
        locale,
        units,
        bay,
        other);
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
    said(tree, "address", address);
    Typed.put(tree, "zone", zone);
    Typed.put(tree, "language", language);
    Typed.put(tree, "locale", locale);
    Typed.put(tree, "units", units);
    Typed.put(tree, "place", place);
    Typed.put(tree, "bay", bay.tree());
    Map<String, Object> open = new LinkedHashMap<>();
    days().stream().filter(opening::containsKey).forEach(d -> open.put(d, opening.get(d)));
    Typed.put(tree, "opening", open);
    Typed.put(tree, "closed", closed);
    Typed.put(tree, "send", send.tree());
    return tree;
  }

  private static void said(Map<String, Object> tree, String key, String text) {
    if (!text.isEmpty()) {
      tree.put(key, new Said(text));
    }
  }
}
