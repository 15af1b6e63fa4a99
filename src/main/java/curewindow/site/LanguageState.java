package curewindow.site;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.ShopFiles;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * How far a language is translated; the notes of the folder name each gap.
 *
 * @param language a BCP 47 tag
 * @param usable whether it has words and guides, so that jobs can be in it
 * @param texts how many texts of English it lacks
 * @param plurals how many of its texts lack a form of a count
 * @param guides how many guides it lacks that another language has
 */
public record LanguageState(
    String language, boolean usable, long texts, long plurals, long guides) {

  /** A language needs its words and its guides before anything can be made in it. */
  static void tellUnpaired(ShopFiles files, Problems problems) {
    TreeSet<String> words = new TreeSet<>(files.folders("content/words"));
    TreeSet<String> guides = new TreeSet<>(files.folders("content/guides"));
    for (String language : words) {
      if (!guides.contains(language)) {
        problems.add(
            Problem.notice(
                "language-without-guides",
                Where.file("content/guides/" + language),
                "the language " + language + " has words but no guides, so no job can use it",
                "add its guides, translated from content/guides/en"));
      }
    }
    guides.removeAll(words);
    for (String language : guides) {
      problems.add(
          Problem.notice(
              "language-without-words",
              Where.file("content/words/" + language),
              "the language " + language + " has guides but no words, so no job can use it",
              "add its words, translated from content/words/en"));
    }
  }

  static LanguageState of(String language, boolean usable, List<Problem> problems) {
    return new LanguageState(
        language,
        usable,
        count(problems, "text-lacking", "content/words/" + language),
        count(problems, "plural-lacking", "content/words/" + language),
        count(problems, "missing-translation", "content/guides/" + language));
  }

  private static long count(List<Problem> problems, String code, String folder) {
    return problems.stream()
        .filter(p -> p.code().equals(code))
        .filter(p -> p.file().equals(folder) || p.file().startsWith(folder + "/"))
        .count();
  }

  /**
   * The state in one line, such as {@code de: lacks 210 texts, 3 guides}.
   *
   * @return the line
   */
  public String line() {
    List<String> lacks = new ArrayList<>();
    lack(lacks, texts, "text");
    lack(lacks, guides, "guide");
    if (plurals > 0) {
      lacks.add("forms of a count in " + plurals + (plurals == 1 ? " text" : " texts"));
    }
    if (!usable) {
      lacks.add("all guides, so no job can use it");
    }
    return language + (lacks.isEmpty() ? ": complete" : ": lacks " + String.join(", ", lacks));
  }

  private static void lack(List<String> lacks, long count, String what) {
    if (count > 0) {
      lacks.add(count + " " + what + (count == 1 ? "" : "s"));
    }
  }
}
