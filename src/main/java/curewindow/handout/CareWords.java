package curewindow.handout;

import curewindow.cure.Release;
import curewindow.guide.JobFacts;
import curewindow.shop.FittedItem;
import curewindow.told.JobView;
import curewindow.told.Listing;
import curewindow.words.Isolates;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What only the care sheet has: the table of the days, lasting advice, and what was fitted. */
final class CareWords {

  static final String DATES = "dates";
  private static final String RULES = "rules";

  private CareWords() {}

  /**
   * The values.
   *
   * @param dates those in the table, by date
   * @param all how many there are
   * @param room how much of each list has room
   */
  static Map<String, Object> of(
      JobView view, List<Release> dates, int all, ListRoom room, int codeNumber) {
    Words words = view.words();
    boolean brief = room.isBrief(codeNumber);
    Map<String, Object> sheet = new LinkedHashMap<>();
    sheet.put("strip", DayStrip.of(view, dates));
    sheet.put("moreDates", more(words, all - dates.size()));
    sheet.put("always", always(view).stream().limit(room.of(RULES, codeNumber)).toList());
    sheet.put("fitted", brief ? FittedInBrief.of(view) : fitted(view));
    sheet.put("brief", brief);
    sheet.put("work", words.text("handout.care." + (brief ? "warranty" : "work")));
    for (String list : List.of(DATES, RULES, ListRoom.BRIEF)) {
      sheet.put(list + "List", ListRoom.name(list, codeNumber));
    }
    sheet.put("street", Isolates.own(String.join(", ", view.shop().street()), words));
    String pickup = words.monthDay(view.timeline().pickup(), view.timeline().zone());
    sheet.put("pickup", pickup);
    sheet.put("pickedUp", words.text("handout.care.picked-up", Map.of("date", pickup)));
    for (String key : List.of("days", "key", "care", "maker")) {
      sheet.put(key, words.text("handout.care." + key));
    }
    return sheet;
  }

  /** That the page has more than the sheet has room for; empty where it has not. */
  private static String more(Words words, int number) {
    return number > 0 ? words.text("handout.care.more", Map.of("n", number)) : "";
  }

  /** One line for each piece of work: its film, the spots, and the warranty where there is one. */
  private static List<String> fitted(JobView view) {
    return view.job().items().stream().map(item -> fitted(view, item)).distinct().toList();
  }

  private static String fitted(JobView view, FittedItem item) {
    Words words = view.words();
    Map<String, String> said = new HashMap<>();
    said.put("film", JobFacts.filmName(view, item));
    said.put(
        "spots",
        Listing.of(item.spots().stream().map(s -> words.text("spot." + s)).toList(), words));
    Optional<String> warranty = JobFacts.warranty(view, item);
    warranty.ifPresent(until -> said.put("warranty", until));
    return words.text("handout.care." + (warranty.isEmpty() ? "fitted" : "fitted-warranty"), said);
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
    return keys.stream().distinct().filter(view.words()::has).map(view.words()::text).toList();
  }
}
