package curewindow.calendar;

import java.nio.charset.StandardCharsets;

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
      int octets = Character.toString(character).getBytes(StandardCharsets.UTF_8).length;
      if (used + octets > OCTETS) {
        folded.append(BREAK).append(' ');
        used = 1;
      }
      folded.appendCodePoint(character);
      used += octets;
      at += Character.charCount(character);
    }
  }
}
