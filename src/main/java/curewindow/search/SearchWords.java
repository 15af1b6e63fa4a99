package curewindow.search;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * What is a word, said as {@code words} of {@code site-templates/search.js} says it in the browser;
 * a test holds both to the same words.
 */
final class SearchWords {

  private static final Pattern MARKS = Pattern.compile("[\u0300-\u036f\u0640\u064b-\u065f\u0670]");

  private static final Pattern BETWEEN =
      Pattern.compile(
          "[^0-9a-z\u00c0-\u05ff\u0620-\u1fff\u2c00-\u2fff\u3040-\ud7ff\uf900-\ufdff\ufe70-\uffdc]+");

  /** The Arabic article is no part of the word. */
  private static final Pattern ARTICLE =
      Pattern.compile("^(?:[\u0648\u0641]?[\u0628\u0643]?\u0627\u0644|\u0648?\u0644\u0644)(?=..)");

  private SearchWords() {}

  /** The words of a text without case, accents and the signs of Arabic vowels, in their order. */
  static List<String> in(String text) {
    return Arrays.stream(BETWEEN.split(fold(text)))
        .filter(word -> !word.isEmpty())
        .map(word -> ARTICLE.matcher(word).replaceFirst(""))
        .toList();
  }

  private static String fold(String text) {
    String bare = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).replaceAll("");
    StringBuilder folded = new StringBuilder(bare.length());
    for (int i = 0; i < bare.length(); i++) {
      folded.append(letter(bare.charAt(i)));
    }
    return folded.toString().toLowerCase(Locale.ROOT);
  }

  /** Forms of one Arabic letter become one, and Arabic digits ours. */
  private static char letter(char letter) {
    return switch (letter) {
      case '\u0649' -> '\u064a';
      case '\u0629' -> '\u0647';
      default ->
          letter >= '\u0660' && letter <= '\u0669' ? (char) (letter - '\u0660' + '0') : letter;
    };
  }
}
