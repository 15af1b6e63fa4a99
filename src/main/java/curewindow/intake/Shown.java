package curewindow.intake;

/** Pieces of a foreign table for messages. */
final class Shown {

  private static final int LONGEST = 40;

  private Shown() {}

  /** A text in quotation marks, short, on one line, without invisible characters. */
  static String of(String text) {
    return '"' + bare(text) + '"';
  }

  /** The same without quotation marks, for a fact of a problem. */
  static String bare(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints().limit(LONGEST).map(c -> isPlain(c) ? c : '?').forEach(out::appendCodePoint);
    return out.append(text.codePointCount(0, text.length()) > LONGEST ? "..." : "").toString();
  }

  private static boolean isPlain(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }
}
