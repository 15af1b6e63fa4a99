package curewindow.site;

import curewindow.handout.HandoutPress;
import curewindow.page.Pages;
import curewindow.problem.Faults;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.Job;
import curewindow.shop.PaperChoice;
import curewindow.shop.SheetPaper;
import curewindow.shop.Shop;
import curewindow.told.JobView;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Builds the site and the handouts of a shop folder. Every good job is built; what is wrong with
 * the others, or with a template, is reported and leaves the pages of the last press as they were.
 */
public final class Press {

  private static final String CARDS = "office/cards.pdf";

  private final LoadedShop shop;
  private final Output output;
  private final Leaving leaving;
  private final Problems problems = new Problems();

  private final PressJobs jobs;

  private Press(LoadedShop shop, Output output, Leaving leaving, PressJobs jobs) {
    this.shop = shop;
    this.output = output;
    this.leaving = leaving;
    this.jobs = jobs;
    problems.addAll(leaving.problems());
    problems.addAll(jobs.problems());
  }

  /**
   * Builds everything; where many jobs are gone at once, their pages stay and that is told.
   *
   * @param shop a shop folder whose shop.yaml and link ledger are right
   * @param out the output folder
   * @param clock gives the date written beside new tokens
   * @param tokens makes the secret parts of new pages' addresses
   * @return what was made; nothing where the link ledger no longer knows a page of the last press
   * @throws IOException where a folder cannot be written; the message is for the user
   */
  public static PressReport run(LoadedShop shop, Path out, Clock clock, Supplier<String> tokens)
      throws IOException {
    try (Output output = Output.open(out)) {
      return run(shop, output, clock, tokens, Wish.EVERYTHING);
    }
  }

  /**
   * Builds what is wished for.
   *
   * @param shop a shop folder whose shop.yaml and link ledger are right; where other presses may be
   *     at work, it has to be read while the output folder is open
   * @param output the output folder
   * @param clock gives the date written beside new tokens
   * @param tokens makes the secret parts of new pages' addresses
   * @param wish what is built
   * @return what was made; nothing where the link ledger no longer knows a page of the last press
   * @throws IOException where a folder cannot be written; the message is for the user
   */
  public static PressReport run(
      LoadedShop shop, Output output, Clock clock, Supplier<String> tokens, Wish wish)
      throws IOException {
    return run(shop, output, clock, tokens, wish, PagesMade.Batch.USUAL);
  }

