package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class YamlTextsTest {

  @TempDir Path dir;

  private final Problems problems = new Problems();

  private Optional<Map<String, String>> read(String text) throws IOException {
    Files.writeString(dir.resolve("words.yaml"), text);
    return YamlTexts.read(new ShopFiles(dir), "words.yaml", problems);
  }

  private List<String> lines() {
    return problems.all().stream().map(Problem::oneLine).toList();
  }

  @Test
  void nestedKeysAreJoinedWithDots() throws IOException {
    Map<String, String> texts =
        read("hold:\n  windows-up: {label: Windows stay up}\nplain: \"a: b\"\n").orElseThrow();
    assertEquals(Map.of("hold.windows-up.label", "Windows stay up", "plain", "a: b"), texts);
    assertEquals(List.of("hold.windows-up.label", "plain"), List.copyOf(texts.keySet()));
    assertEquals(List.of(), lines());
  }

  @Test
  void aTextKnowsItsPlace() throws IOException {
    Files.writeString(dir.resolve("words.yaml"), "a:\n  b: x\n");
    Map<String, PlacedText> texts =
        YamlTexts.readPlaced(new ShopFiles(dir), "words.yaml", problems).orElseThrow();
    assertEquals(Map.of("a.b", new PlacedText("x", new Where("words.yaml", 2, 6, "a.b"))), texts);
  }

  @Test
  void aListAndAnEmptyValueAreNamedAndLeftOut() throws IOException {
    assertEquals(Map.of("c", "x"), read("a: [1]\nb:\nc: x\n").orElseThrow());
    assertEquals(
        List.of(
            "words.yaml:1:4  the key a holds a list instead of a text  write a text in quotes",
            "words.yaml:2:3  the key b holds nothing instead of a text  write a text in quotes"),
        lines());
  }

  @Test
  void aKeyWrittenBothWaysIsADuplicate() throws IOException {
    assertEquals(Map.of("a.b", "1"), read("a: {b: 1}\na.b: 2\n").orElseThrow());
    assertEquals(1, lines().size());
    assertTrue(lines().get(0).startsWith("words.yaml:2:6  the key a.b stands in the file twice"));
  }

  @Test
  void aFileThatIsNoMapIsRefused() throws IOException {
    assertTrue(read("- a\n").isEmpty());
    assertTrue(lines().get(0).contains("holds a list instead of keys with texts"));
  }

  @Test
  void aMissingFileIsNamed() {
    assertTrue(YamlTexts.read(new ShopFiles(dir), "none.yaml", problems).isEmpty());
    assertTrue(lines().get(0).startsWith("none.yaml  the file is missing"));
  }

  @Test
  void theShippedCatalogueWordsHaveTheSameKeysInBothLanguages() {
    ShopFiles files = new ShopFiles(dir);
    Map<String, String> en =
        YamlTexts.read(files, "content/words/en/catalogue.yaml", problems).orElseThrow();
    Map<String, String> es =
        YamlTexts.read(files, "content/words/es/catalogue.yaml", problems).orElseThrow();
    assertEquals(en.keySet(), es.keySet());
    assertEquals(List.of(), lines());
  }
}
