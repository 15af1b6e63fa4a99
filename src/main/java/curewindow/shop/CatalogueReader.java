package curewindow.shop;

import curewindow.problem.Problems;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiFunction;

/** Reads the four files of the catalogue. Entries with problems are left out. */
final class CatalogueReader {

  static final String SERVICES = "content/catalogue/services.yaml";
  static final String FILMS = "content/catalogue/films.yaml";
  static final String SPOTS = "content/catalogue/spots.yaml";
  static final String HOLDS = "content/catalogue/holds.yaml";
  static final List<String> FILM_FINISHES = List.of("gloss", "satin", "matte");
  static final List<String> FACES = List.of("up", "side");

  private static final Keys SERVICE =
      Keys.needs("inside", "film", "spots", "guide")
          .allows("reference-permeance", "yearly-check", "top-up-months", "replace-years");
  private static final Keys FILM =
      Keys.needs("service", "name", "material")
          .allows("thickness", "permeance", "vlt", "reflectance", "metallised", "finish");
  private static final Keys SPOT = Keys.needs("faces").allows("facts", "not-on");

  private final ShopFiles files;
  private final Problems problems;
  private final Map<String, Broken> broken = new LinkedHashMap<>();
  private final List<BrokenRule> brokenRules = new ArrayList<>();

  CatalogueReader(ShopFiles files, Problems problems) {
    this.files = files;
    this.problems = problems;
    for (String file : List.of(SPOTS, SERVICES, FILMS, HOLDS)) {
      broken.put(file, new Broken(file));
    }
  }

  /** The entries that have problems by file, once {@link #read} is done. */
  Map<String, Broken> broken() {
    return broken;
  }

  /** The rules that cannot be used, once {@link #read} is done. */
  List<BrokenRule> brokenRules() {
    return brokenRules;
  }

  Catalogue read() {
    Map<String, Spot> spots = entries(SPOTS, "spots", SPOT, CatalogueReader::spot);
    Names spotNames = names("spot", spots.keySet(), SPOTS);
    Map<String, Service> services =
        entries(SERVICES, "services", SERVICE, (id, f) -> service(id, f, spotNames));
    Map<String, Film> films = entries(FILMS, "films", FILM, (id, f) -> film(id, f, services));
    Source source = new Source(HOLDS, problems);
    Names serviceNames = names("service", services.keySet(), SERVICES);
    HoldsReader holds = new HoldsReader(source, serviceNames, spotNames, broken.get(HOLDS));
    holds.read(open(HOLDS, source, Keys.needs("holds", "rules").allows("visits")));
    brokenRules.addAll(holds.brokenRules());
    return new Catalogue(
        services, films, spots, holds.holds(), holds.rules(), holds.visits(), unusable());
  }

  private Unusable unusable() {
    Map<String, Set<String>> ids = new TreeMap<>();
    Set<String> kinds = new TreeSet<>();
    Map.of("service", SERVICES, "film", FILMS, "spot", SPOTS, "hold", HOLDS)
        .forEach(
            (kind, file) -> {
              ids.put(kind, Set.copyOf(broken.get(file).names()));
              if (broken.get(file).isWhole()) {
                kinds.add(kind);
              }
            });
    return new Unusable(ids, kinds);
  }

  private Names names(String what, Set<String> known, String file) {
    return new Names(what, known, broken.get(file));
  }

  private Optional<Fields> open(String file, Source source, Keys keys) {
    Optional<Node> node = files.text(file, problems).flatMap(t -> YamlTree.read(t, source));
    Optional<Fields> fields = node.flatMap(n -> Fields.of(n, keys, source));
    if (fields.isEmpty()) {
      broken.get(file).addAll(source.firstAfter(0));
    }
    return fields;
  }

  private <T> Map<String, T> entries(
      String file, String key, Keys keys, BiFunction<String, Fields, Optional<T>> entry) {
    Source source = new Source(file, problems);
    Map<String, T> found = new LinkedHashMap<>();
    open(file, source, Keys.needs(key))
        .flatMap(f -> f.node(key))
        .flatMap(n -> Fields.anyKeys(n, source))
        .ifPresentOrElse(
            all -> each(all, keys, entry, found, broken.get(file)),
            () -> broken.get(file).addAll(source.firstAfter(0)));
    return found;
  }

