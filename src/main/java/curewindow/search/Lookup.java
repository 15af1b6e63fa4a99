package curewindow.search;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * Where the words of a printed index stand. A headword, and what else is typed for it, stand for
 * what has it: where it is in a title as names of that entry, where it is in a text as words of
 * that text.
 *
 * @param places for each headword, in their order, the numbers of the entries where it is found,
 *     from 0: first those that have it in the title, then those that have it in the text, together
 *     at most {@value #MOST}
 * @param names for each entry the names of the headwords in its title, with blanks between them
 * @param further for each entry the names of the headwords in its text alone
 */
public record Lookup(List<List<Integer>> places, List<String> names, List<String> further) {

  /** How many places a headword names at most; more would say nothing. */
  static final int MOST = 5;

  /** Copies the lists. */
  public Lookup {
    places = places.stream().map(List::copyOf).toList();
    names = List.copyOf(names);
    further = List.copyOf(further);
  }

  /**
   * Looks each headword up.
   *
   * @param entries sections and questions, in reading order
   * @param heads the words of the printed index
   * @return where they stand
   */
  public static Lookup of(List<Entry> entries, List<IndexWord> heads) {
    List<NavigableSet<String>> titles = entries.stream().map(e -> words(e.title())).toList();
    List<NavigableSet<String>> texts = entries.stream().map(e -> words(e.text())).toList();
    List<StringBuilder> names = entries.stream().map(e -> new StringBuilder()).toList();
    List<StringBuilder> further = entries.stream().map(e -> new StringBuilder()).toList();
    List<List<Integer>> places = new ArrayList<>();
    for (IndexWord head : heads) {
      List<Integer> found = matches(titles, head);
      found.forEach(n -> names.get(n).append(' ').append(head.names()));
      for (int n : matches(texts, head)) {
        if (!found.contains(n)) {
          found.add(n);
          further.get(n).append(' ').append(head.names());
        }
      }
      places.add(found.subList(0, Math.min(MOST, found.size())));
    }
    return new Lookup(places, stripped(names), stripped(further));
  }

  private static NavigableSet<String> words(String text) {
    return new TreeSet<>(SearchWords.in(text));
  }

  private static List<Integer> matches(List<NavigableSet<String>> words, IndexWord head) {
    List<String> beginnings =
        head.beginnings().stream().flatMap(b -> SearchWords.in(b).stream()).toList();
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      NavigableSet<String> there = words.get(i);
      if (beginnings.stream().anyMatch(b -> isBegun(there.ceiling(b), b))) {
        found.add(i);
      }
    }
    return found;
  }

  private static boolean isBegun(String next, String beginning) {
    return next != null && next.startsWith(beginning);
  }

  private static List<String> stripped(List<StringBuilder> texts) {
    return texts.stream().map(text -> text.toString().strip()).toList();
  }
}
