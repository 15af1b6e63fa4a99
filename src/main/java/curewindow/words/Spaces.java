package curewindow.words;

/** Spaces that must not break a line. */
final class Spaces {

  private Spaces() {}

  /**
   * CLDR writes some spaces as U+202F, a narrow one that many fonts lack; the common no-break space
   * U+00A0 keeps words together as well and is in every font.
   */
  static String common(String text) {
    return text.replace('\u202F', '\u00A0').replace('\u2009', '\u00A0');
  }
}
