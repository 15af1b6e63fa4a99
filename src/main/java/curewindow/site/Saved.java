package curewindow.site;

import curewindow.problem.Problem;
import java.util.List;

/**
 * What came of writing a file.
 *
 * @param <T> what stands there now
 */
public sealed interface Saved<T> {

  /**
   * It is on the disk.
   *
   * @param what as it was read from the text that was written
   * @param <T> what stands there now
   */
  record Written<T>(T what) implements Saved<T> {}

  /**
   * Nothing was written.
   *
   * @param problems what would be wrong then, each with its file and path
   * @param <T> what would stand there
   */
  record Refused<T>(List<Problem> problems) implements Saved<T> {

    /** Copies the list. */
    public Refused {
      problems = List.copyOf(problems);
    }
  }

  /**
   * Nothing was written, as the file is another by now.
   *
   * @param now the file as it stands
   * @param <T> what would stand there
   */
  record Overtaken<T>(KeptFile now) implements Saved<T> {}
}
