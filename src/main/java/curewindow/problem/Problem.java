package curewindow.problem;

import java.util.Collections;
import java.util.Comparator;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * One thing wrong in the user's files, said so that it can be mended without reading the program.
 *
 * @param severity whether the thing it is found in can still be used
 * @param code a stable name of the kind of problem, lower case with hyphens, such as {@code
 *     unknown-film}
 * @param file the file, relative to the shop folder, with forward slashes
 * @param line the line from 1, or 0 where the problem is with the whole file
 * @param column the column from 1, or 0 where unknown
 * @param path the place inside the file in words of its keys, such as {@code items[2].film}; may be
 *     empty
 * @param message what is wrong, one sentence without a full stop
 * @param fix what to do about it, one sentence without a full stop
 * @param facts the names and numbers in the message by what they are, such as {@code low}, for
 *     those who say it in other words
 */
public record Problem(
    Severity severity,
    String code,
    String file,
    int line,
    int column,
    String path,
    String message,
    String fix,
    Map<String, String> facts)
    implements Comparable<Problem> {

  private static final String MISSING = "missing-key";

  private static final Comparator<Problem> ORDER =
      Comparator.comparing(Problem::file)
          .thenComparingInt(Problem::line)
          .thenComparingInt(Problem::column)
          .thenComparing(Problem::code)
          .thenComparing(Problem::path)
          .thenComparing(Problem::message)
          .thenComparing(Problem::fix)
          .thenComparing(Problem::severity);

  /** Checks that no part is missing and that line and column are not negative. */
  public Problem {
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(path, "path");
    Objects.requireNonNull(message, "message");
    Objects.requireNonNull(fix, "fix");
    facts = Collections.unmodifiableMap(new TreeMap<>(facts));
    if (line < 0 || column < 0) {
      throw new IllegalArgumentException("line and column start at 1, or are 0 where unknown");
    }
  }

  /**
   * A problem that stops its file or job from being used.
   *
   * @param code the kind of problem
   * @param where file, line, column and path
   * @param message what is wrong
   * @param fix what to do
   * @return the problem
   */
  public static Problem error(String code, Where where, String message, String fix) {
    return at(Severity.ERROR, code, where, message, fix);
  }

  /**
   * A value that has to be there and is not.
   *
   * @param where the place of the keys around it
   * @param key the key or column that it lacks, as the file calls it
   * @param message what is wrong
   * @param fix what to do
   * @return the problem, of the kind {@code missing-key}
   */
  public static Problem missing(Where where, String key, String message, String fix) {
    return error(MISSING, where, message, fix).with("key", key);
  }

  /**
   * A problem that is worth knowing but stops nothing.
   *
   * @param code the kind of problem
   * @param where file, line, column and path
   * @param message what was noticed
   * @param fix what to do
   * @return the problem
   */
  public static Problem notice(String code, Where where, String message, String fix) {
    return at(Severity.NOTICE, code, where, message, fix);
  }

  private static Problem at(
      Severity severity, String code, Where where, String message, String fix) {
    return new Problem(
        severity,
        code,
        where.file(),
        where.line(),
        where.column(),
        where.path(),
        message,
        fix,
        Map.of());
  }

  /**
   * The same problem with one more fact.
   *
   * @param fact what it is, such as {@code low}
   * @param value a name, or a number in its shortest form
   * @return the problem
   */
  public Problem with(String fact, String value) {
    Map<String, String> more = new TreeMap<>(facts);
    more.put(fact, value);
    return new Problem(severity, code, file, line, column, path, message, fix, more);
  }

  /**
   * Whether something has to be mended.
   *
   * @return true where it is an error, false where it is a notice
   */
  public boolean isError() {
    return severity == Severity.ERROR;
  }

  /**
   * Whether it is told of a value that is not there.
   *
   * @return true where it was made by {@link #missing}
   */
  public boolean isMissing() {
    return code.equals(MISSING);
  }

  /**
   * The path of the value that has to change: the path, and of a value that is missing where it
   * would stand.
   *
   * @return the place in words of the file's keys; may be empty
   */
  public String place() {
    String key = isMissing() ? facts.getOrDefault("key", "") : "";
    return path.isEmpty() || key.isEmpty() ? path + key : path + "." + key;
  }

  /**
   * Whether the problem is told of a place.
   *
   * @param where the place
   * @return true where file, line and column are the same
   */
  public boolean isAt(Where where) {
    return file.equals(where.file()) && line == where.line() && column == where.column();
  }

  /**
   * The problem on one line, as {@code check} prints it: {@code file:line:column what is wrong what
   * to do}.
   *
   * @return the line, without a line break
   */
  public String oneLine() {
    String place = line == 0 ? file : file + ":" + line + ":" + Math.max(1, column);
    return place + "  " + message + "  " + fix;
  }

  @Override
  public int compareTo(Problem other) {
    return ORDER.compare(this, other);
  }
}
