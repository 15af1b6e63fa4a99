package curewindow.why;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.Lamp;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The page docs/why.md and the data have the same fields. */
class WhyPageTest {

  private static final Path PAGE = Path.of("docs/why.md");
  private static final Pattern ROW = Pattern.compile("\\| (`[^|]*) \\|([^|]*)\\|");
  private static final Pattern NAME = Pattern.compile("`([A-Za-z0-9]+)`");

  /** Where the tables of the page say their fields stand, by the sentence before the table. */
  private static final Map<String, String> TABLES =
      Map.ofEntries(
          Map.entry("The object:", ""),
          Map.entry("Each entry of `items`:", "items"),
          Map.entry("`beforePickup`:", "beforePickup"),
          Map.entry("Each entry of `lacking`:", "beforePickup.lacking"),
          Map.entry("Each entry of `holds`:", "holds"),
          Map.entry("`because` and `becauseLikely`:", "holds.because"),
          Map.entry("`way` and `wayLikely`:", "holds.way"),
          Map.entry("Each entry of `days`:", "holds.way.days"),
          Map.entry("`ends`:", "holds.ends"),
          Map.entry("Each entry of `marks`:", "holds.ends.marks"));

  @Test
  void everyFieldIsDescribedAndEveryDescribedFieldIsThere() throws IOException {
    TreeMap<String, TreeSet<String>> described = described();
    assertEquals(TABLES.size(), described.size(), () -> described.keySet().toString());
    TreeMap<String, TreeSet<String>> found = new TreeMap<>();
    ExplanationInputs lamped = Steady.coated(Optional.of(new Lamp(60, 30)));
    for (ExplanationInputs inputs : List.of(Steady.cameBack(), lamped)) {
      String json = Why.of(inputs).json(ExplanationChoice.USUAL);
      collect("", JsonMapper.builder().build().readTree(json), found);
    }
    assertEquals(found.remove("items.lamp"), found.remove("beforePickup.lamp"));
    TreeSet<String> inside = new TreeSet<>();
    for (String nested : List.of("place", "parking", "bay", "trial", "stays", "seen")) {
      TreeSet<String> names = found.remove(nested);
      assertTrue(described.get("").containsAll(names), nested + " " + names);
      inside.addAll(names);
    }
    described.get("").removeAll(inside);
    assertEquals(described, found);
  }

  private static void collect(String at, JsonNode node, Map<String, TreeSet<String>> found) {
    if (node.isObject()) {
      node.properties()
          .forEach(
              field -> {
                found.computeIfAbsent(at, a -> new TreeSet<>()).add(field.getKey());
                String name = field.getKey().replaceAll("^(because|way)Likely$", "$1");
                collect(at.isEmpty() ? name : at + "." + name, field.getValue(), found);
              });
    }
    if (node.isArray()) {
      node.forEach(entry -> collect(at, entry, found));
    }
  }

  private static TreeMap<String, TreeSet<String>> described() throws IOException {
    TreeMap<String, TreeSet<String>> described = new TreeMap<>();
    String at = "";
    boolean known = false;
    for (String line : Files.readAllLines(PAGE)) {
      if (TABLES.containsKey(line)) {
        at = TABLES.get(line);
        known = true;
      }
      Matcher row = ROW.matcher(line);
      if (known && row.find()) {
        TreeSet<String> names = described.computeIfAbsent(at, a -> new TreeSet<>());
        Matcher name = NAME.matcher(at.isEmpty() ? nested(row) : row.group(1));
        while (name.find()) {
          names.add(name.group(1));
        }
      }
    }
    return described;
  }

  /** A field, and after "with" the fields inside it. */
  private static String nested(Matcher row) {
    String meaning = row.group(2);
    int with = meaning.indexOf("with `");
    return row.group(1) + (with < 0 ? "" : meaning.substring(with));
  }
}
