package curewindow.shop;

import curewindow.problem.Nearest;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** One file that is being read: where its problems go, and whether it had any. */
final class Source {

  /** A file with more problems than this is best mended before reading on. */
  private static final int MOST = 50;

  private static final int SHOWN = 40;

  private final String file;
  private final Problems problems;
  private final List<Cause> causes = new ArrayList<>();
  private int told;

  /** Where an error stands, and whether that is told of another thing than the one being read. */
  private record Cause(Where where, boolean elsewhere) {}

  Source(String file, Problems problems) {
    this.file = file;
    this.problems = problems;
  }

  String file() {
    return file;
  }

  /** How many errors there were so far; those that are not listed here count too. */
  int errors() {
    return causes.size();
  }

  /** Where the first error after others stands, or else the whole file. */
  Where firstAfter(int errors) {
    return causes.size() > errors ? causes.get(errors).where() : Where.file(file);
  }

  /** Where the errors after others stand that are told elsewhere. */
  List<Where> elsewhereAfter(int errors) {
    return causes.stream().skip(errors).filter(Cause::elsewhere).map(Cause::where).toList();
  }

  /** Counts an error that what is read has only because of another one, which is told already. */
  void follows(Where cause) {
    causes.add(new Cause(cause, true));
  }

  void error(String code, Where where, String message, String fix) {
    error(Problem.error(code, where, message, fix));
  }

  /** Tells an error with the facts in its message. */
  void error(Problem problem) {
    Where where = new Where(problem.file(), problem.line(), problem.column(), problem.path());
    causes.add(new Cause(where, false));
    told++;
    if (told <= MOST) {
      problems.add(problem);
    } else if (told == MOST + 1) {
      problems.add(
          Problem.error(
              "more-problems",
              Where.file(file),
              "the file has more problems than the first " + MOST + ", which are listed",
              "mend those and check again"));
    }
  }

  void error(String code, String message, String fix) {
    error(code, Where.file(file), message, fix);
  }

  void error(String code, int line, int column, String message, String fix) {
    error(code, Where.line(file, line, column), message, fix);
  }

  /** Tells that a key or column has no value, where it has to have one. */
  void missing(Where where, String key, String fix) {
    error(Problem.missing(where, key, key + " is missing", fix));
  }

  /** Tells what is worth knowing but stops nothing. */
  void notice(String code, Where where, String message, String fix) {
    problems.add(Problem.notice(code, where, message, fix));
  }

  /** A piece of the user's text for a message: short, on one line, without control characters. */
  static String shown(String text) {
    return shown(text, SHOWN);
  }

  /** The same with a length of its own, in characters. */
  static String shown(String text, int longest) {
    StringBuilder out = new StringBuilder();
    int count = 0;
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      if (count++ == longest) {
        return out.append("...").toString();
      }
      out.append(isPlain(c) ? Character.toString(c) : String.format("\\u%04x", c));
      i += Character.charCount(c);
    }
    return out.toString();
  }

  /** Whether a character may stand in text that people read; line breaks are not among them. */
  static boolean isPlain(int c) {
    int type = Character.getType(c);
    return type != Character.CONTROL
        && type != Character.FORMAT
        && type != Character.SURROGATE
        && type != Character.UNASSIGNED
        && type != Character.LINE_SEPARATOR
        && type != Character.PARAGRAPH_SEPARATOR;
  }

  /** What to do about an unknown name: the nearest known one, or all of them if they are few. */
  String suggestion(String typed, Collection<String> known) {
    if (told > MOST) {
      return "";
    }
    Optional<String> nearest = typed.length() > 60 ? Optional.empty() : Nearest.to(typed, known);
    if (nearest.isPresent()) {
      return "did you mean " + nearest.get() + "?";
    }
    if (known.isEmpty()) {
      return "there is none to choose from yet";
    }
    return known.size() <= 12
        ? "use one of " + String.join(", ", known)
        : "use one of the " + known.size() + " known ones, such as " + known.iterator().next();
  }
}