  /** Reads each entry of a file's map whose id is a good name, and keeps the good ones. */
  static <T> void each(
      Fields all,
      Keys keys,
      BiFunction<String, Fields, Optional<T>> entry,
      Map<String, T> into,
      Broken broken) {
    for (String id : all.keys()) {
      Source source = all.source();
      int before = source.errors();
      if (!Values.isName(id)) {
        Values.badName(all.where(id), id, source);
      }
      Optional<T> value =
          all.node(id).flatMap(n -> Fields.of(n, keys, source)).flatMap(f -> entry.apply(id, f));
      if (value.isPresent() && source.errors() == before) {
        into.put(id, value.get());
      } else {
        broken.add(id, source.firstAfter(before));
      }
    }
  }

  private static Optional<Spot> spot(String id, Fields f) {
    Optional<String> faces = f.name("faces", Names.of("direction", FACES));
    Set<SpotFact> facts = EnumSet.noneOf(SpotFact.class);
    f.names("facts", Names.of("spot fact", SpotFact.ids()))
        .forEach(name -> SpotFact.of(name).ifPresent(facts::add));
    Set<BodyType> notOn = EnumSet.noneOf(BodyType.class);
    f.names("not-on", Names.of("body type", BodyType.ids()))
        .forEach(name -> BodyType.of(name).ifPresent(notOn::add));
    return faces.map(way -> new Spot(id, way.equals("up"), facts, notOn));
  }

  private static Optional<Service> service(String id, Fields f, Names spotNames) {
    Optional<Boolean> inside = f.flag("inside");
    Optional<Boolean> film = f.flag("film");
    Optional<Double> permeance = f.number("reference-permeance", 0.01, 100_000);
    List<String> spots = f.names("spots", spotNames.defined());
    Optional<String> guide = f.text("guide", 40);
    Upkeep upkeep = upkeep(f, film);
    if (film.orElse(false) && !f.has("reference-permeance")) {
      f.source()
          .missing(
              f.where(),
              "reference-permeance",
              "add the water permeance of the film its hours are meant for");
    }
    if (inside.isEmpty() || film.isEmpty() || spots.isEmpty() || guide.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Service(
            id, inside.get(), film.get(), permeance.orElse(1.0), spots, guide.get(), upkeep));
  }

  private static Upkeep upkeep(Fields f, Optional<Boolean> film) {
    Optional<Boolean> check = f.flag("yearly-check");
    Optional<Integer> topUp = f.whole("top-up-months", 1, 120);
    Optional<Integer> replace = f.whole("replace-years", 1, 50);
    film.ifPresent(is -> onlyFor(f, is ? "top-up-months" : "replace-years", is));
    return new Upkeep(
        check.orElse(false),
        topUp.map(OptionalInt::of).orElse(OptionalInt.empty()),
        replace.map(OptionalInt::of).orElse(OptionalInt.empty()));
  }

  /** Coatings are topped up, films are replaced. */
  private static void onlyFor(Fields f, String wrong, boolean film) {
    if (f.has(wrong)) {
      f.source()
          .error(
              "key-of-another-kind",
              f.where(wrong),
              wrong + " is for " + (film ? "coatings" : "films") + " only",
              "delete it, or check film");
    }
  }

  private Optional<Film> film(String id, Fields f, Map<String, Service> services) {
    Optional<String> service = f.name("service", names("service", services.keySet(), SERVICES));
    Optional<String> name = f.text("name", 60);
    Optional<String> material = f.text("material", 40);
    Optional<Double> thickness = f.number("thickness", 1, 1000);
    Optional<Double> permeance = f.number("permeance", 0.01, 100_000);
    Optional<Double> vlt = f.number("vlt", 0, 100);
    Optional<Double> reflectance = f.number("reflectance", 0, 99);
    Optional<Boolean> metallised = f.flag("metallised");
    Optional<String> finish = f.name("finish", Names.of("finish", FILM_FINISHES));
    if (service.isPresent() && services.get(service.get()).film() && !f.has("permeance")) {
      f.source()
          .missing(
              f.where(), "permeance", "add the film's water permeance, which its maker can name");
    }
    if (service.isEmpty() || name.isEmpty() || material.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Film(
            id,
            service.get(),
            name.get(),
            material.get(),
            thickness.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
            permeance.orElse(1.0),
            vlt.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
            reflectance.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
            metallised.orElse(false),
            finish));
  }
}
