package curewindow.site;

import java.util.List;

/**
 * What became of a command that changes what is kept of jobs.
 *
 * @param done whether it was done; else nothing was changed
 * @param lines what to tell the user, and what to do next
 */
public record Outcome(boolean done, List<String> lines) {

  /** Copies the lines. */
  public Outcome {
    lines = List.copyOf(lines);
  }

  static Outcome done(String... lines) {
    return new Outcome(true, List.of(lines));
  }

  static Outcome refused(String... lines) {
    return new Outcome(false, List.of(lines));
  }
}
