package curewindow.desk;

import curewindow.climate.Place;
import curewindow.shop.ShopDraft;
import curewindow.shop.ShopDraft.BayDraft;
import curewindow.shop.ShopDraft.SendDraft;
import curewindow.shop.TypedNumber;
import curewindow.words.Words;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A shop as a form has it: each field is named by the place of its value in shop.yaml. */
final class ShopForm {

  /** Whether the number for texts is the phone's, another, or there is none. */
  static final String TEXTS = "texts";

  static final String SAME = "same";
  static final String OTHER = "other";
  static final String NONE = "none";

  /** Stands for another number for texts that nobody typed; no reader takes it for one. */
  static final String UNTOLD = "-";

  static final String OPEN = "open";
  static final String CLOSED = "closed";

  /** Hours that two fields cannot hold, such as those of a day with a break, behind this word. */
  static final String AS = "as ";

  /** What is typed to find the place. */
  static final String TOWN = "town";

  /** What the file of a new shop says of the bay: common practice, no source. */
  private static final BayDraft USUAL_BAY = new BayDraft("21", "50", "60");

  private ShopForm() {}

  /** A shop of which nothing is known but the language of who types. */
  static ShopDraft empty(String language) {
    Map<String, String> opening = new LinkedHashMap<>();
    // From Monday to Friday, nine to five: common practice, no source; it is there to be changed.
    ShopDraft.days().subList(0, 5).forEach(day -> opening.put(day, "9:00-17:00"));
    return new ShopDraft(
        "",
        "",
        "",
        "",
        List.of(),
        "",
        "",
        language,
        "",
        opening,
        List.of(),
        "",
        "",
        USUAL_BAY,
        SendDraft.NONE);
  }

  static String hours(String day) {
    return "opening." + day;
  }

  static String from(String day) {
    return hours(day) + ".from";
  }

  static String to(String day) {
    return hours(day) + ".to";
  }

  /**
   * What was typed.
   *
   * @param before what the file says; what the form would only write another way stays as it is
   * @param keepsZone whether its clock stays whatever the place, as times of jobs are told by it
   * @param places all places by id, of which the chosen one tells the time zone
   * @param words in which a place may be named
   */
  static ShopDraft draft(
      Request.Values form,
      Optional<ShopDraft> before,
      boolean keepsZone,
      Map<String, Place> places,
      Words words) {
    String place = PlaceChoices.chosen(form.one("place"), form.one(TOWN), places, words);
    Optional<String> zone =
        before
            .filter(b -> (keepsZone || b.place().equals(place)) && !b.zone().isEmpty())
            .map(ShopDraft::zone);
    ShopDraft kept = before.orElseGet(() -> empty(words.language()));
    return new ShopDraft(
        form.one("name"),
        form.one("phone"),
        texts(form),
        form.one("email"),
        form.list("street").stream().map(line -> line.replaceAll("\\p{Cntrl}+", " ")).toList(),
        form.one("address"),
        zone.orElseGet(() -> zone(places, place)),
        language(form, words),
        place,
        opening(form, before.map(ShopDraft::opening).orElse(Map.of())),
        Arrays.asList(form.one("closed").split("[\\s,;]+")),
        typed(form, "locale", kept.locale()),
        typed(form, "units", kept.units()),
        bay(form, kept.bay()),
        send(form, kept.send()));
  }

  private static String zone(Map<String, Place> places, String place) {
    return Optional.ofNullable(places.get(place)).map(p -> p.zone().getId()).orElse("");
  }

  private static BayDraft bay(Request.Values form, BayDraft kept) {
    return new BayDraft(
        degrees(form, "bay.temperature", kept.temperature()),
        TypedNumber.plain(typed(form, "bay.humidity", kept.humidity())),
        degrees(form, "bay.lamp", kept.lamp()));
  }

  /** What nobody changed stays to the letter. */
  private static String degrees(Request.Values form, String name, String kept) {
    Degrees degrees = Degrees.of(form);
    String typed = form.one(name);
    return form.has(name) && !typed.equals(degrees.shown(kept)) ? degrees.celsius(typed) : kept;
  }

  private static SendDraft send(Request.Values form, SendDraft kept) {
    return new SendDraft(
        typed(form, "send.to", kept.to()),
        typed(form, "send.host-key", kept.hostKey()),
        typed(form, "send.key-file", kept.keyFile()));
  }

  /** What a form did not show is as it was before. */
  private static String typed(Request.Values form, String name, String before) {
    return form.has(name) ? form.one(name) : before;
  }

  /** A new shop speaks as the desk does, unless told otherwise, also where that changes. */
  private static String language(Request.Values form, Words words) {
    String typed = form.one("language");
    boolean follows = form.has(Request.SPEAK) && typed.equals(form.one("spoken"));
    return follows ? words.language() : typed;
  }

  private static String texts(Request.Values form) {
    return switch (form.one(TEXTS)) {
      case NONE -> "";
      case OTHER -> form.one("text-number").isEmpty() ? UNTOLD : form.one("text-number");
      default -> form.one("phone");
    };
  }

  private static Map<String, String> opening(Request.Values form, Map<String, String> before) {
    Map<String, String> opening = new LinkedHashMap<>();
    String above = "";
    for (String day : ShopDraft.days()) {
      String how = form.one(hours(day));
      String hours =
          switch (how) {
            case OPEN -> span(form.one(from(day)), form.one(to(day)));
            case SAME -> above;
            default -> how.startsWith(AS) ? how.substring(AS.length()) : "";
          };
      String kept = before.getOrDefault(day, "");
      above = plain(kept).equals(plain(hours)) ? kept : hours;
      opening.put(day, above);
    }
    return opening;
  }

  /** As people write it; fields of browsers have a zero before the hour. */
  private static String span(String from, String to) {
    return from.replaceFirst("^0(?=[0-9]:)", "") + "-" + to.replaceFirst("^0(?=[0-9]:)", "");
  }

  /** Hours without what may be written or not. */
  static String plain(String hours) {
    return hours.replace(" ", "").replaceAll("(?<![0-9])0(?=[0-9]:)", "");
  }
}
