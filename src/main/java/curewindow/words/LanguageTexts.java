package curewindow.words;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.PlacedText;
import curewindow.shop.ShopFiles;
import curewindow.shop.YamlTexts;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** All texts of one language, its files put together. Safe for use by several threads. */
final class LanguageTexts {

  private static final String ENDING = ".yaml";

  private final ShopFiles files;
  private final String folder;
  private final Optional<String> locale;
  private Map<String, PlacedText> starting;
  private final Problems ofDialect = new Problems();
  private Dialect dialect;

  LanguageTexts(ShopFiles files, String folder, Optional<String> locale) {
    this.files = files;
    this.folder = folder;
    this.locale = locale;
  }

  /** The texts in use, as the locale has them; what is wrong with the files is told. */
  Map<String, PlacedText> inUse(Problems problems) {
    Map<String, PlacedText> texts = read(files, folder, problems);
    if (files.list(folder, ENDING).stream().noneMatch(files::isOwn)) {
      keep(texts);
    }
    Dialect said = dialect();
    problems.addAll(ofDialect.all());
    said.tell(texts.keySet(), problems);
    return locale.isEmpty() ? texts : said.over(texts, starting());
  }

  /** What the locale says otherwise; what is wrong with its file is told with the texts. */
  synchronized Dialect dialect() {
    if (dialect == null) {
      dialect = locale.map(l -> Dialect.read(files, l, ofDialect)).orElse(Dialect.NONE);
    }
    return dialect;
  }

  /** The program's own text of a name, as the locale has it; empty where there is none. */
  Optional<PlacedText> usual(String key) {
    return Optional.ofNullable(starting().get(key)).map(text -> dialect().said(key, text));
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
