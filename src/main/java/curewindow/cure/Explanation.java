package curewindow.cure;

import java.util.Objects;

/**
 * How the end of one hold of a job comes about. Only for explaining: a {@link Timeline} does not
 * need it.
 *
 * @param hold the hold's id
 * @param safe the way to the end that nine of ten weathers keep
 * @param likely the way to the median end
 * @param ends the ends in all weathers
 */
public record Explanation(String hold, ExplanationWay safe, ExplanationWay likely, Ends ends) {

  /** Refuses missing parts. */
  public Explanation {
    Objects.requireNonNull(hold, "hold");
    Objects.requireNonNull(safe, "safe");
    Objects.requireNonNull(likely, "likely");
    Objects.requireNonNull(ends, "ends");
  }
}
