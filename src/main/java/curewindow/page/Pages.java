package curewindow.page;

import static curewindow.words.WordsLibrary.FALLBACK;

import curewindow.guide.GuideLibrary;
import curewindow.problem.Problems;
import curewindow.shop.Catalogue;
import curewindow.shop.Job;
import curewindow.shop.Shop;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopLook;
import curewindow.told.JobView;
import curewindow.told.YearHere;
import curewindow.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Makes the HTML of all pages, from templates that a shop may replace by its own. The same input
 * gives the same bytes. Safe for use by several threads, each with its own {@link Problems}.
 */
public final class Pages {

  /** The folder of all templates, styles and scripts, those of handouts too. */
  public static final String TEMPLATES = Templates.FOLDER;

  /** Where it is said that there is no page, among the pages of {@link #open}. */
  public static final String NOT_FOUND = "404.html";

  /** What stands where a customer's page was, among the pages of {@link #open}. */
  public static final String CLOSED = "closed.html";

  /** All templates: the pages, what they share, and the sections of a customer's page. */
  private static final String[] ALL = {
    "parts",
    "customer",
    "dates",
    "normal",
    "car",
    "home",
    "guide",
    "public",
    "find",
    "year",
    "lost-card",
    "not-found",
    "closed"
  };

  /** The looks of the two kinds of pages, and the files that customers' pages share. */
  private record Looks(PageLook customer, SharedFile.All shared, PublicLooks open) {}

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
   * @param house the shop's color, and whether it has a logo
   * @param guides the care texts
   * @param problems where it is said what is missing or cannot be read
   * @return the pages
   */
  public static Pages read(
      ShopFiles files, ShopLook house, GuideLibrary guides, Problems problems) {
    return read(files, house, guides, problems, PageTrim::html);
  }

  /** Pages that get a finish of the caller's choice when they leave their template. */
  static Pages read(
      ShopFiles files,
      ShopLook house,
      GuideLibrary guides,
      Problems problems,
      UnaryOperator<String> finish) {
    Templates templates = Templates.read(files, problems, finish, ALL);
    Looks looks =
        new Looks(
            PageLook.customer(files, house, problems),
            SharedFile.read(files, problems),
            PublicLooks.read(files, house, problems));
    return new Pages(templates, looks, guides);
  }

  /**
   * A job's page. It is held to {@link Weight#MOST}: where it would be heavier, it has fewer
   * questions, leads to the guides in place of care texts, and at last has no calendars of other
   * parkings. The cautions stay.
   *
   * @param cases the job in each case of parking, the noted one first
   * @param calendars the calendar (RFC 5545) of each case but the noted one
   * @param problems where mistakes in the templates are reported, with file and line
   * @return the page, or empty where its template has a mistake
   */
  public Optional<String> customer(List<JobView> cases, List<String> calendars, Problems problems) {
    CustomerPage page = page(cases, calendars);
    CustomerPage.Room room = page.room();
    Optional<String> html = fill(page, room, problems);
    int over = over(html);
    while (over > 0 && room.canShrink()) {
      room = room.smaller(Weight.questions(over));
      html = fill(page, room, problems);
      over = over(html);
    }
    return roomier(page, html, room, problems);
  }

  /**
   * Finds out whether a job's page can be made, however heavy it is.
   *
   * @param cases the job in some cases of parking, the noted one first
   * @param calendars the calendar (RFC 5545) of each case but the noted one
   * @param problems where mistakes in the templates are reported, with file and line
   * @return the page, or empty where its template has a mistake
   */
  public Optional<String> rehearsed(
      List<JobView> cases, List<String> calendars, Problems problems) {
    CustomerPage page = page(cases, calendars);
    return fill(page, page.room(), problems);
  }

  private CustomerPage page(List<JobView> cases, List<String> calendars) {
    return new CustomerPage(cases, calendars, looks.customer(), looks.shared(), guides);
  }

  /** Where a care text has gone, there may be room for questions again. */
  private Optional<String> roomier(
      CustomerPage page, Optional<String> html, CustomerPage.Room room, Problems problems) {
    Optional<String> best = html;
    for (int more = room.questions() + 1; more <= Asking.MOST; more++) {
      Optional<String> next = fill(page, room.with(more), problems);
      if (over(next) > 0) {
        break;
      }
      best = next;
    }
    return best;
  }

  /**
   * The guides whose text can stand on a job's page, in its language, or in English where that
   * lacks one.
   *
   * @param job the job
   * @param catalogue the catalogue
   * @param guides all guides
   * @return their files, relative to the shop folder
   */
  public static Set<String> guides(Job job, Catalogue catalogue, GuideLibrary guides) {
    String own = job.language();
    return Stream.concat(CareText.ids(job, catalogue).stream(), Stream.of(PublicViews.QUESTIONS))
        .map(id -> GuideLibrary.file(guides.find(own, id).isEmpty() ? FALLBACK : own, id))
        .collect(Collectors.toSet());
  }

  /**
   * What customers' pages need beside them.
   *
   * @return the files, for the top of the site
   */
  public List<SharedFile> shared() {
    return looks.shared().files();
  }

  private Optional<String> fill(CustomerPage page, CustomerPage.Room room, Problems problems) {
    return templates.fill("customer", page.view(room), page.words(), problems).map(SaidOnce::of);
  }

  private static int over(Optional<String> html) {
    return html.map(Weight::over).orElse(0);
  }

  /**
   * All pages that anyone may read: {@code index.html} in the shop's language, {@code
   * LANG/index.html}, {@code LANG/find.html}, {@code LANG/year.html}, {@code LANG/lost-card.html}
   * and {@code LANG/GUIDE.html} for each language, {@code 404.html}, {@code closed.html}, and for
   * robots {@code sitemap.xml} and {@code robots.txt}. They name no customer. Links between them
   * are relative, so that they also work from a disk; those of {@code 404.html} and {@code
   * closed.html} start at the top of the host, because they answer at any depth.
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

  /**
   * Finds out what stands in the way of the pages that anyone may read, apart from templates.
   *
   * @param shop the shop
   * @param languages the words of each language of the site; one of them is the shop's
   * @param problems where it is told
   */
  public void rehearseOpen(Shop shop, List<Words> languages, Problems problems) {
    new PublicPages(shop, Optional.empty(), languages, looks.open(), guides).books(problems);
  }
}
