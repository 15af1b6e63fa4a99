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
import java.util.stream.Stream;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Fits the texts of a document into their boxes. An element with {@code data-box="50mm 2 9pt bold"}
 * has room for two lines of 50 mm, starting from 9 pt, in the font {@code bold}. With {@code
 * data-whole="address"} it is never cut, as people type what it says: where it does not fit, that
 * is a mistake of this entry of shop.yaml; with {@code data-whole="words"} it may lose its last
 * sentences, and no more. A shorter text in {@code data-else} is tried before that, and before a
 * text is cut. With {@code data-told="name"} it is told that this entry of shop.yaml was cut. All
 * texts of a handout with the same {@code data-same} get the size of the smallest. Those in an
 * element with {@code data-room="14mm 1.1"} are made no higher together than 14 mm, a line being
 * 1.1 of its size; see {@link TextRoom}.
 */
final class TextBoxes {

  private static final String MARK = "data-box";

  /** Where lines may break, and isolates. */
  private static final String UNSEEN = "[\u200B\u2066-\u2069]";

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

  /**
   * Fits all texts.
   *
   * @return how many rows of a list fit, where not all do
   */
  Map<String, Integer> fit(Document document) {
    NodeList all = document.getElementsByTagName("*");
    List<BoxedText> texts = new ArrayList<>();
    for (int i = 0; i < all.getLength(); i++) {
      if (all.item(i) instanceof Element element && element.hasAttribute(MARK)) {
        box(element.getAttribute(MARK)).ifPresent(box -> texts.add(fitted(element, box)));
      }
    }
    TextRooms.Fitted fitted = TextRooms.fitted(sameSize(texts), this::tellRoom);
    fitted.texts().forEach(BoxedText::set);
    fitted.texts().forEach(this::tellCut);
    return fitted.rows();
  }

  private static List<BoxedText> sameSize(List<BoxedText> texts) {
    Map<Set<Object>, Double> least = new HashMap<>();
    for (BoxedText text : texts) {
      text.group().ifPresent(group -> least.merge(group, text.fitted().points(), Math::min));
    }
    return texts.stream().map(t -> t.group().map(least::get).map(t::like).orElse(t)).toList();
  }

  private BoxedText fitted(Element element, TextBox box) {
    BoxedText fitted = BoxedText.of(element, box);
    if (!fitted.fitted().whole() && !fitted.whole().isEmpty()) {
      String text = fitted.text().replaceAll(UNSEEN, "");
      if (fitted.whole().equals(BoxedText.WORDS)) {
        tellTooLong(words(fitted), text);
      } else {
        tellTooLong(new Where("shop.yaml", 0, 0, fitted.whole()), text);
      }
    }
    return fitted;
  }

  /** Where the words of a text stand, as far as is known. */
  private static Where words(BoxedText text) {
    String language = text.above("lang").map(e -> e.getAttribute("lang")).orElse("");
    return Where.file("content/words/" + language);
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

  private void tellTooLong(Where where, String text) {
    if (told.add(where + text)) {
      problems.add(
          Problem.error(
              "too-long-to-print",
              where,
              (where.path().isEmpty() ? "this text" : where.path())
                  + " is too long: \""
                  + text
                  + "\" does not fit whole where "
                  + file
                  + " has room for it",
              "shorten it, choose a larger handout, or give it more room in the template"));
    }
  }

  private void tellCut(BoxedText text) {
    String entry = text.cut().orElse("");
    String kept = String.join(" ", text.fitted().lines()).replaceAll(UNSEEN, "");
    if (!entry.isEmpty() && told.add(entry + kept)) {
      problems.add(PaperProblems.cut(new Where("shop.yaml", 0, 0, entry), kept, file));
    }
  }

  private void tellRoom(String mark) {
    problems.add(
        Problem.error(
            "template-mistake",
            Where.file(file),
            "data-room=\"" + mark + "\" is not a room",
            "write its height and that of a line, such as 14mm 1.1"));
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
