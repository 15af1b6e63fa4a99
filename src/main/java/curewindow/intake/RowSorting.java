package curewindow.intake;

import curewindow.problem.Problem;
import curewindow.shop.JobColumns;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** Sorts the rows of a table by their jobs, and finds those that cannot be taken as they are. */
final class RowSorting {

  /** No cell of a job is nearly as long, characters. */
  private static final int LONGEST = 10_000;

  private final ForeignTable table;
  private final Binding binding;
  private final Map<String, List<TableRow>> jobs = new LinkedHashMap<>();
  private final Map<Integer, Problem> faults = new LinkedHashMap<>();
  private final Map<String, Problem> lacking = new LinkedHashMap<>();

  private RowSorting(ForeignTable table, Binding binding) {
    this.table = table;
    this.binding = binding;
  }

  static RowSorting of(ForeignTable table, Binding binding) {
    RowSorting sorting = new RowSorting(table, binding);
    List<TableRow> unread = new ArrayList<>();
    String before = "";
    Map<TableRow, String> behind = new LinkedHashMap<>();
    for (TableRow row : table.rows()) {
      Optional<String> id = sorting.id(row);
      sorting.fault(row, id).ifPresent(fault -> sorting.faults.put(row.line(), fault));
      if (id.isPresent()) {
        before = id.get();
        sorting.jobs.computeIfAbsent(before, i -> new ArrayList<>()).add(row);
      } else {
        unread.add(row);
        behind.put(row, before);
      }
    }
    unread.forEach(row -> sorting.mayLack(row, behind.get(row)));
    return sorting;
  }

  /** The jobs in the order of their first rows; some of their rows may have faults. */
  List<Joined> jobs() {
    return jobs.entrySet().stream().map(e -> new Joined(e.getKey(), e.getValue())).toList();
  }

  /** What is wrong with a row as such. */
  Optional<Problem> fault(int line) {
    return Optional.ofNullable(faults.get(line));
  }

  /** Why a job may lack a row. */
  Optional<Problem> lacking(String job) {
    return Optional.ofNullable(lacking.get(job));
  }

  private Optional<String> id(TableRow row) {
    return Optional.of(row)
        .filter(TableRow::whole)
        .map(r -> String.join(" ", binding.texts(r, JobColumns.JOB)))
        .filter(id -> !id.isEmpty());
  }

  private Optional<Problem> fault(TableRow row, Optional<String> id) {
    if (!row.whole()) {
      return Optional.of(
          fault(
              row,
              "not-csv",
              "the row cannot be read: a quotation mark is not closed, or stands inside a cell",
              "put the cell in quotes, and double each quotation mark inside it"));
    }
    int width = table.headings().size();
    if (!fits(row)) {
      Problem fault =
          fault(
              row,
              "wrong-columns",
              "the row has " + row.cells().size() + " cells, the headings are " + width,
              "add or remove separators; put a cell that holds one in quotes");
      return Optional.of(
          fault
              .with("cells", Integer.toString(row.cells().size()))
              .with("headings", Integer.toString(width)));
    }
    Optional<Problem> cell =
        cell(row, text -> text.indexOf(TableText.BROKEN) >= 0)
            .map(i -> broken(row, i))
            .or(() -> cell(row, text -> text.length() > LONGEST).map(i -> tooLong(row, i)));
    return cell.isPresent() || id.isPresent()
        ? cell
        : Optional.of(
            fault(row, "no-job", "the row names no job", "fill in the number of the job"));
  }

  /** Some programs write one more separator behind each row; the reason for a rest may be gone. */
  private boolean fits(TableRow row) {
    int width = table.headings().size();
    int least = RestFile.why(table) == width - 1 ? width - 1 : width;
    return row.cells().size() >= least
        && row.cells().stream().skip(width).allMatch(String::isBlank);
  }

  private Optional<Integer> cell(TableRow row, Predicate<String> such) {
    for (int i = 0; i < row.cells().size(); i++) {
      if (such.test(row.cells().get(i))) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  private Problem broken(TableRow row, int cell) {
    return Problem.error(
        "not-text",
        table.where(row, cell),
        "a letter cannot be read as " + table.coding().told(),
        "write the cell anew, and save the table as UTF-8");
  }

  private Problem tooLong(TableRow row, int cell) {
    return Problem.error(
            "too-long",
            table.where(row, cell),
            "the cell has " + row.cells().get(cell).length() + " characters, more than " + LONGEST,
            "shorten it")
        .with("longest", Integer.toString(LONGEST));
  }

  private Problem fault(TableRow row, String code, String message, String fix) {
    return Problem.error(code, table.where(row), message, fix);
  }

  /**
   * A row whose job cannot be told may belong to one that is named somewhere in it, or else to that
   * of the row before: without it that job would be written with too little.
   */
  private void mayLack(TableRow row, String before) {
    if (row.whole()) {
      return;
    }
    List<String> named = new ArrayList<>();
    for (String part : row.cells().get(0).split("[" + table.separator() + "\"]")) {
      if (jobs.containsKey(part.strip())) {
        named.add(part.strip());
      }
    }
    if (named.isEmpty() && jobs.containsKey(before)) {
      named.add(before);
    }
    for (String id : named) {
      lacking.putIfAbsent(
          id,
          Problem.error(
                  "may-lack-row",
                  table.where(row),
                  "line "
                      + row.line()
                      + " of "
                      + table.name()
                      + ", which cannot be read, may belong to the job "
                      + id,
                  "mend that line first, so that the job is written with all its work")
              .with("line", Integer.toString(row.line()))
              .with("job", Shown.bare(id)));
    }
  }
}
