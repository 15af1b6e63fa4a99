package curewindow.shop;

/** Finds characters that have no business in a file people write. */
final class PlainText {

  private PlainText() {}

  /**
   * Reports the first character that YAML or a reader would stumble over: a NUL or other control
   * character, or a tab at the start of a line.
   *
   * @return true where there is one
   */
  static boolean hasOddCharacters(String text, Source source) {
    int line = 1;
    int start = 0;
    boolean indent = true;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\t' && indent || isOdd(c)) {
        tell(c, line, i - start + 1, source);
        return true;
      }
      indent = c == '\n' || indent && c == ' ';
      if (c == '\n') {
        line++;
        start = i + 1;
      }
    }
    return false;
  }

  private static void tell(char c, int line, int column, Source source) {
    if (c == '\t') {
      source.error(
          "tab",
          line,
          column,
          "a tab stands at the start of the line",
          "indent with spaces; YAML does not take tabs there");
    } else {
      source.error(
          "control-character",
          line,
          column,
          "an invisible control character " + Source.shown(String.valueOf(c)) + " stands here",
          "delete it, or save the file again as plain text");
    }
  }

  private static boolean isOdd(char c) {
    return c != '\n' && c != '\r' && c != '\t' && Character.getType(c) == Character.CONTROL
        || c == '\uFEFF'
        || c == '\uFFFE'
        || c == '\uFFFF';
  }
}
