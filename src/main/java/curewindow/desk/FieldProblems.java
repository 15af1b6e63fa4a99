package curewindow.desk;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import curewindow.words.Words;
import java.util.Collection;
import java.util.List;

/** What is wrong with the values of a form, each at the field that is named by its path. */
final class FieldProblems {

  private final List<Problem> problems;
  private final Words words;

  FieldProblems(List<Problem> problems, Words words) {
    this.problems = List.copyOf(problems);
    this.words = words;
  }

  /** What is told where somebody else wrote a file while it was changed in a form. */
  static Problem overtaken(String file, Words words) {
    return Problem.error(
        "changed-meanwhile",
        Where.file(file),
        words.text("desk.shop.meanwhile"),
        words.text("desk.shop.meanwhile-do"));
  }

  /** What is wrong with the value of a name, or with a part of it. */
  List<String> at(String name) {
    return problems.stream().filter(p -> isAt(p, name)).map(this::told).distinct().toList();
  }

  /** The problems that no field of some names shows. */
  List<String> elsewhere(Collection<String> names) {
    return problems.stream()
        .filter(p -> names.stream().noneMatch(n -> isAt(p, n)))
        .map(this::told)
        .distinct()
        .toList();
  }

  private static boolean isAt(Problem problem, String name) {
    String at = place(problem);
    return at.equals(name) || at.startsWith(name + "[");
  }

  /** Where a problem stands; a value that is missing stands where it would be. */
  private static String place(Problem problem) {
    if (!problem.code().equals("missing-key")) {
      return problem.path();
    }
    String key = problem.message().replaceFirst(" is missing$", "");
    return problem.path().isEmpty() ? key : problem.path() + "." + key;
  }

  /** As the counter says it, where it has words for it; else as the files' reader does. */
  private String told(Problem problem) {
    if (problem.code().equals("missing-key") || problem.code().equals("no-spots")) {
      return words.text("desk.form.needed");
    }
    String own = "desk.problem." + problem.code();
    return words.has(own) ? words.text(own) : problem.message() + ": " + problem.fix();
  }
}
