package curewindow.site;

import curewindow.cure.CureCase;
import curewindow.guide.GuideLibrary;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.BrokenJob;
import curewindow.shop.Job;
import curewindow.shop.JobCheck;
import curewindow.shop.Shop;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import curewindow.shop.ShopRead;
import curewindow.told.JobView;
import curewindow.words.WordsLibrary;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A shop folder, read and checked as a whole, and what is computed from it. */
public final class LoadedShop {

  private final ShopFiles files;
  private final ShopRead read;
  private final Map<String, Job> byId;
  private final WordsLibrary words;
  private final Ledgers ledgers;
  private final List<Problem> found;
  private final JobDates dates;

  /** Read when first asked for: many commands need no guide. */
  private Guides guides;

  /** Put together when first asked for: a command on one job need not check all texts. */
  private List<Problem> problems;

  private LoadedShop(
      ShopFiles files, ShopRead read, WordsLibrary words, JobDates dates, Found found) {
    this.files = files;
    this.read = read;
    this.byId =
        read.jobs().stream().collect(Collectors.toMap(Job::id, Function.identity(), (a, b) -> a));
    this.words = words;
    this.dates = dates;
    this.ledgers = found.ledgers();
    this.found = found.problems().all();
  }

  private record Found(Ledgers ledgers, Problems problems) {}

  private record Guides(GuideLibrary library, List<Problem> problems) {}

  /**
   * Reads a shop folder. Words and guides are read and checked when they are first needed, or when
   * all problems are asked for.
   *
   * @param folder the shop folder
   * @param clock tells the time of reading: weather counts as measured up to then, and who was to
   *     come in before it has missed that
   * @return what could be read
   */
  public static LoadedShop load(Path folder, Clock clock) {
    ShopFiles files = new ShopFiles(folder);
    Instant now = clock.instant();
    return of(files, ShopFolder.read(files, now));
  }

  /** The same of a folder that was read already. */
  static LoadedShop of(ShopFiles files, ShopRead read) {
    WordsLibrary words =
        WordsLibrary.open(
            files, read.shop().flatMap(Shop::locale), read.shop().flatMap(Shop::units));
    Found found = found(files, read);
    return new LoadedShop(
        files, read, words, JobDates.of(files, read, words, found.ledgers()), found);
  }

  private static Found found(ShopFiles files, ShopRead read) {
    Problems problems = new Problems();
    problems.addAll(read.problems());
    LanguageState.tellUnpaired(files, problems);
    return new Found(Ledgers.read(files.root(), problems), problems);
  }

  /**
   * How far each language of the folder is.
   *
   * @return the languages, alphabetical
   */
  public List<LanguageState> languages() {
    return words.languages().stream()
        .map(l -> LanguageState.of(l, read.languages().contains(l), problems()))
        .toList();
  }

  /**
   * Everything that is wrong in the folder.
   *
   * @return the problems, by file and line
   */
  public synchronized List<Problem> problems() {
    if (problems == null) {
      Problems all = new Problems();
      all.addAll(found);
      words.check(read.catalogue(), shown(), all);
      all.addAll(guidesRead().problems());
      problems = all.all();
    }
    return problems;
  }

  /** The languages in which anything is shown: those of the jobs and of the shop itself. */
  private Set<String> shown() {
    return Stream.concat(
            read.jobs().stream().map(Job::language), read.shop().map(Shop::language).stream())
        .collect(Collectors.toSet());
  }

  /**
   * Whether something has to be mended before all of the folder can be used.
   *
   * @return true where a problem is more than a notice
   */
  public boolean hasErrors() {
    return !errors().isEmpty();
  }

  /**
   * The shop itself.
   *
   * @return the shop, or empty where shop.yaml cannot be used
   */
  public Optional<Shop> shop() {
    return read.shop();
  }

  /**
   * The good jobs.
   *
   * @return the jobs, by id
   */
  public List<Job> jobs() {
    return read.jobs();
  }

