package curewindow.desk;

import curewindow.problem.Problem;
import curewindow.shop.ImportMap;
import curewindow.shop.JobColumns;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Says what is wrong with a table, its rows, or the map by which it is read. */
final class ImportTold {

  /** A problem: where, what, and what to do; both may be empty. */
  record Told(String where, String what, String fix) {}

  private final String table;
  private final Words words;
  private final ProblemWords problems;

  /**
   * Says what is wrong.
   *
   * @param table the name of the table's file, which problems of its cells name
   */
  ImportTold(String table, Words words) {
    this.table = table;
    this.words = words;
    this.problems = ProblemWords.ofRows(words);
  }

  List<Told> all(List<Problem> found) {
    return found.stream().map(this::one).toList();
  }

  Told one(Problem problem) {
    String where = problem.line() > 0 ? problem.file() + ":" + problem.line() : problem.file();
    return new Told(where, text(problem), "");
  }

  /** What is wrong, with the column in which it stands. */
  String text(Problem problem) {
    String column = column(problem);
    String told = problems.told(problem);
    return column.isEmpty() ? told : column + ": " + told;
  }

  /** Theirs where it is a cell of the table; ours where there is no such cell, or in the map. */
  private String column(Problem problem) {
    if (problem.file().equals(table)) {
      return problem.path().isEmpty()
          ? ours(problem.facts().getOrDefault("column", ""))
          : problem.path();
    }
    String[] path = problem.path().split("[.]");
    return path.length > 1 ? ours(path[1]) : "";
  }

  private String ours(String column) {
    return JobColumns.all().contains(column) ? words.text("desk.import.column." + column) : "";
  }

  /** What is wrong with a map that a form made; what it lacks is said in the words of its form. */
  List<Told> ofMap(List<Problem> found, ImportMap map) {
    List<Told> told = new ArrayList<>();
    List<String> lacking = map.lacking().stream().map(this::ours).toList();
    if (!lacking.isEmpty()) {
      told.add(
          new Told(
              "",
              words.text("desk.import.lacking", Map.of("columns", String.join("; ", lacking))),
              words.text("desk.import.lacking-do")));
    }
    found.stream()
        .filter(p -> p.isError() && !p.code().equals("missing-column"))
        .map(p -> new Told("", text(p), ""))
        .forEach(told::add);
    return told;
  }
}
