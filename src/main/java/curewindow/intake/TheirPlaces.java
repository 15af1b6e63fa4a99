package curewindow.intake;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import curewindow.shop.ImportMap;
import curewindow.shop.JobColumns;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tells what the reader of jobs finds as it stands in the other program's table. */
final class TheirPlaces {

  private static final Pattern ITEM = Pattern.compile("items\\[(\\d+)](?:\\.(.*))?");

  /** Columns by the path in a job file, where the two differ. */
  private static final Map<String, String> COLUMNS =
      Map.ofEntries(
          Map.entry("id", "job"),
          Map.entry("car.year", "car-year"),
          Map.entry("car.body", "body"),
          Map.entry("car.paint", "paint"),
          Map.entry("car.finish", "paint-finish"),
          Map.entry("car.text", "car"),
          Map.entry("car.lacks", "lacks"),
          Map.entry("car", "body"),
          Map.entry("parking.day", "parking-day"),
          Map.entry("parking.night", "parking-night"),
          Map.entry("parking", "parking-day"),
          Map.entry("lamp.surface", "lamp-surface"),
          Map.entry("lamp.minutes", "lamp-minutes"));

  private final ForeignTable table;
  private final ImportMap map;
  private final OurCells cells;

  TheirPlaces(ForeignTable table, ImportMap map, OurCells cells) {
    this.table = table;
    this.map = map;
    this.cells = cells;
  }

  /** A problem of a job file, at the cell of the table that it comes from. */
  Problem of(Joined job, Problem problem) {
    String path = problem.place();
    Matcher item = ITEM.matcher(path);
    boolean ofItem = item.matches();
    int number = ofItem ? Math.min(Integer.parseInt(item.group(1)), job.rows().size()) : 1;
    String key = ofItem ? item.group(2) == null ? "" : item.group(2) : path;
    String bare = key.replaceAll("\\[\\d+]$", "");
    String column = COLUMNS.getOrDefault(bare, bare);
    TableRow row = row(job, column, number - 1);
    Optional<Integer> cell = cell(row, column);
    Where where = cell.map(c -> table.where(row, c)).orElse(table.where(row));
    String from =
        cell.map(c -> Shown.of(table.headings().get(c)) + ": ")
            .orElse(map.fixed().containsKey(column) ? "fixed " + column + ": " : "");
    return new Problem(
        problem.severity(),
        problem.code(),
        where.file(),
        where.line(),
        where.column(),
        where.path(),
        from + problem.message(),
        fix(problem, column, cell),
        facts(problem, column));
  }

  /** What stands in no cell is told by what the column is called here, in place of our key. */
  private static Map<String, String> facts(Problem problem, String column) {
    Map<String, String> facts = new HashMap<>(problem.facts());
    facts.remove("key");
    if (JobColumns.all().contains(column)) {
      facts.put("column", column);
    }
    return facts;
  }

  /** The row of an item; of what belongs to the job, the first. */
  private TableRow row(Joined job, String column, int item) {
    return job.rows().get(JobColumns.isOfItem(column) || column.isEmpty() ? item : 0);
  }

  /** The first cell of a column that has something in it, or else its first cell. */
  private Optional<Integer> cell(TableRow row, String column) {
    List<Integer> all = cells.binding().cells(column);
    return all.stream()
        .filter(i -> i < row.cells().size() && !row.cells().get(i).isBlank())
        .findFirst()
        .or(() -> all.stream().findFirst())
        .filter(i -> !map.fixed().containsKey(column) || !cells.told(row, column).isEmpty());
  }

  private String fix(Problem problem, String column, Optional<Integer> cell) {
    if (problem.isMissing()) {
      return (cell.isPresent() ? "fill in the cell" : "write under columns which heading has it")
          + ", or write under fixed in "
          + map.file()
          + " what it is";
    }
    if (problem.code().equals("no-hour")) {
      return "add the hour, or write under hours in " + map.file() + " which it usually is";
    }
    boolean isUnknown = problem.code().startsWith("unknown-") && JobColumns.isName(column);
    return isUnknown
        ? problem.fix()
            + (problem.fix().endsWith("?") ? " Or" : "; or")
            + " write under names in "
            + map.file()
            + " what it is called here"
        : problem.fix();
  }
}
