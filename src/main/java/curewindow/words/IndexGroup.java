package curewindow.words;

import java.util.List;
import java.util.Objects;

/**
 * The words of an index that stand under one letter.
 *
 * @param letter the letter, as the language's dictionaries head it
 * @param words the words in the language's order
 */
public record IndexGroup(String letter, List<String> words) {

  /** Refuses missing parts and copies the list. */
  public IndexGroup {
    Objects.requireNonNull(letter, "letter");
    words = List.copyOf(words);
  }
}
