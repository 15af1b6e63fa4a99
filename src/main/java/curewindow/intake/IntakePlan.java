package curewindow.intake;

import curewindow.problem.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What becomes of each row of a table; nothing is written yet. */
public final class IntakePlan {

  private final ForeignTable table;
  private final List<Problem> stops;
  private final List<Problem> notes;
  private final List<RowPlan> rows;
  private final Map<String, String> jobs;

  IntakePlan(
      ForeignTable table,
      List<Problem> stops,
      List<Problem> notes,
      List<RowPlan> rows,
      Map<String, String> jobs) {
    this.table = table;
    this.stops = List.copyOf(stops);
    this.notes = List.copyOf(notes);
    this.rows = List.copyOf(rows);
    this.jobs = new LinkedHashMap<>(jobs);
  }

  static IntakePlan stopped(ForeignTable table, List<Problem> stops) {
    return new IntakePlan(table, stops, List.of(), List.of(), Map.of());
  }

  /**
   * What has to be mended before any row can be looked at.
   *
   * @return the problems of the map, and of the table with it; where there are any, there are no
   *     rows
   */
  public List<Problem> stops() {
    return stops;
  }

  /**
   * How the table was understood, where that was guessed.
   *
   * @return notices
   */
  public List<Problem> notes() {
    return notes;
  }

  /**
   * The rows of the table.
   *
   * @return in their order
   */
  public List<RowPlan> rows() {
    return rows;
  }

  /**
   * How many rows something becomes of.
   *
   * @param state what becomes of them
   * @return the number
   */
  public long count(RowPlan.State state) {
    return rows.stream().filter(row -> row.state() == state).count();
  }

  /**
   * The jobs that are written.
   *
   * @return the texts of their files by id, in the order of the table
   */
  public Map<String, String> jobs() {
    return new LinkedHashMap<>(jobs);
  }

  /**
   * The rows that are left over, as a table like the one they come from, with one more column that
   * tells why.
   *
   * @return its bytes; empty where no row is left over
   */
  public Optional<byte[]> rest() {
    return rest(p -> p.message() + "; " + p.fix());
  }

  /**
   * The same table with the reasons in other words.
   *
   * @param said says what is wrong and what to do
   * @return its bytes; empty where no row is left over
   */
  public Optional<byte[]> rest(Function<Problem, String> said) {
    return RestFile.of(table, rows, said);
  }
}
