package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.shop.JobDraft.CarDraft;
import curewindow.shop.JobDraft.ItemDraft;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Job files are written as people write them, and a change leaves alone what it does not concern.
 */
class JobTextTest {

  private static final String FILE =
      """
      # A van that comes in on Fridays.
      id: Q-7   # ours
      first-name: 'Mara'

      car: {body: sedan, paint: dark, text: black four-door}
      # where it sleeps
      parking: {day: outside, night: garage}
      pickup: 2026-11-24T17:00
      items:
        # the front first
        - service: tint
          film: harbor-35  # a new roll
          spots: [front-door-glass]
          finished: 2026-11-24T14:30
        - service: tint
          film: harbor-20
          spots: [back-glass]
          finished: 2026-11-24T15:30
          batch: "0611"
      found:
        - {kind: chip, spots: [hood]}
      """;

  static Stream<Path> demo() throws Exception {
    return Files.list(Path.of("content/demo/jobs"))
        .filter(f -> f.toString().endsWith(".yaml"))
        .sorted();
  }

  @ParameterizedTest
  @MethodSource("demo")
  void aJobOfTheDemoIsTheSameWrittenFromItsDraft(Path file) throws Exception {
    String text = Files.readString(file);
    JobDraft draft = JobText.read(text).orElseThrow();
    assertEquals(Optional.of(draft), JobText.read(JobText.of(draft)));
    assertEquals(Optional.of(text), JobText.changed(text, draft));
  }

