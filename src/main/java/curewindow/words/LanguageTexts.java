package curewindow.words;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.PlacedText;
import curewindow.shop.ShopFiles;
import curewindow.shop.YamlTexts;
import java.util.Map;
import java.util.TreeMap;

/** All texts of one language, its files put together. */
final class LanguageTexts {

  private LanguageTexts() {}

  static Map<String, PlacedText> read(ShopFiles files, String folder, Problems problems) {
    Map<String, PlacedText> texts = new TreeMap<>();
    for (String file : files.list(folder, ".yaml")) {
      YamlTexts.readPlaced(files, file, problems)
          .ifPresent(found -> found.forEach((key, text) -> put(texts, key, text, problems)));
    }
    return texts;
  }

  private static void put(
      Map<String, PlacedText> texts, String key, PlacedText text, Problems problems) {
    PlacedText first = texts.putIfAbsent(key, text);
    if (first != null) {
      problems.add(
          Problem.error(
              "text-twice",
              text.where(),
              "the text " + key + " is already in " + place(first.where()),
              "remove one of the two"));
    }
  }

  private static String place(Where where) {
    return where.file() + (where.line() == 0 ? "" : " line " + where.line());
  }
}
