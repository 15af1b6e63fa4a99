package curewindow.cli;

/** The exit codes of all commands. */
final class Exit {

  /** All is well. */
  static final int OK = 0;

  /** Something in the shop's files has to be mended. */
  static final int PROBLEMS = 1;

  /** The command was not understood. */
  static final int USAGE = 2;

  /** A file or folder could not be read or written. */
  static final int DISK = 3;

  private Exit() {}
}
