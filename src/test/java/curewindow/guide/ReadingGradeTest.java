package curewindow.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import curewindow.shop.ShopFiles;
import curewindow.shop.YamlTexts;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * English that a sixth-grader reads, by the Flesch-Kincaid grade level: 0.39 words per sentence +
 * 11.8 syllables per word - 15.59 (Kincaid, Fishburne, Rogers and Chissom: Derivation of new
 * readability formulas for Navy enlisted personnel, Naval Technical Training Command, Research
 * Branch Report 8-75, 1975).
 *
 * <p>A sentence ends at a full stop, question or exclamation mark, or with its paragraph, item or
 * text; a date or value counts as one word of two syllables. Syllables are the groups of vowels (a,
 * e, i, o, u, y) of a word, less a silent ending: "e", "es" or "ed" behind a consonant that does
 * not need it; at least one.
 */
class ReadingGradeTest {

  private static final double GRADE = 6;
  private static final int LONGEST = 25;

  private static final ShopFiles FILES = new ShopFiles(Path.of("no-such-shop"));
  private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");
  private static final Pattern SILENT =
      Pattern.compile(".*[aeiouy].*([^aeiouyl]e|[aeiouy]le|[^aeiouytd]ed|[^aeiouyscxzgh]es)");

  private static List<String> guides() {
    return FILES.list("content/guides/en", ".md");
  }

  private static List<String> words() {
    return FILES.list("content/words/en", ".yaml").stream()
        .filter(file -> !file.endsWith("language.yaml"))
        // Headings of tables to be known again, which nobody reads.
        .filter(file -> !file.endsWith("import.yaml"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("guides")
  void everyGuideIsEasyToRead(String file) {
    String text = FILES.text(file, new Problems()).orElseThrow();
    assertEasy(
        file,
        text.replaceAll("(?s)<!--.*?-->", "")
            .lines()
            .filter(line -> !line.startsWith("(?"))
            .map(line -> line.replaceFirst("^(#+|-) ", "").replaceAll("\\(= [^=]*=\\)", "Monday"))
            .toList());
  }

  @ParameterizedTest
  @MethodSource("words")
  void everyTextIsEasyToRead(String file) {
    assertEasy(
        file,
        YamlTexts.read(FILES, file, new Problems()).orElseThrow().entrySet().stream()
            .filter(e -> !e.getKey().endsWith("index-words") && !e.getValue().contains("plural,"))
            .map(e -> e.getValue().replaceAll("\\{[^}]*}|\\(= [^=]*=\\)", "Monday"))
            .flatMap(String::lines)
            .toList());
  }

  @ParameterizedTest
  @CsvSource({
    "film, 1",
    "bubble, 2",
    "side, 1",
    "parked, 1",
    "coated, 2",
    "leaves, 1",
    "washes, 2",
    "the, 1",
    "windshield, 2",
    "defroster, 3"
  })
  void syllablesAreGroupsOfVowels(String word, int syllables) {
    assertEquals(syllables, syllables(word));
  }

  /** Six words of one syllable: 0.39 * 6 + 11.8 - 15.59. */
  @Test
  void theGradeIsThePublishedFormula() {
    assertEquals(-1.45, grade(List.of("The cat sat on the mat")), 1e-9);
  }

  private static void assertEasy(String file, List<String> texts) {
    List<String> sentences = sentences(texts);
    double grade = grade(sentences);
    assertTrue(grade <= GRADE, file + " reads at grade " + grade);
    assertEquals(
        List.of(),
        sentences.stream().filter(s -> words(s).size() > LONGEST).toList(),
        "sentences of more than " + LONGEST + " words in " + file);
  }

  private static List<String> sentences(List<String> texts) {
    return texts.stream()
        .flatMap(text -> Arrays.stream(text.split("[.?!]+(?=\\W|$)")))
        .filter(sentence -> !words(sentence).isEmpty())
        .toList();
  }

  private static List<String> words(String sentence) {
    return Pattern.compile("[A-Za-z][A-Za-z’'-]*")
        .matcher(sentence)
        .results()
        .map(found -> found.group())
        .toList();
  }

  private static double grade(List<String> sentences) {
    List<String> words = sentences.stream().flatMap(s -> words(s).stream()).toList();
    double syllables = words.stream().mapToInt(ReadingGradeTest::syllables).sum();
    return 0.39 * words.size() / sentences.size() + 11.8 * syllables / words.size() - 15.59;
  }

  private static int syllables(String word) {
    String letters = word.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
    int groups = (int) VOWELS.matcher(letters).results().count();
    return Math.max(1, SILENT.matcher(letters).matches() ? groups - 1 : groups);
  }
}
