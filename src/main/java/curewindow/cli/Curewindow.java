package curewindow.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line. */
@Command(
    name = "curewindow",
    description = "Aftercare pages, cards and calendars with dates computed from the weather.",
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {
      PressCommand.class,
      CheckCommand.class,
      WhyCommand.class,
      CardCommand.class,
      DueCommand.class,
      QuestionsCommand.class,
      ViewCommand.class,
      PlacesCommand.class,
      NewShopCommand.class,
      CommandLine.HelpCommand.class
    })
public final class Curewindow {

  private Curewindow() {}

  /**
   * Runs a command and ends the program with its exit code.
   *
   * @param args the command and its options
   */
  public static void main(String[] args) {
    // Messages are English whatever the machine's language is.
    Locale.setDefault(Locale.ROOT);
    PrintWriter out = writer(System.out);
    PrintWriter err = writer(System.err);
    int code = run(Clock.systemUTC(), out, err, args);
    out.flush();
    err.flush();
    System.exit(code);
  }

  private static PrintWriter writer(java.io.PrintStream stream) {
    return new PrintWriter(stream, true, StandardCharsets.UTF_8);
  }

  /**
   * Runs a command.
   *
   * @param clock tells what time it is now
   * @param out where results are printed
   * @param err where complaints are printed
   * @param args the command and its options
   * @return the exit code: 0 all is well, 1 something in the shop's files has to be mended, 2 the
   *     command was not understood, 3 a file or folder could not be read or written
   */
  static int run(Clock clock, PrintWriter out, PrintWriter err, String... args) {
    CommandLine line = new CommandLine(new Curewindow(), new Clocked(clock));
    line.setOut(out);
    line.setErr(err);
    line.setExecutionExceptionHandler(new Failures());
    if (args.length == 0) {
      line.usage(out);
      return Exit.USAGE;
    }
    return line.execute(args);
  }
}
