package curewindow.cli;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.Optional;

/** How this program is called, for the hints it prints. */
final class Program {

  private Program() {}

  /**
   * A command line that can be typed as it stands.
   *
   * @param rest the command and its options
   * @return the whole line
   */
  static String call(String rest) {
    return "java -jar " + jar() + " " + rest;
  }

  /**
   * A path as it has to be typed.
   *
   * @param path the path
   * @return in quotation marks where it has a blank
   */
  static String quoted(Path path) {
    String text = path.toString();
    return text.contains(" ") ? "\"" + text + "\"" : text;
  }

  /**
   * The jar that the program runs from.
   *
   * @return its absolute path, or empty where the program does not run from a jar
   */
  static Optional<Path> jarFile() {
    try {
      CodeSource source = Program.class.getProtectionDomain().getCodeSource();
      return Optional.of(Path.of(source.getLocation().toURI()))
          .filter(path -> path.toString().endsWith(".jar"));
    } catch (URISyntaxException | IllegalArgumentException | NullPointerException e) {
      return Optional.empty();
    }
  }

  /**
   * The shorter way to type a path.
   *
   * @param path an absolute path
   * @return relative where it lies below the current folder
   */
  static Path shown(Path path) {
    Path here = Path.of("").toAbsolutePath();
    return path.startsWith(here) ? here.relativize(path) : path;
  }

  private static String jar() {
    return jarFile().map(jar -> shown(jar).toString()).orElse("curewindow.jar");
  }
}
