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

/** The values that a card's template can show of one job. */
final class CardWords {

  static final int DATES = 2;

  /** Holds that touch the driver's view: clear sight comes before the film. */
  private static final Set<String> SIGHT = Set.of("defroster", "demist", "wipers");

  private CardWords() {}

  static Map<String, Object> of(JobView view, int codeNumber) {
    Words words = view.words();
    List<Release> dates = UrgentDates.of(view, DATES);
    PrintedAddress address = PrintedAddress.of(view.address());
    Map<String, Object> card = new LinkedHashMap<>();
    card.put("language", words.language());
    card.put("direction", words.rightToLeft() ? "rtl" : "ltr");
    card.put("shop", view.shop().name());
    card.put("phone", view.shop().phone());
    card.put("greeting", greeting(view));
    card.put("car", view.job().car().text());
    card.put("dates", dates.stream().map(r -> date(view, r)).toList());
    card.put("sight", sight(view, dates));
    card.put("scan", words.text("handout.card.scan"));
    card.put("question", words.text("handout.card.question"));
    card.put("type", words.text("handout.card.type"));
    card.put("site", address.site());
    card.put("groups", address.groups());
    card.put("code", codeNumber);
    return card;
  }

  private static String greeting(JobView view) {
    String name = view.job().firstName().strip();
    return name.isEmpty()
        ? view.words().text("handout.card.greeting-nameless")
        : view.words().text("handout.card.greeting", Map.of("name", name));
  }

  private static String sight(JobView view, List<Release> dates) {
    boolean touched = dates.stream().anyMatch(r -> SIGHT.contains(r.hold()));
    return touched ? view.words().text("handout.card.sight") : "";
  }

  private static Map<String, String> date(JobView view, Release release) {
    Words words = view.words();
    When when = new When(view);
    ZoneId zone = when.zone(release);
    Instant at = release.end().at();
    Locale capitals = Locale.forLanguageTag(words.language());
    return Map.of(
        "what", words.text("hold." + release.hold() + ".short"),
        "link", words.text("handout.card." + link(release)),
        "weekday", words.weekday(at, zone).toUpperCase(capitals),
        "day", words.monthDay(at, zone).toUpperCase(capitals),
        "hour", when.time(release));
  }

  private static String link(Release release) {
    return release.end() instanceof Release.AskUs ? "ask" : release.kind().id();
  }
}
