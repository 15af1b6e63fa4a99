package curewindow.site;

import curewindow.page.Pages;
import curewindow.problem.Faults;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.told.JobView;
import curewindow.told.YearHere;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * All pages of a shop folder, rendered in memory.
 *
 * @param customers the customers' pages, in the order of the jobs; without those that could not be
 *     made
 * @param open the public pages by path
 * @param openIsWhole whether all public pages could be made
 * @param below the style that the customers' pages share
 * @param problems what is wrong with templates and guides
 */
record Rendering(
    List<Customer> customers,
    SortedMap<String, String> open,
    boolean openIsWhole,
    String below,
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
    Problems problems = new Problems();
    Pages pages = Pages.read(shop.files(), shop.guides(), problems);
    List<Problems> mistakes = jobs.stream().map(v -> new Problems()).toList();
    List<Optional<Customer>> made =
        IntStream.range(0, jobs.size())
            .parallel()
            .mapToObj(i -> guarded(shop, pages, jobs.get(i), calendars, mistakes.get(i)))
            .toList();
    List<Customer> customers = new ArrayList<>();
    for (int i = 0; i < jobs.size(); i++) {
      made.get(i).ifPresent(customers::add);
      problems.addAll(mistakes.get(i).all());
    }
    int before = problems.errorCount();
    SortedMap<String, String> open = wantsOpen ? openPages(shop, pages, problems) : new TreeMap<>();
    boolean whole = problems.errorCount() == before && !open.isEmpty();
    return new Rendering(customers, open, whole, pages.below(), problems.all());
  }

  private static Optional<Customer> guarded(
      LoadedShop shop, Pages pages, List<JobView> cases, Calendars calendars, Problems mistakes) {
    JobView noted = cases.get(0);
    return Faults.guard(
            noted.job().where(),
            mistakes,
            () -> {
              Guideless.of(shop, noted.job()).ifPresent(mistakes::add);
              return mistakes.hasErrors()
                  ? Optional.<String>empty()
                  : pages.customer(cases, calendars.links(cases), mistakes);
            })
        .flatMap(Function.identity())
        .filter(html -> !mistakes.hasErrors())
        .map(html -> new Customer(cases, html));
  }

  private static SortedMap<String, String> openPages(
      LoadedShop shop, Pages pages, Problems problems) {
    List<Words> languages = shop.read().languages().stream().map(shop.words()::of).toList();
    if (languages.isEmpty()) {
      return new TreeMap<>(Map.of());
    }
    Optional<YearHere> year =
        Faults.guard(Where.file("content/catalogue/holds.yaml"), problems, shop::year);
    return pages.open(shop.shop().orElseThrow(), year, languages, problems);
  }
}
