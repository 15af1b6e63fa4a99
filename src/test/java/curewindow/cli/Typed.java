package curewindow.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A command as a user types it.
 *
 * @param code its exit code
 * @param said all that it printed
 */
record Typed(int code, String said) {

  static Typed run(Object... args) {
    return run(Clock.systemUTC(), args);
  }

  static Typed run(Clock clock, Object... args) {
    StringWriter text = new StringWriter();
    PrintWriter writer = new PrintWriter(text);
    String[] words = Stream.of(args).map(Object::toString).toArray(String[]::new);
    int code = Curewindow.run(clock, writer, writer, words);
    writer.flush();
    return new Typed(code, text.toString());
  }

  /** All files of a folder by relative name. */
  static TreeMap<String, byte[]> contents(Path folder) throws IOException {
    TreeMap<String, byte[]> contents = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path f : files.filter(Files::isRegularFile).toList()) {
        contents.put(folder.relativize(f).toString(), Files.readAllBytes(f));
      }
    }
    return contents;
  }
}
