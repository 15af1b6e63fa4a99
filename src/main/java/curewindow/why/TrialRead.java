package curewindow.why;

import java.util.List;

/** A trial as asked for: good, or refused with reasons. */
public sealed interface TrialRead permits Trial, TrialRead.Refused {

  /**
   * A trial that cannot be made.
   *
   * @param reasons what is wrong and what to do, a sentence each, without a full stop
   */
  record Refused(List<String> reasons) implements TrialRead {

    /** Copies the list. */
    public Refused {
      reasons = List.copyOf(reasons);
    }
  }
}
