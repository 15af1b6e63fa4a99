package curewindow.guide;

/**
 * Limits that no written guide meets, but without which the Markdown library takes long or runs out
 * of stack: its time grows with the square of a paragraph's length, and faster with the square of
 * how many signs it has that begin something.
 */
final class GuideLimits {

  /** The most characters a guide may have. */
  static final int MAX_GUIDE = 200_000;

  /** The most characters that may stand without an empty line between them. */
  static final int MAX_STRETCH = 20_000;

  /** The most marks such as {@code >}, {@code -} or {@code *} that a line may start with. */
  static final int MAX_MARKS = 300;

  /** The most signs that may stand without an empty line between them and begin something. */
  static final int MAX_SIGNS = 600;

  private static final String SIGNS = "`*_[<(&";

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
    int signs = 0;
    int start = 0;
    while (start < text.length() && !source.hasErrors()) {
      int end = endOfLine(text, start);
      checkMarks(source, start, end);
      String line = text.substring(start, end);
      stretch = line.isBlank() ? 0 : stretch + line.length() + 1;
      signs = line.isBlank() ? 0 : signs + signs(line);
      if (stretch > MAX_STRETCH) {
        tooLong(source, start, MAX_STRETCH + " characters");
      } else if (signs > MAX_SIGNS) {
        tooLong(source, start, MAX_SIGNS + " signs such as * ` [ and <");
      }
      start = end + 1;
    }
  }

  private static int signs(String line) {
    return (int) line.chars().filter(c -> SIGNS.indexOf(c) >= 0).count();
  }

  private static void tooLong(GuideSource source, int start, String what) {
    if (!source.hasErrors()) {
      source.error(
          "too-long",
          start,
          "more than " + what + " stand without an empty line between them",
          "put an empty line between paragraphs");
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
