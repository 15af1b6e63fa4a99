package curewindow.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import curewindow.problem.Problems;
import curewindow.shop.ShopFiles;
import curewindow.shop.YamlTexts;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A text that nothing shows is a text that somebody translates in vain. */
class UnusedTextsTest {

  /** Names that are put together in the program: what stands in the place of X comes from data. */
  private static final List<String> BUILT =
      List.of(
          // Names of the catalogue's entries, and what its holds say: page.Dated, page.Safety.
          "service[.].*",
          "spot[.].*",
          "finish[.].*",
          "hold[.].*[.](label|until|done|short|gently|season|safety)",
          // By kind of finding, parking, handout, and day of the week.
          "finding[.].*",
          "parking[.].*",
          "page[.]weekday[.][1-7]",
          "handout[.]title[.].*",
          "office[.]give[.].*",
          "handout[.]care[.]always[.].*",
          // By what came of a visit: page.SeenWords.
          "(page|done)[.]seen[.](fine|mended)",
          // Each part of the paper of the day: handout.OfficeValues.
          "office[.](pickups|visits|calls|callers)[.](title|none)",
          // What a guide says where no job is known: page.PublicFacts.
          "page[.]public[.].*",
          // What is true of a language: words.LanguageFacts.
          "language[.].*");

  @Test
  void everyTextIsShownSomewhere() throws IOException {
    ShopFiles files = new ShopFiles(Path.of("no-such-shop"));
    String code = all("src/main/java", ".java") + all("site-templates", ".html");
    Pattern built = Pattern.compile(String.join("|", BUILT));
    Set<String> unused = new TreeSet<>();
    for (String file : files.list("content/words/en", ".yaml")) {
      for (String key : YamlTexts.read(files, file, new Problems()).orElseThrow().keySet()) {
        if (!built.matcher(key).matches() && !isNamed(key, code)) {
          unused.add(key);
        }
      }
    }
    assertEquals(Set.of(), unused);
  }

  /** Whole, or a beginning that ends in a point, and the rest, as in "visits." + which. */
  private static boolean isNamed(String key, String code) {
    if (code.contains("\"" + key + "\"") || code.contains("#{" + key + "}")) {
      return true;
    }
    for (int dot = key.indexOf('.'); dot > 0; dot = key.indexOf('.', dot + 1)) {
      boolean begun = code.contains(key.substring(0, dot + 1) + "\"");
      if (begun && isNamed(key.substring(dot + 1), code)) {
        return true;
      }
    }
    return false;
  }

  private static String all(String folder, String ending) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of(folder))) {
      return files
          .filter(f -> f.toString().endsWith(ending))
          .sorted()
          .map(UnusedTextsTest::text)
          .collect(Collectors.joining("\n"));
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
