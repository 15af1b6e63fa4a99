package curewindow.handout;

import curewindow.problem.Nearest;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Fits the texts of a document into their boxes. An element with {@code data-box="50mm 2 9pt bold"}
 * has room for two lines of 50 mm, starting from 9 pt, in the font {@code bold}. With {@code
 * data-whole="address"} it is never cut, as people type what it says: where it does not fit, that
 * is a mistake of this entry of shop.yaml. A shorter text in {@code data-else} is tried before
 * that.
 */
final class TextBoxes {

  private static final String MARK = "data-box";
  private static final String WHOLE = "data-whole";
  private static final String ELSE = "data-else";
  private static final List<String> FONTS =
      Arrays.stream(PaperFont.values()).map(PaperFont::id).toList();

  private final String file;
  private final Problems problems;
  private final Set<String> told = new HashSet<>();

  TextBoxes(String file, Problems problems) {
    this.file = file;
    this.problems = problems;
  }

  void fit(Document document) {
    NodeList all = document.getElementsByTagName("*");
    List<Element> marked = new ArrayList<>();
    for (int i = 0; i < all.getLength(); i++) {
      if (all.item(i) instanceof Element element && element.hasAttribute(MARK)) {
        marked.add(element);
      }
    }
    marked.forEach(this::fit);
  }

  private void fit(Element element) {
    Optional<TextBox> box = box(element.getAttribute(MARK));
    if (box.isEmpty()) {
      return;
    }
    set(element, fitted(element, box.get()));
  }

  private FittedText fitted(Element element, TextBox box) {
    FittedText first = FittedText.of(element.getTextContent(), box);
    if (first.lines().whole() || !element.hasAttribute(WHOLE)) {
      return first;
    }
    FittedText last =
        element.hasAttribute(ELSE) ? FittedText.of(element.getAttribute(ELSE), box) : first;
    if (!last.lines().whole()) {
      tellTooLong(element.getAttribute(WHOLE), last.text().replace(TextBox.MAY_BREAK, ""));
    }
    return last;
  }

  private record FittedText(String text, PaperFont font, TextBox.Fitted lines) {

    static FittedText of(String text, TextBox box) {
      PaperFont font = box.font().covering(text.replace(TextBox.MAY_BREAK, ""));
      return new FittedText(text, font, box.in(font).fit(printable(text, font)));
    }
  }

  private static void set(Element element, FittedText text) {
    List<String> lines = text.lines().lines();
    element.setTextContent("");
    for (int i = 0; i < lines.size(); i++) {
      if (i > 0) {
        element.appendChild(
            element.getOwnerDocument().createElementNS(element.getNamespaceURI(), "br"));
      }
      element.appendChild(element.getOwnerDocument().createTextNode(lines.get(i)));
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

  /** Without signs that the font lacks, and without Arabic vowel signs, which nothing can place. */
  private static String printable(String text, PaperFont font) {
    String lacking = font.lacking(text);
    return lacking.isEmpty() && !PaperFont.isRightToLeft(text)
        ? text
        : text.codePoints()
            .filter(c -> lacking.indexOf(c) < 0 && !isVowelSign(c))
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
        double least = sizes.length == 2 ? Double.parseDouble(sizes[0]) : TextBox.SMALLEST;
        Optional<PaperFont> font = PaperFont.of(parts[3]);
        if (width > 0
            && lines > 0
            && least >= TextBox.SMALLEST
            && points >= least
            && font.isPresent()) {
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
            "write width, lines, size (6.5pt or more) and font, such as 50mm 2 9pt bold; fonts are "
                + String.join(", ", FONTS)
                + hint));
  }
}