  /** The same, so many jobs and pages at a time. */
  static PressReport run(
      LoadedShop shop,
      Output output,
      Clock clock,
      Supplier<String> tokens,
      Wish wish,
      PagesMade.Batch batch)
      throws IOException {
    Path out = output.root();
    List<PageList.Row> last = PageList.read(out);
    List<PageList.Row> before = shop.ledgers().open(last);
    List<Problem> lost = LostAddresses.of(shop, before);
    if (!lost.isEmpty()) {
      return PressReport.nothing(lost, out);
    }
    Allowed allowed = wish.allowed();
    Leaving leaving = allowed.letGo() ? Leaving.FREELY : Leaving.of(shop, before);
    PressJobs jobs = PressJobs.of(shop, allowed.same(), clock);
    Press press = new Press(shop, output, leaving, jobs);
    Function<Job, String> given = JobViews.tokens(shop, jobs.good(), clock, tokens);
    try {
      Calendars.Notes notes = Calendars.Notes.of(shop, !before.isEmpty(), clock);
      PagesMade pages =
          new PagesMade(shop, output, given, notes, wish.extent(), batch, press.problems);
      PressReport report = press.build(last, before, given, pages, clock);
      ReusedIds.note(shop, jobs.good());
      shop.dates().keep();
      return report;
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  /**
   * What a press does.
   *
   * @param allowed what was said to be meant
   * @param extent which pages are made
   */
  public record Wish(Allowed allowed, Extent extent) {
    static final Wish EVERYTHING = new Wish(Allowed.NOTHING, Extent.ALL);
  }

  /**
   * Which of the customers' pages that have to be made anew are made, where somebody waits for some
   * of them. Those of other jobs stay as they are until a later press; of the pages for anyone, and
   * the cards to look at, none is made before all customers' pages are.
   *
   * @param first ids of the jobs whose pages are made in any case
   * @param others how many others are made at most, those of the last pickups, 0 or more
   */
  public record Extent(Set<String> first, int others) {

    /** Every page. */
    public static final Extent ALL = new Extent(Set.of(), Integer.MAX_VALUE);

    /** Copies the ids. */
    public Extent {
      first = Set.copyOf(first);
      if (others < 0) {
        throw new IllegalArgumentException(others + " pages are below 0");
      }
    }
  }

  /**
   * What was said to be meant, so that it is done although it looks like a mistake.
   *
   * @param letGo whether the pages of jobs that are gone may go, however many they are
   * @param same ids of jobs that are the same customer's as their cards, although they look like
   *     another's
   */
  public record Allowed(boolean letGo, Set<String> same) {

    /** Nothing. */
    public static final Allowed NOTHING = new Allowed(false, Set.of());

    /** Copies the ids. */
    public Allowed {
      same = Set.copyOf(same);
    }
  }

  /**
   * What would go wrong in a press although the files themselves can be read, such as a mistake in
   * a template. Nothing is written. Where all templates are the program's own, one page of each
   * kind of job is filled, for the parking that was noted, and no template is looked for mistakes.
   *
   * @param shop a shop folder whose shop.yaml is right
   * @return the problems, by file and line
   */
  public static List<Problem> rehearse(LoadedShop shop) {
    Problems problems = new Problems();
    if (!shop.ledgerIsBroken()) {
      problems.addAll(ReusedIds.of(shop));
    }
    List<JobView> views = JobViews.of(shop, shop.jobs(), Tokens.SAMPLE, problems);
    Rendering rendering = Rendering.of(shop, problems);
    if (shop.files().changes(Pages.TEMPLATES)) {
      List<List<JobView>> cases = ParkedViews.of(shop, views, problems);
      rendering.customers(cases, Calendars.unnoted(), () -> {});
      rendering.open();
      rehearseHandouts(shop, views, problems);
    } else {
      rendering.rehearse(views.stream().map(List::of).toList());
    }
    for (JobView view : views) {
      Faults.guard(view.job().where(), problems, () -> HandoutPress.lackingSigns(view))
          .ifPresent(problems::addAll);
    }
    return problems.all();
  }

  /** Templates that nothing is printed from would else be found wanting at the counter. */
  private static void rehearseHandouts(LoadedShop shop, List<JobView> views, Problems problems) {
    // Two, so that sides which do not come in pairs are seen.
    List<JobView> some = views.stream().limit(2).toList();
    for (Handout kind : Handout.values()) {
      PaperChoice tried =
          new PaperChoice(SheetPaper.NONE, 1, shop.shop().orElseThrow().handout().inks());
      HandoutPress.read(shop.files(), kind, problems)
          .ifPresent(press -> CardFile.print(press, some, tried, problems));
    }
    List<JobView> first = views.stream().limit(1).toList();
    Office papers = Office.of(shop, first, Set.of());
    first.forEach(v -> papers.papers(papers.day(v.job().pickup()), problems));
  }

  /**
   * Makes everything and writes it.
   *
   * @param last the customers' pages of the last press
   * @param before those of them whose address is still their job's
   * @param tokens the secret part of each job's address
   * @param pages makes the pages
   */
  private PressReport build(
      List<PageList.Row> last,
      List<PageList.Row> before,
      Function<Job, String> tokens,
      PagesMade pages,
      Clock clock)
      throws IOException {
    pages.make(jobs.good());
    Set<String> ids = pages.jobs();
    LocalDate today = LocalDate.now(clock.withZone(shop.shop().orElseThrow().zone()));
    List<JobView> now = now(tokens, today);
    Optional<Integer> cards =
        cards(pages, now.stream().filter(v -> ids.contains(v.job().id())).toList(), today);
    Set<String> known = new HashSet<>(ids);
    known.addAll(pages.later());
    List<String> leftOut = jobs.leftOut(shop, known);
    List<String> staying = new ArrayList<>(leaving.with(leftOut));
    staying.addAll(pages.later());
    KeptPages stay = new KeptPages(before, ids, staying, !pages.openIsWhole(), cards.isEmpty());
    Office.of(shop, now, past(today)).papers(today, problems).forEach(output::put);
    BesidePages.put(shop, output, problems);
    List<PageList.Row> rows = rows(tokens, ids, stay);
    output.put(PageList.FILE, PageList.text(rows));
    ClosedPages.put(shop, output, rows, last, pages.closed());
    Output.Written written = output.write(stay);
    pages.remember();
    return new PressReport(
        ids.size(),
        pages.madeNow(),
        pages.later().size(),
        leftOut,
        cards.orElse(0),
        new PressReport.Files(written.files(), written.changed(), written.removed()),
        problems.all(),
        output.root());
  }

  /** Ids of the jobs that no paper of today can name. */
  private Set<String> past(LocalDate today) {
    return jobs.good().stream()
        .filter(Predicate.not(Office.concerned(shop, today)))
        .map(Job::id)
        .collect(Collectors.toSet());
  }

  /** The jobs that papers of today may name. */
  private List<JobView> now(Function<Job, String> tokens, LocalDate today) {
    List<Job> some = jobs.good().stream().filter(Office.concerned(shop, today)).toList();
    return JobViews.of(shop, some, tokens, problems);
  }

  /**
   * The shop's usual handouts of the cars that are still to be picked up, to look at: only the
   * command {@code card} notes what it makes, so only that is handed over.
   *
   * @return how many there are, or empty where they could not be made
   */
  private Optional<Integer> cards(PagesMade pages, List<JobView> now, LocalDate today) {
    Shop own = shop.shop().orElseThrow();
    List<JobView> views =
        now.stream()
            .filter(v -> !v.job().pickup().atZone(own.zone()).toLocalDate().isBefore(today))
            .filter(v -> HandoutPress.isFor(v, own.handout().as()))
            .toList();
    if (views.isEmpty() || pages.cardsStand(views)) {
      return Optional.of(views.size());
    }
    Problems found = new Problems();
    // For looking at, so always in the inks of a screen.
    PaperChoice shown = PaperChoice.on(CardFile.paper(shop, own.handout()).sheet());
    Optional<HandoutPress.Handouts> printed =
        HandoutPress.read(shop.files(), own.handout().as(), found)
            .flatMap(press -> CardFile.print(press, views, shown, found));
    problems.addAll(found.all());
    if (printed.isPresent() && found.all().isEmpty()) {
      pages.putCards(views, CARDS, printed.get().pdf());
    } else {
      // Made again each time, so that what is wrong with them is told again.
      printed.ifPresent(cards -> output.put(CARDS, cards.pdf()));
    }
    return printed.map(cards -> cards.made().size());
  }

  private List<PageList.Row> rows(Function<Job, String> tokens, Set<String> ids, KeptPages kept) {
    return Stream.concat(
            jobs.good().stream()
                .filter(job -> ids.contains(job.id()))
                .map(job -> row(job, tokens.apply(job))),
            kept.rows().stream())
        .sorted((a, b) -> a.job().compareTo(b.job()))
        .toList();
  }

  private PageList.Row row(Job job, String token) {
    return new PageList.Row(
        job.id(), job.firstName(), PagePaths.folder(token), shop.dates().address(token).toString());
  }
}
