package curewindow.intake;

import curewindow.cure.PaintTone;
import curewindow.cure.Parking;
import curewindow.shop.BodyType;
import curewindow.shop.Catalogue;
import curewindow.shop.ImportMap;
import curewindow.shop.JobColumns;
import curewindow.shop.SpotFact;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Turns names of another program into ours, as a map says. */
final class OurNames {

  /** What stands between names where the map does not say. */
  private static final Pattern USUAL = Pattern.compile("[,;+&|/\\r\\n]+");

  private final ImportMap map;
  private final Map<String, Map<String, String>> ours = new LinkedHashMap<>();

  /** Most rows of a table have the same few names. */
  private final Map<String, String> singles = new HashMap<>();

  private final Map<String, List<String>> lists = new HashMap<>();

  OurNames(ImportMap map, Catalogue catalogue) {
    this.map = map;
    for (String column : JobColumns.all()) {
      Map<String, String> byKey = new LinkedHashMap<>();
      of(column, catalogue).forEach(id -> byKey.put(ImportMap.key(id), id));
      ours.put(column, byKey);
    }
  }

  /** The names that a column may have, as far as they are few; none for places and languages. */
  static Collection<String> of(String column, Catalogue catalogue) {
    return switch (column) {
      case "body" -> BodyType.ids();
      case "paint" -> PaintTone.ids();
      case "paint-finish" -> List.of("gloss", "matte");
      case "lacks" -> SpotFact.ids();
      case "parking-day", "parking-night" -> Parking.ids();
      case "service" -> catalogue.services().keySet();
      case "film" -> catalogue.films().keySet();
      case "spots" -> catalogue.spots().keySet();
      default -> List.of();
    };
  }

  /** Our name for one of theirs; theirs where none is known. */
  String one(String column, String theirs) {
    return singles.computeIfAbsent(column + "\n" + theirs, k -> findOne(column, theirs));
  }

  private String findOne(String column, String theirs) {
    List<String> mapped = mapped(column, theirs);
    return mapped.isEmpty()
        ? ours.get(column).getOrDefault(ImportMap.key(theirs), theirs.strip())
        : mapped.get(0);
  }

  /** Our names for what stands in a cell, each once. */
  List<String> several(String column, String cell) {
    return lists.computeIfAbsent(column + "\n" + cell, k -> find(column, cell));
  }

  private List<String> find(String column, String cell) {
    Set<String> found = new LinkedHashSet<>(mapped(column, cell));
    if (found.isEmpty()) {
      for (String part : parts(cell)) {
        found.addAll(part(column, part.strip()));
      }
    }
    return List.copyOf(found);
  }

  /** The names in a cell where no map says what stands between them. */
  static List<String> apart(String cell) {
    return USUAL.splitAsStream(cell).map(String::strip).filter(p -> !p.isEmpty()).toList();
  }

  /** Their names in a cell that a map tells, or has to tell as they are none of ours. */
  List<String> theirs(String column, String cell) {
    if (!JobColumns.isList(column) || !mapped(column, cell).isEmpty()) {
      return isTheirs(column, cell) ? List.of(cell) : List.of();
    }
    return parts(cell).stream().map(String::strip).filter(p -> isTheirs(column, p)).toList();
  }

  private boolean isTheirs(String column, String name) {
    Map<String, String> known = ours.get(column);
    boolean isOurs =
        JobColumns.isList(column)
            ? known.keySet().containsAll(part(column, name).stream().map(ImportMap::key).toList())
            : known.containsKey(ImportMap.key(name));
    return !mapped(column, name).isEmpty() || !isOurs;
  }

  private List<String> parts(String cell) {
    Pattern between = map.between().map(b -> Pattern.compile(Pattern.quote(b))).orElse(USUAL);
    return between.splitAsStream(cell).filter(part -> !part.isBlank()).toList();
  }

  private List<String> part(String column, String part) {
    List<String> mapped = mapped(column, part);
    if (!mapped.isEmpty()) {
      return mapped;
    }
    Map<String, String> known = ours.get(column);
    List<String> words = new ArrayList<>();
    for (String word : part.split("\\s+")) {
      words.add(known.getOrDefault(ImportMap.key(word), ""));
    }
    return words.contains("") ? List.of(findOne(column, part)) : words;
  }

  /** Whether a map says what a name of theirs is called here. */
  boolean isTold(String column, String theirs) {
    return !mapped(column, theirs).isEmpty();
  }

  private List<String> mapped(String column, String theirs) {
    return map.names()
        .getOrDefault(column, Map.of())
        .getOrDefault(ImportMap.key(theirs), List.of());
  }
}
