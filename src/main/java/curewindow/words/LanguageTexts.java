package curewindow.words;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.PlacedText;
import curewindow.shop.ShopFiles;
import curewindow.shop.YamlTexts;
import java.util.Map;
import java.util.TreeMap;

/** All texts of one language, its files put together. Safe for use by several threads. */
final class LanguageTexts {

  private static final String ENDING = ".yaml";

  private final ShopFiles files;
  private final String folder;
  private Map<String, PlacedText> starting;

  LanguageTexts(ShopFiles files, String folder) {
    this.files = files;
    this.folder = folder;
  }

  /** The texts in use; what is wrong with the files is told. */
  Map<String, PlacedText> inUse(Problems problems) {
    Map<String, PlacedText> texts = read(files, folder, problems);
    if (files.list(folder, ENDING).stream().noneMatch(files::isOwn)) {
      keep(texts);
    }
    return texts;
  }

  /** The program's own texts, about which nothing has to be said. */
  synchronized Map<String, PlacedText> starting() {
    if (starting == null) {
      starting = read(files.withoutShop(), folder, new Problems());
    }
    return starting;
  }

  private synchronized void keep(Map<String, PlacedText> texts) {
    starting = texts;
  }

  private static Map<String, PlacedText> read(ShopFiles files, String folder, Problems problems) {
    Map<String, PlacedText> texts = new TreeMap<>();
    for (String file : files.list(folder, ENDING)) {
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
