package curewindow.site;

import curewindow.problem.Problem;
import java.nio.file.Path;
import java.util.List;

/**
 * What a press made.
 *
 * @param jobs how many jobs have a page
 * @param made the jobs whose pages were made, by id; those of the others stand as they would be
 *     made
 * @param later how many pages have to be made anew by a later press, as this one was asked for some
 * @param leftOut ids or files of the jobs that have problems
 * @param cards how many cars are still to be picked up and have a handout to look at
 * @param files what was done to the output folder
 * @param problems what is wrong with templates and addresses
 * @param out the output folder
 */
public record PressReport(
    int jobs,
    List<Made> made,
    int later,
    List<String> leftOut,
    int cards,
    Files files,
    List<Problem> problems,
    Path out) {

  /** Copies the lists. */
  public PressReport {
    made = List.copyOf(made);
    leftOut = List.copyOf(leftOut);
    problems = List.copyOf(problems);
  }

  /** A press that was not begun. */
  static PressReport nothing(List<Problem> problems, Path out) {
    return new PressReport(0, List.of(), 0, List.of(), 0, new Files(0, 0, 0), problems, out);
  }

  /**
   * Whether something could not be made.
   *
   * @return true where a problem is more than a notice
   */
  public boolean hasErrors() {
    return problems.stream().anyMatch(Problem::isError);
  }

  /**
   * What a press did to the output folder.
   *
   * @param made how many files were made in all
   * @param changed how many of them are new or differ from the last press
   * @param removed how many files of the last press were removed
   */
  public record Files(int made, int changed, int removed) {}

  /**
   * A job that was built.
   *
   * @param job the job's id
   * @param firstName whom it is for; may be empty
   * @param firstAnswer the first thing to hold off from and its date, in the shop's language
   * @param page the page's file, relative to the output folder
   */
  public record Made(String job, String firstName, String firstAnswer, String page) {}
}
