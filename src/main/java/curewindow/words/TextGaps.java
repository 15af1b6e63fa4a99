package curewindow.words;

import curewindow.problem.Nearest;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.PlacedText;
import java.util.Map;
import java.util.Set;

/** What a language lacks beside English, and what it has without need. */
final class TextGaps {

  /** The desk speaks English and Spanish; no customer ever sees its words. */
  private static final String DESK = "desk.";

  private TextGaps() {}

  /** Tells what English has and a language does not. */
  static void lacking(String language, Set<String> own, Set<String> english, Problems problems) {
    english.stream()
        .filter(key -> !own.contains(key) && !key.startsWith(DESK))
        .forEach(key -> problems.add(lacking(language, key)));
  }

  /** Tells what neither English has nor the catalogue needs. */
  static void unused(
      Map<String, PlacedText> own, Set<String> english, Set<String> needed, Problems problems) {
    own.forEach(
        (key, text) -> {
          if (!english.contains(key)
              && !needed.contains(key)
              && !key.equals(LanguageFacts.CITIES)) {
            problems.add(unused(key, text, english));
          }
        });
  }

  private static Problem lacking(String language, String key) {
    return Problem.notice(
        "text-lacking",
        new Where(WordsLibrary.FOLDER + "/" + language, 0, 0, key),
        language + " lacks " + key,
        "add it; until then the English text is shown");
  }

  private static Problem unused(String key, PlacedText text, Set<String> known) {
    return Problem.notice(
        "text-unused",
        text.where(),
        "English has no text " + key,
        Nearest.to(key, known)
            .map(near -> "did you mean " + near + "?")
            .orElse("remove it, or add the English text"));
  }
}
