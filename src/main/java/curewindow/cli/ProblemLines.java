package curewindow.cli;

import curewindow.problem.Problem;
import java.io.PrintWriter;
import java.util.List;

/** Prints problems, a line each. */
final class ProblemLines {

  private ProblemLines() {}

  static void print(List<Problem> problems, PrintWriter out) {
    for (Problem problem : problems) {
      String kind = problem.isError() ? "" : "note: ";
      out.println(kind + problem.oneLine());
    }
  }
}
