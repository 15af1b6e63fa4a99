package curewindow.shop;

import curewindow.problem.Nearest;
import curewindow.problem.Problem;
import curewindow.problem.Where;
import curewindow.shop.Node.Leaf;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The names that may stand in a place of a file.
 *
 * @param what what they name, in words, such as {@code film}
 * @param known the right names
 * @param broken names that are defined, but with problems
 */
record Names(String what, Collection<String> known, Broken broken) {

  /** The fact of a problem with a name that is not known. */
  static final String NAME = "name";

  /** What places are called in messages. */
  static final String PLACE = "place";

  /** What time zones are called in messages. */
  static final String ZONE = "time zone";

  /** What jobs are called in messages. */
  static final String JOB = "job";

  private static final int SHOWN = 3;
  private static final int LONGEST = 60;

  /** Zones that are named for a city or an island; the others are leftovers. */
  private static final Pattern REGION =
      Pattern.compile("(Africa|America|Antarctica|Asia|Atlantic|Australia|Europe|Indian|Pacific)/");

  static Names of(String what, Collection<String> known) {
    return new Names(what, known, Broken.none());
  }

  /** The same, where it matters only that a name is defined, not whether it can be used. */
  Names defined() {
    Set<String> all = new LinkedHashSet<>(known);
    all.addAll(broken.names());
    return new Names(what, all, broken);
  }

  /** The same, where it is told of each use that it is of a name with problems. */
  Names told() {
    Broken untold = new Broken(broken.file());
    broken.names().forEach(untold::add);
    return new Names(what, known, untold);
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
        Problem.error(
                "unknown-" + what.replace(' ', '-'),
                leaf.where(),
                (defined ? "no usable " : "no ") + what + " is called " + Source.shown(name),
                defined
                    ? "mend " + broken.file() + " first, which has problems"
                    : fix(name, source))
            .with(NAME, Source.shown(name)));
    return Optional.empty();
  }

  private String fix(String name, Source source) {
    if (name.length() > LONGEST) {
      return source.suggestion(name, known);
    }
    return switch (what) {
      case PLACE -> placeFix(name);
      case ZONE -> zoneFix(name);
      case JOB -> jobFix(source.suggestion(name, known));
      default -> source.suggestion(name, known);
    };
  }

  private static String jobFix(String suggestion) {
    return suggestion
        + (suggestion.endsWith("?") ? " " : "; ")
        + "delete the row if its job was taken away";
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
    return meant
        + "the command \"places WORD\" finds places by name, \"places near LAT LON\" the nearest"
        + " ones and how to add your own";
  }

  /** A zone is known by its city; one that merely looks alike is another zone. */
  private String zoneFix(String name) {
    Map<String, String> byCity = new TreeMap<>();
    known.stream()
        .filter(id -> REGION.matcher(id).lookingAt())
        .sorted()
        .forEach(id -> byCity.putIfAbsent(city(id), id));
    return Nearest.closely(city(name), byCity.keySet())
        .map(city -> "did you mean " + byCity.get(city) + "?")
        .orElse(
            "use the zone of a large city with the same time, such as Europe/London or"
                + " America/Los_Angeles");
  }

  private static String city(String zone) {
    return zone.substring(zone.lastIndexOf('/') + 1);
  }
}
