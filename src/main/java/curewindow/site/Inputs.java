package curewindow.site;

import curewindow.guide.GuideLibrary;
import curewindow.page.Pages;
import curewindow.shop.Catalogue;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopRead;
import curewindow.told.JobView;
import curewindow.told.Printed;
import curewindow.words.WordsLibrary;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/**
 * Everything that pages are made from beside the jobs: the program, and in the shop folder its
 * words, guides, templates, catalogue, places, weather files and shop.yaml. A job's page depends on
 * the words of its language, the films, rules and places that it uses and the guides that it shows.
 */
final class Inputs {

  private static final String WORDS = "content/words/";

  private static final String PLACES = "content/places/";

  /** Of these a page depends on what it uses. */
  private static final List<String> BY_USE = List.of("content/catalogue/", PLACES);

  private final LoadedShop loaded;
  private final GuideLibrary library;
  private final String shared;
  private final SortedMap<String, String> guides = new TreeMap<>();
  private final SortedMap<String, String> words = new TreeMap<>();
  private final SortedMap<String, String> byUse = new TreeMap<>();

  /** The print of what jobs of the same services and films use of the catalogue. */
  private final Map<Fitted, String> catalogue = new ConcurrentHashMap<>();

  /** The words of a language, those that stand behind it and those that all languages share. */
  private final Map<String, String> byLanguage = new ConcurrentHashMap<>();

  /**
   * The inputs of a shop folder.
   *
   * @param loaded the shop folder, as a whole
   * @param out the output folder, which may stand in it
   * @throws IOException where a folder cannot be read
   */
  Inputs(LoadedShop loaded, Path out) throws IOException {
    ShopFiles shop = loaded.files();
    this.loaded = loaded;
    this.library = loaded.guides();
    StringBuilder all = new StringBuilder(program());
    Path root = shop.root().toAbsolutePath();
    files(root, out.toAbsolutePath().normalize())
        .forEach(
            (name, print) -> {
              if (GuideLibrary.isGuide(name)) {
                guides.put(name, print);
                // That there is a guide at all matters to all pages.
                all.append(shop.original(name).isEmpty() ? name + '\n' : "");
              } else if (name.startsWith(WORDS)) {
                words.put(name, print);
              } else if (BY_USE.stream().anyMatch(name::startsWith)) {
                byUse.put(name, print);
              } else {
                all.append(name).append(' ').append(print).append('\n');
              }
            });
    this.shared = MadeBefore.print(all.toString());
  }

  /** What pages for anyone are made from: the catalogue and the places as a whole, too. */
  MadeBefore.From open() {
    return new MadeBefore.From(shared + words + byUse, of(guides.keySet()), "");
  }

  /** What papers are made from, which show no guide. */
  MadeBefore.From papers(String own) {
    return new MadeBefore.From(shared + words + byUse, "", own);
  }

  /**
   * What decides a job's files, beside what its calendars gave out; its dates and its visit follow
   * from that. Where it stands in its file makes no difference.
   *
   * @param job the job
   * @param token the secret part of its page's address
   * @param cards what the customer was told by cards
   * @param moved what else decides its dates where weather was measured; else nothing
   * @return its inputs
   */
  private MadeBefore.From of(Job job, String token, Printed cards, String moved) {
    Set<String> shown = Pages.guides(job, loaded.read().catalogue(), library);
    return new MadeBefore.From(
        shared + byLanguage.computeIfAbsent(job.language(), this::wordsOf) + used(job),
        of(shown),
        own(job, token, cards, moved));
  }

  /**
   * What decides the files of a job whose dates follow from its place; no date is worked out.
   *
   * @param job a job where no weather was measured
   * @param token the secret part of its page's address
   * @return its inputs, without what its calendars gave out
   */
  MadeBefore.From unmeasured(Job job, String token) {
    return of(job, token, loaded.ledgers().printedFor(job.id()), "");
  }

  /**
   * What decides the files of a job.
   *
   * @param noted the job, parked as noted; where weather was measured, it knows its other parkings
   * @return its inputs, without what its calendars gave out
   */
  MadeBefore.From of(JobView noted) {
    return of(noted.job(), noted.token(), noted.printed(), moved(noted));
  }

  private String moved(JobView noted) {
    boolean measured = loaded.dates().isMeasured(noted.job());
    return measured ? noted.timeline() + noted.parkings().toString() : "";
  }

  /** What decides the dates of a job, and what is said of them, beside what jobs share. */
  String own(JobView noted) {
    return own(noted.job(), noted.token(), noted.printed(), moved(noted));
  }

  private static String own(Job job, String token, Printed cards, String moved) {
    return job.toString().replace(job.where().toString(), "") + moved + token + cards;
  }

  private String wordsOf(String language) {
    SortedMap<String, String> said = new TreeMap<>(words);
    said.keySet()
        .removeIf(
            file -> {
              String rest = file.substring(WORDS.length());
              return rest.contains("/")
                  && !rest.startsWith(language + "/")
                  && !rest.startsWith(WordsLibrary.FALLBACK + "/");
            });
    return said.toString();
  }

  /** What a job uses of the catalogue, and where the car and the shop are. */
  private String used(Job job) {
    String fitted =
        catalogue.computeIfAbsent(Fitted.of(job), some -> some.print(loaded.read().catalogue()));
    return fitted + place(job.place()) + place(loaded.shop().orElseThrow().place());
  }

  private String place(String name) {
    return byUse.getOrDefault(PLACES + name + ".yaml", "");
  }

  /** The services and films of a job. */
  private record Fitted(Set<String> services, Set<String> films) {

    static Fitted of(Job job) {
      Set<String> services = new TreeSet<>();
      Set<String> films = new TreeSet<>();
      for (FittedItem item : job.items()) {
        services.add(item.service());
        films.add(item.film());
      }
      return new Fitted(services, films);
    }

    /** What stands in a catalogue for them; services, spots and holds may all be named. */
    String print(Catalogue all) {
      StringBuilder used = new StringBuilder();
      used.append(all.services()).append(all.spots()).append(all.holds());
      films.forEach(film -> used.append(all.films().get(film)));
      all.rules().stream().filter(r -> services.contains(r.service())).forEach(used::append);
      all.visits().stream().filter(v -> services.contains(v.service())).forEach(used::append);
      return MadeBefore.print(used.toString());
    }
  }

  private String of(Set<String> files) {
    return guides.entrySet().stream()
        .filter(guide -> files.contains(guide.getKey()))
        .map(Map.Entry::toString)
        .collect(Collectors.joining("\n"));
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

    /** What a job has of these is looked at with the job; maps of imports make no page. */
    private static final Set<String> OF_JOBS =
        Set.of(
            "jobs",
            "jobs.csv",
            "visits.csv",
            "imports",
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
