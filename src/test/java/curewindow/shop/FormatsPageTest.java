package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What docs/formats.md says is true of the reader. */
class FormatsPageTest {

  private static final Pattern EXAMPLE =
      Pattern.compile("(?s)\n## ([^\n]+)\n(?:(?!\n## ).)*?```[a-z]+\n(.*?)```");

  @TempDir Path dir;

  private static String page() throws IOException {
    return Files.readString(Path.of("docs/formats.md"));
  }

  @Test
  void theExamplesReadWithoutProblems() throws IOException {
    TestShops.base(dir);
    Map<String, String> names =
        Map.of(
            "jobs/*.yaml",
            "jobs/2.yaml",
            "content/places/*.yaml",
            "content/places/mill.yaml",
            "imports/*.yaml",
            "imports/diary.yaml");
    List<MatchResult> examples = EXAMPLE.matcher(page()).results().toList();
    int written = 0;
    for (MatchResult example : examples) {
      String name = names.getOrDefault(example.group(1), example.group(1));
      if (name.contains(".") && !name.contains("catalogue")) {
        Files.createDirectories(dir.resolve(name).getParent());
        Files.writeString(dir.resolve(name), example.group(2));
        written++;
      }
    }
    ShopRead read = TestShops.read(dir);
    assertEquals(List.of(), TestShops.lines(read));
    assertEquals(7, written);
    Problems problems = new Problems();
    assertTrue(ImportMaps.read(new ShopFiles(dir), "diary", problems).isPresent());
    assertEquals(List.of(), problems.all());
    assertEquals(2, read.observed().get("seattle").count());
    assertEquals(List.of("1", "C-1", "K-1042"), read.jobs().stream().map(Job::id).toList());
    assertTrue(read.places().containsKey("mill"));
    assertEquals(3, read.jobs().get(2).seen().size());
    assertEquals(2, read.jobs().get(1).items().size());
  }

  @Test
  void everyKeyOfTheSchemasIsExplained() throws IOException {
    String page = page();
    for (Path schema : SchemasTest.schemas().toList()) {
      explained(JsonMapper.shared().readTree(Files.readString(schema)), page, schema.toString());
    }
  }

  private static void explained(JsonNode node, String page, String where) {
    for (Map.Entry<String, JsonNode> key : node.path("properties").properties()) {
      assertTrue(page.contains("`" + key.getKey() + "`"), where + " " + key.getKey());
    }
    node.forEach(child -> explained(child, page, where));
  }

  @Test
  void everyColumnOfTheCsvFileIsExplained() throws IOException {
    String page = page();
    for (String column : CsvJobs.columns()) {
      assertTrue(page.contains("`" + column + "`"), column);
    }
    for (String column : VisitRowReader.COLUMNS) {
      assertTrue(page.contains("`" + column + "`"), column);
    }
    for (String column : ObservedReader.columns()) {
      assertTrue(page.contains("`" + column + "`"), column);
    }
  }
}
