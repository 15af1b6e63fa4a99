package curewindow.problem;

import java.text.Normalizer;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds the known name that someone who mistyped most likely meant. */
public final class Nearest {

  private static final Pattern MARKS = Pattern.compile("\\p{M}+");

  private Nearest() {}

  /**
   * The known name nearest to a mistyped one, by the number of single-letter edits, swaps of
   * neighbours counted as one.
   *
   * @param typed what was written
   * @param known the names that would have been right
   * @return the nearest name, or empty where none is within a third of the length, at least two
   *     edits; a name of one or two letters begins as what was typed, or is it the other way round
   */
  public static Optional<String> to(String typed, Collection<String> known) {
    return some(typed, known, 1).stream().findFirst();
  }

  /**
   * Asks for the known name nearest to a mistyped one, behind what is said of that.
   *
   * @param typed what was written
   * @param known the names that would have been right
   * @return such as {@code ; did you mean press?}; nothing where {@link #to} finds none
   */
  public static String hint(String typed, Collection<String> known) {
    return to(typed, known).map(near -> "; did you mean " + near + "?").orElse("");
  }

  /**
   * The known names nearest to a mistyped one, as {@link #to} finds them.
   *
   * @param typed what was written
   * @param known the names that would have been right
   * @param most how many at most
   * @return the names, the nearest first
   */
  public static List<String> some(String typed, Collection<String> known, int most) {
    return within(Math.max(2, typed.length() / 3), typed, known, most);
  }

  /**
   * The known name that a typed one hardly differs from, for names that are many and short, of
   * which some other one is always a bit alike.
   *
   * @param typed what was written
   * @param known the names that would have been right
   * @return the nearest name, or empty where none is within a quarter of the length, at least one
   *     edit
   */
  public static Optional<String> closely(String typed, Collection<String> known) {
    return allClose(typed, known).stream().findFirst();
  }

  /**
   * The known name that a typed one may be in another language, such as Munich for M\u00FCnchen.
   *
   * @param typed what was written
   * @param known the names that would have been right
   * @return the nearest name that begins with the same three letters, or empty where none is within
   *     half of the length
   */
  public static Optional<String> remotely(String typed, Collection<String> known) {
    String from = fold(typed);
    List<String> alike =
        known.stream()
            .filter(k -> from.length() > 3 && from.regionMatches(0, fold(k), 0, 3))
            .toList();
    return within(typed.length() / 2, typed, alike, 1).stream().findFirst();
  }

  /**
   * All known names from which a typed one differs as little as {@link #closely} allows.
   *
   * @param typed what was written
   * @param known the names that would have been right
   * @return the names, the nearest first
   */
  public static List<String> allClose(String typed, Collection<String> known) {
    return within(Math.max(1, typed.length() / 4), typed, known, known.size());
  }

  private static List<String> within(
      int allowed, String typed, Collection<String> known, int most) {
    String from = fold(typed);
    return known.stream()
        .filter(k -> distance(from, fold(k)) <= Math.min(allowed, Math.max(1, k.length() - 1)))
        .filter(k -> k.length() > 2 || beginsAlike(from, fold(k)))
        .sorted(
            Comparator.comparingInt((String k) -> distance(from, fold(k))).thenComparing(k -> k))
        .limit(most)
        .toList();
  }

  /** Of one or two letters, the first is the same, or both are there in the other order. */
  private static boolean beginsAlike(String a, String b) {
    return a.regionMatches(0, b, 0, 1) || a.equals(new StringBuilder(b).reverse().toString());
  }

  /**
   * A name without what people leave out: accents, capitals, and whether words are joined with
   * spaces, hyphens or underscores.
   *
   * @param name a name
   * @return lower case, joined with hyphens
   */
  public static String fold(String name) {
    return plain(name).replace('_', '-').replace(' ', '-');
  }

  /**
   * A text without accents and capitals.
   *
   * @param text a text
   * @return lower case, all else as it stands
   */
  public static String plain(String text) {
    return MARKS
        .matcher(Normalizer.normalize(text, Normalizer.Form.NFD))
        .replaceAll("")
        .toLowerCase(Locale.ROOT);
  }

  private static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : step(d, a, b, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int step(int[][] d, String a, String b, int i, int j) {
    int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int best = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
  }
}
