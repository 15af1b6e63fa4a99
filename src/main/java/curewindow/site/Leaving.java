package curewindow.site;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import curewindow.shop.Job;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Notices when many jobs are gone at once, as where the folder of jobs is not mounted or a list of
 * jobs was cut off: their pages then stay until somebody says that they may go.
 *
 * @param jobs ids of the jobs that are gone and whose pages stay
 * @param problems tells of them
 */
record Leaving(List<String> jobs, List<Problem> problems) {

  /** Fewer are a normal tidying up, unless they are all. */
  private static final int MANY = 3;

  private static final int NAMED = 3;

  /** Every page of a job that is gone may go. */
  static final Leaving FREELY = new Leaving(List.of(), List.of());

  /**
   * Looks for jobs that are gone.
   *
   * @param shop the shop folder
   * @param before the customers' pages of the last press
   * @return the jobs whose pages stay; none where no more than a tenth of the pages, or fewer than
   *     three that are not all, would go
   */
  static Leaving of(LoadedShop shop, List<PageList.Row> before) {
    Set<String> good = shop.jobs().stream().map(Job::id).collect(Collectors.toSet());
    List<PageList.Row> kept = new KeptPages(before, good, shop.brokenJobs(), false, false).rows();
    List<String> gone =
        before.stream()
            .filter(row -> !good.contains(row.job()) && !kept.contains(row))
            .map(PageList.Row::job)
            .toList();
    boolean all = !gone.isEmpty() && gone.size() == before.size();
    if (all || gone.size() >= MANY && gone.size() * 10 > before.size()) {
      return new Leaving(gone, List.of(stay(gone, before.size())));
    }
    boolean noneNow = good.isEmpty() && shop.brokenJobs().isEmpty();
    return before.isEmpty() && noneNow && shop.hasGivenAddresses()
        ? new Leaving(List.of(), List.of(noJobs()))
        : FREELY;
  }

  private static Problem stay(List<String> gone, int all) {
    String rest = gone.size() > NAMED ? " and " + (gone.size() - NAMED) + " more" : "";
    return problem(
        gone.size()
            + " of "
            + all
            + " customers' pages would go, as their jobs are gone ("
            + gone.stream().limit(NAMED).collect(Collectors.joining(", "))
            + rest
            + "); they stay for now",
        "bring the jobs back (is the folder jobs there, and jobs.csv whole?)");
  }

  private static Problem noJobs() {
    return problem(
        "there is no job at all, although " + LinkLedger.FILE + " knows some",
        "bring the folder jobs or jobs.csv back");
  }

  private static Problem problem(String message, String fix) {
    return Problem.error(
        "jobs-gone",
        Where.file("jobs"),
        message,
        fix + ", or press with --let-go if the pages may go");
  }

  /** The jobs whose pages stay: these, and those with problems. */
  List<String> with(List<String> leftOut) {
    return Stream.concat(jobs.stream(), leftOut.stream()).toList();
  }
}
