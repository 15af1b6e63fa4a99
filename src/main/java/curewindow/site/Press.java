package curewindow.site;

import curewindow.calendar.ShopCard;
import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.handout.HandoutPress;
import curewindow.page.Pages;
import curewindow.problem.Faults;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.PaperChoice;
import curewindow.shop.SheetPaper;
import curewindow.shop.Shop;
import curewindow.told.JobView;
import curewindow.told.Urgency;
import curewindow.told.When;
import curewindow.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
      return run(shop, output, clock, tokens, Allowed.NOTHING);
    }
  }

  /**
   * Builds everything.
   *
   * @param shop a shop folder whose shop.yaml and link ledger are right; where other presses may be
   *     at work, it has to be read while the output folder is open
   * @param output the output folder
   * @param clock gives the date written beside new tokens
   * @param tokens makes the secret parts of new pages' addresses
   * @param allowed what was said to be meant
   * @return what was made; nothing where the link ledger no longer knows a page of the last press
   * @throws IOException where a folder cannot be written; the message is for the user
   */
  public static PressReport run(
      LoadedShop shop, Output output, Clock clock, Supplier<String> tokens, Allowed allowed)
      throws IOException {
    Path out = output.root();
    List<PageList.Row> last = PageList.read(out);
    List<PageList.Row> before = shop.ledgers().open(last);
    List<Problem> lost = LostAddresses.of(shop, before);
    if (!lost.isEmpty()) {
      return new PressReport(0, List.of(), List.of(), 0, new PressReport.Files(0, 0, 0), lost, out);
    }
    Leaving leaving = allowed.letGo() ? Leaving.FREELY : Leaving.of(shop, before);
    PressJobs jobs = PressJobs.of(shop, allowed.same(), clock);
    Press press = new Press(shop, output, leaving, jobs);
    List<JobView> views = JobViews.of(shop, jobs.good(), clock, tokens, press.problems);
    PressReport report = press.build(last, before, views, clock);
    ReusedIds.note(shop, jobs.good());
    shop.dates().keep();
    return report;
  }

  /**
   * What was said to be meant, so that it is done although it looks like a mistake.
   *
   * @param letGo whether the pages of jobs that are gone may go, however many they are
   * @param same ids of jobs that are the same customer's as their cards, although they look like
   *     another's
   */
  public record Allowed(boolean letGo, Set<String> same) {

    static final Allowed NOTHING = new Allowed(false, Set.of());

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
    Calendars calendars = Calendars.unnoted(shop.words().of(shop.shop().orElseThrow().language()));
    if (shop.files().changes(Pages.TEMPLATES)) {
      List<List<JobView>> cases = ParkedViews.of(shop, views, problems);
      problems.addAll(Rendering.of(shop, cases, calendars, true).problems());
      rehearseHandouts(shop, views.stream().limit(1).toList(), problems);
    } else {
      List<List<JobView>> noted = views.stream().map(List::of).toList();
      problems.addAll(Rendering.rehearsed(shop, noted, calendars).problems());
    }
    for (JobView view : views) {
      Faults.guard(view.job().where(), problems, () -> HandoutPress.lackingSigns(view))
          .ifPresent(problems::addAll);
    }
    return problems.all();
  }

  /** Templates that nothing is printed from would else be found wanting at the counter. */
  private static void rehearseHandouts(LoadedShop shop, List<JobView> views, Problems problems) {
    for (Handout kind : Handout.values()) {
      PaperChoice tried =
          new PaperChoice(SheetPaper.NONE, 1, shop.shop().orElseThrow().handout().inks());
      HandoutPress.read(shop.files(), kind, problems)
          .ifPresent(press -> CardFile.print(press, views, tried, problems));
    }
    Office papers = Office.of(shop, views);
    views.forEach(v -> papers.papers(papers.day(v.job().pickup()), problems));
  }

  /**
   * Makes everything and writes it.
   *
   * @param last the customers' pages of the last press
   * @param before those of them whose address is still their job's
   */
  private PressReport build(
      List<PageList.Row> last, List<PageList.Row> before, List<JobView> views, Clock clock)
      throws IOException {
    PagesMade pages = PagesMade.of(shop, output, views, !before.isEmpty(), clock, problems);
    List<JobView> good = pages.jobs();
    Optional<Integer> cards = cards(pages, clock);
    Set<String> ids = good.stream().map(view -> view.job().id()).collect(Collectors.toSet());
    List<String> leftOut = jobs.leftOut(shop, ids);
    KeptPages stay =
        new KeptPages(before, ids, leaving.with(leftOut), !pages.openIsWhole(), cards.isEmpty());
    Office papers = Office.of(shop, views);
    papers.papers(papers.day(clock.instant()), problems).forEach(output::put);
    Shop own = shop.shop().orElseThrow();
    output.put("office/inspections.ics", pages.calendars().office(own.name(), problems));
    output.put("site/" + ShopCard.FILE, ShopCard.text(own, shop.words().of(own.language())));
    List<PageList.Row> rows = rows(good, stay);
    output.put(PageList.FILE, PageList.text(rows));
    ClosedPages.put(shop, output, rows, last, pages.closed());
    List<PressReport.Made> made =
        pages.madeNow().stream()
            .flatMap(v -> Faults.guard(v.job().where(), problems, () -> made(v)).stream())
            .toList();
    Output.Written written = output.write(stay);
    pages.remember();
    return new PressReport(
        good.size(),
        made,
        leftOut,
        cards.orElse(0),
        new PressReport.Files(written.files(), written.changed(), written.removed()),
        problems.all(),
        output.root());
  }

  private PressReport.Made made(JobView view) {
    return new PressReport.Made(
        view.job().id(),
        view.job().firstName(),
        answer(view),
        "site/" + PagePaths.folder(view.token()) + "index.html");
  }

  /**
   * The shop's usual handouts of the cars that are still to be picked up, to look at: only the
   * command {@code card} notes what it makes, so only that is handed over.
   *
   * @return how many there are, or empty where they could not be made
   */
  private Optional<Integer> cards(PagesMade pages, Clock clock) throws IOException {
    Shop own = shop.shop().orElseThrow();
    LocalDate today = LocalDate.now(clock.withZone(own.zone()));
    List<JobView> views =
        pages.jobs().stream()
            .filter(v -> !v.job().pickup().atZone(own.zone()).toLocalDate().isBefore(today))
            .filter(v -> HandoutPress.isFor(v, own.handout().as()))
            .toList();
    String from =
        views.stream()
            .map(v -> Inputs.own(v, shop.dates().isMeasured(v.job())))
            .collect(Collectors.joining("\n"));
    if (views.isEmpty() || pages.cardsStand(from)) {
      return Optional.of(views.size());
    }
    Problems found = new Problems();
    // For looking at, so always in the inks of a screen.
    PaperChoice shown = PaperChoice.on(CardFile.paper(shop, own.handout()).sheet());
    Optional<CardFile.Printed> printed =
        HandoutPress.read(shop.files(), own.handout().as(), found)
            .flatMap(press -> CardFile.print(press, views, shown, found));
    problems.addAll(found.all());
    printed.ifPresent(cards -> put(pages, cards, found.all().isEmpty() ? from : ""));
    return printed.map(cards -> cards.views().size());
  }

  /** Cards of which something has to be told are made again each time, so that it is told again. */
  private void put(PagesMade pages, CardFile.Printed cards, String from) {
    if (from.isEmpty()) {
      output.put(CARDS, cards.pdf());
    } else {
      pages.putCards(from, CARDS, cards.pdf());
    }
  }

  private static List<PageList.Row> rows(List<JobView> good, KeptPages kept) {
    return Stream.concat(good.stream().map(Press::row), kept.rows().stream())
        .sorted((a, b) -> a.job().compareTo(b.job()))
        .toList();
  }

  private static PageList.Row row(JobView view) {
    return new PageList.Row(
        view.job().id(),
        view.job().firstName(),
        PagePaths.folder(view.token()),
        view.address().toString());
  }

  /**
   * The first thing that the customer has to hold off from, in the shop's language; of a car that
   * left late there is none.
   */
  private String answer(JobView view) {
    Words words = shop.words().of(view.shop().language());
    List<Release> holds = Urgency.holds(view);
    Optional<Release> first =
        (holds.isEmpty() ? view.timeline().releases() : holds).stream().findFirst();
    return first
        .map(release -> answer(view, release, words))
        .orElseGet(() -> words.text("page.now.clear"));
  }

  private static String answer(JobView view, Release first, Words words) {
    String until = first.kind() == HoldKind.HOLD ? "hold" : "settle";
    return words.text("hold." + first.hold() + ".short")
        + " "
        + words.text("page.state." + until)
        + " "
        + new When(view.in(words)).shortDayAndTime(first);
  }
}
