package curewindow.page;

import curewindow.told.Contact;
import java.util.List;
import java.util.Optional;

/**
 * A page of the shop that anyone may read, ready to be put into its template.
 *
 * @param logo the shop's logo, in place of its name at the top
 * @param root what stands before the name of another page of the language in a link
 * @param home the link to the language's home
 * @param top what stands before the name of a file at the top of the site in a link
 * @param questions the link to the questions and answers, where the language has them
 * @param byMonth the link to the year here, where it could be computed
 * @param contents the guides with their sections, where the page lists them
 * @param reading the guide, on a guide's page
 * @param finder the index, on the page of the index
 * @param year the year at the shop's place, on its page
 * @param data the page in the words of schema.org, as JSON-LD
 */
record PublicView(
    String lang,
    String dir,
    boolean hidden,
    String title,
    PageLook look,
    Contact.Card shop,
    Optional<HouseLogo> logo,
    Head head,
    String root,
    String home,
    String top,
    Optional<String> questions,
    Optional<String> byMonth,
    List<Language> languages,
    List<Chapter> contents,
    Optional<Reading> reading,
    Optional<Finder> finder,
    Optional<Year> year,
    Optional<String> data) {

  /**
   * What search engines ask for.
   *
   * @param canonical the page's one address; empty for the page for lost visitors
   * @param image the address of the picture that is shown where the page's address is sent
   */
  record Head(String about, String image, Optional<String> canonical, List<Alternate> alternates) {}

  /** The page's address in a language. */
  record Alternate(String lang, String href) {}

  /** The same page in a language; {@code current} is {@code page} for the one shown. */
  record Language(String lang, String href, String text, Optional<String> current) {}

  /** A guide with links to the sections that are its own, not those that every guide has. */
  record Chapter(String href, String title, List<Link> parts) {}

  /**
   * A guide to read.
   *
   * @param basis what the days mean that it quotes; empty where it quotes none
   * @param over how a car's date is said that is over, with {@code {day}} in its place
   * @param months what it quotes, and how that is said of work in each month, as JSON
   */
  record Reading(
      String title,
      String html,
      Optional<String> basis,
      String over,
      String months,
      boolean questions,
      List<Link> parts,
      Optional<Link> next) {}

  /**
   * The printed index.
   *
   * @param script looks words up, once it has loaded what stands in {@link PublicSite#LOOKUP}
   */
  record Finder(List<Letter> letters, String script) {}

  /** A letter of the index. */
  record Letter(String text, String id, List<Word> words) {}

  /** A headword and where it stands. */
  record Word(String text, List<Place> places) {}

  /** A section, and the guide it is in. */
  record Place(String href, String title, String guide) {}

  /** A link with its text. */
  record Link(String href, String text) {}

  /**
   * How long things last at the shop's place, month by month.
   *
   * @param assumed what was assumed
   */
  record Year(String lede, String assumed, List<YearWork> works) {}

  /** Services for which all holds last equally long. */
  record YearWork(List<String> services, List<YearHold> holds) {}

  /**
   * Holds that last equally long.
   *
   * @param range the shortest and the longest month
   * @param alt what the picture shows, for who cannot see it
   */
  record YearHold(
      List<String> names, String range, String alt, YearPicture picture, List<YearRow> rows) {}

  /** A month in numbers. */
  record YearRow(String month, String outside, String garage) {}

  /**
   * The same drawn.
   *
   * @param most what the line at the top stands for
   * @param side where that text begins
   */
  record YearPicture(
      String most, String side, List<YearColumn> columns, List<YearLetter> letters) {}

  /** A column; {@code x} and {@code width} in percent, the others in pixels. */
  record YearColumn(String kind, String x, String width, long y, long height) {}

  /** A month's first letter below its columns. */
  record YearLetter(String x, String text) {}
}
