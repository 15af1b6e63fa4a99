package curewindow.shop;

import curewindow.problem.Faults;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/** Reads the text of one job file, as it would be read if it stood in the shop folder. */
public final class JobCheck {

  private final Optional<Known> known;

  private JobCheck(Optional<Known> known) {
    this.known = known;
  }

  /** Of a shop folder that cannot be read: no job is right in it. */
  static final JobCheck NONE = new JobCheck(Optional.empty());

  static JobCheck of(Known known) {
    return new JobCheck(Optional.of(known));
  }

  /**
   * What came of it.
   *
   * @param job the job, where nothing is wrong with it
   * @param problems what is wrong and what is worth a second look; each names its place by its path
   */
  public record Tried(Optional<Job> job, List<Problem> problems) {

    /** Copies the list. */
    public Tried {
      Objects.requireNonNull(job, "job");
      problems = List.copyOf(problems);
    }
  }

  /**
   * Reads a text. Whether another job has the same id is not asked.
   *
   * @param file the name that problems give the file
   * @param text the text
   * @return the job and the problems
   */
  public Tried read(String file, String text) {
    Problems problems = new Problems();
    Source source = new Source(file, problems);
    Optional<Job> job =
        known.flatMap(
            k ->
                Faults.guard(Where.file(file), problems, () -> read(k, text, source))
                    .flatMap(Function.identity()));
    return new Tried(job.filter(j -> source.errors() == 0), problems.all());
  }

  private static Optional<Job> read(Known known, String text, Source source) {
    return YamlTree.read(text, source)
        .flatMap(node -> new JobReader(known, source).read(node).job())
        .map(job -> job.asOf(known.now()).withoutReplaced());
  }
}
