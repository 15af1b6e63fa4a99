package curewindow.words;

import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Words that stand for others, such as {@code windscreen} for {@code windshield}: whole words and
 * phrases, the longest first, with a capital where the text has one. Values, clauses, code and
 * addresses are left alone. Immutable.
 */
final class Swaps {

  static final Swaps NONE = new Swaps(Map.of());

  private static final String BETWEEN = " = ";

  /** What is no running text, in words and in guides. */
  private static final String KEPT =
      "\\(=.*?=\\)|\\(\\?.*?\\?\\)|`[^`]*`|\\]\\([^)]*\\)|<[^>]*>|\\{[a-z][a-z0-9-]*";

  private final Map<String, String> words;
  private final Pattern pattern;

  private Swaps(Map<String, String> words) {
    this.words = words;
    String any =
        words.keySet().stream()
            .sorted(Comparator.comparing(String::length).reversed())
            .map(Pattern::quote)
            .collect(Collectors.joining("|"));
    String whole = "(?<![\\p{L}\\p{N}-])(?<word>" + any + ")(?![\\p{L}\\p{N}-])";
    this.pattern =
        Pattern.compile(KEPT + "|" + whole, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }

  /**
   * Reads a list.
   *
   * @param list a line for each word: {@code windshield = windscreen}
   * @throws IllegalArgumentException where a line is none, with the line
   */
  static Swaps of(String list) {
    Map<String, String> words = new TreeMap<>();
    list.lines().map(String::strip).filter(line -> !line.isEmpty()).forEach(l -> put(words, l));
    return words.isEmpty() ? NONE : new Swaps(Map.copyOf(words));
  }

  private static void put(Map<String, String> words, String line) {
    String[] pair = line.split(BETWEEN, -1);
    if (pair.length != 2
        || pair[0].isBlank()
        || pair[1].isBlank()
        || words.putIfAbsent(key(pair[0].strip()), pair[1].strip()) != null) {
      throw new IllegalArgumentException(line);
    }
  }

  private static String key(String word) {
    return word.toLowerCase(Locale.ROOT);
  }

  /** A text with its words swapped. */
  String in(String text) {
    return words.isEmpty() ? text : pattern.matcher(text).replaceAll(this::swapped);
  }

  private String swapped(MatchResult found) {
    String was = found.group();
    String word = words.get(key(was));
    if (word == null) {
      return Matcher.quoteReplacement(was);
    }
    boolean capital = Character.isUpperCase(was.charAt(0));
    String said =
        capital ? word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1) : word;
    return Matcher.quoteReplacement(said);
  }
}
