package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The shipped JSON Schemas agree with the reader, as far as a schema can express what it checks.
 */
class SchemasTest {

  private static final Path FOLDER = Path.of("content/schemas");
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

  /** Files with problems that need more than one file or the calendar to see. */
  private static final List<String> BEYOND_A_SCHEMA =
      List.of(
          "content/places/Bad Name.yaml",
          "content/places/missing-file.yaml",
          "content/places/too-sunny.yaml",
          "jobs/2.yaml of weather-files-wrong",
          "jobs/4.yaml of bad-ids",
          "jobs/5.yaml of bad-ids",
          "jobs/3.yaml of bad-times",
          "jobs/3.yaml of unknown-names",
          "jobs/4.yaml of unknown-names",
          "jobs/4.yaml of bad-times",
          "jobs/1.yaml of catalogue-wrong",
          "jobs/1.yaml of shop-wrong");

  static Stream<Path> schemas() throws IOException {
    try (Stream<Path> all = Files.list(FOLDER)) {
      return all.sorted().toList().stream();
    }
  }

  static Stream<Path> goodFiles() throws IOException {
    List<Path> roots =
        List.of(
            Path.of("content/catalogue"),
            Path.of("content/words"),
            Path.of("content/demo"),
            Path.of("content/starter-shop"),
            TestShops.CASES.resolve("base"),
            TestShops.CASES.resolve("good"));
    Stream.Builder<Path> files = Stream.builder();
    for (Path root : roots) {
      try (Stream<Path> all = Files.walk(root)) {
        all.filter(p -> p.toString().endsWith(".yaml")).sorted().forEach(files::add);
      }
    }
    return files.build();
  }

  private static Schema schemaFor(String file) throws IOException {
    String name = file.substring(file.lastIndexOf('/') + 1, file.length() - ".yaml".length());
    if (file.contains("/words/")) {
      name = "words";
    } else if (file.contains("jobs/")) {
      name = "job";
    } else if (file.contains("content/places/")) {
      name = "place";
    }
    return REGISTRY.getSchema(Files.readString(FOLDER.resolve(name + ".schema.json")));
  }

  private static List<String> errors(Path file) throws IOException {
    return schemaFor(file.toString().replace('\\', '/'))
        .validate(Files.readString(file), InputFormat.YAML)
        .stream()
        .map(e -> e.getInstanceLocation() + " " + e.getMessage())
        .toList();
  }

  @ParameterizedTest
  @MethodSource("schemas")
  void isItselfASchema(Path schema) throws IOException {
    Schema meta =
        REGISTRY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    assertEquals(
        List.of(), meta.validate(Files.readString(schema), InputFormat.JSON), schema.toString());
  }

  @ParameterizedTest
  @MethodSource("schemas")
  void explainsEveryKey(Path schema) throws IOException {
    explained(JsonMapper.shared().readTree(Files.readString(schema)), schema.toString());
  }

  private static void explained(JsonNode node, String where) {
    node.path("properties")
        .properties()
        .forEach(
            p -> {
              if (!p.getValue().has("const")) {
                assertTrue(p.getValue().has("description"), where + " " + p.getKey());
              }
            });
    node.forEach(child -> explained(child, where));
  }

  @ParameterizedTest
  @MethodSource("goodFiles")
  void goodFilesAreValid(Path file) throws IOException {
    assertEquals(List.of(), errors(file));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "unknown-names",
        "bad-times",
        "out-of-range",
        "bad-ids",
        "wrong-types",
        "unknown-keys",
        "missing-keys",
        "no-value",
        "no-items",
        "named-twice",
        "too-long",
        "shop-wrong",
        "catalogue-wrong",
        "places-wrong",
        "weather-files-wrong",
        "lamp-wrong",
        "ink-unnamed",
        "film-of-another-service",
        "duplicate-id"
      })
  void badFilesAreNotValid(String name) throws IOException {
    Path folder = TestShops.CASES.resolve(name);
    String expected = Files.readString(folder.resolve("expected.txt"));
    boolean onlyTogether = List.of("film-of-another-service", "duplicate-id").contains(name);
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(p -> p.toString().endsWith(".yaml")).sorted().toList()) {
        String relative = folder.relativize(file).toString().replace('\\', '/');
        boolean bad = expected.contains(relative + ":") && !onlyTogether;
        boolean beyond =
            BEYOND_A_SCHEMA.contains(relative)
                || BEYOND_A_SCHEMA.contains(relative + " of " + name)
                || relative.equals("jobs/2.yaml") && name.equals("places-wrong");
        assertEquals(bad && !beyond, !errors(file).isEmpty(), relative + " " + errors(file));
      }
    }
  }

  @Test
  void everyFileWithAKeyThatIsUnknownIsNotValid() throws IOException {
    Pattern key = Pattern.compile("(?m)^( *)([a-z-]+):");
    int tried = 0;
    for (Path file : goodFiles().toList()) {
      String text = Files.readString(file);
      Map<Integer, String> deepest = new TreeMap<>();
      Matcher match = key.matcher(text);
      while (match.find()) {
        deepest.putIfAbsent(match.group(1).length(), match.group());
      }
      String first = deepest.get(0);
      String changed = text.replaceFirst("(?m)^" + first, "unheard-of: 1\n" + first);
      assertFalse(
          schemaFor(file.toString()).validate(changed, InputFormat.YAML).isEmpty(),
          file.toString());
      tried++;
    }
    assertTrue(tried >= 10);
  }
}
