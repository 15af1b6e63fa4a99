package curewindow.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A word of the printed index.
 *
 * @param word as it is shown
 * @param beginnings how the words begin that stand for it in the texts; one entry is found by it
 *     where a word of its title or text begins so
 */
public record Headword(String word, List<String> beginnings) {

  /** Refuses missing parts and copies the list. */
  public Headword {
    Objects.requireNonNull(word, "word");
    beginnings = List.copyOf(beginnings);
  }

  /**
   * Reads headwords, one a line: the word, and after a colon the beginnings, with blanks between
   * them. Without a colon the word is its own beginning.
   *
   * @param lines the text
   * @return the headwords in the order of the lines; empty lines and empty words are left out
   */
  public static List<Headword> read(String lines) {
    List<Headword> heads = new ArrayList<>();
    for (String line : lines.lines().toList()) {
      int colon = line.indexOf(':');
      String word = (colon < 0 ? line : line.substring(0, colon)).strip();
      String rest = colon < 0 ? word : line.substring(colon + 1).strip();
      if (!word.isEmpty() && !rest.isEmpty()) {
        heads.add(new Headword(word, List.of(rest.split("\\s+"))));
      }
    }
    return heads;
  }
}
