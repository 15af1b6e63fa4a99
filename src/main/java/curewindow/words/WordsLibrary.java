package curewindow.words;

import com.ibm.icu.util.ULocale;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.Catalogue;
import curewindow.shop.ShopFiles;
import curewindow.shop.Units;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * The words of all languages, read from {@code content/words/<language>/*.yaml}. English stands
 * behind every other language: a text that a language lacks is shown in English. Safe for use by
 * several threads.
 */
public final class WordsLibrary {

  /** The language that stands behind all others. */
  public static final String FALLBACK = "en";

  static final String FOLDER = "content/words";

  private final ShopFiles files;
  private final Optional<Units> units;
  private final Map<String, LanguageReading> languages;
  private final Map<String, Words> words = new ConcurrentHashMap<>();

  private WordsLibrary(
      ShopFiles files, Optional<Units> units, Map<String, LanguageReading> languages) {
    this.files = files;
    this.units = units;
    this.languages = languages;
  }

  /**
   * The words of all languages as they are where no shop says more.
   *
   * @param files the shop folder laid over the program's own files
   * @return the words that can be used
   */
  public static WordsLibrary open(ShopFiles files) {
    return open(files, Optional.empty(), Optional.empty());
  }

  /**
   * Opens the words of all languages; each text is read when it is first asked for. In place of a
   * text that cannot be used stands the program's own of that language.
   *
   * @param files the shop folder laid over the program's own files
   * @param locale where the shop is: its language is said as there, and its units are those of all
   *     languages
   * @param units the units of temperatures, lengths and pressures, whatever is usual
   * @return the words that can be used
   */
  public static WordsLibrary open(ShopFiles files, Optional<String> locale, Optional<Units> units) {
    Map<String, LanguageReading> languages = new TreeMap<>();
    LanguageReading english = LanguageReading.english(files, locale);
    List<String> bundled = files.withoutShop().folders(FOLDER);
    for (String language : files.folders(FOLDER)) {
      if (language.equals(FALLBACK)) {
        languages.put(language, english);
      } else if (bundled.contains(language) || LanguageFacts.known(language)) {
        languages.put(language, LanguageReading.of(files, language, locale, english));
      }
    }
    Optional<Units> usual = locale.map(ULocale::forLanguageTag).map(LanguageFacts::units);
    return new WordsLibrary(files, units.or(() -> usual), languages);
  }

  /**
   * Reads and checks all texts of all languages.
   *
   * @param catalogue the catalogue whose entries need texts
   * @param shown the languages of the jobs and of the shop
   * @param problems where it is said what is wrong: files that cannot be read, a text given twice,
   *     a malformed text, a value that the program's English text, or for a text of the shop's own
   *     its English one, does not have, an entry of the catalogue without its texts in a language
   *     that is shown; and, as notices, texts that a language lacks or has without need
   */
  public void check(Catalogue catalogue, Set<String> shown, Problems problems) {
    for (String language : files.folders(FOLDER)) {
      if (!languages.containsKey(language)) {
        problems.add(
            Problem.error(
                "unknown-language",
                Where.file(FOLDER + "/" + language),
                "'" + language + "' is not the tag of a language",
                "name the folder by the language's BCP 47 tag, such as en, es or pt-BR"));
      }
    }
    languages.values().forEach(reading -> reading.tell(problems));
    gaps(CatalogueTexts.of(catalogue, files), shown, problems);
  }

  private void gaps(CatalogueTexts catalogue, Set<String> shown, Problems problems) {
    Set<String> english =
        languages.containsKey(FALLBACK) ? languages.get(FALLBACK).keys() : Set.of();
    Map<String, Set<String>> known = new TreeMap<>();
    languages.forEach(
        (tag, own) -> {
          Set<String> keys = own.keys();
          TextGaps.lacking(tag, keys, english, problems);
          keys.addAll(english);
          known.put(tag, keys);
          TextGaps.unused(own.texts(), english, catalogue.texts(), problems);
        });
    catalogue.tell(shown, known, problems);
  }

  /**
   * The languages that have words.
   *
   * @return BCP 47 tags, alphabetical
   */
  public List<String> languages() {
    return List.copyOf(languages.keySet());
  }

  /**
   * A guide as the shop's locale has it.
   *
   * @param language its language
   * @param text its text
   * @param starting the program's own text of it, or an empty one
   * @return the same lines; those that are the program's own may have other words
   */
  public String guide(String language, String text, Supplier<String> starting) {
    LanguageReading found = languages.get(language);
    return found == null ? text : found.guide(text, starting);
  }

  /**
   * The words of a language, with the units that its file names.
   *
   * @param language a tag from {@link #languages}
   * @return the words
   * @throws IllegalArgumentException where the language has no words
   */
  public Words of(String language) {
    Words known = words.get(Objects.requireNonNull(language, "language"));
    return known != null ? known : words.computeIfAbsent(language, this::usual);
  }

  private Words usual(String language) {
    return of(language, units.orElseGet(() -> reading(language).facts().units()));
  }

  /**
   * The words of a language with other units.
   *
   * @param language a tag from {@link #languages}
   * @param units the units of temperatures and lengths
   * @return the words
   * @throws IllegalArgumentException where the language has no words
   */
  public Words of(String language, Units units) {
    Optional<LanguageReading> english = Optional.ofNullable(languages.get(FALLBACK));
    return new IcuWords(reading(language), units, english);
  }

  private LanguageReading reading(String language) {
    LanguageReading found = languages.get(Objects.requireNonNull(language, "language"));
    if (found == null) {
      throw new IllegalArgumentException(
          "language " + language + " is none of " + String.join(", ", languages.keySet()));
    }
    return found;
  }
}
