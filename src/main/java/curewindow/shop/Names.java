package curewindow.shop;

import curewindow.shop.Node.Leaf;
import java.util.Collection;
import java.util.Optional;

/**
 * The names that may stand in a place of a file.
 *
 * @param what what they name, in words, such as {@code film}
 * @param known the right names
 * @param broken names that are defined, but with problems
 */
record Names(String what, Collection<String> known, Broken broken) {

  static Names of(String what, Collection<String> known) {
    return new Names(what, known, Broken.none());
  }

  /** The name, or empty after telling that it is unknown. */
  Optional<String> check(Leaf leaf, Source source) {
    String name = leaf.text().strip();
    if (known.contains(name)) {
      return Optional.of(name);
    }
    boolean defined = broken.has(name);
    source.error(
        "unknown-" + what.replace(' ', '-'),
        leaf.where(),
        (defined ? "no usable " : "no ") + what + " is called " + Source.shown(name),
        defined
            ? "mend " + broken.file() + " first, which has problems"
            : source.suggestion(name, known));
    return Optional.empty();
  }
}
