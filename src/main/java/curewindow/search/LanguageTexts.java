package curewindow.search;

import java.util.List;
import java.util.Objects;

/**
 * What can be looked up in one language.
 *
 * @param language whose word forms are taken together, such as {@code en}
 * @param entries sections and questions, in reading order
 * @param heads the words of the printed index
 */
public record LanguageTexts(String language, List<Entry> entries, List<IndexWord> heads) {

  /** Refuses missing parts and copies the lists. */
  public LanguageTexts {
    Objects.requireNonNull(language, "language");
    entries = List.copyOf(entries);
    heads = List.copyOf(heads);
  }
}
