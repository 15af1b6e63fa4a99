package curewindow.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntSupplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line. */
@Command(
    name = "curewindow",
    description = "Aftercare pages, cards and calendars with dates computed from the weather.",
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    synopsisSubcommandLabel = "COMMAND")
public final class Curewindow {

  /** By the names that the commands give themselves, in the order of the help. */
  private static final Map<String, Class<?>> COMMANDS = commands();

  private Curewindow() {}

  private static Map<String, Class<?>> commands() {
    Map<String, Class<?>> commands = new LinkedHashMap<>();
    commands.put("press", PressCommand.class);
    commands.put("check", CheckCommand.class);
    commands.put("dates", DatesCommand.class);
    commands.put("why", WhyCommand.class);
    commands.put("card", CardCommand.class);
    commands.put("due", DueCommand.class);
    commands.put("questions", QuestionsCommand.class);
    commands.put("send", SendCommand.class);
    commands.put("desk", DeskCommand.class);
    commands.put("view", ViewCommand.class);
    commands.put("rename", RenameCommand.class);
    commands.put("withdraw", WithdrawCommand.class);
    commands.put("forget", ForgetCommand.class);
    commands.put("expire", ExpireCommand.class);
    commands.put("restore", RestoreCommand.class);
    commands.put("import", ImportCommand.class);
    commands.put("places", PlacesCommand.class);
    commands.put("new-shop", NewShopCommand.class);
    commands.put("edit", EditCommand.class);
    commands.put("quick-start", QuickStartCommand.class);
    commands.put("help", CommandLine.HelpCommand.class);
    return commands;
  }

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
    int code = enough(err, () -> run(Clock.systemUTC(), out, err, args));
    out.flush();
    err.flush();
    System.exit(code);
  }

  /** Runs a command; where the memory is not enough for it, says how to give it more. */
  static int enough(PrintWriter err, IntSupplier command) {
    try {
      return command.getAsInt();
    } catch (OutOfMemoryError e) {
      err.println("the memory is not enough; give Java more: java -Xmx4g -jar ...");
      return Exit.DISK;
    }
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
    CommandLine line = line(clock, args);
    line.setOut(out);
    line.setErr(err);
    line.setExecutionExceptionHandler(new Failures());
    line.setParameterExceptionHandler(new Slips());
    if (args.length == 0) {
      line.usage(out);
      return Exit.USAGE;
    }
    return line.execute(args);
  }

  private static void tellVersion(CommandLine command) {
    command.getCommandSpec().versionProvider(new ProgramVersion());
    command.getSubcommands().values().forEach(Curewindow::tellVersion);
  }

  /** With the called command alone where its name tells: to describe the others takes a while. */
  private static CommandLine line(Clock clock, String... args) {
    CommandLine line = new CommandLine(new Curewindow(), new CommandFactory(clock));
    Class<?> called = args.length == 0 ? null : COMMANDS.get(args[0]);
    if (called == null || called == CommandLine.HelpCommand.class) {
      COMMANDS.values().forEach(line::addSubcommand);
    } else {
      line.addSubcommand(called);
    }
    line.getSubcommands().values().forEach(Curewindow::tellVersion);
    return line;
  }
}
