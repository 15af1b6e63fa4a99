package curewindow.handout;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * A text that is fitted into the box of its element.
 *
 * @param element where it stands
 * @param text the text as it was given
 * @param box its room
 * @param fitted its lines and their size
 */
record BoxedText(Element element, String text, TextBox box, TextBox.Fitted fitted) {

  private static final String SAME = "data-same";
  private static final String SPARE = "data-spare";
  private static final String ELSE = "data-else";
  private static final String WHOLE = "data-whole";
  private static final String TOLD = "data-told";

  /** Marks words that are shortened by whole sentences alone. */
  static final String WORDS = "words";

  private static final String ISOLATE = "\u2068";
  private static final String END = "\u2069";

  /** Fits the text of an element into a box, or the longest of its shorter texts that fits. */
  static BoxedText of(Element element, TextBox box) {
    BoxedText fitted = of(element, element.getTextContent(), box);
    while (!fitted.fitted.whole() && fitted.shorter().isPresent()) {
      fitted = fitted.shorter().get();
    }
    return fitted;
  }

  private static BoxedText of(Element element, String text, TextBox box) {
    return new BoxedText(element, text, box, box.fit(PaperSigns.printable(text)));
  }

  /** What may stand in place of the text: with its last sentence left out, or its other text. */
  Optional<BoxedText> shorter() {
    if (whole().equals(WORDS)) {
      return Sentences.shorter(text).stream().findFirst().map(less -> of(element, less, box));
    }
    return Optional.of(element.getAttribute(ELSE))
        .filter(other -> element.hasAttribute(ELSE) && !other.equals(text))
        .map(other -> of(element, other, box));
  }

  /** Whose text must not be cut: an entry of shop.yaml, or words; empty where it may be. */
  String whole() {
    return element.getAttribute(WHOLE);
  }

  /** The entry of shop.yaml that is told where it had to be cut; empty where it was not. */
  Optional<String> cut() {
    return Optional.of(element.getAttribute(TOLD)).filter(e -> !e.isEmpty() && !fitted.whole());
  }

  /** The same text, no larger than a size in points. */
  BoxedText upTo(double size) {
    boolean smaller = size < fitted.points() && !fitted.lines().isEmpty();
    return smaller ? of(element, text, box.upTo(size)) : this;
  }

  /** The same text in the size in points of others, if that is smaller. */
  BoxedText like(double size) {
    if (size >= fitted.points() || fitted.lines().isEmpty()) {
      return this;
    }
    TextBox same = box.upTo(size);
    return new BoxedText(element, text, same, same.inItsSize(PaperSigns.printable(text)));
  }

  /** Whether it may be left out where all else would not fit. */
  boolean isSpare() {
    return element.hasAttribute(SPARE) && !fitted.lines().isEmpty();
  }

  /** The same box without its text. */
  BoxedText left() {
    return new BoxedText(element, text, box, new TextBox.Fitted(List.of(), fitted.points(), true));
  }

  /** What it shares its size with: the texts of the same mark on the same handout. */
  Optional<Set<Object>> group() {
    return Optional.of(element.getAttribute(SAME))
        .filter(same -> !same.isEmpty())
        .map(same -> Set.of(same, above("lang").<Object>map(e -> e).orElse("")));
  }

  /** The element itself or the nearest one round it that has an attribute. */
  Optional<Element> above(String attribute) {
    return above(element, attribute);
  }

  /** An element itself or the nearest one round it that has an attribute. */
  static Optional<Element> above(Element element, String attribute) {
    for (Node at = element; at instanceof Element one; at = at.getParentNode()) {
      if (one.hasAttribute(attribute)) {
        return Optional.of(one);
      }
    }
    return Optional.empty();
  }

  /** Puts the lines into the element. */
  void set() {
    List<String> lines = fitted.lines();
    element.setTextContent("");
    for (int i = 0; i < lines.size(); i++) {
      if (i > 0) {
        element.appendChild(
            element.getOwnerDocument().createElementNS(element.getNamespaceURI(), "br"));
      }
      element.appendChild(element.getOwnerDocument().createTextNode(inOrder(lines.get(i))));
    }
    element.setAttribute(
        "style",
        String.format(
            Locale.ROOT,
            "white-space:nowrap;font-family:%s;font-weight:%d;font-size:%.2fpt;%s",
            box.font().families(String.join(" ", lines)).stream()
                .collect(Collectors.joining("','", "'", "'")),
            box.font().weight(),
            fitted.points(),
            element.getAttribute("style")));
  }

  /** Each line by itself where the whole text is isolated. */
  private String inOrder(String line) {
    return text.startsWith(ISOLATE) && text.endsWith(END)
        ? ISOLATE + line.replace(ISOLATE, "").replace(END, "") + END
        : line;
  }
}
