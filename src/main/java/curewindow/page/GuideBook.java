package curewindow.page;

import curewindow.guide.Guide;
import curewindow.guide.GuideLibrary;
import curewindow.guide.GuidePart;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.search.IndexWord;
import curewindow.shop.Shop;
import curewindow.told.Contact;
import curewindow.told.YearHere;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;

/** All guides of a language as the public pages show them, cut into the parts links lead to. */
final class GuideBook {

  /** Pages that are no guides; a guide of such a name would take their place. */
  static final Set<String> RESERVED = Set.of("index", "find", "year", "lost-card");

  /**
   * A guide and its parts.
   *
   * @param basis what the days mean that it quotes; empty where it quotes none
   * @param months what it quotes, and how that is said of work in each month
   */
  record Chapter(
      String id,
      String title,
      List<GuidePart> parts,
      Optional<String> basis,
      SortedMap<String, List<String>> months) {

    String file() {
      return id + ".html";
    }

    /** The headings of its sections; the finer ones below them are left to the page itself. */
    List<PublicView.Link> sections() {
      return parts.stream()
          .filter(p -> p.level() == 2)
          .map(p -> new PublicView.Link("#" + p.id(), p.title()))
          .toList();
    }
  }

  /** A part that can be looked up, and the title of the page it is on. */
  record Spot(String href, String title, String chapter, String text) {}

  private final Words words;
  private final Optional<PublicYear> year;
  private final List<Chapter> chapters = new ArrayList<>();
  private final List<Spot> spots = new ArrayList<>();

  GuideBook(
      Shop shop, Optional<YearHere> here, Words words, GuideLibrary guides, Problems problems) {
    this.words = words;
    this.year = here.map(y -> new PublicYear(y, words));
    for (String id : guides.ids(words.language())) {
      Guide guide = guides.find(words.language(), id).orElseThrow();
      if (RESERVED.contains(id)) {
        problems.add(reserved(guide));
      } else {
        PublicFacts facts = new PublicFacts(shop, words, id, year);
        List<GuidePart> parts = GuidePart.of(guide.html(facts));
        add(new Chapter(id, guide.title(), parts, facts.basis(), facts.months()));
      }
    }
    addPages(shop);
  }

  /** What can be looked up beside the guides. */
  private void addPages(Shop shop) {
    String reach = words.text("page.reach.title");
    Contact contact = new Contact(shop, words);
    String how = String.join(" ", contact.hoursText()) + " " + shop.phone();
    spots.add(new Spot(PublicSite.HOME + "#reach", reach, reach, how.strip()));
    year.ifPresent(
        y ->
            spots.add(
                page(
                    PublicSite.YEAR,
                    "public.year.title",
                    y.page().lede() + " " + words.text("public.year.key"))));
    spots.add(
        page(
            PublicSite.CARD,
            "public.card.title",
            words.text("public.card.lede") + " " + words.text("public.card.look")));
  }

  private Spot page(String file, String title, String text) {
    return new Spot(file, words.text(title), words.text(title), text);
  }

  private void add(Chapter chapter) {
    chapters.add(chapter);
    for (GuidePart part : chapter.parts()) {
      if (!part.text().isEmpty()) {
        spots.add(
            part.level() == 0
                ? new Spot(chapter.file(), chapter.title(), chapter.title(), part.text())
                : new Spot(
                    chapter.file() + "#" + part.id(), part.title(), chapter.title(), part.text()));
      }
    }
  }

  private static Problem reserved(Guide guide) {
    String file = "content/guides/" + guide.language() + "/" + guide.id() + ".md";
    return Problem.error(
        "guide-name",
        Where.file(file),
        "a guide cannot be called " + guide.id() + ", as the shop's pages have one of that name",
        "give the file another name");
  }

  Words words() {
    return words;
  }

  Optional<PublicYear> year() {
    return year;
  }

  List<Chapter> chapters() {
    return chapters;
  }

  Optional<Chapter> chapter(String id) {
    return chapters.stream().filter(c -> c.id().equals(id)).findFirst();
  }

  /** The chapter after another one. */
  Optional<Chapter> after(Chapter chapter) {
    return chapters.stream().skip(chapters.indexOf(chapter) + 1L).findFirst();
  }

  List<Spot> spots() {
    return spots;
  }

  List<IndexWord> heads() {
    return IndexWord.read(words.text("public.index-words"));
  }
}
