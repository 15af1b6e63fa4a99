package curewindow.intake;

import curewindow.problem.Problem;
import java.util.List;
import java.util.Objects;

/**
 * What becomes of a row of a table.
 *
 * @param line the line on which it begins, from 1
 * @param job the id of its job as it stands in the table; empty where it names none
 * @param state what becomes of it
 * @param problems what is wrong with it; of a row that is good, what is worth a second look
 */
public record RowPlan(int line, String job, State state, List<Problem> problems) {

  /** Copies the list. */
  public RowPlan {
    Objects.requireNonNull(job, "job");
    Objects.requireNonNull(state, "state");
    problems = List.copyOf(problems);
  }

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
