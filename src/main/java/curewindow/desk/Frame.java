package curewindow.desk;

import curewindow.words.Words;
import java.util.List;
import java.util.Optional;

/**
 * What stands around every screen.
 *
 * @param lang the language of the desk
 * @param title what the screen is for
 * @param shop the shop's name
 * @param links the screens that can be gone to
 * @param done what was just done; empty where nothing was
 * @param undo how that is taken back; empty where it cannot be
 * @param other the other language the desk speaks
 * @param back where the screen is found again in it, where it has no form that says so
 */
record Frame(
    String lang,
    String title,
    String shop,
    List<Link> links,
    Optional<String> done,
    Optional<Undo> undo,
    Other other,
    String back) {

  /** The languages that the desk speaks. */
  static final List<String> LANGUAGES = List.of("en", "es");

  /** A screen that can be gone to; a quiet one stands at the foot where the head has no room. */
  record Link(String href, String text, boolean here, boolean quiet) {

    Link quieter() {
      return new Link(href, text, here, true);
    }
  }

  /** What can be taken back of a car. */
  record Undo(String job, String what) {}

  /** The same with a way to take back what was just done. */
  Frame undoing(Optional<Undo> what) {
    return new Frame(lang, title, shop, links, done, what, other, back);
  }

  /** Another language. */
  record Other(String lang, String name) {}

  static Frame of(Words words, String shop, String title, String path, Optional<String> done) {
    List<Link> links =
        List.of(
            link(words, path, "/", "desk.today.title"),
            link(words, path, "/new", "desk.new.title"),
            link(words, path, "/find", "desk.find.title"),
            link(words, path, "/calls", "desk.calls.title").quieter(),
            link(words, path, "/import", "desk.import.title").quieter());
    Other other =
        words.language().equals("es") ? new Other("en", "English") : new Other("es", "Español");
    return new Frame(words.language(), title, shop, links, done, Optional.empty(), other, path);
  }

  /** The same with another place where it is found again. */
  Frame at(String place) {
    return new Frame(lang, title, shop, links, done, undo, other, place);
  }

  /** The same for a desk that has no other screens yet. */
  Frame alone() {
    return new Frame(lang, title, shop, List.of(), Optional.empty(), Optional.empty(), other, back);
  }

  private static Link link(Words words, String path, String href, String key) {
    return new Link(href, words.text(key), path.equals(href), false);
  }
}
