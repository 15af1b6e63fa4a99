package curewindow.told;

import curewindow.words.Words;
import java.util.List;
import java.util.Map;

/** Puts several words into one line of text. */
public final class Listing {

  private Listing() {}

  /**
   * Several words in a row.
   *
   * @param parts the words
   * @param words the words of the language
   * @return such as "hood, doors and roof"; empty for none
   */
  public static String of(List<String> parts, Words words) {
    if (parts.isEmpty()) {
      return "";
    }
    String line = parts.get(0);
    for (int i = 1; i < parts.size() - 1; i++) {
      line = words.text("page.comma", Map.of("first", line, "next", parts.get(i)));
    }
    return parts.size() == 1
        ? line
        : words.text("page.and", Map.of("first", line, "last", parts.get(parts.size() - 1)));
  }

  /**
   * A text with its first letter in upper case.
   *
   * @param text may be empty
   * @return the text
   */
  public static String capital(String text) {
    if (text.isEmpty()) {
      return text;
    }
    int first = text.codePointAt(0);
    return new StringBuilder()
        .appendCodePoint(Character.toTitleCase(first))
        .append(text.substring(Character.charCount(first)))
        .toString();
  }
}
