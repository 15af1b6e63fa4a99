package curewindow.guide;

import curewindow.cure.PaintTone;
import curewindow.cure.Parking;
import curewindow.shop.BodyType;
import curewindow.shop.Catalogue;
import curewindow.shop.Film;
import curewindow.shop.FindingKind;
import curewindow.shop.SpotFact;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The names that a guide may use in its clauses and values. */
final class KnownNames {

  private static final List<String> FIXED_VALUES =
      List.of(
          "shop.name",
          "shop.phone",
          "shop.email",
          "shop.address",
          "visit.day",
          "job.first-name",
          "job.car",
          "job.place",
          "job.pickup",
          "job.parking");

  /** How the values of holds and services begin. */
  private static final Set<String> PER_NAME = Set.of("hold", "film", "spots", "vlt", "warranty");

  private final Map<String, Set<String>> namesByKind = new LinkedHashMap<>();
  private final Set<String> values = new LinkedHashSet<>();

  /** Kinds of which an error in the catalogue hides the names, so that any may be right. */
  private final Set<String> open = new LinkedHashSet<>();

  KnownNames(Catalogue catalogue) {
    Set<String> services = defined("service", catalogue.services().keySet(), catalogue);
    Set<String> holds = defined("hold", catalogue.holds().keySet(), catalogue);
    put("service", services);
    put("spot", defined("spot", catalogue.spots().keySet(), catalogue));
    put("hold", holds);
    put("found", FindingKind.ids());
    put("finish", List.of("gloss", "satin", "matte"));
    put("film-finish", List.of("gloss", "satin", "matte"));
    put("material", materials(catalogue));
    put("parking", Parking.ids());
    put("body", BodyType.ids());
    put("paint", PaintTone.ids());
    put("fact", SpotFact.ids());
    put("over", List.of("film"));
    put("visit", List.of("planned"));
    open.addAll(catalogue.unusable().kinds());
    if (open.contains("film") || !catalogue.unusable().of("film").isEmpty()) {
      open.add("material");
    }
    for (String hold : holds) {
      values.addAll(List.of(dots("hold", hold, "until"), dots("hold", hold, "likely")));
      values.addAll(List.of(dots("hold", hold, "day"), dots("hold", hold, "full")));
      values.addAll(List.of(dots("hold", hold, "done"), dots("hold", hold, "gently")));
    }
    values.addAll(FIXED_VALUES);
    for (String service : services) {
      values.addAll(List.of(dots("film", service), dots("spots", service)));
      values.addAll(List.of(dots("vlt", service), dots("warranty", service)));
    }
  }

  private void put(String kind, Collection<String> names) {
    namesByKind.put(kind, Collections.unmodifiableSet(new LinkedHashSet<>(names)));
  }

  /** The good names of a kind and those of entries with errors, which are told elsewhere. */
  private static Set<String> defined(String kind, Set<String> good, Catalogue catalogue) {
    Set<String> all = new LinkedHashSet<>(good);
    all.addAll(new TreeSet<>(catalogue.unusable().of(kind)));
    return all;
  }

  private static String dots(String... parts) {
    return String.join(".", parts);
  }

  private static Set<String> materials(Catalogue catalogue) {
    return catalogue.films().values().stream()
        .map(Film::material)
        .map(m -> m.toLowerCase(Locale.ROOT).replace(' ', '-'))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** The kinds of terms. */
  List<String> kinds() {
    return new ArrayList<>(namesByKind.keySet());
  }

  /** The names of a kind; empty where the kind is unknown. */
  Set<String> namesOf(String kind) {
    return namesByKind.getOrDefault(kind, Set.of());
  }

  /** Whether a name of a kind is right. */
  boolean has(String kind, String name) {
    return open.contains(kind) || namesOf(kind).contains(name);
  }

  /** Whether a name of a value is right. */
  boolean hasValue(String name) {
    boolean mayBe = open.contains(name.startsWith("hold.") ? "hold" : "service");
    return values.contains(name)
        || mayBe && PER_NAME.contains(name.substring(0, Math.max(0, name.indexOf('.'))));
  }

  /** All names of values. */
  Set<String> values() {
    return Collections.unmodifiableSet(values);
  }
}
