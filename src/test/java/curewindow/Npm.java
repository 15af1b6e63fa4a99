package curewindow;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * Runs the scripts of {@code src/test/npm}, whose libraries are installed there as its lock file
 * says. Where Node or the libraries are missing and cannot be installed the calling test is
 * skipped, and says so; with {@code CUREWINDOW_REQUIRE_NPM} set in the environment it fails.
 */
public final class Npm {

  private static final Path FOLDER = Path.of("src/test/npm").toAbsolutePath();
  private static Optional<String> missing = Optional.empty();
  private static boolean tried;

  private Npm() {}

  /** What a script prints, given some files; the script must end well. */
  public static String run(String script, Path... files) throws IOException {
    installed();
    List<String> command = new ArrayList<>(List.of("node", script));
    for (Path file : files) {
      command.add(file.toAbsolutePath().toString());
    }
    Result result = start(command);
    Assertions.assertEquals(0, result.code(), result.said());
    return result.said();
  }

  /**
   * A file of a library, such as {@code axe-core/axe.min.js}.
   *
   * @param name its path in {@code node_modules}
   */
  public static Path file(String name) {
    installed();
    return FOLDER.resolve("node_modules").resolve(name);
  }

  private record Result(int code, String said) {}

  private static synchronized void installed() {
    if (!tried) {
      tried = true;
      missing = install();
    }
    if (missing.isPresent()) {
      if (System.getenv("CUREWINDOW_REQUIRE_NPM") != null) {
        Assertions.fail(missing.get() + ", though CUREWINDOW_REQUIRE_NPM asks for it");
      }
      Assumptions.abort("Skipped: " + missing.get());
    }
  }

  private static Optional<String> install() {
    try {
      if (start(List.of("node", "--version")).code() != 0) {
        return Optional.of("Node does not run");
      }
      if (complete()) {
        return Optional.empty();
      }
      Result done = start(List.of("npm", "ci", "--ignore-scripts", "--fetch-retries=0"));
      return done.code() == 0
          ? Optional.empty()
          : Optional.of("the libraries of src/test/npm cannot be installed");
    } catch (IOException e) {
      return Optional.of("Node or npm is not installed");
    }
  }

  /** Whether all libraries that the lock file names are there. */
  private static boolean complete() throws IOException {
    Matcher named =
        Pattern.compile("\"(node_modules/[^\"]+)\": \\{")
            .matcher(Files.readString(FOLDER.resolve("package-lock.json")));
    return named.results().allMatch(m -> Files.isDirectory(FOLDER.resolve(m.group(1))));
  }

  private static Result start(List<String> command) throws IOException {
    Path out = Files.createTempFile("npm", ".txt");
    try {
      Process process =
          new ProcessBuilder(command)
              .directory(FOLDER.toFile())
              .redirectErrorStream(true)
              .redirectOutput(out.toFile())
              .start();
      if (!process.waitFor(180, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        return new Result(-1, "it did not end in time");
      }
      return new Result(process.exitValue(), Files.readString(out, StandardCharsets.UTF_8));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException(e);
    } finally {
      Files.deleteIfExists(out);
    }
  }
}
