package curewindow.search;

import java.util.List;

/**
 * What can be looked up in one language.
 *
 * @param entries sections and questions, in reading order
 * @param heads the words of the printed index
 */
public record Volume(List<Entry> entries, List<Headword> heads) {

  /** Copies the lists. */
  public Volume {
    entries = List.copyOf(entries);
    heads = List.copyOf(heads);
  }
}
