package curewindow.intake;

import java.text.Normalizer;
import java.util.Locale;

/** Brings the many signs of days and times to a few. */
final class PlainCell {

  private PlainCell() {}

  /** Digits as ASCII has them, one blank for all kinds of space, no marks of direction. */
  static String of(String cell) {
    StringBuilder out = new StringBuilder();
    Normalizer.normalize(cell, Normalizer.Form.NFKC)
        .codePoints()
        .filter(c -> Character.getType(c) != Character.FORMAT)
        .map(c -> Character.isDigit(c) ? '0' + Character.digit(c, 10) : c)
        .map(c -> Character.isWhitespace(c) || Character.isSpaceChar(c) ? ' ' : c)
        .forEach(out::appendCodePoint);
    return out.toString()
        .toLowerCase(Locale.ROOT)
        .replace('\u5e74', '-')
        .replace('\u6708', '-')
        .replace("\u65e5", " ")
        .replaceAll(" +", " ")
        .strip();
  }
}
