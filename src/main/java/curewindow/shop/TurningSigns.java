package curewindow.shop;

import java.util.OptionalInt;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Invisible signs that turn the direction of the text after them, so that people read another text
 * than the one that is written: embeddings and overrides (U+202A to U+202E), and isolates (U+2066
 * to U+2068) that are not closed (U+2069) in the same line. Closed isolates keep a value with its
 * own direction from disturbing the rest, and stay.
 */
public final class TurningSigns {

  /** What to do about one. */
  public static final String FIX =
      "delete it, or let U+2069 in the same line end what U+2066, U+2067 or U+2068 begins";

  private static final Pattern SIGN =
      Pattern.compile(
          "([\\u202a-\\u202e\\u2066-\\u2069])"
              + "|&#(?:x0*(202[a-e]|206[6-9])(?![0-9a-f])|0*(823[4-8]|829[4-7])(?![0-9]))|\\n",
          Pattern.CASE_INSENSITIVE);

  private static final int CLOSES = 0x2069;

  private TurningSigns() {}

  /**
   * Where the first such sign stands in a text, itself or by its number in HTML.
   *
   * @param text any text
   * @return its offset, or empty where there is none
   */
  public static OptionalInt first(String text) {
    int open = 0;
    int begin = 0;
    Matcher found = SIGN.matcher(text);
    while (found.find()) {
      int sign = sign(found);
      if (sign == '\n' && open > 0) {
        return OptionalInt.of(begin);
      }
      boolean isStray = sign == CLOSES && open == 0;
      if (isStray || sign >= 0x202A && sign <= 0x202E) {
        return OptionalInt.of(found.start());
      }
      if (sign != '\n') {
        begin = open == 0 ? found.start() : begin;
        open += sign == CLOSES ? -1 : 1;
      }
    }
    return open > 0 ? OptionalInt.of(begin) : OptionalInt.empty();
  }

  private static int sign(MatchResult found) {
    if (found.group(2) != null) {
      return Integer.parseInt(found.group(2), 16);
    }
    return found.group(3) != null ? Integer.parseInt(found.group(3)) : found.group().charAt(0);
  }
}
