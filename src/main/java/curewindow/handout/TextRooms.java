package curewindow.handout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;

/** Makes texts smaller that stand one below the other, until they are no higher than their room. */
final class TextRooms {

  private static final String ROOM = "data-room";
  private static final Pattern MARK = Pattern.compile("(\\d+(?:\\.\\d+)?)mm (\\d(?:\\.\\d+)?)");
  private static final double STEP = 0.25;
  private static final double MILLIMETRES_PER_POINT = 25.4 / 72;

  private TextRooms() {}

  /**
   * The texts in their order; those that stand in a room fit into it as far as they may shrink.
   *
   * @param wrong takes a mark that is no room
   */
  static List<BoxedText> fitted(List<BoxedText> texts, Consumer<String> wrong) {
    List<BoxedText> fitted = new ArrayList<>(texts);
    Map<Element, List<Integer>> rooms = new LinkedHashMap<>();
    for (int i = 0; i < texts.size(); i++) {
      int place = i;
      texts
          .get(i)
          .above(ROOM)
          .ifPresent(room -> rooms.computeIfAbsent(room, r -> new ArrayList<>()).add(place));
    }
    rooms.forEach(
        (room, places) -> {
          Matcher mark = MARK.matcher(room.getAttribute(ROOM));
          if (mark.matches()) {
            double lines = Double.parseDouble(mark.group(2));
            fit(Double.parseDouble(mark.group(1)) / lines, fitted, places);
          } else {
            wrong.accept(room.getAttribute(ROOM));
          }
        });
    return fitted;
  }

  /** The largest ones give way first; where all are small, what can be spared goes. */
  private static void fit(double most, List<BoxedText> texts, List<Integer> places) {
    List<BoxedText> before = places.stream().map(texts::get).toList();
    shrink(most, texts, places);
    if (high(texts, places) > most && before.stream().anyMatch(BoxedText::isSpare)) {
      for (int i = 0; i < before.size(); i++) {
        BoxedText text = before.get(i);
        texts.set(places.get(i), text.isSpare() ? text.left() : text);
      }
      shrink(most, texts, places);
    }
  }

  private static void shrink(double most, List<BoxedText> texts, List<Integer> places) {
    double top = places.stream().mapToDouble(p -> size(texts.get(p))).max().orElse(0);
    double least = places.stream().mapToDouble(p -> texts.get(p).box().least()).min().orElse(0);
    for (double size = top; size > least - STEP && high(texts, places) > most; size -= STEP) {
      double now = size;
      places.forEach(p -> texts.set(p, texts.get(p).upTo(now)));
    }
  }

  private static double high(List<BoxedText> texts, List<Integer> places) {
    return places.stream()
        .map(texts::get)
        .mapToDouble(t -> t.fitted().lines().size() * size(t) * MILLIMETRES_PER_POINT)
        .sum();
  }

  private static double size(BoxedText text) {
    return text.fitted().points();
  }
}
