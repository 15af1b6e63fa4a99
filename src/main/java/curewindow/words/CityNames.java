package curewindow.words;

import com.ibm.icu.util.ULocale;
import curewindow.climate.Place;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Finds places by their names in other languages, as far as CLDR has them: of the cities that time
 * zones are named after. It reads all languages, which takes a second.
 */
public final class CityNames {

  private CityNames() {}

  /**
   * The places that some language calls so.
   *
   * @param name a whole name in any language, such as {@code Wien}; accents and capitals do not
   *     count
   * @param places the places to choose from
   * @return those that have the name, in the order given
   */
  public static List<Place> called(String name, Collection<Place> places) {
    List<Place> cities =
        places.stream().filter(p -> PlaceNames.isCity(p.name(), p.zone())).toList();
    Set<String> languages =
        Arrays.stream(ULocale.getAvailableLocales())
            .map(ULocale::getLanguage)
            .collect(Collectors.toCollection(TreeSet::new));
    Set<Place> called =
        languages.stream()
            .map(ULocale::new)
            .flatMap(l -> cities.stream().filter(p -> PlaceNames.isCalled(name, p.zone(), l)))
            .collect(Collectors.toSet());
    return places.stream().filter(called::contains).toList();
  }
}
