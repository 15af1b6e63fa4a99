package curewindow.cli;

import curewindow.problem.Nearest;
import curewindow.problem.Problem;
import curewindow.shop.Job;
import curewindow.site.LoadedShop;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds the jobs that a command names, or says why they cannot be used. */
final class JobLookup {

  private JobLookup() {}

  static Optional<Job> find(LoadedShop loaded, String id, PrintWriter err) {
    return find(loaded, List.of(id), err).stream().findFirst();
  }

  /** The good ones among some jobs; what is wrong with the others is said once. */
  static List<Job> find(LoadedShop loaded, List<String> ids, PrintWriter err) {
    if (!sayIfShopIsBroken(loaded, err)) {
      return List.of();
    }
    sayUnknown(loaded, ids, err);
    List<String> broken =
        ids.stream().distinct().flatMap(id -> broken(loaded, id).stream()).toList();
    if (!broken.isEmpty()) {
      sayBroken(loaded, broken, err);
    }
    return good(loaded, ids);
  }

  /**
   * The good ones among some jobs, where {@link #sayLeftOut} says what is wrong with all others.
   */
  static List<Job> findBesideAll(LoadedShop loaded, List<String> ids, PrintWriter err) {
    sayUnknown(loaded, ids, err);
    return good(loaded, ids);
  }

  private static List<Job> good(LoadedShop loaded, List<String> ids) {
    return ids.stream().flatMap(id -> loaded.job(id).stream()).toList();
  }

  /** Says that shop.yaml comes first where it does; whether it is right. */
  static boolean sayIfShopIsBroken(LoadedShop loaded, PrintWriter err) {
    if (loaded.shop().isEmpty()) {
      err.println("shop.yaml has to be mended first:");
      ProblemLines.print(loaded.errors(), err);
    }
    return loaded.shop().isPresent();
  }

  /** The name of a broken job: its id, or the file that most likely has it. */
  private static Optional<String> broken(LoadedShop loaded, String id) {
    return Stream.of(id, "jobs/" + id + ".yaml").filter(loaded.brokenJobs()::contains).findFirst();
  }

  private static void sayUnknown(LoadedShop loaded, List<String> ids, PrintWriter err) {
    List<String> known = loaded.jobs().stream().map(Job::id).toList();
    ids.stream()
        .distinct()
        .filter(id -> loaded.job(id).isEmpty() && broken(loaded, id).isEmpty())
        .map(id -> id + Nearest.hint(id, known))
        .forEach(id -> err.println("There is no job " + id));
  }

  private static void sayBroken(LoadedShop loaded, List<String> broken, PrintWriter err) {
    List<Problem> errors = loaded.errorsOf(broken);
    boolean one = broken.size() == 1;
    err.println(
        (one ? "Job " : "Jobs ")
            + String.join(", ", broken)
            + (one ? " has" : " have")
            + " to be mended first:");
    ProblemLines.print(errors, err);
    int others = loaded.errors().size() - errors.size();
    if (others > 0) {
      err.println(others + " more to fix in other jobs: run check to see them");
    }
  }

  /** Says which jobs had to be left out, and why; whether there is none. */
  static boolean sayLeftOut(LoadedShop loaded, PrintWriter err) {
    if (!loaded.brokenJobs().isEmpty()) {
      err.println("Without " + String.join(", ", loaded.brokenJobs()) + ":");
      ProblemLines.print(loaded.errors(), err);
    }
    return loaded.brokenJobs().isEmpty();
  }
}
