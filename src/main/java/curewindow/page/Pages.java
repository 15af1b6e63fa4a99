package curewindow.page;

import curewindow.guide.GuideLibrary;
import curewindow.problem.Problems;
import curewindow.shop.Shop;
import curewindow.shop.ShopFiles;
import curewindow.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * Makes the HTML of all pages, from templates that a shop may replace by its own. The same input
 * gives the same bytes. Safe for use by several threads, each with its own {@link Problems}.
 */
public final class Pages {

  private final Templates templates;
  private final Look look;
  private final GuideLibrary guides;

  private Pages(Templates templates, Look look, GuideLibrary guides) {
    this.templates = templates;
    this.look = look;
    this.guides = guides;
  }

  /**
   * Reads templates, style and script.
   *
   * @param files the shop folder laid over the program's own files
   * @param guides the care texts
   * @param problems where it is said what is missing or cannot be read
   * @return the pages
   */
  public static Pages read(ShopFiles files, GuideLibrary guides, Problems problems) {
    Templates templates =
        Templates.read(files, problems, "parts", "customer", "home", "guide", "not-found");
    return new Pages(templates, Look.read(files, problems), guides);
  }

  /**
   * A job's page. It stands beside its {@code care.ics} and needs nothing else.
   *
   * @param view the job
   * @param problems where mistakes in the template are reported, with file and line
   * @return the HTML, or empty where there is a mistake
   */
  public Optional<String> customer(JobView view, Problems problems) {
    CustomerView page = new CustomerPage(view, look, guides).view();
    return templates.fill("customer", page, view.words(), problems);
  }

  /**
   * All pages that anyone may read: {@code index.html} in the shop's language, {@code
   * LANG/index.html} and {@code LANG/GUIDE.html} for each language, and {@code 404.html}. They name
   * no customer. Links between them are relative, so that they also work from a disk; those of
   * {@code 404.html} start at the shop's address, because it answers at any depth.
   *
   * @param shop the shop
   * @param languages the words of each language of the site; one of them is the shop's
   * @param problems where mistakes in the templates are reported, with file and line
   * @return the HTML by path, forward slashes, without the pages that have mistakes
   */
  public SortedMap<String, String> open(Shop shop, List<Words> languages, Problems problems) {
    return new PublicPages(shop, languages, look.still(), guides).fill(templates, problems);
  }
}
