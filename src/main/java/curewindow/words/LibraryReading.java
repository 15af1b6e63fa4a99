package curewindow.words;

import com.ibm.icu.util.ULocale;
import curewindow.problem.Nearest;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.PlacedText;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** One reading of all words: turns texts into messages and says what is wrong with them. */
record LibraryReading(Map<String, Map<String, PlacedText>> texts, Problems problems) {

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

  private Map<String, Message> compile(Map<String, PlacedText> found, ULocale locale) {
    Map<String, Message> compiled = new HashMap<>();
    for (Map.Entry<String, PlacedText> e : found.entrySet()) {
      String key = e.getKey();
      try {
        compiled.put(key, Message.of(e.getValue().text(), locale));
      } catch (IllegalArgumentException malformed) {
        problems.add(
            Problem.error(
                "malformed-text",
                e.getValue().where(),
                "the text " + key + " is not a message pattern: " + oneLine(malformed),
                "close every { with a }, and give every plural an other { } form"));
      }
    }
    return compiled;
  }

  private static String oneLine(IllegalArgumentException e) {
    return String.valueOf(e.getMessage()).replaceAll("\\s+", " ");
  }

  private void compare(String language, Map<String, Map<String, Message>> messages) {
    Map<String, PlacedText> english = texts.get(WordsLibrary.FALLBACK);
    Map<String, PlacedText> own = texts.get(language);
    english.keySet().stream().filter(k -> !own.containsKey(k)).forEach(k -> lacks(language, k));
    Map<String, Message> mine = messages.get(language);
    Map<String, Message> theirs = messages.get(WordsLibrary.FALLBACK);
    own.forEach(
        (key, text) -> {
          if (!english.containsKey(key)) {
            unused(key, text, english.keySet());
          } else if (mine.containsKey(key) && theirs.containsKey(key)) {
            values(key, text, mine.get(key).values(), theirs.get(key).values());
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

  private void values(String key, PlacedText text, Set<String> used, Set<String> known) {
    for (String value : used) {
      if (!known.contains(value)) {
        problems.add(
            Problem.error(
                "unknown-value",
                text.where(),
                "the text " + key + " uses {" + value + "}, which English does not have",
                known.isEmpty() ? "remove it" : "use one of " + String.join(", ", known)));
      }
    }
  }
}
