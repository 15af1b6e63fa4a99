package curewindow.handout;

import curewindow.cure.Release;
import curewindow.shop.FittedItem;
import curewindow.told.JobView;
import curewindow.told.Safety;
import curewindow.told.When;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The values of the care sheet: one stamped date, the picture of the days, and five rules. */
final class CareWords {

  private static final int RULES = 5;

  /** How many dates the picture has room for. */
  private static final int ROWS = 9;

  private CareWords() {}

  /** All dates on the sheet: those in its picture, and those that its rules tell. */
  static List<Release> dates(JobView view) {
    return Stream.concat(pictured(view).stream(), ruled(view).stream()).distinct().toList();
  }

  static Map<String, Object> of(JobView view, int codeNumber) {
    Words words = view.words();
    Map<String, Object> sheet = CommonWords.of(view, codeNumber);
    List<Release> urgent = UrgentDates.of(view, 1);
    sheet.put("dates", urgent.stream().map(r -> CommonWords.stamp(view, r)).toList());
    sheet.put("strip", DayStrip.of(view, pictured(view)));
    sheet.put("rules", rules(view));
    sheet.put("sight", Safety.of(dates(view), view));
    sheet.put("street", CommonWords.kept(String.join(", ", view.shop().street()), words));
    for (String key : List.of("days", "key", "five", "maker")) {
      sheet.put(key, words.text("handout.care." + key));
    }
    return sheet;
  }

  /** The most urgent dates that are still to come at pickup, by date. */
  private static List<Release> pictured(JobView view) {
    return UrgentDates.of(view, ROWS).stream()
        .filter(r -> r.end().at().isAfter(view.timeline().pickup()))
        .sorted(java.util.Comparator.comparing((Release r) -> r.end().at()))
        .toList();
  }

  /** The dates that are told as rules: what must not be done yet, then what else matters. */
  private static List<Release> ruled(JobView view) {
    return UrgentDates.of(view, Integer.MAX_VALUE).stream()
        .filter(r -> r.end().at().isAfter(view.timeline().pickup()))
        .limit(RULES)
        .toList();
  }

  /** Dated rules; where there are fewer than five, what always holds for the services fitted. */
  private static List<String> rules(JobView view) {
    When when = new When(view);
    Words words = view.words();
    LinkedHashSet<String> rules = new LinkedHashSet<>();
    for (Release release : ruled(view)) {
      rules.add(
          words.text(
              "hold." + release.hold() + ".until", Map.of("when", when.dayAndTimeSet(release))));
    }
    always(view).stream().map(words::text).forEach(rules::add);
    return rules.stream().limit(RULES).toList();
  }

  private static List<String> always(JobView view) {
    List<String> keys = new ArrayList<>();
    for (FittedItem item : view.job().items()) {
      keys.add("handout.care.always." + item.service());
    }
    keys.add("handout.care.always.any");
    keys.add("handout.care.always.sun");
    keys.add("handout.care.always.soap");
    keys.add("handout.care.always.ask");
    return keys.stream().distinct().filter(view.words()::has).toList();
  }
}
