package curewindow.page;

import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The places of a long text that a pattern finds, looked for only where a sign stands with which
 * all that it finds begins: on a page several times as quick as the pattern alone.
 *
 * @param begin what everything begins with that the pattern finds
 * @param pattern the pattern
 */
record Spots(String begin, Pattern pattern) {

  Spots(String begin, String pattern) {
    this(begin, Pattern.compile(pattern));
  }

  /** Shows each place, in order; no two share a sign. */
  void each(String text, Consumer<MatchResult> found) {
    Matcher matcher = pattern.matcher(text);
    for (int at = text.indexOf(begin); at >= 0; ) {
      matcher.region(at, text.length());
      boolean isOne = matcher.lookingAt();
      int next = isOne ? matcher.end() : at + begin.length();
      if (isOne) {
        found.accept(matcher);
      }
      at = text.indexOf(begin, next);
    }
  }

  /** The text with something else in each place, as it stands. */
  String replaced(String text, Function<MatchResult, String> by) {
    StringBuilder out = new StringBuilder(text.length());
    int[] copied = {0};
    each(
        text,
        found -> {
          out.append(text, copied[0], found.start()).append(by.apply(found));
          copied[0] = found.end();
        });
    return out.append(text, copied[0], text.length()).toString();
  }
}
