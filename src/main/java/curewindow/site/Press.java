package curewindow.site;

import curewindow.calendar.CareCalendar;
import curewindow.cure.Release;
import curewindow.handout.CardPress;
import curewindow.page.JobView;
import curewindow.page.Pages;
import curewindow.page.Urgency;
import curewindow.page.When;
import curewindow.problem.Problems;
import curewindow.shop.Shop;
import curewindow.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * Builds the site and the handouts of a shop folder. Every good job is built; what is wrong with
 * the others, or with a template, is reported and leaves the pages of the last press as they were.
 */
public final class Press {

  private final LoadedShop shop;
  private final Output output;
  private final Problems problems = new Problems();

  private Press(LoadedShop shop, Output output) {
    this.shop = shop;
    this.output = output;
  }

  /**
   * Builds everything.
   *
   * @param shop a shop folder whose shop.yaml and link ledger are right
   * @param out the output folder
   * @param clock gives the date written beside new tokens
   * @param tokens makes the secret parts of new pages' addresses
   * @return what was made
   * @throws IOException where a folder cannot be written; the message is for the user
   */
  public static PressReport run(LoadedShop shop, Path out, Clock clock, Supplier<String> tokens)
      throws IOException {
    Output output = Output.open(out);
    return new Press(shop, output).build(out, JobViews.of(shop, shop.jobs(), clock, tokens), clock);
  }

  private PressReport build(Path out, List<JobView> views, Clock clock) throws IOException {
    Pages pages = Pages.read(shop.files(), shop.guides(), problems);
    List<PressReport.Made> made = customers(pages, views);
    openPages(pages);
    cards(views, clock);
    output.put(PageList.FILE, PageList.text(views.stream().map(Press::row).toList()));
    boolean whole = shop.brokenJobs().isEmpty() && problems.all().isEmpty();
    Output.Written written = output.write(name -> !whole && isPage(name));
    return new PressReport(
        made,
        shop.brokenJobs(),
        new PressReport.Files(written.files(), written.changed(), written.removed()),
        problems.all(),
        out);
  }

  /** Pages of the last press that this one may have failed to make again. */
  private static boolean isPage(String name) {
    return name.startsWith("site/") || name.startsWith("office/cards");
  }

  private List<PressReport.Made> customers(Pages pages, List<JobView> views) {
    List<Problems> mistakes = views.stream().map(v -> new Problems()).toList();
    List<Optional<String>> htmls =
        IntStream.range(0, views.size())
            .parallel()
            .mapToObj(i -> pages.customer(views.get(i), mistakes.get(i)))
            .toList();
    List<PressReport.Made> made = new ArrayList<>();
    for (int i = 0; i < views.size(); i++) {
      problems.addAll(mistakes.get(i).all());
      JobView view = views.get(i);
      if (htmls.get(i).isPresent()) {
        String folder = "site/" + PagePaths.folder(view.token());
        output.put(folder + "index.html", htmls.get(i).get());
        output.put(folder + "care.ics", CareCalendar.text(view));
        made.add(
            new PressReport.Made(
                view.job().id(), view.job().firstName(), answer(view), folder + "index.html"));
      }
    }
    return made;
  }

  private void openPages(Pages pages) {
    Shop owner = shop.shop().orElseThrow();
    List<Words> languages = shop.read().languages().stream().map(shop.words()::of).toList();
    pages
        .open(owner, languages, problems)
        .forEach((name, html) -> output.put("site/" + name, html));
  }

  private void cards(List<JobView> views, Clock clock) throws IOException {
    Optional<byte[]> pdf =
        CardPress.read(shop.files(), problems).flatMap(press -> press.cards(views, problems));
    if (pdf.isPresent()) {
      // On disk before the cards are, so that no card can leave the shop unnoticed.
      PrintedCards.note(shop, views, clock);
      output.put("office/cards.pdf", pdf.get());
    }
  }

  private static PageList.Row row(JobView view) {
    return new PageList.Row(
        view.job().id(),
        view.job().firstName(),
        PagePaths.folder(view.token()),
        view.address().toString());
  }

  /** The first thing that the customer has to hold off from, in the shop's language. */
  private String answer(JobView view) {
    List<Release> holds = Urgency.holds(view);
    Release first =
        (holds.isEmpty() ? view.timeline().releases() : holds).stream().findFirst().orElseThrow();
    Words words = shop.words().of(view.shop().language());
    ZoneId zone = new When(view).zone(first);
    String when =
        words.shortDay(first.end().at(), zone) + ", " + words.time(first.end().at(), zone);
    String ask = first.end() instanceof Release.AskUs ? "ask us, " : "";
    return words.text("hold." + first.hold() + ".label") + ": " + ask + when;
  }
}
