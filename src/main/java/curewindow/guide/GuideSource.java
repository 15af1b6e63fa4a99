package curewindow.guide;

import curewindow.problem.Nearest;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.util.Arrays;
import java.util.Collection;
import java.util.Optional;

/** The text of a guide's file, and where problems in it are reported. */
final class GuideSource {

  private final String file;
  private final String text;
  private final Problems problems;
  private final int[] lineStarts;
  private int errors;

  GuideSource(String file, String text, Problems problems) {
    this.file = file;
    this.text = text;
    this.problems = problems;
    this.lineStarts = lineStarts(text);
  }

  private static int[] lineStarts(String text) {
    int[] starts = new int[text.length() + 1];
    int count = 1;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean pair = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
      if (c == '\n' || (c == '\r' && !pair)) {
        starts[count++] = i + 1;
      }
    }
    return Arrays.copyOf(starts, count);
  }

  String text() {
    return text;
  }

  /** Whether anything was reported that keeps the guide from being used. */
  boolean hasErrors() {
    return errors > 0;
  }

  /** The line of a position in the text, from 1. */
  int line(int offset) {
    int at = Arrays.binarySearch(lineStarts, offset);
    return at >= 0 ? at + 1 : -at - 1;
  }

  private Where where(int offset) {
    int line = line(offset);
    int column = text.codePointCount(lineStarts[line - 1], offset) + 1;
    return Where.line(file, line, column);
  }

  void error(String code, int offset, String message, String fix) {
    errors++;
    problems.add(Problem.error(code, where(offset), message, fix));
  }

  void notice(String code, int offset, String message, String fix) {
    problems.add(Problem.notice(code, where(offset), message, fix));
  }

  /** Reports something wrong with the whole file. */
  void error(String code, String message, String fix) {
    errors++;
    problems.add(Problem.error(code, Where.file(file), message, fix));
  }

  /** What to write instead of an unknown name: the nearest known one, or all of them where few. */
  static String suggestion(String typed, Collection<String> known) {
    Optional<String> nearest = Nearest.to(typed, known);
    if (nearest.isPresent()) {
      return "did you mean \"" + nearest.get() + "\"?";
    }
    return known.isEmpty() ? "there are none" : "use one of: " + firstOf(known);
  }

  private static String firstOf(Collection<String> known) {
    String list = String.join(", ", known.stream().limit(12).toList());
    return known.size() > 12 ? list + ", ..." : list;
  }
}
