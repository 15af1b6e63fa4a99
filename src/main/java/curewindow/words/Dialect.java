package curewindow.words;

import curewindow.problem.Nearest;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.PlacedText;
import curewindow.shop.ShopFiles;
import curewindow.shop.YamlTexts;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * What a shop's locale says otherwise than the language, from {@code content/words/LOCALE.yaml}:
 * single texts, and a list of words that are swapped in all others. Only the program's own texts
 * are said otherwise; what a shop has written stands as it is.
 *
 * @param texts the texts that are another
 * @param swaps the words that are swapped in the others
 */
record Dialect(Map<String, PlacedText> texts, Swaps swaps) {

  static final Dialect NONE = new Dialect(Map.of(), Swaps.NONE);

  /** The name of the list among the texts of the file. */
  static final String SWAPS = "language.swaps";

  /** Reads the file of a locale; where there is none, all is said as in the language. */
  static Dialect read(ShopFiles files, String locale, Problems problems) {
    String file = WordsLibrary.FOLDER + "/" + locale + ".yaml";
    if (!files.has(file)) {
      return NONE;
    }
    Map<String, PlacedText> texts = new TreeMap<>();
    YamlTexts.readPlaced(files, file, problems).ifPresent(texts::putAll);
    PlacedText list = texts.remove(SWAPS);
    return new Dialect(texts, swaps(SWAPS, list, problems));
  }

  /** A list of words and what stands for them; none where there is none or it cannot be read. */
  static Swaps swaps(String name, PlacedText list, Problems problems) {
    try {
      return list == null ? Swaps.NONE : Swaps.of(list.text());
    } catch (IllegalArgumentException malformed) {
      problems.add(
          Problem.error(
              "malformed-swap",
              list.where(),
              "a line of " + name + " cannot be read: " + malformed.getMessage(),
              "write each word once, on a line such as: windshield = windscreen"));
      return Swaps.NONE;
    }
  }

  /** Tells which texts the language does not have. */
  void tell(Set<String> known, Problems problems) {
    texts.forEach(
        (key, text) -> {
          if (!known.contains(key)) {
            problems.add(
                Problem.notice(
                    "text-unused",
                    text.where(),
                    "the language has no text " + key,
                    Nearest.to(key, known)
                        .map(near -> "did you mean " + near + "?")
                        .orElse("remove it")));
          }
        });
  }

  /**
   * The texts as the locale has them.
   *
   * @param inUse those of the shop folder laid over the program's
   * @param starting the program's own
   */
  Map<String, PlacedText> over(Map<String, PlacedText> inUse, Map<String, PlacedText> starting) {
    Map<String, PlacedText> said = new TreeMap<>(inUse);
    said.replaceAll((key, text) -> isOwn(text, starting.get(key)) ? text : said(key, text));
    return said;
  }

  private static boolean isOwn(PlacedText text, PlacedText starting) {
    return starting == null || !starting.text().equals(text.text());
  }

  /** A text of the program's as the locale has it. */
  PlacedText said(String key, PlacedText text) {
    PlacedText other = texts.get(key);
    return other != null ? other : new PlacedText(swaps.in(text.text()), text.where());
  }

  /**
   * A guide as the locale has it.
   *
   * @param text the guide in use
   * @param starting the program's own
   * @return the same lines; those that are the program's own with their words swapped
   */
  String guide(String text, Supplier<String> starting) {
    if (swaps == Swaps.NONE) {
      return text;
    }
    Set<String> known = new HashSet<>(starting.get().lines().toList());
    return text.lines()
        .map(line -> known.contains(line) ? swaps.in(line) : line)
        .collect(Collectors.joining("\n", "", "\n"));
  }
}
