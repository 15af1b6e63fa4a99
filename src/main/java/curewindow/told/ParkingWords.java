package curewindow.told;

import curewindow.cure.ParkingPlan;
import curewindow.words.Words;
import java.util.Map;

/** Where a car stands, in words that fit behind "stands". */
public final class ParkingWords {

  private ParkingWords() {}

  /**
   * A parking in words.
   *
   * @param plan where the car stands by day and by night
   * @param words the words of the language
   * @return such as "in a garage" or "outside by day, in a garage by night"
   */
  public static String of(ParkingPlan plan, Words words) {
    String day = words.text("parking." + plan.day().id());
    String night = words.text("parking." + plan.night().id());
    return day.equals(night) ? day : words.text("page.parking", Map.of("day", day, "night", night));
  }
}
