package curewindow.words;

import com.ibm.icu.lang.UScript;
import com.ibm.icu.text.Collator;
import com.ibm.icu.text.TimeZoneNames;
import com.ibm.icu.util.ULocale;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Names of places as a language has them, from CLDR: of the city that a time zone is named after,
 * and of countries; of other cities from the list of the language. Safe for use by several threads.
 */
final class PlaceNames {

  /** The codes of countries by their English names. */
  private static final Map<String, String> COUNTRIES =
      Arrays.stream(ULocale.getISOCountries())
          .collect(
              Collectors.toUnmodifiableMap(
                  code -> ULocale.getDisplayCountry("-" + code, ULocale.ENGLISH),
                  code -> code,
                  (first, next) -> first));

  /** Countries that our places name otherwise than CLDR does. */
  private static final Map<String, String> CALLED =
      Map.of("Turkey", "TR", "Democratic Republic of the Congo", "CD");

  /** Frozen, so that several threads can use it. */
  private static final Collator LETTERS = letters();

  private final ULocale locale;
  private final Swaps cities;

  /**
   * Takes a language.
   *
   * @param cities names of cities that CLDR does not have, by their English ones
   */
  PlaceNames(ULocale locale, Swaps cities) {
    this.locale = locale;
    this.cities = cities;
  }

  /**
   * A place as the language names it.
   *
   * @param name its English name, a city with its country or state behind a comma
   * @param zone its time zone
   * @return the name in the language, with its country; in another script as it is where neither
   *     CLDR nor the list has the city
   */
  String of(String name, ZoneId zone) {
    String[] parts = name.split(",", 2);
    String city = parts[0].strip();
    String listed = cities.in(city);
    String own = listed.equals(city) && isCity(name, zone) ? exemplar(locale, zone) : listed;
    boolean same = own == null || own.equals(city);
    if (same && (!isLatin() || isEnglish())) {
      return name;
    }
    if (parts.length == 1) {
      return same ? name : own;
    }
    Optional<String> country = country(parts[1].strip());
    if (country.isEmpty()) {
      return same ? name : isLatin() ? own + comma() + parts[1].strip() : own;
    }
    return (same ? city : own) + comma() + country.get();
  }

  /** Whether a place, by its English name, is the city that its time zone is named after. */
  static boolean isCity(String name, ZoneId zone) {
    return isCalled(name.split(",", 2)[0].strip(), zone, ULocale.ENGLISH);
  }

  /** Whether a language gives the city of a time zone a name. */
  static boolean isCalled(String name, ZoneId zone, ULocale locale) {
    String city = exemplar(locale, zone);
    return city != null && same(city, name);
  }

  private static String exemplar(ULocale locale, ZoneId zone) {
    return TimeZoneNames.getInstance(locale).getExemplarLocationName(zone.getId());
  }

  /** Whether two names differ at most in accents and capitals. */
  private static boolean same(String one, String other) {
    return LETTERS.compare(one, other) == 0;
  }

  private static Collator letters() {
    Collator letters = Collator.getInstance(ULocale.ROOT);
    letters.setStrength(Collator.PRIMARY);
    return letters.freeze();
  }

  private Optional<String> country(String english) {
    return Optional.ofNullable(CALLED.getOrDefault(english, COUNTRIES.get(english)))
        .map(code -> ULocale.getDisplayCountry("-" + code, locale));
  }

  private boolean isEnglish() {
    return locale.getLanguage().equals("en");
  }

  /** A state has no name here, and Latin letters would stand beside others. */
  private boolean isLatin() {
    int[] scripts = UScript.getCode(locale);
    return scripts != null && scripts[0] == UScript.LATIN;
  }

  private String comma() {
    return locale.isRightToLeft() ? "\u060C " : ", ";
  }
}
