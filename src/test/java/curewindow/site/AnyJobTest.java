package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.handout.OfficeCallers;
import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.HandoutChoice;
import curewindow.shop.InkChoice;
import curewindow.shop.Job;
import curewindow.shop.SheetPaper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * No job stops the others, whatever it leaves out: every key that the schema of jobs does not ask
 * for is left out in turn, and all of them together, in every language and for every handout.
 */
final class AnyJobTest {

  private static final JsonMapper JSON = new JsonMapper();
  private static final Path CONTENT = Path.of("content");
  private static final Instant NOW = Instant.parse("2026-11-26T18:00:00Z");
  private static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);

  /** A job that has every key; JSON is YAML, too. */
  private static final String FULL =
      """
      {"id": "FULL", "first-name": "Mara", "language": "en",
       "car": {"year": 2021, "body": "sedan", "paint": "dark", "finish": "gloss",
               "text": "blue four-door", "lacks": ["defroster"]},
       "place": "seattle", "zone": "America/Los_Angeles",
       "parking": {"day": "outside", "night": "garage"}, "pickup": "2026-11-25T16:30",
       "items": [
         {"service": "tint", "film": "harbor-35", "spots": ["front-door-glass"],
          "finished": "2026-11-25T14:30", "vlt": 28, "glass-vlt": 80, "batch": "H35-0117",
          "warranty-years": 10, "lamp": {"surface": 60, "minutes": 30}}],
       "found": [{"kind": "old-film", "spots": ["back-glass"], "since": 2014, "text": "A line."}]}
      """;

  /** In place of the pickup, where the car comes back. */
  private static final String STAYS =
      """
      [{"in": "2026-11-25T09:00", "pickup": "2026-11-25T16:30"},
       {"in": "2026-11-26T09:00", "pickup": "2026-11-26T16:30"}]
      """;

  @TempDir Path temp;

  private static List<String> languages() throws IOException {
    try (Stream<Path> all = Files.list(CONTENT.resolve("words"))) {
      return all.filter(Files::isDirectory).map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  /** The keys that a schema does not ask for, each as the way to it. */
  private static List<List<String>> optional(JsonNode schema) {
    List<String> needed = new ArrayList<>();
    schema.path("required").forEach(r -> needed.add(r.asString()));
    schema.path("oneOf").forEach(o -> o.path("required").forEach(r -> needed.add(r.asString())));
    List<List<String>> found = new ArrayList<>();
    for (Map.Entry<String, JsonNode> entry : schema.path("properties").properties()) {
      if (!needed.contains(entry.getKey())) {
        found.add(List.of(entry.getKey()));
      }
      JsonNode inside = entry.getValue().has("items") ? entry.getValue().path("items") : null;
      for (List<String> way : optional(inside == null ? entry.getValue() : inside)) {
        found.add(Stream.concat(Stream.of(entry.getKey()), way.stream()).toList());
      }
    }
    return found;
  }

  /** Takes the last key of a way out; every way leads to a key that the full job has. */
  private static void leaveOut(ObjectNode job, List<String> way) {
    JsonNode at = job;
    for (String key : way.subList(0, way.size() - 1)) {
      at = at.path(key).isArray() ? at.path(key).path(0) : at.path(key);
    }
    String last = way.get(way.size() - 1);
    assertTrue(at.has(last), "the full job of this test lacks " + way + "; put it in");
    ((ObjectNode) at).remove(last);
  }

  /** The full job, one without each key, and one without any, by what they leave out. */
  private static Map<String, ObjectNode> jobs(String language) throws IOException {
    Path schema = CONTENT.resolve("schemas/job.schema.json");
    List<List<String>> ways = optional(JSON.readTree(Files.readString(schema)));
    assertTrue(ways.size() > 10, ways.toString());
    Map<String, ObjectNode> jobs = new TreeMap<>();
    ObjectNode full = (ObjectNode) JSON.readTree(FULL);
    full.put("language", language);
    jobs.put("nothing", full);
    ObjectNode cameBack = full.deepCopy();
    cameBack.remove("pickup");
    cameBack.set("stays", JSON.readTree(STAYS));
    jobs.put("pickup-for-stays", cameBack);
    for (List<String> way : ways) {
      ObjectNode without = full.deepCopy();
      leaveOut(without, way);
      jobs.put(String.join("-", way), without);
    }
    ObjectNode bare = full.deepCopy();
    ways.stream().filter(w -> w.size() == 1).forEach(w -> bare.remove(w.get(0)));
    ways.stream().filter(w -> w.size() > 1 && bare.has(w.get(0))).forEach(w -> leaveOut(bare, w));
    bare.put("parking", "outside");
    jobs.put("all", bare);
    return jobs;
  }

  /** One shop with the jobs of all languages, read once, as that takes most of the time. */
  private LoadedShop shop() throws IOException {
    Path folder = Files.createDirectories(temp.resolve("shop/jobs")).getParent();
    Files.copy(CONTENT.resolve("starter-shop/shop.yaml"), folder.resolve("shop.yaml"));
    for (String language : languages()) {
      for (Map.Entry<String, ObjectNode> job : jobs(language).entrySet()) {
        String id = language + "-" + job.getKey();
        job.getValue().put("id", id);
        if (job.getKey().equals("all")) {
          job.getValue().put("language", language);
        }
        Files.writeString(folder.resolve("jobs/" + id + ".yaml"), job.getValue().toString());
      }
    }
    return LoadedShop.load(folder, CLOCK);
  }

  @Test
  void whateverAJobLeavesOutEveryJobIsMade() throws IOException {
    LoadedShop shop = shop();
    List<String> ids = shop.jobs().stream().map(Job::id).toList();
    int expected = 0;
    for (String language : languages()) {
      expected += jobs(language).size();
    }
    assertEquals(expected, ids.size(), () -> shop.problems().toString());
    Random random = new Random(1);
    PressReport report = Press.run(shop, temp.resolve("out"), CLOCK, () -> Tokens.from(random));
    assertEquals(List.of(), report.problems());
    assertEquals(ids, report.made().stream().map(PressReport.Made::job).toList());
    cards(shop, random);
    Problems problems = new Problems();
    DueCalls.of(shop, NOW, problems);
    Office office = Office.of(shop, problems);
    OfficeCallers callers = office.callers(office.day(NOW), OfficeCallers.Most.ALL, problems);
    assertEquals(ids.size(), callers.callers().size());
    assertEquals(List.of(), problems.all());
  }

  private void cards(LoadedShop shop, Random random) throws IOException {
    CardFile cards = new CardFile(shop, CLOCK, () -> Tokens.from(random));
    for (Handout kind : Handout.values()) {
      CardFile.Result result =
          cards.write(
              shop.jobs(),
              new HandoutChoice(kind, Optional.of(SheetPaper.NONE), 1, InkChoice.USUAL),
              temp.resolve(kind.id() + ".pdf"),
              CompletableFuture.completedFuture(null));
      assertEquals(List.of(), result.problems());
      assertEquals(shop.jobs().size(), result.printed() + result.without().size(), kind.id());
    }
  }
}
