package curewindow.handout;

import curewindow.cure.Release;
import curewindow.page.JobView;
import curewindow.page.When;
import curewindow.words.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The values that every handout's template can show of one job. */
final class CommonWords {

  /** Holds that touch the driver's view: clear sight comes before the film. */
  private static final Set<String> SIGHT = Set.of("defroster", "demist", "wipers");

  /** Keeps an address or a number in its order among letters that run from right to left. */
  private static final String LEFT_TO_RIGHT = "\u200E";

  private CommonWords() {}

  /** A map that the handout's own values are added to. */
  static Map<String, Object> of(JobView view, int codeNumber) {
    Words words = view.words();
    PrintedAddress address = PrintedAddress.of(view.address());
    String phone = kept(view.shop().phone(), words);
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("language", words.language());
    values.put("direction", words.rightToLeft() ? "rtl" : "ltr");
    values.put("shop", view.shop().name());
    values.put("phone", phone);
    values.put("call", words.text("handout.card.question") + " " + phone);
    values.put("greeting", greeting(view));
    values.put("car", view.job().car().text());
    values.put("scan", words.text("handout.card.scan"));
    values.put("type", words.text("handout.card.type"));
    values.put("site", kept(address.brokenSite(), words));
    values.put("groups", address.groups());
    String whole = address.brokenSite() + " " + String.join(" ", address.groups());
    values.put("address", kept(whole, words));
    values.put("code", codeNumber);
    return values;
  }

  /** A text in Latin letters or digits, in its own order within any language. */
  static String kept(String text, Words words) {
    return words.rightToLeft() ? LEFT_TO_RIGHT + text + LEFT_TO_RIGHT : text;
  }

  private static String greeting(JobView view) {
    String name = view.job().firstName().strip();
    return name.isEmpty()
        ? view.words().text("handout.card.greeting-nameless")
        : view.words().text("handout.card.greeting", Map.of("name", name));
  }

  /** The caution that clear sight comes first, or nothing where no date touches it. */
  static String sight(JobView view, List<Release> dates) {
    boolean touched = dates.stream().anyMatch(r -> SIGHT.contains(r.hold()));
    return touched ? view.words().text("handout.card.sight") : "";
  }

  /**
   * A date for a stamp: what, its link, and weekday, day and hour apart, the hour also without
   * whose it is.
   */
  static Map<String, String> stamp(JobView view, Release release) {
    Words words = view.words();
    When when = new When(view);
    ZoneId zone = when.zone(release);
    Instant at = release.end().at();
    Locale capitals = Locale.forLanguageTag(words.language());
    return Map.of(
        "what", words.text("hold." + release.hold() + ".short"),
        "link", link(words, release),
        "weekday", words.weekday(at, zone).toUpperCase(capitals),
        "day", words.monthDay(at, zone).toUpperCase(capitals),
        "hour", when.time(release),
        "clock", when.clock(release),
        "ours", when.isOurs(release) ? words.text("handout.card.ours") : "");
  }

  /** A date for a list: what it is, its link, and the date on one line. */
  static Map<String, String> line(JobView view, Release release) {
    When when = new When(view);
    return Map.of(
        "what", view.words().text("hold." + release.hold() + ".short"),
        "link", link(view.words(), release),
        "when", when.shortDay(release) + " · " + when.time(release));
  }

  private static String link(Words words, Release release) {
    String link = release.end() instanceof Release.AskUs ? "ask" : release.kind().id();
    return words.text("handout.card." + link);
  }
}
