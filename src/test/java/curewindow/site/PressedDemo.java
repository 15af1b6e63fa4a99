package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;

/**
 * A few jobs of the demo shop, in all languages, pressed once for all tests that look at what a
 * press writes. Whoever uses it changes nothing in it.
 */
public final class PressedDemo {

  /** Tint in English, a coating over film in English, tint in Spanish, tint and film in Arabic. */
  private static final Map<String, String> LANGUAGES =
      Map.of("Q-3101", "en", "Q-3108", "en", "Q-3114", "es", "Q-3117", "ar");

  private static final Instant NOW = Instant.parse("2026-11-25T00:00:00Z");

  /** Stands still at that time. */
  static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);

  private static Optional<PressedDemo> made = Optional.empty();

  private final Path shop;
  private final Path out;

  private PressedDemo(Path folder) throws IOException {
    shop = folder.resolve("shop");
    out = folder.resolve("out");
    layOutShop(shop, LANGUAGES.keySet().toArray(String[]::new));
    Random random = new Random(1);
    PressReport report = Press.run(shop(), out, CLOCK, () -> Tokens.from(random));
    assertFalse(report.hasErrors(), () -> report.problems().toString());
  }

  /** The demo, pressed by the first who asks and thrown away when the tests have run. */
  public static synchronized PressedDemo get() throws IOException {
    if (made.isEmpty()) {
      Path folder = Files.createTempDirectory("pressed-demo");
      Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
      made = Optional.of(new PressedDemo(folder));
    }
    return made.get();
  }

  /**
   * Lays out a shop folder with the demo's shop.yaml and some of its jobs.
   *
   * @param shop the folder
   * @param jobs their ids
   */
  public static void layOutShop(Path shop, String... jobs) throws IOException {
    Path demo = Path.of("content/demo");
    Files.createDirectories(shop.resolve("jobs"));
    Files.copy(demo.resolve("shop.yaml"), shop.resolve("shop.yaml"));
    Files.copy(demo.resolve("logo.svg"), shop.resolve("logo.svg"));
    for (String job : jobs) {
      String file = "jobs/" + job + ".yaml";
      Files.copy(demo.resolve(file), shop.resolve(file));
    }
  }

  /**
   * Lays the pages for anyone into an output folder, as a press of a shop with the demo's shop.yaml
   * and no job leaves them, so that the presses of a test need not make them.
   *
   * @param out the folder, which is not there yet
   */
  public static void layOutOpenPages(Path out) throws IOException {
    Path from = OpenPages.get();
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Path to = out.resolve(from.relativize(file).toString());
        Files.copy(file, to, StandardCopyOption.COPY_ATTRIBUTES);
      }
    }
  }

  /** Pressed by the first test that asks. */
  private static final class OpenPages {
    private static Optional<Path> made = Optional.empty();

    private OpenPages() {}

    static synchronized Path get() throws IOException {
      if (made.isEmpty()) {
        Path folder = Files.createTempDirectory("open-pages");
        Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
        Path shop = folder.resolve("shop");
        layOutShop(shop);
        Path out = folder.resolve("out");
        Press.run(LoadedShop.load(shop, CLOCK), out, CLOCK, () -> Tokens.SAMPLE);
        made = Optional.of(out);
      }
      return made.get();
    }
  }

  /** The shop folder as a press reads it. */
  LoadedShop shop() {
    return LoadedShop.load(shop, CLOCK);
  }

  /** The folder that a press writes into. */
  public Path out() {
    return out;
  }

  /** The public site. */
  public Path site() {
    return out.resolve("site");
  }

  /** A job's folder. */
  public Path job(String id) throws IOException {
    return Files.readAllLines(out.resolve("office/pages.csv")).stream()
        .filter(row -> row.startsWith(id + ","))
        .map(row -> site().resolve(row.split(",")[2]))
        .findFirst()
        .orElseThrow();
  }

  /** All pages, in the order of their names. */
  public List<Path> pages() throws IOException {
    try (Stream<Path> files = Files.walk(site())) {
      return files.filter(f -> f.toString().endsWith(".html")).sorted().toList();
    }
  }

  /** Each kind of page in a language, named: a job's page and those for anyone. */
  public Map<String, Path> kinds(String language) throws IOException {
    String id =
        LANGUAGES.keySet().stream()
            .filter(job -> LANGUAGES.get(job).equals(language))
            .min(Comparator.naturalOrder())
            .orElseThrow();
    Path open = site().resolve(language);
    return Map.of(
        "job", job(id).resolve("index.html"),
        "home", open.resolve("index.html"),
        "guide", open.resolve("tint.html"),
        "questions", open.resolve("normal.html"),
        "find", open.resolve("find.html"),
        "year", open.resolve("year.html"),
        "lost card", open.resolve("lost-card.html"),
        "not found", site().resolve("404.html"),
        "closed", site().resolve("closed.html"));
  }

  private static void delete(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      files.sorted(Comparator.reverseOrder()).forEach(f -> f.toFile().delete());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
