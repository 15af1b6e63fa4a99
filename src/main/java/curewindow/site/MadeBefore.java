package curewindow.site;

import curewindow.problem.Problems;
import curewindow.shop.Sha256;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * From what the last press made each job's files, so that those that would come out the same are
 * not made again. The memory is written last: a file that is younger was touched by somebody else,
 * or copied, and is made anew, as is all without a memory.
 *
 * <p>The file is {@code office/made.csv} in the output folder, with the columns {@code job}, {@code
 * from}, {@code file}, {@code bytes}. The public pages stand under no job, the cards to look at
 * under a name that no job can have.
 */
final class MadeBefore {

  /** The file, relative to the output folder. */
  static final String FILE = "office/made.csv";

  /** What stands in place of the job for the files that belong to none. */
  static final String PUBLIC = "";

  /** What stands in place of the job for the cards of the cars that are still to be picked up. */
  static final String CARDS = "/cards";

  private static final LedgerCsv CSV =
      new LedgerCsv(
          FILE,
          "made-before",
          "the memory of what was made",
          List.of("job", "from", "file", "bytes"),
          "delete it");

  private final Path out;
  private final Map<String, Made> last = new HashMap<>();
  private final Map<String, Made> now = new TreeMap<>();

  /** When the memory was written. */
  private FileTime saved = FileTime.fromMillis(0);

  /** From what files were made, and how many bytes each has. */
  private record Made(String from, Map<String, Long> files) {}

  /** What files are made from, in parts that are told apart where one of them changed. */
  record From(String shared, String guides, String own) {

    private static final int SIGNS = 16;

    /** The same with what calendars gave out. */
    From and(String calendars) {
      return new From(shared, guides, own + calendars);
    }

    /** Three short prints. */
    String print() {
      return Stream.of(shared, guides, own).map(From::one).collect(Collectors.joining("-"));
    }

    private static String one(String part) {
      return MadeBefore.print(part).substring(0, SIGNS);
    }
  }

  /** What stands in place of the job for the office's calendar. */
  static final String INSPECTIONS = "/inspections";

  /** Why files are made. */
  enum Reason {
    /** Nothing is known of them. */
    NEW,
    /** What all pages are made from differs. */
    SHARED,
    /** A guide differs. */
    GUIDE,
    /** What they alone are made from differs. */
    OWN,
    /** One of them is gone, or does not stand as it was written. */
    TOUCHED
  }

  private MadeBefore(Path out) {
    this.out = out;
  }

  /**
   * Reads what the last press left.
   *
   * @param out the output folder
   * @return the memory; it remembers nothing where it cannot be read
   * @throws IOException where the folder cannot be read
   */
  static MadeBefore read(Path out) throws IOException {
    MadeBefore memory = new MadeBefore(out);
    boolean whole = CSV.read(out, new Problems(), (fields, fault) -> memory.readRow(fields, fault));
    if (!whole || memory.last.isEmpty()) {
      memory.last.clear();
    } else {
      memory.saved = Files.getLastModifiedTime(out.resolve(FILE));
    }
    return memory;
  }

  /**
   * From what the last press made each job's files, without the files.
   *
   * @param out the output folder
   * @param problems told where the memory cannot be read
   * @return the prints by job; none where it cannot be read
   */
  static Map<String, String> prints(Path out, Problems problems) {
    Map<String, String> prints = new HashMap<>();
    boolean whole =
        CSV.read(
            out, problems, (fields, fault) -> prints.putIfAbsent(fields.get(0), fields.get(1)));
    return whole ? prints : Map.of();
  }

  private void readRow(List<String> fields, LedgerCsv.Fault fault) {
    try {
      last.computeIfAbsent(fields.get(0), job -> new Made(fields.get(1), new TreeMap<>()))
          .files()
          .put(fields.get(2), Long.valueOf(fields.get(3)));
    } catch (NumberFormatException e) {
      fault.say("the row is not one that Curewindow wrote");
    }
  }

  /**
   * Why the files of a job have to be made.
   *
   * @param job the job's id, or {@link #PUBLIC}
   * @param from what they would be made from
   * @return the reason; empty where they stand as they would be made
   * @throws UncheckedIOException where the folder cannot be read
   */
  Optional<Reason> reason(String job, From from) {
    Made made = last.get(job);
    if (made == null) {
      return Optional.of(Reason.NEW);
    }
    String print = from.print();
    if (!made.from().equals(print)) {
      return Optional.of(difference(made.from().split("-"), print.split("-")));
    }
    for (Map.Entry<String, Long> file : made.files().entrySet()) {
      if (!stands(out.resolve(file.getKey()), file.getValue())) {
        return Optional.of(Reason.TOUCHED);
      }
    }
    return Optional.empty();
  }

  private static Reason difference(String[] then, String[] now) {
    if (then.length != now.length || !then[0].equals(now[0])) {
      return Reason.SHARED;
    }
    return then[2].equals(now[2]) ? Reason.GUIDE : Reason.OWN;
  }

  /** Whether a press made files under a name, be they as they would be made now or not. */
  boolean has(String job) {
    return last.containsKey(job);
  }

  /** The names of the files that stay as they stand. They are remembered again. */
  Set<String> stand(String job) {
    now.put(job, last.get(job));
    return last.get(job).files().keySet();
  }

  private boolean stands(Path file, long bytes) {
    try {
      BasicFileAttributes facts = Files.readAttributes(file, BasicFileAttributes.class);
      return facts.isRegularFile()
          && facts.size() == bytes
          && facts.lastModifiedTime().compareTo(saved) <= 0;
    } catch (NoSuchFileException e) {
      return false;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Remembers what was made.
   *
   * @param job the job's id, or another name of this class
   * @param from what it was made from
   * @param files how many bytes each of the files has, which are written
   */
  void remember(String job, From from, Map<String, Long> files) {
    now.put(job, new Made(from.print(), files));
  }

  /**
   * Writes what stands now; to be called when all files are written.
   *
   * @throws IOException where the folder cannot be written
   */
  void save() throws IOException {
    List<List<String>> rows = new ArrayList<>();
    now.forEach(
        (job, made) ->
            made.files()
                .forEach(
                    (file, bytes) ->
                        rows.add(List.of(job, made.from(), file, String.valueOf(bytes)))));
    CSV.write(out, rows);
  }

  /** A short text that stands for another one. */
  static String print(String text) {
    return print(text.getBytes(StandardCharsets.UTF_8));
  }

  /** A short text that stands for some bytes, another one for others. */
  static String print(byte[] bytes) {
    return HexFormat.of().formatHex(Sha256.of(bytes), 0, 16);
  }
}
