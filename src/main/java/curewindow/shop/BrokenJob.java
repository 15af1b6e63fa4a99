package curewindow.shop;

import curewindow.problem.Problem;
import java.util.List;
import java.util.Objects;

/**
 * A job that was left out because it has problems.
 *
 * @param name its id, or the name of its file where the id could not be read
 * @param parts where it stands; in more places than one where it has several rows, or where several
 *     jobs have the same id
 */
public record BrokenJob(String name, List<Part> parts) {

  /** Refuses a missing name. */
  public BrokenJob {
    Objects.requireNonNull(name, "name");
    parts = List.copyOf(parts);
  }

  /** Some lines of a file, from the first to the last. */
  record Part(String file, int first, int last) {

    /** All of a file. */
    static Part whole(String file) {
      return new Part(file, 0, Integer.MAX_VALUE);
    }

    private boolean has(Problem problem) {
      return problem.file().equals(file) && problem.line() >= first && problem.line() <= last;
    }
  }

  /**
   * The id that a job most likely has that was left out: jobs/Q-7.yaml is read as Q-7.
   *
   * @param name its id, or the name of its file
   * @return the id
   */
  public static String likelyId(String name) {
    String file = name.substring(name.lastIndexOf('/') + 1);
    return file.endsWith(".yaml") ? file.substring(0, file.length() - 5) : file;
  }

  /**
   * Whether a problem stands in this job.
   *
   * @param problem a problem
   * @return false where it stands in another job, or in a file that jobs share
   */
  public boolean has(Problem problem) {
    return parts.stream().anyMatch(part -> part.has(problem));
  }
}
