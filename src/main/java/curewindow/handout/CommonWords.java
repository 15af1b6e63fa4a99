package curewindow.handout;

import curewindow.cure.Release;
import curewindow.shop.Hold;
import curewindow.told.JobView;
import curewindow.told.When;
import curewindow.words.Isolates;
import curewindow.words.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The values that every handout's template can show of one job. */
final class CommonWords {

  private static final String NO_BREAK = "\u00A0";

  private CommonWords() {}

  /** A map that the handout's own values are added to. */
  static Map<String, Object> of(JobView view, int codeNumber) {
    Words words = view.words();
    PrintedAddress address = PrintedAddress.of(view.address());
    String phone = Isolates.own(view.shop().phone(), words);
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("language", words.language());
    values.put("direction", words.rightToLeft() ? "rtl" : "ltr");
    values.put("shop", Isolates.own(view.shop().name(), words));
    values.put("logo", view.shop().look().logo().isPresent());
    values.put("phone", phone);
    values.put("call", words.text("handout.card.question") + " " + phone);
    values.put("greeting", greeting(view));
    values.put("nameless", nameless(view));
    values.put("car", Isolates.own(view.car(), words));
    values.put("type", words.text("handout.card.type"));
    values.put("site", Isolates.own(address.brokenSite(), words));
    values.put("groups", String.join(" ", address.groups()));
    String whole = address.brokenSite() + " " + String.join(NO_BREAK, address.groups());
    values.put("address", Isolates.own(whole, words));
    values.put("until", words.text("handout.card.until"));
    values.put("code", codeNumber);
    values.put("safe", words.text(mayGetWet(view) ? "handout.card.safe" : "handout.card.safe-dry"));
    return values;
  }

  /** Whether nothing that rain or the road could harm is still waiting at pickup. */
  private static boolean mayGetWet(JobView view) {
    return view.timeline().releases().stream()
        .filter(r -> view.timeline().isAhead(r))
        .noneMatch(r -> view.catalogue().is(r.hold(), Hold.Mark.ROAD));
  }

  /** Nobody is greeted with half a name, so not by one with signs that the fonts lack. */
  private static String greeting(JobView view) {
    String name = view.job().firstName().strip();
    return PaperProblems.canGreet(name)
        ? view.words()
            .text("handout.card.greeting", Map.of("name", Isolates.own(name, view.words())))
        : nameless(view);
  }

  private static String nameless(JobView view) {
    return view.words().text("handout.card.greeting-nameless");
  }

  /** A date for a stamp: what, its link, and weekday, day and hour apart. */
  static Map<String, String> stamp(JobView view, Release release) {
    Words words = view.words();
    ZoneId zone = view.timeline().zone();
    Instant at = release.end().at();
    boolean season = release.end() instanceof Release.BySeason;
    Locale capitals = Locale.forLanguageTag(words.language());
    When when = new When(view);
    return Map.of(
        "what", words.text("hold." + release.hold() + ".short"),
        "link", words.text("handout.card.until"),
        "weekday", season ? "" : words.weekday(at, zone).toUpperCase(capitals),
        "day", season ? when.shortDay(release) : words.monthDay(at, zone).toUpperCase(capitals),
        "hour", when.time(release));
  }

  /** A date for a list: what it is, its link, and the date on one line, with its weekday or not. */
  static Map<String, String> line(JobView view, Release release) {
    When when = new When(view);
    boolean season = release.end() instanceof Release.BySeason;
    String day =
        season
            ? when.shortDay(release)
            : view.words().monthDay(release.end().at(), view.timeline().zone());
    return Map.of(
        "what", view.words().text("hold." + release.hold() + ".short"),
        "link", view.words().text("handout.card.until"),
        "when", at(when.shortDay(release), when.time(release)),
        "brief", at(day, when.time(release)),
        "day", day);
  }

  private static String at(String day, String hour) {
    return hour.isEmpty() ? day : day + " · " + hour;
  }
}
