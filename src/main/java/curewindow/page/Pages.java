package curewindow.page;

import curewindow.guide.GuideLibrary;
import curewindow.problem.Problems;
import curewindow.shop.Shop;
import curewindow.shop.ShopFiles;
import curewindow.told.YearHere;
import curewindow.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.UnaryOperator;

/**
 * Makes the HTML of all pages, from templates that a shop may replace by its own. The same input
 * gives the same bytes. Safe for use by several threads, each with its own {@link Problems}.
 */
public final class Pages {

  /** All templates: the pages, what they share, and the sections of a customer's page. */
  private static final String[] TEMPLATES = {
    "parts",
    "customer",
    "strip",
    "car",
    "normal",
    "parking",
    "done",
    "care",
    "home",
    "guide",
    "public",
    "find",
    "year",
    "lost-card",
    "not-found"
  };

  /** The looks of the three kinds of pages. */
  private record Looks(Look customer, Look care, PublicLooks open) {}

  private final Templates templates;
  private final Looks looks;
  private final GuideLibrary guides;

  private Pages(Templates templates, Looks looks, GuideLibrary guides) {
    this.templates = templates;
    this.looks = looks;
    this.guides = guides;
  }

  /**
   * Reads templates, styles and script.
   *
   * @param files the shop folder laid over the program's own files
   * @param guides the care texts
   * @param problems where it is said what is missing or cannot be read
   * @return the pages
   */
  public static Pages read(ShopFiles files, GuideLibrary guides, Problems problems) {
    return read(files, guides, problems, Slim::html);
  }

  /** Pages that get a finish of the caller's choice when they leave their template. */
  static Pages read(
      ShopFiles files, GuideLibrary guides, Problems problems, UnaryOperator<String> finish) {
    Templates templates = Templates.read(files, problems, finish, TEMPLATES);
    Looks looks =
        new Looks(
            Look.customer(files, problems),
            Look.still(files, Look.CARE, problems),
            PublicLooks.read(files, problems));
    return new Pages(templates, looks, guides);
  }

  /**
   * A job's page and the care texts beside it.
   *
   * @param page the page {@code index.html}, or empty where its template has a mistake
   * @param care the page {@code care.html}, or empty where its template has a mistake
   */
  public record Both(Optional<String> page, Optional<String> care) {}

  /** A page, and for how many questions there was room on it. */
  private record Held(Optional<String> html, int questions) {}

  /**
   * A job's page and, beside it, how to care for what was fitted. They link to each other and to
   * {@code care.ics}. The page is held to {@link Weight#MOST}: where it would be heavier, questions
   * go to the other page.
   *
   * @param view the job
   * @param problems where mistakes in the templates are reported, with file and line
   * @return both pages
   */
  public Both both(JobView view, Problems problems) {
    CustomerPage page = new CustomerPage(view, looks.customer(), guides);
    Held held = held(page, problems);
    return new Both(held.html(), care(page, held.questions(), problems));
  }

  /** The page alone. */
  Optional<String> customer(JobView view, Problems problems) {
    return held(new CustomerPage(view, looks.customer(), guides), problems).html();
  }

  private Held held(CustomerPage page, Problems problems) {
    int questions = page.questions().size();
    while (true) {
      Optional<String> html = fill(page, questions, problems);
      int over = html.map(Weight::of).orElse(0) - Weight.MOST;
      if (over <= 0 || questions == 0) {
        return new Held(html, questions);
      }
      questions = Math.max(0, questions - Weight.questions(over));
    }
  }

  private Optional<String> fill(CustomerPage page, int questions, Problems problems) {
    return templates.fill("customer", page.view(questions), page.job().words(), problems);
  }

  private Optional<String> care(CustomerPage page, int questions, Problems problems) {
    CareView care = CareView.of(page, looks.care(), guides, questions);
    return templates.fill("care", care, page.job().words(), problems);
  }

  /**
   * All pages that anyone may read: {@code index.html} in the shop's language, {@code
   * LANG/index.html}, {@code LANG/find.html}, {@code LANG/year.html}, {@code LANG/lost-card.html}
   * and {@code LANG/GUIDE.html} for each language, {@code 404.html}, and for robots {@code
   * sitemap.xml} and {@code robots.txt}. They name no customer. Links between them are relative, so
   * that they also work from a disk; those of {@code 404.html} start at the top of the host,
   * because it answers at any depth.
   *
   * @param shop the shop
   * @param year how long holds last at its place; without it that page is left out, and guides
   *     quote no days
   * @param languages the words of each language of the site; one of them is the shop's
   * @param problems where mistakes in the templates are reported, with file and line
   * @return the text by path, forward slashes, without the pages that have mistakes
   */
  public SortedMap<String, String> open(
      Shop shop, Optional<YearHere> year, List<Words> languages, Problems problems) {
    return new PublicPages(shop, year, languages, looks.open(), guides).fill(templates, problems);
  }
}
