package curewindow.site;

import curewindow.page.Pages;
import curewindow.page.SharedFile;
import curewindow.problem.Faults;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.BodyType;
import curewindow.shop.Job;
import curewindow.told.JobView;
import curewindow.told.YearHere;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Renders the pages of a shop folder, in memory. */
final class Rendering {

  private final LoadedShop shop;
  private final Pages pages;
  private final Problems problems;

  private Rendering(LoadedShop shop, Pages pages, Problems problems) {
    this.shop = shop;
    this.pages = pages;
    this.problems = problems;
  }

  /** A job in all cases of parking, the noted one first, and its page. */
  record Customer(List<JobView> cases, String html) {
    JobView view() {
      return cases.get(0);
    }
  }

  /**
   * Public pages.
   *
   * @param pages the pages by path
   * @param whole whether all could be made
   */
  record Open(SortedMap<String, String> pages, boolean whole) {}

  /**
   * Reads the templates.
   *
   * @param shop a shop folder whose shop.yaml is right
   * @param problems where it is told what is wrong with templates and guides, now and later
   * @return what renders its pages
   */
  static Rendering of(LoadedShop shop, Problems problems) {
    Pages pages =
        Pages.read(shop.files(), shop.shop().orElseThrow().look(), shop.guides(), problems);
    return new Rendering(shop, pages, problems);
  }

  /**
   * The pages of some jobs.
   *
   * @param jobs the jobs, each in all cases of parking, the noted one first
   * @param calendars their calendars
   * @param told is told after each page
   * @return the pages in the order of the jobs; without those that could not be made
   */
  List<Customer> customers(List<List<JobView>> jobs, Calendars calendars, Runnable told) {
    PageMaker telling =
        (cases, others, mistakes) -> {
          Optional<String> page = pages.customer(cases, others, mistakes);
          told.run();
          return page;
        };
    return customers(jobs, calendars, telling);
  }

  /** The pages that anyone may read. */
  Open open() {
    int before = problems.errorCount();
    SortedMap<String, String> open = openPages();
    return new Open(open, problems.errorCount() == before && !open.isEmpty());
  }

  /** The files that the customers' pages share. */
  List<SharedFile> shared() {
    return pages.shared();
  }

  /**
   * Finds out what stands in the way of all pages, where the templates are the program's own. Of
   * jobs of one kind one page is filled, as the others would say the same with other dates.
   *
   * @param jobs the jobs, each in some cases of parking, the noted one first
   */
  void rehearse(List<List<JobView>> jobs) {
    Map<Kind, String> kinds = new HashMap<>();
    jobs.forEach(cases -> kinds.putIfAbsent(Kind.of(cases.get(0)), cases.get(0).job().id()));
    Set<String> first = Set.copyOf(kinds.values());
    PageMaker maker =
        (cases, others, mistakes) ->
            first.contains(cases.get(0).job().id())
                ? pages.rehearsed(cases, others, mistakes)
                : Optional.empty();
    customers(jobs, Calendars.unnoted(), maker);
    List<Words> languages = languages();
    if (!languages.isEmpty()) {
      pages.rehearseOpen(shop.shop().orElseThrow(), languages, problems);
    }
  }

  /** What decides which parts a job's page has. */
  private record Kind(
      String language, BodyType body, List<Object> work, boolean card, boolean visit) {

    static Kind of(JobView view) {
      Job job = view.job();
      List<Object> work = new ArrayList<>();
      job.items().forEach(i -> work.addAll(List.of(i.service(), i.film(), i.spots())));
      job.found().forEach(f -> work.add(f.kind()));
      job.seen().forEach(s -> work.add(s.result()));
      boolean card = !view.printed().dates().isEmpty();
      return new Kind(job.language(), job.car().body(), work, card, view.visit().isPresent());
    }
  }

  /** Makes the page of a job in its cases; those beside the noted one have calendars. */
  private interface PageMaker {
    Optional<String> page(List<JobView> cases, List<String> others, Problems mistakes);
  }

  private List<Customer> customers(List<List<JobView>> jobs, Calendars calendars, PageMaker maker) {
    return Faults.guardEach(
            jobs,
            cases -> cases.get(0).job().where(),
            problems,
            (cases, mistakes) -> customer(cases, calendars, maker, mistakes))
        .stream()
        .flatMap(Optional::stream)
        .flatMap(Optional::stream)
        .toList();
  }

  private Optional<Customer> customer(
      List<JobView> cases, Calendars calendars, PageMaker maker, Problems mistakes) {
    Guideless.of(shop, cases.get(0).job()).ifPresent(mistakes::add);
    return mistakes.hasErrors()
        ? Optional.empty()
        : maker
            .page(cases, calendars.others(cases), mistakes)
            .filter(html -> !mistakes.hasErrors())
            .map(html -> new Customer(cases, html));
  }

  private SortedMap<String, String> openPages() {
    List<Words> languages = languages();
    if (languages.isEmpty()) {
      return new TreeMap<>(Map.of());
    }
    Optional<YearHere> year =
        Faults.guard(Where.file("content/catalogue/holds.yaml"), problems, shop.dates()::year);
    return pages.open(shop.shop().orElseThrow(), year, languages, problems);
  }

  private List<Words> languages() {
    return shop.read().languages().stream().map(shop.words()::of).toList();
  }
}
