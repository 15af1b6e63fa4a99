package curewindow.guide;

import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.Optional;

/** Reads what stands between two marks, such as {@code (= shop.name =)} or {@code (? else ?)}. */
final class Marked {

  /** How many characters a mark that opens or closes has. */
  static final int MARK = 2;

  private Marked() {}

  /** Whether a text starts with an opening mark. */
  static boolean opens(BasedSequence text, char sign) {
    return text.length() >= MARK && text.charAt(0) == '(' && text.charAt(1) == sign;
  }

  /**
   * The shortest text that is closed by its own mark.
   *
   * @param text starts with an opening mark
   * @param sign the sign of the marks
   * @return the text with both marks, or empty where they are not on one line
   */
  static Optional<BasedSequence> first(BasedSequence text, char sign) {
    for (int i = MARK; i < text.length() - 1; i++) {
      char c = text.charAt(i);
      if (c == '\n' || c == '\r') {
        return Optional.empty();
      }
      if (c == sign && text.charAt(i + 1) == ')') {
        return Optional.of(text.subSequence(0, i + MARK));
      }
    }
    return Optional.empty();
  }

  /**
   * What stands between the marks, without the blanks around it.
   *
   * @param text starts with an opening mark
   * @param sign the sign of the marks
   * @return the text inside, or empty where the text does not end with the closing mark
   */
  static Optional<BasedSequence> inner(BasedSequence text, char sign) {
    int end = text.length() - MARK;
    boolean closed = end >= MARK && text.charAt(end) == sign && text.charAt(end + 1) == ')';
    return closed ? Optional.of(text.subSequence(MARK, end).trim()) : Optional.empty();
  }
}
