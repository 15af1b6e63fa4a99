package curewindow.site;

import curewindow.page.JobView;
import curewindow.problem.Problems;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * From what the last press made each job's files, so that those that would come out the same are
 * not made again: an output folder without this memory, or one that was copied, is made anew.
 *
 * <p>The file is {@code office/made.csv} in the output folder, with the columns {@code job}, {@code
 * from}, {@code file}, {@code bytes}, {@code written}. The public pages stand under no job.
 */
final class MadeBefore {

  /** The file, relative to the output folder. */
  static final String FILE = "office/made.csv";

  /** What stands in place of the job for the files that belong to none. */
  static final String PUBLIC = "";

  private static final LedgerCsv CSV =
      new LedgerCsv(
          FILE,
          "made-before",
          "the memory of what was made",
          List.of("job", "from", "file", "bytes", "written"),
          "delete it");

  private final Path out;
  private final String inputs;
  private final Map<String, Made> last = new HashMap<>();
  private final Map<String, Made> now = new TreeMap<>();

  private record Made(String from, Map<String, Stamp> files) {}

  private record Stamp(String bytes, String written) {

    static Optional<Stamp> of(Path file) throws IOException {
      try {
        BasicFileAttributes facts = Files.readAttributes(file, BasicFileAttributes.class);
        return Optional.of(
            new Stamp(String.valueOf(facts.size()), facts.lastModifiedTime().toString()));
      } catch (NoSuchFileException e) {
        return Optional.empty();
      }
    }
  }

  private MadeBefore(Path out, String inputs) {
    this.out = out;
    this.inputs = inputs;
  }

  /**
   * Reads what the last press left.
   *
   * @param out the output folder
   * @param inputs stands for all that pages are made from beside their jobs
   * @return the memory; it remembers nothing where it cannot be read
   */
  static MadeBefore read(Path out, String inputs) {
    MadeBefore memory = new MadeBefore(out, inputs);
    Problems broken = new Problems();
    boolean whole =
        CSV.read(
            out,
            broken,
            (f, fault) ->
                memory
                    .last
                    .computeIfAbsent(f.get(0), job -> new Made(f.get(1), new TreeMap<>()))
                    .files()
                    .put(f.get(2), new Stamp(f.get(3), f.get(4))));
    if (!whole) {
      memory.last.clear();
    }
    return memory;
  }

  /**
   * The files that the last press made for a job, where they still stand as they were written and
   * would come out the same. They are remembered again.
   *
   * @param job the job's id, or {@link #PUBLIC}
   * @param from what they would be made from
   * @return their names, none where they have to be made
   * @throws IOException where the folder cannot be read
   */
  Set<String> standing(String job, String from) throws IOException {
    Made made = last.get(job);
    if (made == null || !made.from().equals(print(from))) {
      return Set.of();
    }
    for (Map.Entry<String, Stamp> file : made.files().entrySet()) {
      if (!Stamp.of(out.resolve(file.getKey())).equals(Optional.of(file.getValue()))) {
        return Set.of();
      }
    }
    now.put(job, made);
    return made.files().keySet();
  }

  /**
   * Remembers what was made and is written.
   *
   * @param job the job's id, or {@link #PUBLIC}
   * @param from what it was made from
   * @param files the names of the files
   * @throws IOException where they cannot be looked at
   */
  void remember(String job, String from, Collection<String> files) throws IOException {
    Map<String, Stamp> stamps = new TreeMap<>();
    for (String file : files) {
      stamps.put(file, Stamp.of(out.resolve(file)).orElseThrow());
    }
    now.put(job, new Made(print(from), stamps));
  }

  /** Writes what stands now; to be called last of all. */
  void save() throws IOException {
    if (!now.equals(last)) {
      CSV.write(
          out,
          now.entrySet().stream()
              .flatMap(
                  job ->
                      job.getValue().files().entrySet().stream()
                          .map(
                              file ->
                                  List.of(
                                      job.getKey(),
                                      job.getValue().from(),
                                      file.getKey(),
                                      file.getValue().bytes(),
                                      file.getValue().written())))
              .toList());
    }
  }

  /**
   * All of a job that its files are made from. Where it stands in its file makes no difference.
   *
   * @param cases the job in each case of parking, the noted one first
   * @param calendars what its calendars gave out
   * @return a text that is another one where something differs
   */
  static String from(List<JobView> cases, String calendars) {
    StringBuilder all = new StringBuilder(calendars).append(cases.get(0).parkings());
    for (JobView view : cases) {
      String where = view.job().where().toString();
      all.append('\n').append(view.job().toString().replace(where, ""));
      all.append(view.token()).append(view.timeline()).append(view.visit()).append(view.printed());
    }
    return all.toString();
  }

  private String print(String from) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      digest.update(inputs.getBytes(StandardCharsets.UTF_8));
      byte[] print = digest.digest(from.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(print, 0, 16);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
