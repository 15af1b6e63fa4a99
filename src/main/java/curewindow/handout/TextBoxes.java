package curewindow.handout;

import curewindow.problem.Nearest;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.Stream;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * Fits the texts of a document into their boxes. An element with {@code data-box="50mm 2 9pt bold"}
 * has room for two lines of 50 mm, starting from 9 pt, in the font {@code bold}. With {@code
 * data-whole="address"} it is never cut, as people type what it says: where it does not fit, that
 * is a mistake of this entry of shop.yaml. A shorter text in {@code data-else} is tried before
 * that, and before a text is cut. All texts of a handout with the same {@code data-same} get the
 * size of the smallest.
 */
final class TextBoxes {

  private static final String MARK = "data-box";
  private static final String WHOLE = "data-whole";
  private static final String ELSE = "data-else";
  private static final String SAME = "data-same";
  private static final List<String> FONTS =
      Stream.of(PaperFont.TEXT, PaperFont.BOLD, PaperFont.NARROW, PaperFont.NARROW_BOLD)
          .map(PaperFont::id)
          .toList();

  private final String file;
  private final double smallest;
  private final Problems problems;
  private final Set<String> told = new HashSet<>();

  /**
   * Boxes of one template.
   *
   * @param file the template's file, which is named in problems
   * @param smallest the least size of any text, points
   * @param problems where mistakes are told
   */
  TextBoxes(String file, double smallest, Problems problems) {
    this.file = file;
    this.smallest = smallest;
    this.problems = problems;
  }

  void fit(Document document) {
    NodeList all = document.getElementsByTagName("*");
    List<Text> texts = new ArrayList<>();
    for (int i = 0; i < all.getLength(); i++) {
      if (all.item(i) instanceof Element element && element.hasAttribute(MARK)) {
        box(element.getAttribute(MARK)).ifPresent(box -> texts.add(fitted(element, box)));
      }
    }
    Map<Set<Object>, Double> least = new HashMap<>();
    for (Text text : texts) {
      text.group().ifPresent(group -> least.merge(group, text.size(), Math::min));
    }
    for (Text text : texts) {
      set(text.group().map(least::get).map(text::upTo).orElse(text));
    }
  }

  private Text fitted(Element element, TextBox box) {
    Text first = Text.of(element, element.getTextContent(), box);
    if (first.lines().whole()) {
      return first;
    }
    Text last =
        element.hasAttribute(ELSE) ? Text.of(element, element.getAttribute(ELSE), box) : first;
    if (!last.lines().whole() && element.hasAttribute(WHOLE)) {
      tellTooLong(element.getAttribute(WHOLE), last.text().replace(TextBox.MAY_BREAK, ""));
    }
    return last;
  }

  /** A text in the box of its element. */
  private record Text(
      Element element, String text, TextBox box, PaperFont font, TextBox.Fitted lines) {

    static Text of(Element element, String text, TextBox box) {
      String shown = withoutVowelSigns(text);
      PaperFont font = box.font().covering(shown);
      return new Text(element, text, box, font, box.in(font).fit(printable(shown, font)));
    }

    /** Its size, as if it were set in the box's own font. */
    double size() {
      return lines.points() / font.scale();
    }

    Text upTo(double size) {
      return size < size() ? of(element, text, box.upTo(size)) : this;
    }

    /** What it shares its size with: the texts of the same mark on the same handout. */
    Optional<Set<Object>> group() {
      if (!element.hasAttribute(SAME)) {
        return Optional.empty();
      }
      Node handout = element;
      while (handout instanceof Element at && !at.hasAttribute("lang")) {
        handout = at.getParentNode();
      }
      return Optional.of(Set.of(element.getAttribute(SAME), handout));
    }
  }

  private static void set(Text text) {
    Element element = text.element();
    List<String> lines = text.lines().lines();
    element.setTextContent("");
    for (int i = 0; i < lines.size(); i++) {
      if (i > 0) {
        element.appendChild(
            element.getOwnerDocument().createElementNS(element.getNamespaceURI(), "br"));
      }
      String line = inOrder(lines.get(i), text.text());
      element.appendChild(element.getOwnerDocument().createTextNode(line));
    }
    element.setAttribute(
        "style",
        String.format(
            Locale.ROOT,
            "white-space:nowrap;font-family:'%s';font-weight:%d;font-size:%.2fpt;%s",
            text.font().family(),
            text.font().weight(),
            text.lines().points(),
            element.getAttribute("style")));
  }

  /** Each line by itself where a mark keeps the whole text in its own order. */
  private static String inOrder(String line, String whole) {
    String mark = whole.isEmpty() ? "" : whole.substring(0, 1);
    boolean kept = mark.equals(CommonWords.LEFT_TO_RIGHT) || mark.equals(CommonWords.RIGHT_TO_LEFT);
    return kept && whole.endsWith(mark) ? mark + line + mark : line;
  }

  private static String printable(String text, PaperFont font) {
    String lacking = font.lacking(text);
    return lacking.isEmpty() ? text : without(text, c -> lacking.indexOf(c) >= 0);
  }

  /** Nothing here can place them. */
  private static String withoutVowelSigns(String text) {
    return without(text, TextBoxes::isVowelSign);
  }

  /** A text without some signs. */
  static String without(String text, IntPredicate signs) {
    return text.codePoints()
        .filter(signs.negate())
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  /** Whether a character is an Arabic vowel sign. */
  static boolean isVowelSign(int c) {
    return c >= 0x064B && c <= 0x0652 || c == 0x0670;
  }

  private Optional<TextBox> box(String mark) {
    String[] parts = mark.strip().split("\\s+");
    try {
      if (parts.length == 4 && parts[0].endsWith("mm") && parts[2].endsWith("pt")) {
        double width = Double.parseDouble(parts[0].replace("mm", ""));
        int lines = Integer.parseInt(parts[1]);
        String[] sizes = parts[2].replace("pt", "").split("-", 2);
        double points = Double.parseDouble(sizes[sizes.length - 1]);
        double least = sizes.length == 2 ? Double.parseDouble(sizes[0]) : smallest;
        Optional<PaperFont> font = PaperFont.of(parts[3]);
        if (width > 0 && lines > 0 && least >= smallest && points >= least && font.isPresent()) {
          return Optional.of(new TextBox(width, lines, points, least, font.get()));
        }
      }
    } catch (NumberFormatException e) {
      // Told below, with all other mistakes of the mark.
    }
    tell(mark, parts[parts.length - 1]);
    return Optional.empty();
  }

  private void tellTooLong(String entry, String text) {
    if (told.add(entry)) {
      problems.add(
          Problem.error(
              "too-long-to-print",
              new Where("shop.yaml", 0, 0, entry),
              entry
                  + " is too long: \""
                  + text
                  + "\" does not fit whole where "
                  + file
                  + " has room for it",
              "shorten it, choose a larger handout, or give it more room in the template"));
    }
  }

  private void tell(String mark, String font) {
    String hint = Nearest.to(font, FONTS).map(near -> " (did you mean " + near + "?)").orElse("");
    problems.add(
        Problem.error(
            "template-mistake",
            Where.file(file),
            "data-box=\"" + mark + "\" is not a box",
            String.format(
                    Locale.ROOT,
                    "write width, lines, size (%spt or more) and font, such as 50mm 2 12pt bold;"
                        + " fonts are ",
                    smallest)
                + String.join(", ", FONTS)
                + hint));
  }
}
