package curewindow.cli;

import curewindow.problem.Nearest;
import curewindow.problem.Problem;
import curewindow.shop.Job;
import curewindow.site.LoadedShop;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;

/** Finds the job that a command names, or says why it cannot be used. */
final class JobLookup {

  private JobLookup() {}

  static Optional<Job> find(LoadedShop loaded, String id, PrintWriter err) {
    Optional<Job> job = loaded.shop().isPresent() ? loaded.job(id) : Optional.empty();
    if (job.isPresent()) {
      return job;
    }
    if (loaded.shop().isEmpty()) {
      err.println("shop.yaml has to be mended first:");
      ProblemLines.print(loaded.errors(), err);
    } else if (loaded.brokenJobs().contains(id)) {
      List<Problem> errors = loaded.errorsOf(id);
      err.println("Job " + id + " has to be mended first:");
      ProblemLines.print(errors, err);
      int others = loaded.errors().size() - errors.size();
      if (others > 0) {
        err.println(others + " more to mend in other jobs: check tells them");
      }
    } else {
      List<String> known = loaded.jobs().stream().map(Job::id).toList();
      String nearest = Nearest.to(id, known).map(n -> "; did you mean " + n + "?").orElse("");
      err.println("There is no job " + id + nearest);
    }
    return Optional.empty();
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
