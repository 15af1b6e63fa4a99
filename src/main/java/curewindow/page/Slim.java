package curewindow.page;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes out of a page what only its writers need: indents, empty lines and notes. */
final class Slim {

  private static final Pattern NOTE = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);
  private static final Pattern KEPT =
      Pattern.compile("<(pre|textarea)\\b.*?</\\1>", Pattern.DOTALL | Pattern.CASE_INSENSITIVE);

  private Slim() {}

  static String style(String css) {
    return lines(NOTE.matcher(css).replaceAll(""), "");
  }

  /** Whole-line notes only, so that no text inside the script can be hurt. */
  static String script(String js) {
    return lines(Pattern.compile("(?m)^\\s*//.*$").matcher(js).replaceAll(""), "\n");
  }

  static String html(String html) {
    StringBuilder out = new StringBuilder();
    Matcher kept = KEPT.matcher(html);
    int at = 0;
    while (kept.find()) {
      out.append(lines(html.substring(at, kept.start()), "\n")).append('\n').append(kept.group());
      at = kept.end();
    }
    String rest = lines(html.substring(at), "\n");
    return out.append(at > 0 && !rest.isEmpty() ? "\n" : "").append(rest).append('\n').toString();
  }

  private static String lines(String text, String between) {
    return String.join(
        between, text.lines().map(String::strip).filter(line -> !line.isEmpty()).toList());
  }
}
