package curewindow.site;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Everything that pages are made from beside the jobs: the program, and in the shop folder its
 * words, guides, templates, catalogue, places, weather and shop.yaml.
 */
final class Inputs extends SimpleFileVisitor<Path> {

  private static final int MOST_DEEP = 20;

  /** What a job has of these is looked at with the job. */
  private static final Set<String> OF_JOBS =
      Set.of(
          "jobs",
          "jobs.csv",
          "visits.csv",
          LinkLedger.FILE,
          PrintedDates.FILE,
          CalendarDates.FILE,
          CallsMade.FILE,
          HandedOver.FILE,
          LedgerCopies.FOLDER);

  private final Path root;
  private final Path out;
  private final Map<String, Path> files = new TreeMap<>();

  private Inputs(Path root, Path out) {
    this.root = root;
    this.out = out;
  }

  /**
   * The inputs of a shop folder.
   *
   * @param shop the shop folder
   * @param out the output folder, which may stand in it
   * @return a text that is another one where an input differs
   * @throws IOException where a folder cannot be read
   */
  static String of(Path shop, Path out) throws IOException {
    return program() + under(shop.toAbsolutePath(), out.toAbsolutePath().normalize());
  }

  /** A jar is known by its size and the time of its making: to read all of it takes too long. */
  static String program() throws IOException {
    try {
      Path code = Path.of(Inputs.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      return Files.isRegularFile(code)
          ? Files.size(code) + " " + Files.getLastModifiedTime(code).toMillis() + "\n"
          : under(code, code.resolveSibling("none"));
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String under(Path root, Path out) throws IOException {
    Inputs inputs = new Inputs(root.normalize(), out);
    Files.walkFileTree(inputs.root, Set.of(FileVisitOption.FOLLOW_LINKS), MOST_DEEP, inputs);
    StringBuilder all = new StringBuilder();
    for (Map.Entry<String, Path> file : inputs.files.entrySet()) {
      all.append(file.getKey())
          .append(' ')
          .append(MadeBefore.print(Files.readAllBytes(file.getValue())))
          .append('\n');
    }
    return all.toString();
  }

  @Override
  public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes facts) {
    return folder.equals(out) || isOther(folder)
        ? FileVisitResult.SKIP_SUBTREE
        : FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult visitFile(Path file, BasicFileAttributes facts) {
    if (facts.isRegularFile() && !isOther(file)) {
      files.put(root.relativize(file).toString(), file);
    }
    return FileVisitResult.CONTINUE;
  }

  /** A link that leads nowhere, or round and round, is told by who wants to read it. */
  @Override
  public FileVisitResult visitFileFailed(Path file, IOException e) {
    return FileVisitResult.CONTINUE;
  }

  /** What jobs have, and what is hidden, such as the lock. */
  private boolean isOther(Path path) {
    String name = root.relativize(path).toString();
    return OF_JOBS.contains(name)
        || !path.equals(root) && path.getFileName().toString().startsWith(".");
  }
}
