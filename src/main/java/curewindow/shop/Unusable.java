package curewindow.shop;

import java.util.Map;
import java.util.Set;

/**
 * What the files of a catalogue define but nobody can use, because it has errors. Those are told;
 * what names it, such as a guide, is right all the same.
 *
 * @param ids ids by kind, {@code service}, {@code film}, {@code spot} or {@code hold}
 * @param kinds the kinds of which nothing can be read, so that any id may be right
 */
public record Unusable(Map<String, Set<String>> ids, Set<String> kinds) {

  /** Nothing has errors. */
  public static final Unusable NOTHING = new Unusable(Map.of(), Set.of());

  /** Copies the maps. */
  public Unusable {
    ids = Map.copyOf(ids);
    kinds = Set.copyOf(kinds);
  }

  /**
   * The ids of a kind that have errors.
   *
   * @param kind the kind
   * @return the ids; may be empty
   */
  public Set<String> of(String kind) {
    return ids.getOrDefault(kind, Set.of());
  }
}
