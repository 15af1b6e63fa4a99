package curewindow.handout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Makes texts that stand one below the other no higher than their room. The largest get smaller
 * first; where all are small, what can be spared goes, then rows of lists, from the last list to
 * the first, then shorter texts stand in, from the last text to the first.
 */
final class TextRoom {

  private static final String HIGH = "data-high";
  private static final String LIST = "data-list";
  private static final String KEEP = "data-keep";
  private static final double STEP = 0.25;
  private static final double MILLIMETRES_PER_POINT = 25.4 / 72;

  private final List<BoxedText> texts;
  private final double most;
  private final double line;

  /** What stands there beside texts, and how high it is. */
  private final Map<Element, Double> fixed = new LinkedHashMap<>();

  private final Map<String, List<Element>> lists = new LinkedHashMap<>();
  private final Map<String, Integer> rows = new HashMap<>();

  /**
   * A room.
   *
   * @param element what is round the texts
   * @param texts the texts, in their order
   * @param most how high they may be, millimetres
   * @param line how high a line is, by the size of its letters
   */
  TextRoom(Element element, List<BoxedText> texts, double most, double line) {
    this.texts = new ArrayList<>(texts);
    this.most = most;
    this.line = line;
    NodeList inside = element.getElementsByTagName("*");
    for (int i = 0; i < inside.getLength(); i++) {
      Element one = (Element) inside.item(i);
      if (one.hasAttribute(HIGH)) {
        fixed.put(one, millimetres(one.getAttribute(HIGH)));
      }
      if (one.hasAttribute(LIST)) {
        lists.computeIfAbsent(one.getAttribute(LIST), l -> new ArrayList<>()).add(one);
      }
    }
  }

  private static double millimetres(String length) {
    return length.matches("\\d+(\\.\\d+)?mm") ? Double.parseDouble(length.replace("mm", "")) : 0;
  }

  /** The texts as they fit, in their order. */
  List<BoxedText> texts() {
    return texts;
  }

  /** How many rows of a list fit, where not all do. */
  Map<String, Integer> rows() {
    return rows;
  }

  void fit() {
    List<BoxedText> before = List.copyOf(texts);
    shrink();
    if (isFull() && before.stream().anyMatch(BoxedText::isSpare)) {
      for (int i = 0; i < before.size(); i++) {
        texts.set(i, before.get(i).isSpare() ? before.get(i).left() : before.get(i));
      }
      shrink();
    }
    List<String> names = new ArrayList<>(lists.keySet());
    for (int i = names.size() - 1; i >= 0; i--) {
      dropRows(names.get(i));
    }
    for (int i = texts.size() - 1; i >= 0; i--) {
      shorten(i);
    }
  }

  private boolean isFull() {
    return high() > most;
  }

  private void shrink() {
    double top = texts.stream().mapToDouble(TextRoom::size).max().orElse(0);
    double least = texts.stream().mapToDouble(text -> text.box().least()).min().orElse(0);
    for (double size = top; size > least - STEP && isFull(); size -= STEP) {
      double now = size;
      texts.replaceAll(text -> isFlowing(text) ? text.upTo(now) : text);
    }
  }

  private void shorten(int place) {
    for (var less = texts.get(place).shorter();
        isFull() && less.isPresent() && !texts.get(place).fitted().lines().isEmpty();
        less = texts.get(place).shorter()) {
      texts.set(place, less.get().upTo(size(texts.get(place))));
    }
  }

  private void dropRows(String list) {
    List<Element> all = lists.get(list);
    int least = all.stream().mapToInt(TextRoom::keep).max().orElse(1);
    int left = all.size();
    while (left > least && isFull()) {
      left--;
      rows.put(list, left);
    }
  }

  private static int keep(Element row) {
    String keep = row.getAttribute(KEEP);
    return keep.matches("\\d{1,3}") ? Integer.parseInt(keep) : 1;
  }

  private double high() {
    double lines =
        texts.stream()
            .filter(text -> isFlowing(text) && isThere(text.element()))
            .mapToDouble(t -> t.fitted().lines().size() * size(t) * MILLIMETRES_PER_POINT * line)
            .sum();
    double beside =
        fixed.entrySet().stream()
            .filter(f -> isThere(f.getKey()))
            .mapToDouble(Map.Entry::getValue)
            .sum();
    return lines + beside;
  }

  /** Whether a text takes room of its own: not in something whose height is given. */
  private boolean isFlowing(BoxedText text) {
    return text.above(HIGH).map(e -> e == text.element()).orElse(true);
  }

  /** Whether something stands in no row that has no room. */
  private boolean isThere(Element element) {
    Optional<Element> row = BoxedText.above(element, LIST);
    return row.map(
            one -> {
              String list = one.getAttribute(LIST);
              return lists.get(list).indexOf(one) < rows.getOrDefault(list, Integer.MAX_VALUE);
            })
        .orElse(true);
  }

  private static double size(BoxedText text) {
    return text.fitted().points();
  }
}
