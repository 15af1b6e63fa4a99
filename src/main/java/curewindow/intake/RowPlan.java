package curewindow.intake;

import curewindow.problem.Problem;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What becomes of a row of a table.
 *
 * @param line the line on which it begins, from 1
 * @param job the id of its job as it stands in the table; empty where it names none
 * @param state what becomes of it
 * @param problems what is wrong with it; of a row that is good, what is worth a second look
 * @param read what was read from it; empty where it is left over
 */
public record RowPlan(
    int line, String job, State state, List<Problem> problems, Optional<Read> read) {

  /** Copies the list. */
  public RowPlan {
    Objects.requireNonNull(job, "job");
    Objects.requireNonNull(state, "state");
    problems = List.copyOf(problems);
  }

  /** A row that is left over. */
  static RowPlan left(int line, String job, List<Problem> problems) {
    return new RowPlan(line, job, State.LEFT, problems, Optional.empty());
  }

  /**
   * What was read from a row.
   *
   * @param job the job, which may stand in other rows too
   * @param item the fitted item of this row
   */
  public record Read(Job job, FittedItem item) {}

  /** What becomes of a row. */
  public enum State {
    /** Its job is right and will be written. */
    GOOD,
    /** Its job is in the shop folder already, just so. */
    THERE,
    /** It is left over: something has to be mended. */
    LEFT
  }
}
