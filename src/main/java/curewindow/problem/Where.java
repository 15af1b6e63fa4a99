package curewindow.problem;

import java.util.Objects;

/**
 * A place in one of the user's files.
 *
 * @param file the file, relative to the shop folder, with forward slashes
 * @param line the line from 1, or 0 for the whole file
 * @param column the column from 1, or 0 where unknown
 * @param path the place in words of the file's keys, such as {@code items[2].film}; may be empty
 */
public record Where(String file, int line, int column, String path) {

  /** Checks that no part is missing. */
  public Where {
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(path, "path");
  }

  /**
   * The whole of a file.
   *
   * @param file the file, relative to the shop folder
   * @return the place
   */
  public static Where file(String file) {
    return new Where(file, 0, 0, "");
  }

  /**
   * A line of a file.
   *
   * @param file the file, relative to the shop folder
   * @param line the line from 1
   * @param column the column from 1
   * @return the place
   */
  public static Where line(String file, int line, int column) {
    return new Where(file, line, column, "");
  }
}
