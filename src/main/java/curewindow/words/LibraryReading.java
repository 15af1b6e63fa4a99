package curewindow.words;

import com.ibm.icu.util.ULocale;
import curewindow.problem.Nearest;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.PlacedText;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * One reading of all words: turns texts into messages and says what is wrong with them.
 *
 * @param texts the texts in use, by language and key
 * @param starting the program's own texts, against which those of the shop are checked
 * @param problems where it is said what is wrong
 */
record LibraryReading(
    Map<String, Map<String, PlacedText>> texts,
    Map<String, Map<String, PlacedText>> starting,
    Problems problems) {

  WordsLibrary library() {
    Map<String, LanguageFacts> facts = new TreeMap<>();
    Map<String, Map<String, Message>> messages = new TreeMap<>();
    texts.forEach(
        (language, found) -> {
          facts.put(language, LanguageFacts.read(language, found, problems));
          messages.put(language, compile(language, facts.get(language).locale()));
        });
    if (texts.containsKey(WordsLibrary.FALLBACK)) {
      texts.keySet().forEach(this::compare);
    }
    return new WordsLibrary(facts, messages);
  }

  private Map<String, Message> compile(String language, ULocale locale) {
    Map<String, Message> compiled = new HashMap<>();
    texts
        .get(language)
        .forEach(
            (key, text) ->
                message(key, text, locale)
                    .or(() -> starting(language, key, locale))
                    .ifPresent(message -> compiled.put(key, message)));
    return compiled;
  }

  private Optional<Message> message(String key, PlacedText text, ULocale locale) {
    try {
      Message message = Message.of(text.text(), locale);
      Set<String> unknown = new TreeSet<>(message.values());
      unknown.removeAll(known(key).orElse(unknown));
      unknown.forEach(value -> unknownValue(key, text, value));
      forms(key, text, PluralForms.lacking(text.text(), locale));
      return unknown.isEmpty() ? Optional.of(message) : Optional.empty();
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

  /** The program's own text of a language, in place of one that cannot be used. */
  private Optional<Message> starting(String language, String key, ULocale locale) {
    PlacedText text = starting.getOrDefault(language, Map.of()).get(key);
    return text == null ? Optional.empty() : usable(text, locale);
  }

  private static Optional<Message> usable(PlacedText text, ULocale locale) {
    try {
      return Optional.of(Message.of(text.text(), locale));
    } catch (IllegalArgumentException malformed) {
      return Optional.empty();
    }
  }

  /**
   * The values that a text may use: those of the program's English text, or, where the program has
   * none of that name, those of the shop's English text. Empty where no text says.
   */
  private Optional<Set<String>> known(String key) {
    if (LanguageFacts.VALUES.containsKey(key)) {
      return Optional.of(new TreeSet<>(LanguageFacts.VALUES.get(key)));
    }
    PlacedText own = texts.getOrDefault(WordsLibrary.FALLBACK, Map.of()).get(key);
    PlacedText text = starting.getOrDefault(WordsLibrary.FALLBACK, Map.of()).getOrDefault(key, own);
    return Optional.ofNullable(text).flatMap(t -> usable(t, ULocale.ENGLISH)).map(Message::values);
  }

  private static String oneLine(IllegalArgumentException e) {
    return String.valueOf(e.getMessage()).replaceAll("\\s+", " ");
  }

  private void compare(String language) {
    Set<String> english = texts.get(WordsLibrary.FALLBACK).keySet();
    Map<String, PlacedText> own = texts.get(language);
    english.stream().filter(k -> !own.containsKey(k)).forEach(k -> lacks(language, k));
    own.forEach(
        (key, text) -> {
          if (!english.contains(key)) {
            unused(key, text, english);
          }
        });
  }

  private void lacks(String language, String key) {
    problems.add(
        Problem.notice(
            "text-lacking",
            new Where(WordsLibrary.FOLDER + "/" + language, 0, 0, key),
            language + " lacks " + key,
            "add it; until then the English text is shown"));
  }

  private void forms(String key, PlacedText text, Set<String> lacking) {
    if (!lacking.isEmpty()) {
      problems.add(
          Problem.notice(
              "plural-lacking",
              text.where(),
              "the text " + key + " lacks forms of a count: " + String.join(", ", lacking),
              "add them; until then the form other is shown"));
    }
  }

  private void unused(String key, PlacedText text, Set<String> known) {
    problems.add(
        Problem.notice(
            "text-unused",
            text.where(),
            "English has no text " + key,
            Nearest.to(key, known)
                .map(near -> "did you mean " + near + "?")
                .orElse("remove it, or add the English text")));
  }

  private void unknownValue(String key, PlacedText text, String value) {
    Set<String> known = known(key).orElse(Set.of());
    String fix = known.isEmpty() ? "remove it" : "use one of " + String.join(", ", known);
    problems.add(
        Problem.error(
            "unknown-value",
            text.where(),
            "the text " + key + " uses {" + value + "}, for which there is no value",
            Nearest.to(value, known).map(near -> "did you mean {" + near + "}?").orElse(fix)));
  }
}
