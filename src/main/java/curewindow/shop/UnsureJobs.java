package curewindow.shop;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;

/** Tells which jobs an error leaves out that stands in a file that jobs share. */
final class UnsureJobs {

  /** Of how many jobs a problem names the ids. */
  private static final int SHOWN = 5;

  private UnsureJobs() {}

  /**
   * Tells it in one line for each error.
   *
   * @param inDoubt names of the jobs by the place of the error
   * @param problems where it is told
   */
  static void tell(Map<Where, ? extends SortedSet<String>> inDoubt, Problems problems) {
    inDoubt.forEach((cause, jobs) -> problems.add(told(cause, jobs)));
  }

  private static Problem told(Where cause, SortedSet<String> jobs) {
    int count = jobs.size();
    List<String> shown = jobs.stream().limit(count > SHOWN + 1 ? SHOWN : count).toList();
    String more = shown.size() < count ? " and " + (count - shown.size()) + " more" : "";
    return Problem.error(
            "unsure-jobs",
            cause,
            "the error here leaves out "
                + (count == 1 ? "1 job, whose" : count + " jobs, whose")
                + " dates would not be sure: "
                + String.join(", ", shown)
                + more,
            "mend it first")
        .with("jobs", String.join(", ", shown) + (more.isEmpty() ? "" : ", \u2026"));
  }
}
