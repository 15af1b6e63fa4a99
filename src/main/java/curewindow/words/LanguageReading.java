package curewindow.words;

import com.ibm.icu.util.ULocale;
import curewindow.problem.Nearest;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.PlacedText;
import curewindow.shop.ShopFiles;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * The texts of one language. Its files are read when it is first asked for anything, and each text
 * is turned into a message when it is first shown or checked. Safe for use by several threads.
 */
final class LanguageReading {

  private final String language;
  private final Optional<String> locale;
  private final LanguageTexts files;
  private final Optional<LanguageReading> english;
  private final Map<String, Compiled> compiled = new ConcurrentHashMap<>();
  private final Map<String, Set<String>> values = new ConcurrentHashMap<>();
  private Read read;

  /** What the files say as a whole. */
  private record Read(Map<String, PlacedText> texts, LanguageFacts facts, List<Problem> problems) {}

  /** What became of a text; the message of the program's own where it cannot be used. */
  private record Compiled(Optional<Message> message, List<Problem> problems) {}

  private LanguageReading(
      ShopFiles files, String language, Optional<String> shops, Optional<LanguageReading> english) {
    this.language = language;
    this.locale = shops.filter(l -> l.split("-")[0].equals(language.split("-")[0]));
    this.files = new LanguageTexts(files, WordsLibrary.FOLDER + "/" + language, locale);
    this.english = english;
  }

  /** English, against which all languages are checked. */
  static LanguageReading english(ShopFiles files, Optional<String> shops) {
    return new LanguageReading(files, WordsLibrary.FALLBACK, shops, Optional.empty());
  }

  /**
   * Another language.
   *
   * @param shops the shop's locale, which counts where it is of this language
   */
  static LanguageReading of(
      ShopFiles files, String language, Optional<String> shops, LanguageReading english) {
    return new LanguageReading(files, language, shops, Optional.of(english));
  }

  private synchronized Read read() {
    if (read == null) {
      Problems problems = new Problems();
      Map<String, PlacedText> texts = files.inUse(problems);
      LanguageFacts facts = LanguageFacts.read(language, locale, texts, problems);
      read = new Read(texts, facts, problems.all());
    }
    return read;
  }

  /** What is true of the language as a whole. */
  LanguageFacts facts() {
    return read().facts();
  }

  /** Its texts, whether they can be used or not. */
  Map<String, PlacedText> texts() {
    return read().texts();
  }

  /**
   * The message of a text; the program's own where the shop's files lack it or have it wrong; empty
   * where both lack it.
   */
  Optional<Message> message(String key) {
    Compiled known = compiled.get(key);
    if (known != null) {
      return known.message();
    }
    PlacedText text = texts().get(key);
    return text != null
        ? compiled(key, text).message()
        : compiled.computeIfAbsent(key, k -> new Compiled(starting(k), List.of())).message();
  }

  /** A guide of this language as the shop's locale has it. */
  String guide(String text, Supplier<String> starting) {
    return files.dialect().guide(text, starting);
  }

  /** The names of its texts, those that only the program has among them. */
  Set<String> keys() {
    Set<String> keys = new TreeSet<>(files.starting().keySet());
    keys.addAll(texts().keySet());
    return keys;
  }

  /** Says what is wrong with the files and with each text. */
  void tell(Problems problems) {
    problems.addAll(read().problems());
    texts().forEach((key, text) -> problems.addAll(compiled(key, text).problems()));
  }

  private Compiled compiled(String key, PlacedText text) {
    Compiled known = compiled.get(key);
    return known != null ? known : compiled.computeIfAbsent(key, k -> compile(k, text));
  }

  private Compiled compile(String key, PlacedText text) {
    Problems problems = new Problems();
    Optional<Message> own = message(key, text, problems);
    return new Compiled(own.isPresent() ? own : starting(key), problems.all());
  }

  private Optional<Message> message(String key, PlacedText text, Problems problems) {
    ULocale locale = facts().locale();
    try {
      Message message = Message.of(text.text(), locale);
      Set<String> unknown = new TreeSet<>(message.values());
      if (!unknown.isEmpty()) {
        unknown.removeAll(known(key).orElse(Set.copyOf(unknown)));
      }
      unknown.forEach(value -> problems.add(unknownValue(key, text, value)));
      boolean dated = !CatalogueTexts.needsDate(key) || message.values().contains("when");
      if (!dated) {
        problems.add(undated(key, text));
      }
      forms(key, text, PluralForms.lacking(text.text(), locale)).ifPresent(problems::add);
      return unknown.isEmpty() && dated ? Optional.of(message) : Optional.empty();
    } catch (IllegalArgumentException malformed) {
      problems.add(
          Problem.error(
              "malformed-text",
              text.where(),
              "the text " + key + " is not a message pattern: " + oneLine(malformed),
              "close every { with a }, and give every plural an other { } form"));
      return Optional.empty();
    }
  }

  /** The program's own text, in place of one that cannot be used. */
  private Optional<Message> starting(String key) {
    return files.usual(key).flatMap(text -> usable(text, facts().locale()));
  }

  private static Optional<Message> usable(PlacedText text, ULocale locale) {
    try {
      return Optional.of(Message.of(text.text(), locale));
    } catch (IllegalArgumentException malformed) {
      return Optional.empty();
    }
  }

  /** The values that a text may use, or empty where no text says. */
  private Optional<Set<String>> known(String key) {
    if (LanguageFacts.VALUES.containsKey(key)) {
      return Optional.of(new TreeSet<>(LanguageFacts.VALUES.get(key)));
    }
    Optional<Set<String>> ofHold = CatalogueTexts.values(key);
    return ofHold.isPresent() ? ofHold : english.orElse(this).values(key);
  }

  /**
   * The values of English: those of the program's text, or, where the program has none of that
   * name, those of the shop's.
   */
  private Optional<Set<String>> values(String key) {
    PlacedText text = files.starting().getOrDefault(key, texts().get(key));
    if (text == null) {
      return Optional.empty();
    }
    Set<String> known = values.get(key);
    if (known == null) {
      Optional<Set<String>> found = usable(text, ULocale.ENGLISH).map(Message::values);
      found.ifPresent(v -> values.put(key, v));
      return found;
    }
    return Optional.of(known);
  }

  private static String oneLine(IllegalArgumentException e) {
    return String.valueOf(e.getMessage()).replaceAll("\\s+", " ");
  }

  private static Optional<Problem> forms(String key, PlacedText text, Set<String> lacking) {
    return lacking.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Problem.notice(
                "plural-lacking",
                text.where(),
                "the text " + key + " lacks forms of a count: " + String.join(", ", lacking),
                "add them; until then the form other is shown"));
  }

  private static Problem undated(String key, PlacedText text) {
    return Problem.error(
        "no-date-in-text",
        text.where(),
        "the text " + key + " lacks {when}, in whose place the date stands",
        "write {when} where the date belongs");
  }

  private Problem unknownValue(String key, PlacedText text, String value) {
    Set<String> known = known(key).orElse(Set.of());
    String fix = known.isEmpty() ? "remove it" : "use one of " + String.join(", ", known);
    return Problem.error(
        "unknown-value",
        text.where(),
        "the text " + key + " uses {" + value + "}, for which there is no value",
        Nearest.to(value, known).map(near -> "did you mean {" + near + "}?").orElse(fix));
  }
}
