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
 * @param typed what else people type for it; shown nowhere
 */
public record IndexWord(String word, List<String> beginnings, List<String> typed) {

  /** Refuses missing parts and copies the lists. */
  public IndexWord {
    Objects.requireNonNull(word, "word");
    beginnings = List.copyOf(beginnings);
    typed = List.copyOf(typed);
  }

  /**
   * Reads headwords, one a line: the word; after a colon the beginnings, with blanks between them;
   * after another colon what else people type. Without a colon the word is its own beginning.
   *
   * @param lines the text
   * @return the headwords in the order of the lines; empty lines and empty words are left out
   */
  public static List<IndexWord> read(String lines) {
    List<IndexWord> heads = new ArrayList<>();
    for (String line : lines.lines().toList()) {
      String[] parts = line.split(":", 3);
      String word = parts[0].strip();
      List<String> beginnings = parts.length < 2 ? pieces(word) : pieces(parts[1]);
      if (!word.isEmpty() && !beginnings.isEmpty()) {
        heads.add(new IndexWord(word, beginnings, parts.length < 3 ? List.of() : pieces(parts[2])));
      }
    }
    return heads;
  }

  private static List<String> pieces(String text) {
    return text.isBlank() ? List.of() : List.of(text.strip().split("\\s+"));
  }

  /** All names under which its entries are found. */
  String names() {
    return word + " " + String.join(" ", typed);
  }
}
