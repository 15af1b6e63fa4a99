package curewindow.site;

import curewindow.page.Pages;
import curewindow.page.SharedFile;
import curewindow.problem.Faults;
import curewindow.problem.Problem;
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
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * All pages of a shop folder, rendered in memory.
 *
 * @param customers the customers' pages, in the order of the jobs; without those that could not be
 *     made
 * @param open the public pages by path
 * @param openIsWhole whether all public pages could be made
 * @param shared the files that the customers' pages share
 * @param problems what is wrong with templates and guides
 */
record Rendering(
    List<Customer> customers,
    SortedMap<String, String> open,
    boolean openIsWhole,
    List<SharedFile> shared,
    List<Problem> problems) {

  /** A job in all cases of parking, the noted one first, and its page. */
  record Customer(List<JobView> cases, String html) {
    JobView view() {
      return cases.get(0);
    }
  }

  /**
   * Renders the pages of some jobs, and the public ones.
   *
   * @param shop a shop folder whose shop.yaml is right
   * @param jobs the jobs, each in all cases of parking, the noted one first
   * @param calendars their calendars
   * @param wantsOpen whether the public pages are made
   * @return the pages
   */
  static Rendering of(
      LoadedShop shop, List<List<JobView>> jobs, Calendars calendars, boolean wantsOpen) {
    return of(shop, jobs, calendars, wantsOpen, Progress.NONE);
  }

  /** The same, where somebody is told of each customer's page. */
  static Rendering of(
      LoadedShop shop,
      List<List<JobView>> jobs,
      Calendars calendars,
      boolean wantsOpen,
      Progress progress) {
    Problems problems = new Problems();
    Pages pages =
        Pages.read(shop.files(), shop.shop().orElseThrow().look(), shop.guides(), problems);
    AtomicInteger made = new AtomicInteger();
    PageMaker telling =
        (cases, others, mistakes) -> {
          Optional<String> page = pages.customer(cases, others, mistakes);
          progress.made(made.incrementAndGet(), jobs.size());
          return page;
        };
    List<Customer> customers = customers(shop, jobs, calendars, telling, problems);
    // Jobs with a mistake have no page.
    progress.made(jobs.size(), jobs.size());
    int before = problems.errorCount();
    SortedMap<String, String> open = wantsOpen ? openPages(shop, pages, problems) : new TreeMap<>();
    boolean whole = problems.errorCount() == before && !open.isEmpty();
    return new Rendering(customers, open, whole, pages.shared(), problems.all());
  }

  /**
   * Finds out what stands in the way of all pages, where the templates are the program's own. Of
   * jobs of one kind one page is filled, as the others would say the same with other dates.
   *
   * @param shop a shop folder whose shop.yaml is right
   * @param jobs the jobs, each in some cases of parking, the noted one first
   * @param calendars their calendars
   * @return the customers' pages that were filled, however heavy; no public ones
   */
  static Rendering rehearsed(LoadedShop shop, List<List<JobView>> jobs, Calendars calendars) {
    Problems problems = new Problems();
    Pages pages =
        Pages.read(shop.files(), shop.shop().orElseThrow().look(), shop.guides(), problems);
    Map<Kind, String> kinds = new HashMap<>();
    jobs.forEach(cases -> kinds.putIfAbsent(Kind.of(cases.get(0)), cases.get(0).job().id()));
    Set<String> first = Set.copyOf(kinds.values());
    PageMaker maker =
        (cases, others, mistakes) ->
            first.contains(cases.get(0).job().id())
                ? pages.rehearsed(cases, others, mistakes)
                : Optional.empty();
    List<Customer> customers = customers(shop, jobs, calendars, maker, problems);
    List<Words> languages = languages(shop);
    if (!languages.isEmpty()) {
      pages.rehearseOpen(shop.shop().orElseThrow(), languages, problems);
    }
    return new Rendering(customers, new TreeMap<>(), false, pages.shared(), problems.all());
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

  private static List<Customer> customers(
      LoadedShop shop,
      List<List<JobView>> jobs,
      Calendars calendars,
      PageMaker maker,
      Problems problems) {
    List<Problems> mistakes = jobs.stream().map(v -> new Problems()).toList();
    List<Optional<Customer>> made =
        IntStream.range(0, jobs.size())
            .parallel()
            .mapToObj(i -> guarded(shop, maker, jobs.get(i), calendars, mistakes.get(i)))
            .toList();
    mistakes.forEach(of -> problems.addAll(of.all()));
    return made.stream().flatMap(Optional::stream).toList();
  }

  private static Optional<Customer> guarded(
      LoadedShop shop,
      PageMaker maker,
      List<JobView> cases,
      Calendars calendars,
      Problems mistakes) {
    JobView noted = cases.get(0);
    return Faults.guard(
            noted.job().where(),
            mistakes,
            () -> {
              Guideless.of(shop, noted.job()).ifPresent(mistakes::add);
              return mistakes.hasErrors()
                  ? Optional.<String>empty()
                  : maker.page(cases, calendars.others(cases), mistakes);
            })
        .flatMap(Function.identity())
        .filter(html -> !mistakes.hasErrors())
        .map(html -> new Customer(cases, html));
  }

  private static SortedMap<String, String> openPages(
      LoadedShop shop, Pages pages, Problems problems) {
    List<Words> languages = languages(shop);
    if (languages.isEmpty()) {
      return new TreeMap<>(Map.of());
    }
    Optional<YearHere> year =
        Faults.guard(Where.file("content/catalogue/holds.yaml"), problems, shop.dates()::year);
    return pages.open(shop.shop().orElseThrow(), year, languages, problems);
  }

  private static List<Words> languages(LoadedShop shop) {
    return shop.read().languages().stream().map(shop.words()::of).toList();
  }
}
