package curewindow.page;

import curewindow.guide.GuidePart;
import curewindow.shop.Shop;
import curewindow.told.Contact;
import curewindow.words.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Gathers what stands on each public page. */
final class PublicViews {

  /** The guide whose headings are the questions customers ask. */
  static final String QUESTIONS = "normal";

  /** A heading that so many guides have tells nothing of any of them. */
  private static final int COMMON = 4;

  /** The stamp, without a date. */
  static final String SHARED = "icon-512.png";

  private final Shop shop;
  private final PublicSite site;
  private final PublicLooks looks;

  PublicViews(Shop shop, PublicSite site, PublicLooks looks) {
    this.shop = shop;
    this.site = site;
    this.looks = looks;
  }

  /** Where a page stands: what leads from it to the site's top and to its own language's pages. */
  private record Spot(GuideBook book, String page, String top, String root, String home) {}

  /** Who looks for what, and what is said of the page. */
  private record Said(String title, String about, boolean listed, Optional<String> data) {}

  /** What a page has beside what all have. */
  private record Own(
      List<PublicView.Chapter> contents,
      Optional<PublicView.Reading> reading,
      Optional<PublicView.Finder> finder,
      Optional<PublicView.Year> year,
      Message message) {

    static final Own NOTHING =
        new Own(List.of(), Optional.empty(), Optional.empty(), Optional.empty(), Message.NONE);

    static Own of(List<PublicView.Chapter> contents) {
      return new Own(contents, Optional.empty(), Optional.empty(), Optional.empty(), Message.NONE);
    }

    Own with(PublicView.Reading guide) {
      return new Own(contents, Optional.of(guide), finder, year, message);
    }

    Own with(PublicView.Finder index) {
      return new Own(contents, reading, Optional.of(index), year, message);
    }

    Own with(PublicView.Year here) {
      return new Own(contents, reading, finder, Optional.of(here), message);
    }

    Own with(Message prepared) {
      return new Own(contents, reading, finder, year, prepared);
    }
  }

  /** What the links to the shop prepare to be written. */
  private record Message(String subject, String body) {

    static final Message NONE = new Message("", "");
  }

  /** The home at the site's top, in the shop's language. */
  PublicView front(GuideBook book) {
    return home(new Spot(book, PublicSite.HOME, "", book.words().language() + "/", "index.html"));
  }

  PublicView home(GuideBook book) {
    return home(below(book, PublicSite.HOME));
  }

  private PublicView home(Spot spot) {
    String title = spot.book().words().text("page.home.title", Map.of("shop", shop.name()));
    Said said = new Said(title, about(spot.book()), true, Optional.of(SchemaData.shop(shop)));
    return view(spot, said, Own.of(contents(spot)));
  }

  PublicView guide(GuideBook book, GuideBook.Chapter chapter) {
    Spot spot = below(book, chapter.file());
    boolean questions = chapter.id().equals(QUESTIONS);
    Optional<String> data =
        questions
            ? SchemaData.questions(
                book.words().language(), site.address(book, chapter.file()), chapter)
            : Optional.empty();
    String lead = chapter.parts().stream().findFirst().map(GuidePart::text).orElse("");
    Said said = new Said(titled(chapter.title()), lead, true, data);
    PublicView.Reading reading =
        new PublicView.Reading(
            chapter.title(),
            chapter.parts().stream().map(GuidePart::html).collect(Collectors.joining("\n")),
            chapter.basis(),
            book.words().text("public.own.over", Map.of("day", "{day}")),
            Json.of(chapter.months()),
            questions,
            chapter.sections(),
            book.after(chapter).map(c -> new PublicView.Link(c.file(), next(book, c))));
    return view(spot, said, Own.NOTHING.with(reading));
  }

  private static String next(GuideBook book, GuideBook.Chapter chapter) {
    return book.words().text("public.next", Map.of("title", chapter.title()));
  }

  PublicView find(GuideBook book, PublicView.Finder finder) {
    Spot spot = below(book, PublicSite.FIND);
    String about = book.words().text("public.find.about", Map.of("shop", shop.name()));
    Said said =
        new Said(titled(book.words().text("public.find.title")), about, true, Optional.empty());
    return view(spot, said, Own.of(contents(spot)).with(finder));
  }

