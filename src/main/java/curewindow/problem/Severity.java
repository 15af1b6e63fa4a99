package curewindow.problem;

/** How much a problem in the user's files matters. */
public enum Severity {
  /** The file or job it is found in cannot be used. */
  ERROR,
  /** Worth knowing, but everything can still be built. */
  NOTICE
}
