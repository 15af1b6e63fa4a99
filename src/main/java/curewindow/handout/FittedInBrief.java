package curewindow.handout;

import curewindow.guide.JobFacts;
import curewindow.shop.FittedItem;
import curewindow.told.JobView;
import curewindow.told.Listing;
import curewindow.words.Isolates;
import curewindow.words.Words;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/**
 * What was fitted, where there is no room for a line each: the films by the day on which their
 * warranty ends, without the spots.
 */
final class FittedInBrief {

  private static final char NO_BREAK = '\u00A0';

  private FittedInBrief() {}

  /** One text with all warranties, and one with the films that have none. */
  static List<String> of(JobView view) {
    Words words = view.words();
    Map<String, List<String>> ends = new LinkedHashMap<>();
    for (FittedItem item : view.job().items()) {
      String film = whole(Isolates.own(JobFacts.filmName(view, item), words));
      List<String> films = ends.computeIfAbsent(end(view, item), e -> new ArrayList<>());
      if (!films.contains(film)) {
        films.add(film);
      }
    }
    List<String> without = ends.remove("");
    List<String> said = new ArrayList<>();
    if (!ends.isEmpty()) {
      String all =
          ends.entrySet().stream()
              .map(e -> until(e.getKey(), e.getValue(), words))
              .collect(Collectors.joining(NO_BREAK + "· "));
      said.add(all);
    }
    if (without != null) {
      Map<String, String> films = Map.of("films", Listing.of(without, words));
      said.add(words.text("handout.care.no-warranty", films));
    }
    return said;
  }

  private static String until(String end, List<String> films, Words words) {
    return words.text(
        "handout.care.warranty-to", Map.of("films", Listing.of(films, words), "date", end));
  }

  /** The day on which a warranty ends; empty where there is none. */
  private static String end(JobView view, FittedItem item) {
    OptionalInt years = item.warrantyYears();
    ZoneId zone = view.timeline().zone();
    return years.isEmpty()
        ? ""
        : whole(
            view.words()
                .monthDay(
                    item.finished().atZone(zone).plusYears(years.getAsInt()).toInstant(), zone));
  }

  /** Kept on one line. */
  private static String whole(String text) {
    return text.replace(' ', NO_BREAK);
  }
}
