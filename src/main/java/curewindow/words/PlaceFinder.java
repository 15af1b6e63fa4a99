package curewindow.words;

import curewindow.climate.Place;
import curewindow.problem.Nearest;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds places by what people type. */
public final class PlaceFinder {

  private PlaceFinder() {}

  /**
   * The places whose names or ids have all that was typed; accents and capitals do not count.
   *
   * @param typed words, or parts of words; none for all places
   * @param places the places to choose from
   * @return those that have them, in the order given
   */
  public static List<Place> named(Collection<String> typed, Collection<Place> places) {
    List<String> parts =
        typed.stream().flatMap(w -> Stream.of(w.strip().split("\\s+"))).map(Nearest::fold).toList();
    return places.stream()
        .filter(p -> parts.stream().allMatch(Nearest.fold(p.name() + " " + p.id())::contains))
        .toList();
  }

  /**
   * The places of a name in English or, where no name has what was typed, in any language.
   *
   * @param typed words, or parts of words
   * @param places the places to choose from
   * @return those that are called so, in the order given
   */
  public static List<Place> called(String typed, Collection<Place> places) {
    List<Place> found = named(List.of(typed), places);
    return found.isEmpty() ? CityNames.called(typed, places) : found;
  }

  /**
   * The place that somebody most likely meant who typed what no place is called.
   *
   * @param typed a name, perhaps misspelt or in another language, such as {@code M\u00FCnchen}
   * @param places the places to choose from
   * @return the place, or empty where no name or id is near enough
   */
  public static Optional<Place> meant(String typed, Collection<Place> places) {
    Map<String, Place> names = new LinkedHashMap<>();
    for (Place place : places) {
      names.put(place.name().split(",")[0], place);
      names.put(place.id(), place);
    }
    return Nearest.to(typed, names.keySet())
        .or(() -> Nearest.remotely(typed, names.keySet()))
        .map(names::get);
  }
}
