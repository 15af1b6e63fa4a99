package curewindow.problem;

import java.util.List;
import java.util.TreeSet;

/**
 * Collects the problems found in the user's files, so that all of them are reported together. Not
 * safe for use by several threads at once.
 */
public final class Problems {

  private final TreeSet<Problem> found = new TreeSet<>();

  /**
   * Adds a problem; the same problem added twice counts once.
   *
   * @param problem the problem
   */
  public void add(Problem problem) {
    found.add(problem);
  }

  /**
   * Adds several problems.
   *
   * @param problems the problems
   */
  public void addAll(Iterable<Problem> problems) {
    problems.forEach(this::add);
  }

  /**
   * All problems, by file, line and column.
   *
   * @return an unmodifiable copy
   */
  public List<Problem> all() {
    return List.copyOf(found);
  }

  /**
   * Whether any problem stops its file or job from being used.
   *
   * @return true where there is an error, not merely notices
   */
  public boolean hasErrors() {
    return errorCount() > 0;
  }

  /**
   * How many problems are errors.
   *
   * @return the count, 0 or more
   */
  public int errorCount() {
    return (int) found.stream().filter(Problem::isError).count();
  }
}
