package curewindow.shop;

import curewindow.shop.Node.Leaf;
import java.util.Collection;
import java.util.Optional;

/**
 * The names that may stand in a place of a file.
 *
 * @param what what they name, in words, such as {@code film}
 * @param known the right names
 * @param brokenFile the file that defines them, where it has problems, so that a name may be
 *     missing only for that reason
 */
record Names(String what, Collection<String> known, Optional<String> brokenFile) {

  static Names of(String what, Collection<String> known) {
    return new Names(what, known, Optional.empty());
  }

  /** The name, or empty after telling that it is unknown. */
  Optional<String> check(Leaf leaf, Source source) {
    String name = leaf.text().strip();
    if (known.contains(name)) {
      return Optional.of(name);
    }
    String code = "unknown-" + what.replace(' ', '-');
    if (brokenFile.isPresent()) {
      source.error(
          code,
          leaf.where(),
          "no usable " + what + " is called " + Source.shown(name),
          "mend " + brokenFile.get() + " first, which has problems");
    } else {
      source.error(
          code,
          leaf.where(),
          "no " + what + " is called " + Source.shown(name),
          Source.suggestion(name, known));
    }
    return Optional.empty();
  }
}
