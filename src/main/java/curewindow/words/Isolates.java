package curewindow.words;

/** Keeps a text in its own order among words that run the other way (UAX 9). */
public final class Isolates {

  private static final String FIRST_STRONG = "\u2068";
  private static final String END = "\u2069";

  private Isolates() {}

  /**
   * A name, number or other text that somebody wrote, to stand among words of a language.
   *
   * @param text the text; may be empty
   * @param words the words of the language
   * @return between isolates where the language, or a letter of the text, runs from right to left
   */
  public static String own(String text, Words words) {
    return !text.isEmpty() && (words.rightToLeft() || text.codePoints().anyMatch(Isolates::turns))
        ? FIRST_STRONG + text + END
        : text;
  }

  private static boolean turns(int character) {
    byte direction = Character.getDirectionality(character);
    return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
        || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
  }
}
