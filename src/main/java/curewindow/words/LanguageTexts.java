package curewindow.words;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.ShopFiles;
import java.util.Map;
import java.util.TreeMap;

/** All texts of one language, its files put together. */
final class LanguageTexts {

  private LanguageTexts() {}

  static Map<String, FlatText> read(ShopFiles files, String folder, Problems problems) {
    Map<String, FlatText> texts = new TreeMap<>();
    for (String file : files.list(folder, ".yaml")) {
      files
          .text(file, problems)
          .ifPresent(
              yaml -> FlatTexts.read(file, yaml, problems).forEach(t -> put(texts, t, problems)));
    }
    return texts;
  }

  private static void put(Map<String, FlatText> texts, FlatText text, Problems problems) {
    FlatText first = texts.putIfAbsent(text.key(), text);
    if (first != null) {
      problems.add(
          Problem.error(
              "text-twice",
              text.where(),
              "the text " + text.key() + " is already in " + place(first),
              "remove one of the two"));
    }
  }

  private static String place(FlatText text) {
    int line = text.where().line();
    return text.where().file() + (line == 0 ? "" : " line " + line);
  }
}
