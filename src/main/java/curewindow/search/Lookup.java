package curewindow.search;

import java.util.List;
import java.util.Objects;

/**
 * The texts of one language made ready to be looked up.
 *
 * @param index the search index as JSON, to be loaded by the same library in a browser
 * @param places for each headword, in their order, the numbers of the entries where it is found,
 *     from 0: first those that have it in the title, then those that have it in the text
 */
public record Lookup(String index, List<List<Integer>> places) {

  /** Refuses missing parts and copies the lists. */
  public Lookup {
    Objects.requireNonNull(index, "index");
    places = places.stream().map(List::copyOf).toList();
  }
}
