package curewindow.guide;

/**
 * Limits that no written guide meets, but without which the Markdown library takes long or runs out
 * of stack: its time grows with the square of a paragraph's length.
 */
final class GuideLimits {

  /** The most characters a guide may have. */
  static final int MAX_GUIDE = 200_000;

  /** The most characters that may stand without an empty line between them. */
  static final int MAX_STRETCH = 20_000;

  /** The most marks such as {@code >}, {@code -} or {@code *} that a line may start with. */
  static final int MAX_MARKS = 300;

  private GuideLimits() {}

  /** Reports what is too long to be read. */
  static void check(GuideSource source) {
    String text = source.text();
    if (text.length() > MAX_GUIDE) {
      source.error(
          "too-long",
          "the guide has more than " + MAX_GUIDE + " characters",
          "split it into several guides");
      return;
    }
    int stretch = 0;
    int start = 0;
    while (start < text.length() && !source.hasErrors()) {
      int end = endOfLine(text, start);
      checkMarks(source, start, end);
      stretch = text.substring(start, end).isBlank() ? 0 : stretch + end - start + 1;
      if (stretch > MAX_STRETCH && !source.hasErrors()) {
        source.error(
            "too-long",
            start,
            "more than " + MAX_STRETCH + " characters stand without an empty line between them",
            "put an empty line between paragraphs");
      }
      start = end + 1;
    }
  }

  private static int endOfLine(String text, int start) {
    int end = start;
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    return end;
  }

  private static void checkMarks(GuideSource source, int start, int end) {
    int marks = 0;
    for (int i = start; i < end; i++) {
      char c = source.text().charAt(i);
      if (">-+*_".indexOf(c) >= 0) {
        marks++;
      } else if (c != ' ' && c != '\t') {
        break;
      }
    }
    if (marks > MAX_MARKS) {
      GuideCheck.tooDeep(source, start);
    }
  }
}
