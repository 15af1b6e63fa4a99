package curewindow.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Builds the index of one language. A headword, and what else is typed for it, stand for what has
 * it: where it is in a title as names of that entry, where it is in a text as words of that text.
 */
final class Indexing {

  /** How many places a headword names at most; more would say nothing. */
  static final int PLACES = 5;

  private final Engine engine;
  private final LanguageTexts all;
  private final List<Set<String>> titles = new ArrayList<>();
  private final List<Set<String>> texts = new ArrayList<>();

  Indexing(Engine engine, LanguageTexts all) {
    this.engine = engine;
    this.all = all;
    for (Entry entry : all.entries()) {
      titles.add(new TreeSet<>(words(entry.title())));
      texts.add(new TreeSet<>(words(entry.text())));
    }
  }

  Lookup lookup() {
    List<List<Integer>> places = new ArrayList<>();
    List<StringBuilder> keys = all.entries().stream().map(e -> new StringBuilder()).toList();
    List<StringBuilder> further = all.entries().stream().map(e -> new StringBuilder()).toList();
    for (IndexWord head : all.heads()) {
      List<String> beginnings = head.beginnings().stream().flatMap(b -> words(b).stream()).toList();
      List<Integer> found = new ArrayList<>(matches(titles, beginnings));
      found.forEach(n -> keys.get(n).append(' ').append(head.names()));
      for (int n : matches(texts, beginnings)) {
        if (!found.contains(n)) {
          found.add(n);
          further.get(n).append(' ').append(head.names());
        }
      }
      places.add(found.subList(0, Math.min(PLACES, found.size())));
    }
    List<Object> rows = new ArrayList<>();
    for (int i = 0; i < all.entries().size(); i++) {
      Entry entry = all.entries().get(i);
      rows.add(
          engine.array(
              List.of(entry.title(), keys.get(i).toString(), entry.text() + further.get(i))));
    }
    return new Lookup(engine.text("build", engine.array(rows), all.language()), places);
  }

  private List<String> words(String text) {
    return engine.texts("words", text);
  }

  private static List<Integer> matches(List<Set<String>> words, List<String> beginnings) {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      Set<String> there = words.get(i);
      if (beginnings.stream().anyMatch(b -> there.stream().anyMatch(w -> w.startsWith(b)))) {
        found.add(i);
      }
    }
    return found;
  }
}
