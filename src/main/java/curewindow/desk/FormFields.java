package curewindow.desk;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import curewindow.words.Words;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * The fields of a form, each with what is wrong with its value beside it: a field is named by the
 * place of its value in a file, and so is a problem.
 */
final class FormFields {

  /** A value, its name and its problems. */
  record Field(String name, String value, List<String> problems) {}

  /** One of several values. */
  record Choice(String value, String text, boolean chosen) {}

  /** Values of which one is chosen, or several. */
  record Choices(String name, List<Choice> all, List<String> problems) {}

  private final List<Problem> problems;
  private final ProblemWords words;
  private final String place;

  /** The places whose problems are told beside a value. */
  private final Set<String> shown = new HashSet<>();

  FormFields(List<Problem> problems, Words words) {
    this(problems, words, "");
  }

  /**
   * The fields of a part of a file.
   *
   * @param place what the paths of its values begin with
   */
  FormFields(List<Problem> problems, Words words, String place) {
    this.problems = List.copyOf(problems);
    this.words = new ProblemWords(words);
    this.place = place;
  }

  /** What is told where somebody else wrote a file while it was changed in a form. */
  static Problem overtaken(String file) {
    return Problem.error(
        "changed-meanwhile",
        Where.file(file),
        "somebody else changed this in the meantime",
        "save again to put this in place of theirs, or open it anew to see theirs");
  }

  /**
   * The same of a value, with what the other one put.
   *
   * @param theirs in words; may be empty
   */
  static Problem overtaken(String file, String path, String theirs) {
    Where where = new Where(file, 0, 0, path);
    String fix = "save to put yours in place of theirs";
    return theirs.isBlank()
        ? Problem.error("emptied-meanwhile", where, "somebody else left this empty meanwhile", fix)
        : Problem.error("saved-meanwhile", where, "somebody else saved another value", fix)
            .with("value", theirs);
  }

  Field field(String name, String value) {
    return new Field(name, value, at(name));
  }

  /** Values of which one is chosen. */
  Choices choices(String name, List<String> values, String chosen, Function<String, String> text) {
    return new Choices(
        name,
        values.stream().map(v -> new Choice(v, text.apply(v), v.equals(chosen))).toList(),
        at(name));
  }

  /** What is wrong with the value of a name, or with a part of it. */
  List<String> at(String name) {
    shown.add(place + name);
    return problems.stream()
        .filter(p -> isAt(p, place + name))
        .map(words::told)
        .distinct()
        .toList();
  }

  /** The problems that stand at no value, once all fields were asked for. */
  List<String> others() {
    return others("");
  }

  /**
   * The same where a value may break something in other files.
   *
   * @param own the file that the form is about; empty where only that can be wrong
   */
  List<String> others(String own) {
    return problems.stream()
        .filter(p -> shown.stream().noneMatch(n -> isAt(p, n)))
        .map(p -> own.isEmpty() || p.file().equals(own) ? words.told(p) : words.toldOf(p))
        .distinct()
        .toList();
  }

  private static boolean isAt(Problem problem, String name) {
    String at = problem.place();
    return at.equals(name) || at.startsWith(name + "[");
  }
}
