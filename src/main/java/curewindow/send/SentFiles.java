package curewindow.send;

import curewindow.site.AtomicFiles;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What is at the other place, {@code office/sent.txt}: its address in the first line, then a line a
 * file, the hash and the path; of two lines for a path the later counts, and one without a hash
 * says that the file was taken away. A line is added as soon as a file is there, so that the next
 * command goes on where this one was cut off. A lost or foreign list means that all is sent once
 * more.
 */
final class SentFiles {

  static final String FILE = "office/sent.txt";

  private static final String NOTHING = "-";

  private final Path file;
  private final URI to;
  private final Map<String, String> hashes = new TreeMap<>();

  private SentFiles(Path file, URI to) {
    this.file = file;
    this.to = to;
  }

  /**
   * Reads the list.
   *
   * @param out the output folder
   * @param to where files go; a list of another place counts for nothing
   * @throws IOException where it cannot be read
   */
  static SentFiles of(Path out, URI to) throws IOException {
    SentFiles sent = new SentFiles(out.resolve(FILE), to);
    List<String> lines = Files.isRegularFile(sent.file) ? Files.readAllLines(sent.file) : List.of();
    if (!lines.isEmpty() && lines.get(0).equals(to.toString())) {
      lines.stream().skip(1).forEach(sent::read);
    }
    return sent;
  }

  private void read(String line) {
    String[] parts = line.split(" ", 2);
    if (parts.length == 2 && parts[0].equals(NOTHING)) {
      hashes.remove(parts[1]);
    } else if (parts.length == 2 && parts[0].length() == 64) {
      hashes.put(parts[1], parts[0]);
    }
  }

  /**
   * To be called before files are put: writes the list anew, for this place and without a line that
   * was cut off.
   */
  void begin() throws IOException {
    StringBuilder text = new StringBuilder(to + "\n");
    hashes.forEach((path, hash) -> text.append(hash).append(' ').append(path).append('\n'));
    AtomicFiles.writePrivate(file, text.toString().getBytes(StandardCharsets.UTF_8));
  }

  /** The hash of each file that is there. */
  Map<String, String> hashes() {
    return Map.copyOf(hashes);
  }

  /** Notes that a file is there. */
  void put(String path, String hash) throws IOException {
    add(hash + " " + path);
  }

  /** Notes that a file was taken away. */
  void removed(String path) throws IOException {
    add(NOTHING + " " + path);
  }

  private void add(String line) throws IOException {
    read(line);
    Files.writeString(file, line + "\n", StandardOpenOption.APPEND);
  }
}
