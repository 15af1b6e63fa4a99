package curewindow.words;

import com.ibm.icu.util.ULocale;
import curewindow.problem.Nearest;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** One reading of all words: turns texts into messages and says what is wrong with them. */
record LibraryReading(Map<String, Map<String, FlatText>> texts, Problems problems) {

  WordsLibrary library() {
    Map<String, LanguageFacts> facts = new TreeMap<>();
    Map<String, Map<String, Message>> messages = new TreeMap<>();
    texts.forEach(
        (language, found) -> {
          facts.put(language, LanguageFacts.read(language, found, problems));
          messages.put(language, compile(found, facts.get(language).locale()));
        });
    texts.keySet().stream()
        .filter(
            language ->
                !language.equals(WordsLibrary.FALLBACK) && texts.containsKey(WordsLibrary.FALLBACK))
        .forEach(language -> compare(language, messages));
    return new WordsLibrary(facts, messages);
  }

  private Map<String, Message> compile(Map<String, FlatText> found, ULocale locale) {
    Map<String, Message> compiled = new HashMap<>();
    for (FlatText text : found.values()) {
      try {
        compiled.put(text.key(), Message.of(text.text(), locale));
      } catch (IllegalArgumentException e) {
        problems.add(
            Problem.error(
                "malformed-text",
                text.where(),
                "the text " + text.key() + " is not a message pattern: " + oneLine(e),
                "close every { with a }, and give every plural an other { } form"));
      }
    }
    return compiled;
  }

  private static String oneLine(IllegalArgumentException e) {
    return String.valueOf(e.getMessage()).replaceAll("\\s+", " ");
  }

  private void compare(String language, Map<String, Map<String, Message>> messages) {
    Map<String, FlatText> english = texts.get(WordsLibrary.FALLBACK);
    Map<String, FlatText> own = texts.get(language);
    english.keySet().stream().filter(k -> !own.containsKey(k)).forEach(k -> lacks(language, k));
    for (FlatText text : own.values()) {
      if (!english.containsKey(text.key())) {
        unused(text, english.keySet());
      } else {
        values(text, messages.get(language), messages.get(WordsLibrary.FALLBACK));
      }
    }
  }

  private void lacks(String language, String key) {
    problems.add(
        Problem.notice(
            "text-lacking",
            new Where(WordsLibrary.FOLDER + "/" + language, 0, 0, key),
            language + " lacks " + key,
            "add it; until then the English text is shown"));
  }

  private void unused(FlatText text, Set<String> known) {
    problems.add(
        Problem.notice(
            "text-unused",
            text.where(),
            "English has no text " + text.key(),
            Nearest.to(text.key(), known)
                .map(near -> "did you mean " + near + "?")
                .orElse("remove it, or add the English text")));
  }

  private void values(FlatText text, Map<String, Message> own, Map<String, Message> english) {
    if (!own.containsKey(text.key()) || !english.containsKey(text.key())) {
      return;
    }
    Set<String> known = english.get(text.key()).values();
    for (String value : own.get(text.key()).values()) {
      if (!known.contains(value)) {
        problems.add(
            Problem.error(
                "unknown-value",
                text.where(),
                "the text " + text.key() + " uses {" + value + "}, which English does not have",
                known.isEmpty() ? "remove it" : "use one of " + String.join(", ", known)));
      }
    }
  }
}
