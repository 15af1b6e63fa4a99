package curewindow.intake;

import curewindow.intake.GuessWords.Guess;
import curewindow.shop.ImportMap;
import curewindow.shop.JobColumns;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Guesses which headings fill which column: by what they are called, and by what stands below. */
final class GuessedColumns {

  /** How many rows and how many different names are looked at. */
  private static final int ROWS = 1_000;

  private static final int NAMES = 200;

  /** A longer name is no name, characters. */
  private static final int LONGEST = 200;

  /** Columns that are known by what stands in them; the others could be anything. */
  private static final List<String> BY_CONTENT =
      List.of("film", "spots", "service", "body", "paint", "parking-day", "parking-night");

  private final ForeignTable table;
  private final GuessWords words;
  private final Map<String, List<Integer>> cells = new LinkedHashMap<>();
  private final Set<String> unsure = new LinkedHashSet<>();
  private final Set<Integer> taken = new LinkedHashSet<>();

  private GuessedColumns(ForeignTable table, GuessWords words) {
    this.table = table;
    this.words = words;
  }

  static GuessedColumns of(ForeignTable table, GuessWords words) {
    GuessedColumns guessed = new GuessedColumns(table, words);
    guessed.byHeading(true);
    guessed.byContent();
    guessed.byHeading(false);
    guessed.orderTimes();
    return guessed;
  }

  private void byHeading(boolean sure) {
    for (int i = 0; i < table.headings().size(); i++) {
      Optional<Guess> guess = words.heading(table.headings().get(i)).filter(g -> g.sure() == sure);
      if (guess.isEmpty() || taken.contains(i)) {
        continue;
      }
      String column = guess.get().ours();
      if (column.equals(GuessWords.IGNORED)) {
        taken.add(i);
      } else if (fits(column, i) && (sure || !words.knows(column) || looksLike(column, i))) {
        put(column, i, sure);
      }
    }
  }

  /** A time may stand in two columns; of all else the first is taken. */
  private boolean fits(String column, int cell) {
    List<Integer> there = cells.getOrDefault(column, List.of());
    if (!JobColumns.isTime(column)) {
      return there.isEmpty();
    }
    boolean isDay = isDay(cell);
    return (isDay || isClock(cell)) && there.stream().noneMatch(i -> isDay(i) == isDay);
  }

  private void put(String column, int cell, boolean sure) {
    cells.computeIfAbsent(column, c -> new ArrayList<>()).add(cell);
    taken.add(cell);
    if (!sure) {
      unsure.add(column);
    }
  }

  private void byContent() {
    for (String column : BY_CONTENT) {
      for (int i = 0; i < table.headings().size() && !cells.containsKey(column); i++) {
        if (!taken.contains(i) && !table.headings().get(i).isEmpty() && looksLike(column, i)) {
          put(column, i, false);
        }
      }
    }
  }

  private boolean looksLike(String column, int cell) {
    List<String> all = names(column, List.of(cell));
    long known = all.stream().filter(t -> words.name(column, t).isPresent()).count();
    return !all.isEmpty() && 2 * known > all.size();
  }

  private boolean isDay(int cell) {
    return first(cell).flatMap(DateCell::of).isPresent();
  }

  private boolean isClock(int cell) {
    return first(cell).map(PlainCell::of).flatMap(DayTime::of).isPresent();
  }

  private Optional<String> first(int cell) {
    return first(table, cell);
  }

  /** The first thing that stands below a heading, where it is short enough to be a time. */
  static Optional<String> first(ForeignTable table, int cell) {
    return table.rows().stream()
        .limit(ROWS)
        .filter(row -> cell < row.cells().size() && !row.cells().get(cell).isBlank())
        .map(row -> row.cells().get(cell).strip())
        .filter(text -> text.length() < 100)
        .findFirst();
  }

  /** The day first, as the map wants it; a time of day alone is no time. */
  private void orderTimes() {
    for (String column : List.of("pickup", "finished")) {
      List<Integer> all = cells.getOrDefault(column, List.of());
      if (all.size() == 2 && !isDay(all.get(0))) {
        cells.put(column, List.of(all.get(1), all.get(0)));
      } else if (all.size() == 1 && !isDay(all.get(0))) {
        cells.remove(column);
      }
    }
  }

  /** The cells of each column, in the order of our columns. */
  Map<String, List<Integer>> cells() {
    Map<String, List<Integer>> ordered = new LinkedHashMap<>();
    JobColumns.all().stream()
        .filter(cells::containsKey)
        .forEach(column -> ordered.put(column, cells.get(column)));
    return ordered;
  }

  /** Whether a column was guessed by more than the very word. */
  boolean isUnsure(String column) {
    return unsure.contains(column);
  }

  /** The headings that fill no column. */
  List<String> unread() {
    Set<Integer> read = new LinkedHashSet<>();
    cells.values().forEach(read::addAll);
    return IntStream.range(0, table.headings().size())
        .filter(i -> !read.contains(i))
        .mapToObj(table.headings()::get)
        .filter(heading -> !heading.isEmpty() && !heading.equals(RestFile.HEADING))
        .toList();
  }

  /**
   * The different names in a column, in the order of the table; several in a cell are told apart.
   */
  List<String> names(String column) {
    return names(column, cells.getOrDefault(column, List.of()));
  }

  /** Those that only differ in capitals or accents once, as a map wants them. */
  private List<String> names(String column, List<Integer> of) {
    Map<String, String> names = new LinkedHashMap<>();
    for (TableRow row : table.rows().subList(0, Math.min(ROWS, table.size()))) {
      for (int cell : of) {
        String text = cell < row.cells().size() ? row.cells().get(cell).strip() : "";
        if (!text.isEmpty() && text.length() <= LONGEST && names.size() < NAMES) {
          List<String> apart = JobColumns.isList(column) ? OurNames.apart(text) : List.of(text);
          apart.forEach(name -> names.putIfAbsent(ImportMap.key(name), name));
        }
      }
    }
    return List.copyOf(names.values());
  }
}
