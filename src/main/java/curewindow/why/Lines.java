package curewindow.why;

import java.text.Normalizer;
import java.util.Locale;

/** Collects lines for a terminal, none wider than 80 columns. */
final class Lines {

  /** The widest line, characters. */
  static final int WIDTH = 80;

  private final boolean plain;
  private final StringBuilder out = new StringBuilder();

  Lines(boolean plain) {
    this.plain = plain;
  }

  /** An empty line. */
  void gap() {
    out.append('\n');
  }

  /** Text, broken between words where it is too wide; what follows is indented a little more. */
  void say(int indent, String format, Object... values) {
    String text = fit(values.length == 0 ? format : String.format(Locale.ROOT, format, values));
    String margin = " ".repeat(indent);
    StringBuilder line = new StringBuilder(margin);
    boolean empty = true;
    for (String word : text.split(" ")) {
      if (!empty && length(line) + 1 + length(word) > WIDTH) {
        out.append(line).append('\n');
        margin = " ".repeat(indent + 2);
        line = new StringBuilder(margin);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
      while (length(line) > WIDTH) {
        int cut = line.offsetByCodePoints(0, WIDTH);
        out.append(line, 0, cut).append('\n');
        line = new StringBuilder(margin).append(line.substring(cut));
      }
    }
    out.append(line).append('\n');
  }

  /** A row of a table, taken as it is but for spaces at its end. */
  void row(String row) {
    out.append(fit(row).stripTrailing()).append('\n');
  }

  /** The sign of something, in the terminal's characters. */
  String sign(Sign sign) {
    return plain ? sign.plain : sign.drawn;
  }

  String text() {
    return out.toString();
  }

  private static int length(CharSequence text) {
    return Character.codePointCount(text, 0, text.length());
  }

  private String fit(String text) {
    return plain
        ? Normalizer.normalize(text, Normalizer.Form.NFD)
            .replaceAll("\\p{M}", "")
            .replaceAll("[^\\x20-\\x7e]", "?")
        : text;
  }

  /** What bars are made of. */
  enum Sign {
    /** Filled. */
    FULL("\u2588", "#"),
    /** Filled in the median weather. */
    HALF("\u2592", "+"),
    /** Not filled. */
    EMPTY("\u00b7", ".");

    private final String drawn;
    private final String plain;

    Sign(String drawn, String plain) {
      this.drawn = drawn;
      this.plain = plain;
    }
  }
}
