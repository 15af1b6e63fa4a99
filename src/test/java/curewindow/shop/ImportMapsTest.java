package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Maps of imports: what they take, and what is told of others, by the reader and by the schema. */
class ImportMapsTest {

  private static final String GOOD =
      String.join(
          "\n",
          "columns: {job: No, body: Body, paint: Paint, pickup: [Day, Time], finished: Done}",
          "fixed: {parking-day: outside, parking-night: heated, service: tint, vlt: 28,",
          "  film: harbor-35, spots: hood}",
          "hours: {finished: \"16:00\"}",
          "dates: day-first",
          "spots-between: \"+\"",
          "names: {spots: {All Sides: [front-door-glass, rear-door-glass]}, body: {Car: sedan}}",
          "");

  @TempDir Path dir;

  private Problems problems = new Problems();

  private boolean reads(String text) throws IOException {
    Files.createDirectories(dir.resolve("imports"));
    Files.writeString(dir.resolve("imports/diary.yaml"), text);
    problems = new Problems();
    return ImportMaps.read(new ShopFiles(dir), "diary", problems).isPresent();
  }

  private static boolean isValid(String text) throws IOException {
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(Path.of("content/schemas/import.schema.json")));
    return schema.validate(text, InputFormat.YAML).isEmpty();
  }

  @Test
  void aMapIsReadAsWritten() throws IOException {
    assertTrue(reads(GOOD), () -> problems.all().toString());
    assertTrue(isValid(GOOD));
    ImportMap map = ImportMaps.read(new ShopFiles(dir), "diary", problems).orElseThrow();
    assertEquals(DateOrder.DAY_FIRST, map.dates().orElseThrow());
    assertEquals("28", map.fixed().get("vlt"));
    assertEquals(
        List.of("front-door-glass", "rear-door-glass"),
        map.names().get("spots").get(ImportMap.key("ALL  sides")));
    assertEquals(
        List.of("Day", "Time"),
        map.columns().get("pickup").stream().map(PlacedText::text).toList());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "body: Body|bodie: Body|unknown-column|1",
        "dates: day-first|dates: day|unknown-order-of-dates|5",
        "\"16:00\"|\"4 pm\"|bad-hour|4",
        "hours: {finished|hours: {film|unknown-column|4",
        "fixed: {parking-day|fixed: {job: 1, parking-day|unknown-column|2",
        "[Day, Time]|[]|no-value|1",
        "[Day, Time]|{x: y}|wrong-type|1",
        "{Car: sedan}|{Car: [sedan, suv]}|several-names|7",
        "spots-between|between|unknown-key|6",
        "names: {spots|names: {vlt|unknown-column|7"
      })
  void whatIsWrongIsToldWithItsLine(String good, String bad, String code, int line)
      throws IOException {
    String text = GOOD.replace(good, bad);
    assertFalse(reads(text));
    Problem problem =
        problems.all().stream().filter(p -> p.code().equals(code)).findFirst().orElseThrow();
    assertEquals(line, problem.line(), problem.oneLine());
    assertFalse(isValid(text), text);
  }

  @Test
  void whatNoJobCanDoWithoutIsAsked() throws IOException {
    for (String column : JobColumns.required()) {
      String text = GOOD.replaceFirst("\\b" + column + ": (\\[[^]]*]|[\\w-]+)(, |,\n *)?", "");
      assertFalse(reads(text), column);
      assertTrue(
          problems.all().stream().anyMatch(p -> p.message().equals("nothing tells " + column)),
          problems.all().toString());
    }
  }

  @Test
  void namesThatOnlyDifferInCapitalsStandOnce() throws IOException {
    assertFalse(reads(GOOD.replace("{Car: sedan}", "{Car: sedan, CAR: suv}")));
    assertEquals("duplicate-key", problems.all().get(0).code());
  }

  @Test
  void tablesHaveNamesForTheirMaps() {
    Map<String, String> names =
        Map.of(
            "Diary 2026.csv",
            "diary-2026",
            "Auftr\u00E4ge.CSV",
            "auftrage",
            "-.csv",
            "table",
            "x".repeat(60),
            "x".repeat(40));
    names.forEach((file, name) -> assertEquals(name, ImportMaps.nameFor(file)));
    names.values().forEach(name -> assertTrue(ImportMaps.isName(name), name));
  }
}
