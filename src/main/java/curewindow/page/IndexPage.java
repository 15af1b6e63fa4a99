package curewindow.page;

import curewindow.search.Entry;
import curewindow.search.IndexWord;
import curewindow.search.Lookup;
import curewindow.words.IndexGroup;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Gathers the printed index of a language and the data for looking things up in it. */
final class IndexPage {

  /** How many places one search names at most; the script keeps to it. */
  private static final int MOST = 12;

  private final GuideBook book;
  private final Lookup lookup;

  private IndexPage(GuideBook book, Lookup lookup) {
    this.book = book;
    this.lookup = lookup;
  }

  static IndexPage of(GuideBook book) {
    List<Entry> entries =
        book.spots().stream().map(spot -> new Entry(spot.title(), spot.text())).toList();
    return new IndexPage(book, Lookup.of(entries, book.heads()));
  }

  PublicView.Finder finder(String script) {
    return new PublicView.Finder(letters(), script);
  }

  private List<PublicView.Letter> letters() {
    Map<String, List<PublicView.Place>> places = new LinkedHashMap<>();
    List<IndexWord> heads = book.heads();
    for (int i = 0; i < heads.size(); i++) {
      List<PublicView.Place> found = lookup.places().get(i).stream().map(this::place).toList();
      if (!found.isEmpty()) {
        places.putIfAbsent(heads.get(i).word(), found);
      }
    }
    List<PublicView.Letter> letters = new ArrayList<>();
    for (IndexGroup group : book.words().byLetter(places.keySet())) {
      List<PublicView.Word> words =
          group.words().stream().map(w -> new PublicView.Word(w, places.get(w))).toList();
      letters.add(new PublicView.Letter(group.letter(), "l-" + (letters.size() + 1), words));
    }
    return letters;
  }

  private PublicView.Place place(int number) {
    GuideBook.Spot spot = book.spots().get(number);
    return new PublicView.Place(spot.href(), spot.title(), spot.chapter());
  }

  /**
   * The file that the script loads: it defines {@code lookup} and {@code volume}. It is a script
   * and no data, as pages opened from a disk may load scripts only.
   */
  String loaded(String engine) {
    return engine + "\nvar volume = " + data() + ";\n";
  }

  private String data() {
    List<List<String>> rows = new ArrayList<>();
    for (GuideBook.Spot spot : book.spots()) {
      String names = lookup.names().get(rows.size());
      String further = lookup.further().get(rows.size());
      rows.add(List.of(spot.href(), spot.title(), spot.chapter(), spot.text(), names, further));
    }
    List<String> said = new ArrayList<>();
    for (int count = 0; count <= MOST; count++) {
      said.add(book.words().text("public.find.said", Map.of("count", count)));
    }
    return "{\"rows\":" + Json.of(rows) + ",\"said\":" + Json.of(said) + "}";
  }
}
