package curewindow.handout;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Pictures in a template or a style sheet for paper, which show none but what the program draws.
 */
final class DroppedPictures {

  /** Elements that bring a picture; an object of the program's own kinds is drawn. */
  private static final Pattern ELEMENT =
      Pattern.compile(
          "(?i)<(img|svg|image|picture|embed|video|canvas|iframe|input(?=[^>]*type=.image)"
              + "|[a-z]+:(?:img|svg|image)"
              + "|object(?![^>]*type=[\"']application/x-))(?=[\\s/>])");

  /** In a style sheet, or in a style attribute; a font is no picture. */
  private static final Pattern STYLE =
      Pattern.compile(
          "(?i)(background(?:-image)?|border-image(?:-source)?|list-style(?:-image)?|content"
              + "|mask(?:-image)?|cursor)\\s*:[^;{}\"<>]*?url\\(");

  private static final Pattern HTML_COMMENT = Pattern.compile("(?s)<!--.*?-->");
  private static final Pattern STYLE_COMMENT = Pattern.compile("(?s)/\\*.*?\\*/");

  private DroppedPictures() {}

  /** The pictures of a template. */
  static List<Problem> ofPage(String file, String html) {
    String text = blank(html, HTML_COMMENT);
    List<Problem> found = new ArrayList<>();
    Matcher element = ELEMENT.matcher(text);
    while (element.find()) {
      String name = "<" + element.group(1).toLowerCase(java.util.Locale.ROOT) + ">";
      found.add(dropped(name, file, text, element.start()));
    }
    found.addAll(ofStyle(file, text));
    return found;
  }

  /** The pictures of a style sheet. */
  static List<Problem> ofStyle(String file, String css) {
    String text = blank(css, STYLE_COMMENT);
    List<Problem> found = new ArrayList<>();
    Matcher style = STYLE.matcher(text);
    while (style.find()) {
      found.add(dropped(style.group(1) + ": url(...)", file, text, style.start()));
    }
    return found;
  }

  /** The same text, with blanks for what is commented out, so that all else stays in its place. */
  private static String blank(String text, Pattern comment) {
    return comment.matcher(text).replaceAll(m -> m.group().replaceAll("[^\\n]", " "));
  }

  private static Problem dropped(String what, String file, String text, int at) {
    String before = text.substring(0, at);
    int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
    int column = at - (before.lastIndexOf('\n') + 1) + 1;
    return Problem.notice(
        "picture-dropped",
        new Where(file, line, column, ""),
        "paper shows no picture of a template's own, so " + what + " is left out",
        "delete it, or draw it with borders and plain colors in the style sheet");
  }
}
