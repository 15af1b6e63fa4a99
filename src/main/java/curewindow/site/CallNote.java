package curewindow.site;

import java.time.LocalDateTime;
import java.util.Objects;

/**
 * A call in which a customer asked something.
 *
 * @param job the job's id
 * @param at when, by the shop's clock, to the second
 * @param question the id of a question of the guides, or {@link #OTHER}
 * @param outcome what became of it
 */
public record CallNote(String job, LocalDateTime at, String question, CallOutcome outcome) {

  /** Stands for a question that the guides do not have. */
  public static final String OTHER = "other";

  /** Refuses missing parts. */
  public CallNote {
    Objects.requireNonNull(job, "job");
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(question, "question");
    Objects.requireNonNull(outcome, "outcome");
  }
}
