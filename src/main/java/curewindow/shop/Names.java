package curewindow.shop;

import curewindow.problem.Nearest;
import curewindow.problem.Where;
import curewindow.shop.Node.Leaf;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The names that may stand in a place of a file.
 *
 * @param what what they name, in words, such as {@code film}
 * @param known the right names
 * @param broken names that are defined, but with problems
 */
record Names(String what, Collection<String> known, Broken broken) {

  /** What places are called in messages. */
  static final String PLACE = "place";

  private static final int SHOWN = 3;
  private static final int LONGEST = 60;

  static Names of(String what, Collection<String> known) {
    return new Names(what, known, Broken.none());
  }

  /** The same, where it matters only that a name is defined, not whether it can be used. */
  Names defined() {
    Set<String> all = new LinkedHashSet<>(known);
    all.addAll(broken.names());
    return new Names(what, all, broken);
  }

  /** The name, or empty after telling that it is unknown, unless it has an error that is told. */
  Optional<String> check(Leaf leaf, Source source) {
    String name = leaf.text().strip();
    if (known.contains(name)) {
      return Optional.of(name);
    }
    Optional<Where> cause = broken.cause(name);
    if (cause.isPresent()) {
      source.follows(cause.get());
      return Optional.empty();
    }
    boolean defined = broken.has(name);
    source.error(
        "unknown-" + what.replace(' ', '-'),
        leaf.where(),
        (defined ? "no usable " : "no ") + what + " is called " + Source.shown(name),
        defined ? "mend " + broken.file() + " first, which has problems" : fix(name, source));
    return Optional.empty();
  }

  private String fix(String name, Source source) {
    return what.equals(PLACE) && name.length() <= LONGEST
        ? placeFix(name)
        : source.suggestion(name, known);
  }

  /** Places are too many to list, and people know them by other names than their ids. */
  private String placeFix(String name) {
    String part = Nearest.fold(name);
    List<String> near =
        Stream.concat(
                known.stream().filter(id -> part.length() > 2 && id.contains(part)).sorted(),
                Nearest.some(name, known, SHOWN).stream())
            .distinct()
            .limit(SHOWN)
            .toList();
    String meant = near.isEmpty() ? "" : "did you mean " + String.join(" or ", near) + "? ";
    return meant + "the command \"places WORD\" finds places by name";
  }
}
