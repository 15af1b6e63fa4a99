package curewindow.page;

import curewindow.shop.Shop;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Which public pages there are, under which address, and in which other languages. */
final class PublicSite {

  static final String HOME = "index.html";
  static final String FIND = "find.html";
  static final String YEAR = "year.html";
  static final String CARD = "lost-card.html";

  /** The pages that every language has beside its guides. */
  private static final Set<String> EVERYWHERE = Set.of(HOME, FIND, CARD);

  /** What the index's script loads when somebody starts to look words up. */
  static final String LOOKUP = "find-index.js";

  private final Shop shop;
  private final List<GuideBook> books;

  PublicSite(Shop shop, List<GuideBook> books) {
    this.shop = shop;
    this.books = List.copyOf(books);
  }

  /** Where a page stands in the site. */
  String file(GuideBook book, String page) {
    return book.words().language() + "/" + page;
  }

  /** The link to a guide from a customer's page. */
  static String fromCustomer(String language, String guide) {
    return "../../" + language + "/" + guide + ".html";
  }

  /** The one address of a page. The shop's own home has two, of which the short one counts. */
  String address(GuideBook book, String page) {
    String language = book.words().language();
    String path =
        !page.equals(HOME)
            ? file(book, page)
            : language.equals(shop.language()) ? "" : language + "/";
    return shop.address().resolve(path).toString();
  }

  /** The languages that have a page. */
  List<GuideBook> having(String page) {
    return books.stream().filter(b -> EVERYWHERE.contains(page) || has(b, page)).toList();
  }

  private static boolean has(GuideBook book, String page) {
    return page.equals(YEAR)
        ? book.year().isPresent()
        : book.chapters().stream().anyMatch(c -> c.file().equals(page));
  }

  /** A page's addresses in all its languages; the home's first one is for any other language. */
  List<PublicView.Alternate> alternates(String page) {
    List<PublicView.Alternate> alternates = new ArrayList<>();
    List<GuideBook> there = having(page);
    if (there.size() > 1) {
      there.forEach(
          b -> alternates.add(new PublicView.Alternate(b.words().language(), address(b, page))));
      if (page.equals(HOME)) {
        alternates.add(new PublicView.Alternate("x-default", shop.address().toString()));
      }
    }
    return alternates;
  }

  /** The switch of languages on a page. */
  List<PublicView.Language> languages(GuideBook shown, String page, String root) {
    return having(page).stream()
        .map(
            b ->
                new PublicView.Language(
                    b.words().language(),
                    root + file(b, page),
                    b.words().text("language.name"),
                    b == shown ? Optional.of("page") : Optional.empty()))
        .toList();
  }

  /** All pages, language by language. */
  List<SiteMap.Page> map() {
    List<SiteMap.Page> pages = new ArrayList<>();
    for (GuideBook book : books) {
      add(pages, book, HOME);
      book.chapters().forEach(c -> add(pages, book, c.file()));
      book.year().ifPresent(y -> add(pages, book, YEAR));
      add(pages, book, CARD);
      add(pages, book, FIND);
    }
    return pages;
  }

  private void add(List<SiteMap.Page> pages, GuideBook book, String page) {
    pages.add(new SiteMap.Page(address(book, page), alternates(page)));
  }
}