  @Test
  void aJobIsWrittenAsAPersonWould() {
    JobDraft draft =
        new JobDraft(
            "Q-7",
            "Mara",
            "",
            new CarDraft("2023", "sedan", "dark", "", "black: four-door", List.of()),
            "seattle",
            "outside",
            "garage",
            "2026-11-24T17:00",
            List.of(
                new ItemDraft(
                    "tint",
                    "harbor-35",
                    List.of("front-door-glass", "back-glass"),
                    "2026-11-24T14:30",
                    "28.5",
                    "",
                    "0611",
                    "10",
                    "",
                    "")));
    assertEquals(
        """
        id: Q-7
        first-name: Mara
        car: {year: 2023, body: sedan, paint: dark, text: "black: four-door"}
        place: seattle
        parking: {day: outside, night: garage}
        pickup: 2026-11-24T17:00
        items:
          - service: tint
            film: harbor-35
            spots: [front-door-glass, back-glass]
            finished: 2026-11-24T14:30
            vlt: 28.5
            batch: "0611"
            warranty-years: 10
        """,
        JobText.of(draft));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "no",
        "Yes",
        "null",
        "~",
        "- a",
        "a: b",
        "a #b",
        "#1",
        "*x",
        "&x",
        "!x",
        "'",
        "\"",
        "\\",
        "{a}",
        "[a]",
        "a, b",
        "0611",
        "1e3",
        "0x1F",
        "1_000",
        "12:30",
        "é",
        "\u0645\u0627\u0631\u0627",
        "a\tb",
        "%",
        "@",
        "`",
        "?",
        "|",
        ">",
        ".5",
        "-1",
        "+1",
        "1.",
        "2026-11-24",
        "\uD83D\uDE97 red",
        "a:",
        "on"
      })
  void anyNameComesBackAsItWasTyped(String name) {
    JobDraft draft = named(JobText.read(FILE).orElseThrow(), name);
    assertEquals(Optional.of(draft), JobText.read(JobText.of(draft)), JobText.of(draft));
    String changed = JobText.changed(FILE, draft).orElseThrow();
    assertEquals(Optional.of(draft), JobText.read(changed), changed);
    assertEquals(
        FILE.lines().filter(l -> !l.startsWith("first-name")).toList(),
        changed.lines().filter(l -> !l.startsWith("first-name")).toList());
  }

  @Test
  void aChangeKeepsOrderAndComments() {
    JobDraft d = JobText.read(FILE).orElseThrow();
    ItemDraft first = d.items().get(0);
    ItemDraft other =
        new ItemDraft(
            "tint", "harbor-50", first.spots(), first.finished(), "", "", "B-1", "", "", "");
    JobDraft changed =
        new JobDraft(
            "Q-7",
            "",
            "es",
            d.car(),
            "",
            "shade",
            "garage",
            d.pickup(),
            List.of(other, d.items().get(1), first));
    assertEquals(
        """
        # A van that comes in on Fridays.
        id: Q-7   # ours
        language: es

        car: {body: sedan, paint: dark, text: black four-door}
        # where it sleeps
        parking: {day: shade, night: garage}
        pickup: 2026-11-24T17:00
        items:
          # the front first
          - service: tint
            film: harbor-50  # a new roll
            spots: [front-door-glass]
            finished: 2026-11-24T14:30
            batch: B-1
          - service: tint
            film: harbor-20
            spots: [back-glass]
            finished: 2026-11-24T15:30
            batch: "0611"
          - service: tint
            film: harbor-35
            spots: [front-door-glass]
            finished: 2026-11-24T14:30
        found:
          - {kind: chip, spots: [hood]}
        """,
        JobText.changed(FILE, changed).orElseThrow());
  }

  @Test
  void whereAnItemIsTakenAwayTheOthersStay() {
    JobDraft d = JobText.read(FILE).orElseThrow();
    JobDraft changed =
        new JobDraft(
            d.id(),
            "Mara",
            "",
            d.car(),
            "",
            "outside",
            "garage",
            d.pickup(),
            List.of(d.items().get(1)));
    String text = JobText.changed(FILE, changed).orElseThrow();
    assertTrue(text.endsWith("batch: \"0611\"\nfound:\n  - {kind: chip, spots: [hood]}\n"), text);
    assertTrue(text.startsWith("# A van that comes in on Fridays.\nid: Q-7   # ours\n"), text);
  }

  @Test
  void linesKeepTheirEndings() {
    String windows = FILE.replace("\n", "\r\n");
    String changed =
        JobText.changed(windows, named(JobText.read(windows).orElseThrow(), "Ana")).orElseThrow();
    assertEquals(windows.replace("'Mara'", "Ana"), changed);
  }

  @Test
  void whatIsNotAKeyOnALineIsLeftToAPerson() {
    String flow =
        "{id: Q-7, car: {body: sedan, paint: dark}, parking: outside, pickup: 2026-11-24T17:00}\n";
    JobDraft draft = JobText.read(flow).orElseThrow();
    assertEquals(Optional.of(flow), JobText.changed(flow, draft));
    assertEquals(Optional.empty(), JobText.changed(flow, named(draft, "Ana")));
    assertEquals(Optional.empty(), JobText.changed("id: [", draft));
  }

  private static JobDraft named(JobDraft d, String name) {
    return new JobDraft(
        d.id(),
        name,
        d.language(),
        d.car(),
        d.place(),
        d.parkingDay(),
        d.parkingNight(),
        d.pickup(),
        d.items());
  }

  @Test
  void oneJobIsReadAsThoseOfTheFolderAre() {
    ShopRead read =
        ShopFolder.read(
            new ShopFiles(Path.of("content/demo")), Instant.parse("2026-11-25T12:00:00Z"));
    for (Job job : read.jobs()) {
      if (job.stays().size() == 1 && job.found().isEmpty() && job.seen().isEmpty()) {
        ZoneId zone = read.shop().orElseThrow().zone();
        JobCheck.Tried tried = read.oneJob().read("x.yaml", JobText.of(JobText.of(job, zone)));
        Job got = tried.job().orElseThrow(() -> new AssertionError(tried.problems().toString()));
        assertEquals(job.items(), got.items());
        assertEquals(job.car(), got.car());
        assertEquals(job.pickup(), got.pickup());
      }
    }
    JobCheck.Tried wrong =
        read.oneJob().read("x.yaml", FILE.replace("film: harbor-20", "film: harbor-2000"));
    assertTrue(wrong.job().isEmpty());
    assertTrue(
        wrong.problems().stream().anyMatch(p -> p.path().equals("items[2].film")),
        wrong.problems()::toString);
  }
}
