package curewindow.intake;

import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.NewShop;
import curewindow.site.LoadedShop;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A shop folder without jobs, and tables of the shop's diary: Quillhaven, an invented shop. */
final class Diary {

  static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-30T12:00:00Z"), ZoneOffset.UTC);

  static final String HEADINGS =
      "Auftrag;Vorname;Form;Lack;Fahrzeug;Abholtag;Abholzeit;Folie;Stelle;Fertig;Messung;Rolle\n";

  static final String MAP =
      String.join(
          "\n",
          "columns:",
          "  job: Auftrag",
          "  first-name: Vorname",
          "  body: Form",
          "  paint: Lack",
          "  car: Fahrzeug",
          "  pickup: [Abholtag, Abholzeit]",
          "  film: Folie",
          "  spots: Stelle",
          "  finished: Fertig",
          "  vlt: Messung",
          "  batch: Rolle",
          "fixed: {service: tint, parking-day: outside, parking-night: garage}",
          "names:",
          "  body: {Viert\u00FCrer: sedan, Kombi: wagon}",
          "  paint: {schwarz: dark, wei\u00DF: light}",
          "  film: {Hafen 35: harbor-35, Hafen 20: harbor-20}",
          "  spots: {Vordere T\u00FCren: front-door-glass, Heckscheibe: back-glass}",
          "");

  private Diary() {}

  /** Lays out a shop folder without jobs, with the map {@code diary}. */
  static Path shop(Path folder) throws IOException {
    assertTrue(!(NewShop.write(folder) instanceof NewShop.Refused));
    try (Stream<Path> jobs = Files.list(folder.resolve("jobs"))) {
      for (Path job : jobs.toList()) {
        Files.delete(job);
      }
    }
    map(folder, MAP);
    return folder;
  }

  static void map(Path shop, String text) throws IOException {
    Files.createDirectories(shop.resolve("imports"));
    Files.writeString(shop.resolve("imports/diary.yaml"), text);
  }

  /** A row of a good job. */
  static String row(String id, String film, String spots) {
    return id
        + ";J\u00F6rg;Viert\u00FCrer;schwarz;schwarzer Wagen;24.11.2026;17:00;"
        + film
        + ";"
        + spots
        + ";24.11.2026 14:30;28,5;H-1\n";
  }

  static ForeignTable table(String text) {
    return table(text, StandardCharsets.UTF_8);
  }

  static ForeignTable table(String text, Charset charset) {
    Problems problems = new Problems();
    return ForeignTable.of("diary.csv", text.getBytes(charset), problems)
        .orElseThrow(() -> new AssertionError(problems.all()));
  }

  static IntakePlan plan(Path shop, String text) {
    return Intake.plan(table(text), "diary", LoadedShop.load(shop, CLOCK));
  }

  static IntakePlan carryOut(Path shop, String text) throws IOException {
    return Intake.carryOut(table(text), "diary", shop, CLOCK);
  }

  static List<String> lines(List<Problem> problems) {
    return problems.stream().map(Problem::oneLine).toList();
  }

  /** The problems of all rows. */
  static List<String> lines(IntakePlan plan) {
    return plan.rows().stream().flatMap(r -> lines(r.problems()).stream()).toList();
  }

  static List<RowPlan.State> states(IntakePlan plan) {
    return plan.rows().stream().map(RowPlan::state).toList();
  }

  /** The texts of all job files by name. */
  static TreeMap<String, String> jobs(Path shop) throws IOException {
    TreeMap<String, String> jobs = new TreeMap<>();
    try (Stream<Path> files = Files.list(shop.resolve("jobs"))) {
      for (Path file : files.toList()) {
        jobs.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    return jobs;
  }
}