  /**
   * A good job.
   *
   * @param id the job's id
   * @return the job, or empty where there is none or it has problems
   */
  public Optional<Job> job(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /**
   * Reads the text of a job file as if it stood in this folder; nothing is written.
   *
   * @param file the name that problems give the file
   * @param text the text
   * @return the job and what is wrong with it
   */
  public JobCheck.Tried tried(String file, String text) {
    return read.oneJob().read(file, text);
  }

  /**
   * The jobs that had to be left out.
   *
   * @return their ids, or file names where the id could not be read
   */
  public List<String> brokenJobs() {
    return read.brokenJobs().stream().map(BrokenJob::name).toList();
  }

  /** The jobs without those of some ids: the broken ones, and those that brought out a fault. */
  List<String> leftOut(Set<String> made) {
    Stream<String> failed = read.jobs().stream().map(Job::id).filter(id -> !made.contains(id));
    return Stream.concat(brokenJobs().stream(), failed).sorted().toList();
  }

  /**
   * What has to be mended for some of the jobs that had to be left out.
   *
   * @param names their names among {@link #brokenJobs}
   * @return the errors of the jobs and of what jobs share, without those of other jobs; by file and
   *     line
   */
  public List<Problem> errorsOf(Collection<String> names) {
    List<BrokenJob> broken = read.brokenJobs();
    return errors().stream()
        .filter(
            p ->
                broken.stream().anyMatch(job -> names.contains(job.name()) && job.has(p))
                    || broken.stream().noneMatch(job -> job.has(p)))
        .toList();
  }

  /**
   * Everything that has to be mended before all of the folder can be used.
   *
   * @return the problems that are more than notices, by file and line
   */
  public List<Problem> errors() {
    return problems().stream().filter(Problem::isError).toList();
  }

  /**
   * What a job's dates are computed from.
   *
   * @param job a good job of this folder
   * @return the case
   */
  public CureCase cureCase(Job job) {
    return dates.cureCase(job);
  }

  /**
   * A job with its dates and words, and with what its cards say.
   *
   * @param job a good job of this folder
   * @param token the secret part of its page's address
   * @return the view
   */
  public JobView view(Job job, String token) {
    return dates.view(job, token);
  }

  /** The dates of jobs. */
  JobDates dates() {
    return dates;
  }

  /** What the program keeps in the folder, as it stood when the folder was read. */
  Ledgers ledgers() {
    return ledgers;
  }

  /**
   * The shop folder laid over the program's own files.
   *
   * @return the files
   */
  public ShopFiles files() {
    return files;
  }

  /**
   * What was read from the folder.
   *
   * @return the good values, and what was left out
   */
  public ShopRead read() {
    return read;
  }

  /**
   * The same folder whose ledgers are others by now.
   *
   * @return the shop, its ledgers read anew
   */
  public LoadedShop again() {
    return again(read);
  }

  /** Texts, guides and weather stay as they were read. */
  private LoadedShop again(ShopRead other) {
    Found now = found(files, other);
    LoadedShop next = new LoadedShop(files, other, words, dates.again(other, now.ledgers()), now);
    synchronized (this) {
      next.guides = guides;
    }
    return next;
  }

  /**
   * The same folder in which one more job stands, or another under its id.
   *
   * @param job a good job, whose car the shop has not seen again
   * @return the shop, its ledgers read anew
   */
  public LoadedShop with(Job job) {
    List<Job> jobs =
        Stream.concat(read.jobs().stream().filter(j -> !j.id().equals(job.id())), Stream.of(job))
            .sorted(Comparator.comparing(Job::id))
            .toList();
    return again(read.with(jobs));
  }

  /**
   * The words of all languages.
   *
   * @return the words
   */
  public WordsLibrary words() {
    return words;
  }

  /**
   * The care texts.
   *
   * @return the guides, those of the shop's own where it has any
   */
  public GuideLibrary guides() {
    return guidesRead().library();
  }

  private synchronized Guides guidesRead() {
    if (guides == null) {
      Problems mistakes = new Problems();
      GuideLibrary library =
          GuideLibrary.read(files, words, read.catalogue(), read.languages(), mistakes);
      guides = new Guides(library, mistakes.all());
    }
    return guides;
  }

  /**
   * Whether the shop folder remembers what stands on cards that were handed over.
   *
   * @return true where it has the file of printed dates
   */
  public boolean remembersCards() {
    return Files.exists(files.root().resolve(PrintedDates.FILE));
  }

  /**
   * Whether a ledger of links, printed dates, calendar dates or calls has to be mended before
   * anything can be built.
   *
   * @return true where one of them cannot be read
   */
  public boolean ledgerIsBroken() {
    return ledgers.areBroken();
  }

  /** All that the calendars of a job gave out by the time the folder was read. */
  String calendarsSaid(String job) {
    return ledgers.calendars().map(c -> c.said(job)).orElse("");
  }

  /** Whether the link ledger gave any job an address, also one that is gone by now. */
  boolean hasGivenAddresses() {
    return ledgers.links().filter(l -> !l.isEmpty()).isPresent();
  }

  /** Whether the link ledger gave out a token, by the page's folder. */
  boolean knowsFolder(String folder) {
    return ledgers
        .links()
        .filter(l -> l.tokens().stream().anyMatch(t -> PagePaths.folder(t).equals(folder)))
        .isPresent();
  }

  /**
   * The secret part of a page's address.
   *
   * @param job a job's id
   * @return what the link ledger had for it when the folder was read
   */
  public Optional<String> knownToken(String job) {
    return ledgers.links().flatMap(l -> l.known(job));
  }

  /**
   * Where the page of a job stands, if it was made.
   *
   * @param out the output folder of a press
   * @param job the job's id
   * @return its folder, relative to the site and ending in a slash
   */
  public Optional<String> madePage(Path out, String job) {
    return knownToken(job)
        .map(PagePaths::folder)
        .filter(folder -> Files.isRegularFile(out.resolve("site/" + folder + "index.html")));
  }
}
