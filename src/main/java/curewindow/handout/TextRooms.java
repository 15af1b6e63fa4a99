package curewindow.handout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;

/** The rooms of a document, in each of which texts stand one below the other. */
final class TextRooms {

  private static final String ROOM = "data-room";
  private static final Pattern MARK = Pattern.compile("(\\d+(?:\\.\\d+)?)mm (\\d(?:\\.\\d+)?)");

  private TextRooms() {}

  /**
   * What was made to fit.
   *
   * @param texts the texts in their order
   * @param rows how many rows of a list have room, where not all have
   */
  record Fitted(List<BoxedText> texts, Map<String, Integer> rows) {}

  /**
   * Fits the texts that stand in a room into it.
   *
   * @param wrong takes a mark that is no room
   */
  static Fitted fitted(List<BoxedText> texts, Consumer<String> wrong) {
    Map<Element, List<BoxedText>> rooms = new LinkedHashMap<>();
    for (BoxedText text : texts) {
      text.above(ROOM)
          .ifPresent(room -> rooms.computeIfAbsent(room, r -> new ArrayList<>()).add(text));
    }
    Map<Element, BoxedText> fitted = new HashMap<>();
    Map<String, Integer> rows = new HashMap<>();
    rooms.forEach(
        (element, all) -> {
          Matcher mark = MARK.matcher(element.getAttribute(ROOM));
          if (mark.matches()) {
            double line = Double.parseDouble(mark.group(2));
            TextRoom room = new TextRoom(element, all, Double.parseDouble(mark.group(1)), line);
            room.fit();
            room.texts().forEach(text -> fitted.put(text.element(), text));
            rows.putAll(room.rows());
          } else {
            wrong.accept(element.getAttribute(ROOM));
          }
        });
    List<BoxedText> all =
        texts.stream().map(text -> fitted.getOrDefault(text.element(), text)).toList();
    return new Fitted(all, rows);
  }
}
