package curewindow.site;

import curewindow.guide.GuideLibrary;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopRead;
import curewindow.told.JobView;
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
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Everything that pages are made from beside the jobs: the program, and in the shop folder its
 * words, guides, templates, catalogue, places, weather files and shop.yaml.
 *
 * @param shared a short text that is another one where something differs that all pages are made
 *     from, or where there is another guide
 * @param guides the guides of the shop's own by their files, each with a print of its bytes
 */
record Inputs(String shared, SortedMap<String, String> guides) {

  /** What pages for anyone are made from. */
  MadeBefore.From open() {
    return new MadeBefore.From(shared, of(guides.keySet()), "");
  }

  /** What papers are made from, which show no guide. */
  MadeBefore.From papers(String own) {
    return new MadeBefore.From(shared, "", own);
  }

  /**
   * What decides a job's files; its dates and its visit follow from that. Where it stands in its
   * file makes no difference.
   *
   * @param noted the job, parked as noted
   * @param shown the files of the guides that its page shows
   * @param measured whether weather was measured where its car stands, so that its dates move; then
   *     the job knows its other parkings
   * @param calendars what its calendars gave out
   * @return its inputs
   */
  MadeBefore.From of(JobView noted, Set<String> shown, boolean measured, String calendars) {
    return new MadeBefore.From(shared, of(shown), own(noted, measured) + calendars);
  }

  /**
   * What decides the dates of a job, and what is said of them, beside what all share; the dates
   * themselves, where weather was measured.
   */
  static String own(JobView noted, boolean measured) {
    String where = noted.job().where().toString();
    String moved = measured ? noted.timeline() + noted.parkings().toString() : "";
    return noted.job().toString().replace(where, "") + moved + noted.token() + noted.printed();
  }

  private String of(Set<String> files) {
    return guides.entrySet().stream()
        .filter(guide -> files.contains(guide.getKey()))
        .map(Map.Entry::toString)
        .collect(Collectors.joining("\n"));
  }

  /**
   * The inputs of a shop folder.
   *
   * @param shop the shop folder
   * @param out the output folder, which may stand in it
   * @return the inputs
   * @throws IOException where a folder cannot be read
   */
  static Inputs of(ShopFiles shop, Path out) throws IOException {
    StringBuilder shared = new StringBuilder(program());
    SortedMap<String, String> guides = new TreeMap<>();
    Path root = shop.root().toAbsolutePath();
    files(root, out.toAbsolutePath().normalize())
        .forEach(
            (name, print) -> {
              boolean guide = GuideLibrary.isGuide(name);
              if (guide) {
                guides.put(name, print);
              }
              // That there is a guide at all matters to all pages.
              if (!guide || shop.original(name).isEmpty()) {
                shared.append(name).append(guide ? "" : ' ' + print).append('\n');
              }
            });
    return new Inputs(MadeBefore.print(shared.toString()), guides);
  }

  /** A jar is known by its size and the time of its making: to read all of it takes too long. */
  static String program() throws IOException {
    try {
      Path code = Path.of(Inputs.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      return Files.isRegularFile(code)
          ? Files.size(code) + " " + Files.getLastModifiedTime(code).toMillis() + "\n"
          : files(code, code.resolveSibling("none")).toString();
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The files under a folder by their names, each with a print of its bytes. */
  private static SortedMap<String, String> files(Path root, Path out) throws IOException {
    Walk walk = new Walk(root.normalize(), out, new TreeMap<>());
    Files.walkFileTree(walk.root, Set.of(FileVisitOption.FOLLOW_LINKS), Walk.MOST_DEEP, walk);
    SortedMap<String, String> prints = new TreeMap<>();
    for (Map.Entry<String, Path> file : walk.files.entrySet()) {
      prints.put(file.getKey(), MadeBefore.print(Files.readAllBytes(file.getValue())));
    }
    return prints;
  }

  /** Finds what is neither a job's nor hidden, such as the lock. */
  private static final class Walk extends SimpleFileVisitor<Path> {

    static final int MOST_DEEP = 20;

    /** What a job has of these is looked at with the job. */
    private static final Set<String> OF_JOBS =
        Set.of(
            "jobs",
            "jobs.csv",
            "visits.csv",
            ShopRead.OBSERVED,
            LinkLedger.FILE,
            PrintedDates.FILE,
            CalendarDates.FILE,
            CallsMade.FILE,
            Callbacks.FILE,
            HandedOver.FILE,
            LedgerCopies.FOLDER);

    private final Path root;
    private final Path out;
    private final Map<String, Path> files;

    Walk(Path root, Path out, Map<String, Path> files) {
      this.root = root;
      this.out = out;
      this.files = files;
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

    private boolean isOther(Path path) {
      String name = root.relativize(path).toString();
      return OF_JOBS.contains(name)
          || !path.equals(root) && path.getFileName().toString().startsWith(".");
    }
  }
}
