package curewindow.words;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.PlacedText;
import curewindow.shop.ShopFiles;
import curewindow.shop.Units;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * The words of all languages, read from {@code content/words/<language>/*.yaml}. English stands
 * behind every other language: a text that a language lacks is shown in English. Safe for use by
 * several threads.
 */
public final class WordsLibrary {

  /** The language that stands behind all others. */
  public static final String FALLBACK = "en";

  static final String FOLDER = "content/words";

  private final Map<String, LanguageFacts> facts;
  private final Map<String, Map<String, Message>> messages;
  private final Map<String, Words> words;

  WordsLibrary(Map<String, LanguageFacts> facts, Map<String, Map<String, Message>> messages) {
    this.facts = facts;
    this.messages = messages;
    this.words = new TreeMap<>();
    facts.forEach((language, f) -> words.put(language, of(language, f.units())));
  }

  /**
   * The same words with one choice of units for all languages.
   *
   * @param units the units of temperatures, lengths and pressures
   * @return the words
   */
  public WordsLibrary with(Units units) {
    Map<String, LanguageFacts> changed = new TreeMap<>();
    facts.forEach((language, f) -> changed.put(language, f.with(units)));
    return new WordsLibrary(changed, messages);
  }

  /**
   * Reads the words of all languages.
   *
   * @param files the shop folder laid over the program's own files
   * @param problems where it is said what is wrong: files that cannot be read, a text given twice,
   *     a malformed text, a value that the program's English text, or for a text of the shop's own
   *     its English one, does not have; and, as notices, texts that a language lacks or has without
   *     need. In place of a text that cannot be used stands the program's own of that language
   * @return the words that can be used
   */
  public static WordsLibrary read(ShopFiles files, Problems problems) {
    Map<String, Map<String, PlacedText>> texts = new TreeMap<>();
    for (String language : files.folders(FOLDER)) {
      if (LanguageFacts.known(language)) {
        texts.put(language, LanguageTexts.read(files, FOLDER + "/" + language, problems));
      } else {
        problems.add(
            Problem.error(
                "unknown-language",
                Where.file(FOLDER + "/" + language),
                "'" + language + "' is not the tag of a language",
                "name the folder by the language's BCP 47 tag, such as en, es or pt-BR"));
      }
    }
    return new LibraryReading(texts, starting(files.withoutShop()), problems).library();
  }

  /** The program's own texts, about which nothing has to be said. */
  private static Map<String, Map<String, PlacedText>> starting(ShopFiles files) {
    Map<String, Map<String, PlacedText>> texts = new TreeMap<>();
    for (String language : files.folders(FOLDER)) {
      texts.put(language, LanguageTexts.read(files, FOLDER + "/" + language, new Problems()));
    }
    return texts;
  }

  /**
   * The languages that have words.
   *
   * @return BCP 47 tags, alphabetical
   */
  public List<String> languages() {
    return List.copyOf(words.keySet());
  }

  /**
   * The words of a language, with the units that its file names.
   *
   * @param language a tag from {@link #languages}
   * @return the words
   * @throws IllegalArgumentException where the language has no words
   */
  public Words of(String language) {
    Words found = words.get(Objects.requireNonNull(language, "language"));
    if (found == null) {
      throw new IllegalArgumentException(
          "language " + language + " is none of " + String.join(", ", words.keySet()));
    }
    return found;
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
    LanguageFacts found = facts.get(Objects.requireNonNull(language, "language"));
    if (found == null) {
      throw new IllegalArgumentException(
          "language " + language + " is none of " + String.join(", ", facts.keySet()));
    }
    Map<String, Message> english = messages.getOrDefault(FALLBACK, Map.of());
    return new IcuWords(found, units, messages.get(language), english);
  }
}
