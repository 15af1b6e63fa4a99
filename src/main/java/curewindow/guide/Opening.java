package curewindow.guide;

import java.util.Optional;

/** What a line that opens a clause opens. */
sealed interface Opening {

  /** A part that is shown where a condition is true of the job. */
  record If(Condition condition) implements Opening {}

  /** A part that is shown until a hold is over, or, where {@code set}, until it is fully set. */
  record Timed(String hold, boolean set) implements Opening {}

  /** A question that customers ask, with its answer. */
  record Question(String id, boolean later, Optional<GuideQuestion.Standing> standing)
      implements Opening {}

  /** What a photo for the shop should show. */
  record Photo() implements Opening {}
}
