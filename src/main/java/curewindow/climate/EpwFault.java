package curewindow.climate;

import curewindow.problem.Problem;
import curewindow.problem.Where;

/** The first thing found wrong in a weather file, on its way to the reader, which reports it. */
final class EpwFault extends Exception {

  private static final long serialVersionUID = 1;

  private final String code;
  private final int line;
  private final String fix;

  /**
   * A fault.
   *
   * @param code the kind of problem, lower case with hyphens
   * @param line the line from 1, or 0 for the whole file
   * @param message what is wrong, one sentence without a full stop
   * @param fix what to do about it
   */
  EpwFault(String code, int line, String message, String fix) {
    super(message);
    this.code = code;
    this.line = line;
    this.fix = fix;
  }

  Problem problem(String file) {
    Where where = line == 0 ? Where.file(file) : Where.line(file, line, 1);
    return Problem.error(code, where, getMessage(), fix);
  }

  /** A piece of the file for a message: short, and without characters that cannot be printed. */
  static String shown(String text) {
    String plain = text.strip().replaceAll("[^\\x20-\\x7e\\u00a1-\\u00ff]", "?");
    return plain.length() > 40 ? plain.substring(0, 40) + "..." : plain;
  }
}
