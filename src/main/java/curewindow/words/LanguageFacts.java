package curewindow.words;

import com.ibm.icu.util.ULocale;
import com.ibm.icu.util.ULocale.AvailableType;
import curewindow.problem.Nearest;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.PlacedText;
import curewindow.shop.Units;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What is true of a language as a whole, from its {@code language.yaml}; what the file leaves out
 * is taken from CLDR.
 *
 * @param language a BCP 47 tag, the name of the language's folder
 * @param locale whose dates and numbers are used, such as {@code en-US} for {@code en}
 * @param rightToLeft whether it is written from right to left
 * @param units the units its readers think in
 * @param cities names of cities that CLDR does not have, by their English ones
 */
record LanguageFacts(
    String language, ULocale locale, boolean rightToLeft, Units units, Swaps cities) {

  /** The text that says how a day stands in running text. */
  static final String DAY = "language.day";

  /** The text that says how a day and an hour stand in running text. */
  static final String DAY_AND_TIME = "language.day-time";

  /** The text that says an hour of the day. */
  static final String TIME = "language.time";

  /** The list of cities; only languages that call some otherwise than English have one. */
  static final String CITIES = "language.cities";

  /**
   * What those texts may use: hour is 0 to 23 and clock 0000 to 2359, for a language that says it
   * in several ways.
   */
  static final Map<String, Set<String>> VALUES =
      Map.of(
          DAY, Set.of("weekday", "date"),
          DAY_AND_TIME, Set.of("weekday", "date", "time", "hour", "clock"),
          TIME, Set.of("time", "hour", "clock"));

  private static final Set<String> FAHRENHEIT_REGIONS =
      Set.of("US", "LR", "BS", "BZ", "KY", "PW", "FM", "MH", "PR", "GU", "VI", "AS", "MP");
  private static final List<String> DIRECTIONS = List.of("ltr", "rtl");

  /** The tags of all locales, made only where one is not among them as it stands. */
  private static final class Tags {
    static final Set<String> ALL =
        AVAILABLE.stream().map(ULocale::toLanguageTag).collect(Collectors.toUnmodifiableSet());
  }

  private static final Set<ULocale> AVAILABLE =
      Set.copyOf(ULocale.getAvailableLocalesByType(AvailableType.WITH_LEGACY_ALIASES));

  /**
   * Reads what is true of a language.
   *
   * @param shops the locale of a shop that has one of this language
   */
  static LanguageFacts read(
      String language, Optional<String> shops, Map<String, PlacedText> texts, Problems problems) {
    ULocale own = locale(language, texts, problems);
    ULocale locale = shops.map(ULocale::forLanguageTag).orElse(own);
    String direction =
        choice(
            texts.get("language.direction"),
            locale.isRightToLeft() ? "rtl" : "ltr",
            DIRECTIONS,
            problems);
    Units usual = units(locale);
    String units = choice(texts.get("language.units"), usual.id(), Units.ids(), problems);
    return new LanguageFacts(
        language,
        locale,
        direction.equals("rtl"),
        Units.of(units).orElse(usual),
        Dialect.swaps(CITIES, texts.get(CITIES), problems));
  }

  /** The units that are usual where a locale is. */
  static Units units(ULocale locale) {
    String region = ULocale.addLikelySubtags(locale).getCountry();
    return FAHRENHEIT_REGIONS.contains(region) ? Units.US : Units.METRIC;
  }

  /** Whether a folder's name is the tag of a language that CLDR knows. */
  static boolean known(String language) {
    ULocale locale = ULocale.forLanguageTag(language);
    return AVAILABLE.contains(locale) && locale.toLanguageTag().equals(language)
        || Tags.ALL.contains(language);
  }

  private static ULocale locale(String language, Map<String, PlacedText> texts, Problems problems) {
    PlacedText given = texts.get("language.locale");
    String tag = given == null ? language : given.text();
    if (!known(tag)) {
      problems.add(
          Problem.error(
              "unknown-locale",
              given.where(),
              "no dates and numbers are known for '" + tag + "'",
              hint(tag, Tags.ALL, "give a language and a region, such as en-US")));
      tag = language;
    }
    return ULocale.forLanguageTag(tag);
  }

  private static String choice(
      PlacedText given, String usual, List<String> allowed, Problems problems) {
    if (given == null || allowed.contains(given.text())) {
      return given == null ? usual : given.text();
    }
    problems.add(
        Problem.error(
            "unknown-choice",
            given.where(),
            "'" + given.text() + "' is none of " + String.join(", ", allowed),
            hint(given.text(), allowed, "choose one of them")));
    return usual;
  }

  private static String hint(String typed, Collection<String> known, String otherwise) {
    return Nearest.to(typed, known).map(n -> "did you mean " + n + "?").orElse(otherwise);
  }
}
