package curewindow.site;

import curewindow.page.JobView;
import curewindow.page.Pages;
import curewindow.problem.Faults;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.FittedItem;
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
 * @param problems what is wrong with templates and guides
 */
record Rendering(
    List<Customer> customers,
    SortedMap<String, String> open,
    boolean openIsWhole,
    List<Problem> problems) {

  /**
   * What stands in a customer's folder.
   *
   * @param view the job
   * @param cases the job for each parking, as the shop noted it first
   * @param files the texts of the files by their names, relative to that folder: the page, what
   *     stands beside it, and the same in a folder for each other parking
   */
  record Customer(JobView view, List<JobView> cases, SortedMap<String, String> files) {}

  /**
   * Renders everything.
   *
   * @param shop a shop folder whose shop.yaml is right
   * @param views its good jobs
   * @return the pages
   */
  static Rendering of(LoadedShop shop, List<JobView> views) {
    Problems problems = new Problems();
    Pages pages = Pages.read(shop.files(), shop.guides(), problems);
    List<Problems> mistakes = views.stream().map(v -> new Problems()).toList();
    List<Optional<Customer>> made =
        IntStream.range(0, views.size())
            .parallel()
            .mapToObj(i -> guarded(shop, pages, views.get(i), mistakes.get(i)))
            .toList();
    List<Customer> customers = new ArrayList<>();
    for (int i = 0; i < views.size(); i++) {
      made.get(i).ifPresent(customers::add);
      problems.addAll(mistakes.get(i).all());
    }
    int before = problems.errorCount();
    SortedMap<String, String> open = openPages(shop, pages, problems);
    boolean whole = problems.errorCount() == before && !open.isEmpty();
    return new Rendering(customers, open, whole, problems.all());
  }

  private static Optional<Customer> guarded(
      LoadedShop shop, Pages pages, JobView view, Problems mistakes) {
    return Faults.guard(view.job().where(), mistakes, () -> customer(shop, pages, view, mistakes))
        .flatMap(Function.identity());
  }

  private static Optional<Customer> customer(
      LoadedShop shop, Pages pages, JobView view, Problems mistakes) {
    guideless(shop, view).ifPresent(mistakes::add);
    if (mistakes.hasErrors()) {
      return Optional.empty();
    }
    SortedMap<String, String> files = new TreeMap<>();
    List<JobView> cases = ParkedViews.of(shop, view);
    for (JobView parked : cases) {
      files.putAll(folder(pages, parked, mistakes));
    }
    return mistakes.hasErrors()
        ? Optional.empty()
        : Optional.of(new Customer(cases.get(0), cases, files));
  }

  /** What stands in the folder for one parking, without the pages that have mistakes. */
  private static Map<String, String> folder(Pages pages, JobView view, Problems mistakes) {
    String folder = view.parkings().folder();
    Map<String, String> files = new TreeMap<>();
    Pages.Both both = pages.both(view, mistakes);
    both.page().ifPresent(html -> files.put(folder + "index.html", html));
    both.care().ifPresent(html -> files.put(folder + "care.html", html));
    return files;
  }

  /** A page without the care text for what was fitted is no page. */
  private static Optional<Problem> guideless(LoadedShop shop, JobView view) {
    for (FittedItem item : view.job().items()) {
      String guide = view.catalogue().services().get(item.service()).guide();
      if (shop.guides().find(view.words().language(), guide).isEmpty()) {
        return Optional.of(
            Problem.error(
                "missing-guide",
                view.job().where(),
                "the care guide " + guide + " cannot be used in " + view.words().language(),
                "mend or add content/guides/" + view.words().language() + "/" + guide + ".md"));
      }
    }
    return Optional.empty();
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
