package curewindow.page;

import curewindow.guide.GuideLibrary;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.Shop;
import curewindow.told.YearHere;
import curewindow.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The shop's pages for anyone: in each language the home, the guides, the year here and the index;
 * the pages for lost visitors, and for those whose page was taken down; and what robots read.
 */
final class PublicPages {

  private final Shop shop;
  private final Optional<YearHere> year;
  private final List<Words> languages;
  private final PublicLooks looks;
  private final GuideLibrary guides;

  PublicPages(
      Shop shop,
      Optional<YearHere> year,
      List<Words> languages,
      PublicLooks looks,
      GuideLibrary guides) {
    this.shop = shop;
    this.year = year;
    this.languages = List.copyOf(languages);
    this.looks = looks;
    this.guides = guides;
  }

  /** The guides of each language. */
  List<GuideBook> books(Problems problems) {
    noticePath(problems);
    return languages.stream()
        .map(words -> new GuideBook(shop, year, words, guides, problems))
        .toList();
  }

  SortedMap<String, String> fill(Templates templates, Problems problems) {
    List<GuideBook> books = books(problems);
    GuideBook own =
        books.stream()
            .filter(b -> b.words().language().equals(shop.language()))
            .findFirst()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "no words for the shop's language " + shop.language()));
    PublicSite site = new PublicSite(shop, books);
    PublicViews views = new PublicViews(shop, site, looks);
    Filling filling = new Filling(templates, problems, new TreeMap<>());
    filling.put(PublicSite.HOME, "home", own, views.front(own));
    filling.put(Pages.NOT_FOUND, "not-found", own, views.lost(own));
    filling.put(Pages.CLOSED, "closed", own, views.closed(own));
    for (GuideBook book : books) {
      filling.put(site.file(book, PublicSite.HOME), "home", book, views.home(book));
      filling.put(site.file(book, PublicSite.CARD), "lost-card", book, views.lostCard(book));
      for (GuideBook.Chapter chapter : book.chapters()) {
        filling.put(site.file(book, chapter.file()), "guide", book, views.guide(book, chapter));
      }
      book.year()
          .ifPresent(
              y ->
                  filling.put(site.file(book, PublicSite.YEAR), "year", book, views.year(book, y)));
      IndexPage index = IndexPage.of(book);
      filling.put(
          site.file(book, PublicSite.FIND),
          "find",
          book,
          views.find(book, index.finder(looks.searchScript())));
      filling.pages().put(site.file(book, PublicSite.LOOKUP), index.loaded(looks.engine()));
    }
    filling.pages().put("sitemap.xml", SiteMap.xml(site.map()));
    filling.pages().put("robots.txt", SiteMap.robots(shop.address()));
    return filling.pages();
  }

  /** What robots may do is asked at the top of a host only. */
  private void noticePath(Problems problems) {
    if (!SiteMap.isTop(shop.address())) {
      problems.add(
          Problem.notice(
              "robots-below-top",
              new Where("shop.yaml", 0, 0, "address"),
              "robots.txt is only read at the top of a host, and this address has a path",
              "put the line Sitemap: "
                  + shop.address().resolve("sitemap.xml")
                  + " into the robots.txt at the top"));
    }
  }

  private record Filling(Templates templates, Problems problems, SortedMap<String, String> pages) {

    void put(String path, String template, GuideBook book, PublicView view) {
      templates
          .fill(template, view, book.words(), problems)
          .ifPresent(html -> pages.put(path, html));
    }
  }
}
