package curewindow.guide;

import curewindow.cure.HoldKind;
import curewindow.problem.Problems;
import curewindow.shop.Catalogue;
import curewindow.shop.Film;
import curewindow.shop.Hold;
import curewindow.shop.Service;
import curewindow.shop.Spot;
import curewindow.shop.SpotFact;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A small catalogue and jobs of our own invention for the tests of guides. */
final class Samples {

  private Samples() {}

  static Catalogue catalogue() {
    List<Service> services =
        List.of(
            new Service("tint", true, true, 10, List.of("front-door-glass"), "tint"),
            new Service("wrap", false, true, 10, List.of("hood"), "wrap"),
            new Service("paint-film", false, true, 10, List.of("hood"), "paint-film"),
            new Service("coating", false, false, 1, List.of("hood"), "coating"));
    List<Film> films =
        List.of(
            film("cove-35", "tint", "PET"),
            film("dune-20", "wrap", "PVC"),
            film("tide-1", "coating", "SILICA"));
    List<Spot> spots =
        List.of(
            new Spot("front-door-glass", false, Set.of(SpotFact.GLASS, SpotFact.ROLLS)),
            new Spot("back-glass", false, Set.of(SpotFact.GLASS, SpotFact.DEFROSTER)),
            new Spot("hood", true, Set.of()));
    List<Hold> holds =
        Stream.of("windows-up", "hand-wash", "haze", "defroster")
            .map(id -> new Hold(id, HoldKind.values()[0], 1))
            .toList();
    return new Catalogue(
        byId(services, Service::id),
        byId(films, Film::id),
        byId(spots, Spot::id),
        byId(holds, Hold::id),
        List.of(),
        List.of());
  }

  private static Film film(String id, String service, String material) {
    return new Film(
        id,
        service,
        id,
        material,
        OptionalDouble.empty(),
        10,
        OptionalDouble.empty(),
        false,
        Optional.empty());
  }

  private static <T> Map<String, T> byId(List<T> all, Function<T, String> id) {
    return all.stream()
        .collect(Collectors.toMap(id, v -> v, (a, b) -> a, () -> new LinkedHashMap<>()));
  }

  /**
   * The facts of a job, a line each: {@code name = text} for a value, {@code kind name} for what is
   * true of it.
   */
  static GuideFacts facts(String lines) {
    Set<String> terms = new TreeSet<>();
    Map<String, String> values = new LinkedHashMap<>();
    for (String line : lines.lines().filter(l -> !l.isBlank()).toList()) {
      int equals = line.indexOf(" = ");
      if (equals > 0) {
        values.put(line.substring(0, equals).strip(), line.substring(equals + 3).strip());
      } else {
        terms.add(line.strip());
      }
    }
    return new GuideFacts() {
      @Override
      public boolean has(String kind, String name) {
        return terms.contains(kind + " " + name);
      }

      @Override
      public Optional<String> value(String name) {
        return Optional.ofNullable(values.get(name));
      }
    };
  }

  /** Reads a guide from its text. */
  static Optional<Guide> read(String text, Problems problems) {
    GuideSource source = new GuideSource("content/guides/en/tint.md", text, problems);
    return new GuideReader(new KnownNames(catalogue())).read("tint", "en", source);
  }

  /** Reads a guide that must be right, without its title line. */
  static Guide guide(String body) {
    Problems problems = new Problems();
    return read("# Title\n\n" + body, problems)
        .orElseThrow(() -> new AssertionError(problems.all().toString()));
  }
}
