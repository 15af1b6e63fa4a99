package curewindow.site;

import curewindow.handout.HandoutPress;
import curewindow.handout.OfficePaper;
import curewindow.handout.PressStart;
import curewindow.problem.Faults;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.HandoutChoice;
import curewindow.shop.InkChoice;
import curewindow.shop.Job;
import curewindow.shop.PaperChoice;
import curewindow.shop.SheetPaper;
import curewindow.shop.Shop;
import curewindow.told.JobView;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Writes the handouts of some jobs into one PDF. */
public final class CardFile {

  private final LoadedShop shop;
  private final Clock clock;
  private final Supplier<String> tokens;

  /**
   * Prepares handouts.
   *
   * @param shop a shop folder whose shop.yaml and link ledger are right
   * @param clock gives the date written beside new tokens
   * @param tokens makes the secret parts of new pages' addresses
   */
  public CardFile(LoadedShop shop, Clock clock, Supplier<String> tokens) {
    this.shop = shop;
    this.clock = clock;
    this.tokens = tokens;
  }

  /**
   * What became of the handouts.
   *
   * @param printed of how many jobs handouts were written into the file; 0 where it was not written
   * @param without ids of the jobs that get no such handout, as none of their windows has to wait
   * @param problems what is wrong with the template, with an address or with a job's guide
   */
  public record Result(int printed, List<String> without, List<Problem> problems) {}

  /**
   * Gets ready to print beside other work.
   *
   * @return done when printing is ready
   */
  public static CompletableFuture<Void> getReady() {
    return PressStart.begin();
  }

  /**
   * Writes the handouts; a file that stands there is replaced only by a whole one.
   *
   * @param jobs some of the shop's good jobs
   * @param choice which handout, on which paper
   * @param file the PDF
   * @param ready done when printing may begin; see {@link #getReady}
   * @return what became of them
   * @throws IOException where a file cannot be written; the message is for the user
   */
  public Result write(
      List<Job> jobs, HandoutChoice choice, Path file, CompletableFuture<Void> ready)
      throws IOException {
    Problems problems = new Problems();
    Optional<HandoutPress> press = HandoutPress.read(shop.files(), choice.as(), problems);
    if (press.isEmpty()) {
      return new Result(0, List.of(), problems.all());
    }
    List<Job> withPage = withPage(jobs, problems);
    readWords(withPage);
    var sorted =
        JobViews.of(shop, withPage, clock, tokens, problems).stream()
            .collect(Collectors.partitioningBy(v -> HandoutPress.isFor(v, choice.as())));
    ready.join();
    Optional<HandoutPress.Handouts> cards =
        print(press.get(), sorted.get(true), paper(shop, choice), problems);
    if (cards.isPresent()) {
      PrintedCards.note(shop, cards.get().made(), clock);
      AtomicFiles.writePrivate(file, cards.get().pdf());
    }
    List<String> without = sorted.get(false).stream().map(v -> v.job().id()).toList();
    int written = cards.map(c -> c.made().size()).orElse(0);
    return new Result(written, without, problems.all());
  }

  /**
   * How a choice is printed: on what the shop's printer is likely to have, where it names no paper;
   * for a print shop that the shop folder does not describe, as is usual by its units.
   */
  static PaperChoice paper(LoadedShop shop, HandoutChoice choice) {
    Shop own = shop.shop().orElseThrow();
    SheetPaper sheet =
        choice.sheet().orElseGet(() -> OfficePaper.paper(own, shop.words().of(own.language())));
    InkChoice inks =
        choice.inks().ink().isForPlates()
            ? choice.inks().orUsual(shop.words().of(own.language()).units())
            : choice.inks();
    return new PaperChoice(sheet, choice.start(), inks);
  }

  /** The handouts of the jobs that bring out no fault of the program; others are told. */
  static Optional<HandoutPress.Handouts> print(
      HandoutPress press, List<JobView> views, PaperChoice paper, Problems problems) {
    return Faults.spare(
        views,
        view -> view.job().where(),
        problems,
        (some, found) -> press.handouts(some, paper, found));
  }

  /** Without those whose code would lead nowhere, or to another's page, which are told. */
  private List<Job> withPage(List<Job> jobs, Problems problems) {
    List<Job> good = new ArrayList<>();
    for (Job job : jobs) {
      Faults.guard(job.where(), problems, () -> obstacle(job))
          .ifPresent(lack -> lack.ifPresentOrElse(problems::add, () -> good.add(job)));
    }
    return good;
  }

  private Optional<Problem> obstacle(Job job) {
    Shop own = shop.shop().orElseThrow();
    Expiry expiry = new Expiry(own, LocalDate.now(clock.withZone(own.zone())));
    return Guideless.of(shop, job)
        .or(() -> LostAddresses.of(shop, job))
        .or(() -> ReusedIds.of(shop, job))
        .or(() -> expiry.problem(shop, job));
  }

  /** Beside the dates: the words of a language take a while to read. */
  private void readWords(List<Job> jobs) {
    Set<String> languages = jobs.stream().map(Job::language).collect(Collectors.toSet());
    Thread reading = new Thread(() -> languages.forEach(shop.words()::of), "words");
    reading.setDaemon(true);
    reading.start();
  }

  /**
   * Notes that a customer took a page along without paper, from a screen or a message; it is on the
   * disk when this returns. From then on its number and address are theirs.
   *
   * @param job one of the shop's good jobs
   * @throws IOException where it cannot be written; the message is for the user
   */
  public void taken(Job job) throws IOException {
    ZoneId zone = shop.shop().orElseThrow().zone();
    LocalDate today = LocalDate.now(clock.withZone(zone));
    try (FolderLock lock = FolderLock.on(shop.files().root())) {
      LinkLedger links = Ledgers.links(lock);
      links.tokenOf(job.id(), tokens, today);
      links.save(today);
      HandedOver handedOver = Ledgers.handedOver(lock);
      handedOver.note(job, zone);
      handedOver.save();
    }
  }

  /**
   * Whether a card was handed over, or the page was taken along without paper.
   *
   * @param shop the shop folder
   * @param id a job's id; the job may be gone
   * @return true where the folder knew so when it was read
   */
  public static boolean isHandedOver(LoadedShop shop, String id) {
    return shop.ledgers().withCard().contains(id);
  }
}
