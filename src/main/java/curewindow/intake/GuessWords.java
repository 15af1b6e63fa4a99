package curewindow.intake;

import curewindow.cure.PaintTone;
import curewindow.problem.Nearest;
import curewindow.shop.Catalogue;
import curewindow.shop.Film;
import curewindow.shop.ImportMap;
import curewindow.shop.JobColumns;
import curewindow.shop.ShopFiles;
import curewindow.words.Words;
import curewindow.words.WordsLibrary;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What headings and names of other programs most likely mean, by the words of all languages. */
final class GuessWords {

  /** What is no column of a job: plates, prices and all else that is not asked for here. */
  static final String IGNORED = "ignored";

  /** A shorter word is too easily another one with a letter changed. */
  private static final int SHORTEST = 6;

  private static final String HEADING = "import.heading.";
  private static final String PAINT = "import.paint.";

  private final Map<String, String> headings = new LinkedHashMap<>();
  private final Map<String, Map<String, String>> names = new LinkedHashMap<>();

  GuessWords(ShopFiles files, Catalogue catalogue) {
    WordsLibrary library = WordsLibrary.open(files);
    List<Words> languages = library.languages().stream().map(library::of).toList();
    List<String> columns = new ArrayList<>(JobColumns.all());
    columns.forEach(column -> headings.put(key(column), column));
    columns.add(IGNORED);
    for (Words words : languages) {
      columns.forEach(c -> alternatives(words, HEADING + c).forEach(w -> heading(w, c)));
    }
    for (String column : JobColumns.all()) {
      names.put(column, names(column, languages, catalogue));
    }
  }

  private void heading(String word, String column) {
    headings.putIfAbsent(key(word), column);
  }

  private static List<String> alternatives(Words words, String key) {
    return words.has(key) ? List.of(words.text(key).split("\\|")) : List.of();
  }

  /** Letters and digits alone: headings are written with all kinds of signs. */
  private static String key(String heading) {
    return ImportMap.key(heading).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
  }

  private static Map<String, String> names(
      String column, List<Words> languages, Catalogue catalogue) {
    Map<String, String> names = new LinkedHashMap<>();
    for (String id : OurNames.of(column, catalogue)) {
      names.put(key(id), id);
      if (column.equals("film")) {
        Optional.ofNullable(catalogue.films().get(id))
            .map(Film::name)
            .ifPresent(name -> names.putIfAbsent(key(name), id));
      }
      for (Words words : languages) {
        label(column, id).filter(words::has).ifPresent(k -> put(names, words.text(k), id));
      }
    }
    if (column.equals("paint")) {
      for (Words words : languages) {
        PaintTone.ids()
            .forEach(id -> alternatives(words, PAINT + id).forEach(w -> put(names, w, id)));
      }
    }
    return names;
  }

  private static void put(Map<String, String> names, String word, String id) {
    names.putIfAbsent(key(word), id);
  }

  private static Optional<String> label(String column, String id) {
    return switch (column) {
      case "service" -> Optional.of("service." + id);
      case "spots" -> Optional.of("spot." + id);
      case "body" -> Optional.of("car.body." + id);
      case "parking-day", "parking-night" -> Optional.of("parking." + id);
      default -> Optional.empty();
    };
  }

  /**
   * A guess.
   *
   * @param ours our column or name
   * @param sure whether it is just that word, not one that is hardly different
   */
  record Guess(String ours, boolean sure) {}

  /** The column that a heading most likely stands for, or {@link #IGNORED}. */
  Optional<Guess> heading(String heading) {
    return guess(heading, headings);
  }

  /** The name of ours that one of theirs most likely is. */
  Optional<Guess> name(String column, String theirs) {
    return guess(theirs, names.get(column));
  }

  /** Whether all names of a column are known. */
  boolean knows(String column) {
    return !names.get(column).isEmpty();
  }

  /** A film of another number is another film. */
  private static String digits(String key) {
    return key.replaceAll("[^0-9]", "");
  }

  private static Optional<Guess> guess(String text, Map<String, String> known) {
    String key = key(text);
    if (key.isEmpty() || key.length() > 80) {
      return Optional.empty();
    }
    String exact = known.get(key);
    return exact != null
        ? Optional.of(new Guess(exact, true))
        : Optional.of(key)
            .filter(k -> k.length() >= SHORTEST)
            .flatMap(k -> Nearest.closely(k, known.keySet()))
            .filter(near -> digits(near).equals(digits(key)))
            .map(near -> new Guess(known.get(near), false));
  }
}
