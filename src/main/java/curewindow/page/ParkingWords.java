package curewindow.page;

import curewindow.cure.ParkingPlan;
import curewindow.words.Words;
import java.util.List;
import java.util.Map;

/** Where a car stands, in words that fit behind "stands". */
final class ParkingWords {

  private ParkingWords() {}

  /** Such as "in a garage" or "outside by day, in a garage by night". */
  static String of(ParkingPlan plan, Words words) {
    String day = words.text("parking." + plan.day().id());
    String night = words.text("parking." + plan.night().id());
    return day.equals(night) ? day : words.text("page.parking", Map.of("day", day, "night", night));
  }

  /** Such as "outside in the shade or in a garage". */
  static String of(List<ParkingPlan> plans, Words words) {
    String line = of(plans.get(0), words);
    for (ParkingPlan plan : plans.subList(1, plans.size())) {
      line = words.text("parked.or", Map.of("first", line, "next", of(plan, words)));
    }
    return line;
  }
}
