package curewindow.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** The option that names the output folder. */
final class OutOption {

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "out",
      description = "the folder of what press makes; ${DEFAULT-VALUE} if left out")
  private Path path;

  Path path() {
    return path;
  }
}
