package curewindow.cli;

import curewindow.problem.Nearest;
import java.util.Collection;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says in one line what of a command was not understood, what may be meant, and where to look. */
final class Slips implements CommandLine.IParameterExceptionHandler {

  /** A word that is nothing here is shown up to so many letters. */
  private static final int SHOWN = 60;

  /** What the parser's own command for help says of a name that it does not know. */
  private static final Pattern HELP_FOR = Pattern.compile("(?s)Unknown subcommand '(.*)'\\.");

  private static final Pattern BREAKS = Pattern.compile("\\p{Cntrl}+");

  @Override
  public int handleParseException(ParameterException e, String[] args) {
    CommandSpec command = e.getCommandLine().getCommandSpec();
    Matcher asked = HELP_FOR.matcher(String.valueOf(e.getMessage()));
    String what =
        e instanceof UnmatchedArgumentException unmatched
            ? unmatched(unmatched.getUnmatched(), command, List.of(args))
            : asked.matches()
                ? unmatched(List.of(asked.group(1)), command, List.of(args))
                : said(e.getMessage());
    String see = "see '" + command.qualifiedName() + " --help'";
    boolean ended = what.endsWith("?") || what.endsWith(".");
    e.getCommandLine().getErr().println(ended ? what + " S" + see.substring(1) : what + "; " + see);
    return Exit.USAGE;
  }

  private static String unmatched(List<String> unmatched, CommandSpec command, List<String> args) {
    String word = typed(unmatched.get(0), args);
    String shown = shown(word);
    if (word.startsWith("-")) {
      return command.name()
          + " has no option "
          + shown
          + Nearest.hint(word, command.optionsMap().keySet());
    }
    Collection<String> commands = command.subcommands().keySet();
    return commands.isEmpty()
        ? command.name() + " can do nothing with \"" + shown + "\""
        : "there is no command " + shown + Nearest.hint(word, commands);
  }

  /** The whole word, of which the parser may have taken the first letters for short options. */
  private static String typed(String word, List<String> args) {
    String option = word.replaceFirst("=.*", "");
    return args.contains(word) || !word.startsWith("-")
        ? option
        : args.stream()
            .filter(a -> a.startsWith("-") && a.contains(word.replaceFirst("^-+", "")))
            .findFirst()
            .orElse(option)
            .replaceFirst("=.*", "");
  }

  /** The parser's own sentences begin with a capital; ours do not. */
  private static String said(String message) {
    String line =
        BREAKS
            .matcher(message)
            .replaceAll(" ")
            .replaceFirst("^Error: ", "")
            .replaceFirst(" is not an? (int|long)$", " is not a whole number")
            .strip();
    boolean word = line.length() > 1 && Character.isLowerCase(line.charAt(1));
    return word ? Character.toLowerCase(line.charAt(0)) + line.substring(1) : line;
  }

  private static String shown(String word) {
    String plain = BREAKS.matcher(word).replaceAll(" ");
    return plain.length() > SHOWN ? plain.substring(0, SHOWN) + "\u2026" : plain;
  }
}
