package curewindow.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
    name = "quick-start",
    description = "Writes a script with which the program starts in half the time.",
    mixinStandardHelpOptions = true)
final class QuickStartCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "where to write it; beside the program if left out")
  private Path folder;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    Optional<Path> jar = Program.jarFile();
    if (jar.isEmpty()) {
      spec.commandLine().getErr().println("the program does not run from its jar; call its jar");
      return Exit.USAGE;
    }
    Path into = folder == null ? jar.get().getParent() : folder;
    if (!Files.isDirectory(into)) {
      throw new IOException(into + " is not a folder; name one with --out");
    }
    Path script = QuickStart.of(jar.get()).write(into);
    out.println("From now on, and from any folder, call the program so:");
    out.println("  " + called(script) + " card JOB --shop DIR");
    out.println("Do this again when the program or Java was replaced, or the folder moved.");
    return Exit.OK;
  }

  /** A script in the current folder is not looked for there unless the line says so. */
  private static String called(Path script) {
    Path shown = Program.shown(script);
    return Program.quoted(shown.getNameCount() == 1 ? Path.of(".").resolve(shown) : shown);
  }
}
