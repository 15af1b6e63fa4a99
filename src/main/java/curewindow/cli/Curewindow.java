package curewindow.cli;

/** The command line. */
public final class Curewindow {

  private Curewindow() {}

  /**
   * Runs a command.
   *
   * @param args the command and its options
   */
  public static void main(String[] args) {
    System.exit(args.length == 0 ? 2 : 0);
  }
}