  PublicView year(GuideBook book, PublicYear year) {
    String about = book.words().text("public.year.about", Map.of("shop", shop.name()));
    Said said =
        new Said(titled(book.words().text("public.year.title")), about, true, Optional.empty());
    return view(below(book, PublicSite.YEAR), said, Own.NOTHING.with(year.page()));
  }

  /** Whoever has no card any more writes to the shop; the page itself knows nobody. */
  PublicView lostCard(GuideBook book) {
    Words words = book.words();
    Said said =
        new Said(
            titled(words.text("public.card.title")),
            words.text("public.card.lede"),
            true,
            Optional.empty());
    Message message =
        new Message(words.text("public.card.subject"), words.text("public.card.body"));
    return view(below(book, PublicSite.CARD), said, Own.NOTHING.with(message));
  }

  PublicView lost(GuideBook book) {
    return anywhere(book, "public.lost.title");
  }

  PublicView closed(GuideBook book) {
    return anywhere(book, "public.closed.title");
  }

  /** It answers at any depth, so its links start at the top of the host. */
  private PublicView anywhere(GuideBook book, String text) {
    String top = shop.address().getRawPath().isEmpty() ? "/" : shop.address().getRawPath();
    Spot spot = new Spot(book, PublicSite.HOME, top, top + book.words().language() + "/", top);
    String title = titled(book.words().text(text));
    Said said = new Said(title, "", false, Optional.empty());
    return view(spot, said, Own.of(contents(spot)));
  }

  private static Spot below(GuideBook book, String page) {
    return new Spot(book, page, "../", "", "index.html");
  }

  private String titled(String title) {
    return title + " · " + shop.name();
  }

  private String about(GuideBook book) {
    return book.words().text("public.about", Map.of("shop", shop.name()));
  }

  /** All guides, each with those of its sections whose headings say something about it. */
  private static List<PublicView.Chapter> contents(Spot spot) {
    Map<String, Long> times =
        spot.book().chapters().stream()
            .flatMap(c -> c.sections().stream().map(PublicView.Link::text).distinct())
            .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
    return spot.book().chapters().stream()
        .map(c -> chapter(spot.root() + c.file(), c, times))
        .toList();
  }

  private static PublicView.Chapter chapter(
      String href, GuideBook.Chapter chapter, Map<String, Long> times) {
    return new PublicView.Chapter(
        href,
        chapter.title(),
        chapter.sections().stream()
            .filter(l -> times.get(l.text()) < COMMON)
            .map(l -> new PublicView.Link(href + l.href(), l.text()))
            .toList());
  }

  private PublicView view(Spot spot, Said said, Own own) {
    GuideBook book = spot.book();
    return new PublicView(
        book.words().language(),
        book.words().rightToLeft() ? "rtl" : "ltr",
        false,
        said.title(),
        look(own),
        new Contact(shop, book.words()).card(own.message().subject(), own.message().body()),
        HouseLogo.of(shop, spot.top()),
        head(spot, said),
        spot.root(),
        spot.home(),
        spot.top(),
        book.chapter(QUESTIONS).map(c -> spot.root() + c.file()),
        book.year().map(y -> spot.root() + PublicSite.YEAR),
        site.languages(book, spot.page(), spot.top()),
        own.contents(),
        own.reading(),
        own.finder(),
        own.year(),
        said.data());
  }

  private PageLook look(Own own) {
    if (own.finder().isPresent()) {
      return looks.finding();
    }
    return own.reading().flatMap(PublicView.Reading::basis).isPresent()
        ? looks.reading()
        : looks.still();
  }

  private PublicView.Head head(Spot spot, Said said) {
    return new PublicView.Head(
        said.about(),
        shop.address().resolve(SHARED).toString(),
        said.listed() ? Optional.of(site.address(spot.book(), spot.page())) : Optional.empty(),
        said.listed() ? site.alternates(spot.page()) : List.of());
  }
}
