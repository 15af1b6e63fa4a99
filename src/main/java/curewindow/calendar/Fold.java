package curewindow.calendar;

/**
 * Folds content lines at 75 octets of UTF-8 (RFC 5545 section 3.1), never inside a character. The
 * library counts letters instead, which makes lines of accented or right-to-left text too long.
 */
final class Fold {

  private static final int OCTETS = 75;
  private static final String BREAK = "\r\n";

  private Fold() {}

  /** Folds a text anew, whether or not it is folded already. */
  static String lines(String text) {
    StringBuilder folded = new StringBuilder(text.length() + 64);
    for (String line : text.replaceAll("\r\n[ \t]", "").split(BREAK)) {
      fold(line, folded);
      folded.append(BREAK);
    }
    return folded.toString();
  }

  private static void fold(String line, StringBuilder folded) {
    int used = 0;
    for (int at = 0; at < line.length(); ) {
      int character = line.codePointAt(at);
      int octets = octets(character);
      if (used + octets > OCTETS) {
        folded.append(BREAK).append(' ');
        used = 1;
      }
      folded.appendCodePoint(character);
      used += octets;
      at += Character.charCount(character);
    }
  }

  /** How many octets a character has in UTF-8 (RFC 3629 section 3). */
  private static int octets(int character) {
    if (character < 0x80) {
      return 1;
    }
    if (character < 0x800) {
      return 2;
    }
    return character < 0x10000 ? 3 : 4;
  }
}
