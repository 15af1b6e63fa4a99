package curewindow.intake;

import curewindow.problem.Nearest;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.ImportMap;
import curewindow.shop.PlacedText;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Which cells of a row fill which column of ours. */
final class Binding {

  private final ForeignTable table;
  private final Map<String, List<Integer>> cells;

  private Binding(ForeignTable table, Map<String, List<Integer>> cells) {
    this.table = table;
    this.cells = cells;
  }

  /** Looks for the headings of a map in a table; those that are not there, or twice, are told. */
  static Binding of(ForeignTable table, ImportMap map, Problems problems) {
    Map<String, List<Integer>> cells = new LinkedHashMap<>();
    map.columns()
        .forEach(
            (column, headings) ->
                cells.put(
                    column,
                    headings.stream().flatMap(h -> cell(table, h, problems).stream()).toList()));
    return new Binding(table, cells);
  }

  private static Optional<Integer> cell(ForeignTable table, PlacedText heading, Problems problems) {
    String key = ImportMap.key(heading.text());
    List<Integer> found =
        IntStream.range(0, table.headings().size())
            .filter(i -> ImportMap.key(table.headings().get(i)).equals(key))
            .boxed()
            .toList();
    if (found.size() != 1) {
      boolean none = found.isEmpty();
      problems.add(
          Problem.error(
                  none ? "unknown-heading" : "duplicate-heading",
                  heading.where(),
                  none
                      ? table.name() + " has no heading " + Shown.of(heading.text())
                      : table.name() + " has the heading " + Shown.of(heading.text()) + " twice",
                  none
                      ? nearest(table, heading.text())
                      : "name one of the two otherwise in the table")
              .with("heading", Shown.bare(heading.text())));
      return Optional.empty();
    }
    return Optional.of(found.get(0));
  }

  private static String nearest(ForeignTable table, String heading) {
    List<String> known = table.headings().stream().filter(h -> !h.isEmpty()).toList();
    return Nearest.to(heading, known)
        .map(n -> "did you mean " + Shown.of(n) + "?")
        .orElse("write a heading as it stands in the table's first line, or delete the line");
  }

  /** Whether cells of the table fill a column. */
  boolean has(String column) {
    return !cells.getOrDefault(column, List.of()).isEmpty();
  }

  /** The cells that fill a column, by number from 0. */
  List<Integer> cells(String column) {
    return cells.getOrDefault(column, List.of());
  }

  /** What stands in the cells of a column that are not empty. */
  List<String> texts(TableRow row, String column) {
    return cells(column).stream()
        .filter(i -> i < row.cells().size())
        .map(i -> row.cells().get(i).strip())
        .filter(text -> !text.isEmpty())
        .toList();
  }

  /** The headings that fill no column. */
  List<String> unused() {
    TreeSet<Integer> used = new TreeSet<>();
    cells.values().forEach(used::addAll);
    return IntStream.range(0, table.headings().size())
        .filter(i -> !used.contains(i))
        .mapToObj(table.headings()::get)
        .filter(h -> !h.isEmpty() && !h.equals(RestFile.HEADING))
        .toList();
  }
}
