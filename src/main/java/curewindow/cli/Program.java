package curewindow.cli;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.security.CodeSource;

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

  private static String jar() {
    try {
      CodeSource source = Program.class.getProtectionDomain().getCodeSource();
      Path jar = Path.of(source.getLocation().toURI());
      Path here = Path.of("").toAbsolutePath();
      Path shown = jar.startsWith(here) ? here.relativize(jar) : jar;
      return shown.toString().endsWith(".jar") ? shown.toString() : "curewindow.jar";
    } catch (URISyntaxException | IllegalArgumentException | NullPointerException e) {
      return "curewindow.jar";
    }
  }
}
