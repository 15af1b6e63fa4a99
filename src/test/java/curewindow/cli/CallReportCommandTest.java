package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.site.CalledShop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Calls are noted and counted on the command line. */
class CallReportCommandTest {

  @TempDir Path shop;
  private String said = "";

  @BeforeEach
  void layOut() throws IOException {
    CalledShop.layOut(shop);
  }

  private int questions(String... words) {
    List<Object> all = new ArrayList<>(List.of("questions", "--shop", shop));
    all.addAll(List.of(words));
    Typed typed = Typed.run(CalledShop.CLOCK, all.toArray());
    said = typed.said();
    return typed.code();
  }

  @Test
  void aCallIsNoted() throws IOException {
    assertEquals(
        Exit.OK, questions("--asked", "Q-3207", "--about", "haze", "--outcome", "coming-in"));
    assertEquals("noted: Q-3207 called, haze, coming-in", said.strip());
    assertEquals(Exit.OK, questions("--asked", "Q-3207"));
    assertTrue(
        Files.readString(shop.resolve("callbacks.csv"))
            .endsWith(
                "\nQ-3207,2026-11-30T12:00,haze,coming-in\nQ-3207,2026-11-30T12:00,other,open\n"));
  }

  @Test
  void whatCannotBeNotedIsSaid() throws IOException {
    String before = Files.readString(shop.resolve("callbacks.csv"));
    assertEquals(Exit.PROBLEMS, questions("--asked", "Q-3207", "--about", "hase"));
    assertTrue(said.startsWith("There is no question hase; did you mean haze?"), said);
    assertEquals(Exit.PROBLEMS, questions("--asked", "Q-9", "--about", "haze"));
    assertTrue(said.startsWith("There is no job Q-9"), said);
    assertEquals(Exit.USAGE, questions("--asked", "Q-3207", "--outcome", "done"));
    assertTrue(said.contains("--outcome done is none of solved, coming-in, open"), said);
    assertEquals(Exit.USAGE, questions("--asked", "Q-3207", "--report"));
    assertEquals(Exit.USAGE, questions("--about", "haze"));
    assertEquals(Exit.USAGE, questions("--csv"));
    assertEquals(before, Files.readString(shop.resolve("callbacks.csv")));
  }

  @Test
  void daysToComeAreRefused() {
    for (String option : List.of("--day", "--since", "--changed")) {
      assertEquals(Exit.USAGE, questions("--report", option, "2026-12-01"));
      assertTrue(said.contains(option + " 2026-12-01 is still to come"), said);
    }
    assertEquals(Exit.OK, questions("--report", "--day", "2026-11-30"), () -> said);
  }

  @Test
  void aBrokenFileComesFirst() throws IOException {
    Files.writeString(
        shop.resolve("callbacks.csv"), "job,at,question,outcome\nQ-3201,,haze,open\n");
    assertEquals(Exit.PROBLEMS, questions("--report"));
    assertTrue(said.contains("callbacks.csv:2:1  \"\" is not a date"), said);
  }

  @Test
  void theReportSaysHowSureItIs() {
    assertEquals(Exit.OK, questions("--report"), () -> said);
    // Garwood's interval of 9 is 4.115 to 17.085 (from memory), of 54: 7.6 to 31.6.
    assertTrue(
        said.startsWith(
            "9 calls from 54 cars handed over: 17 per 100, likely 7 to 32.\n"
                + "Cars picked up 2026-10-01 to 2026-11-30.\n"),
        said);
    assertTrue(
        said.contains("Left out: 2 calls, as no card was handed over, or the car is still"), said);
    assertTrue(said.lines().anyMatch(l -> l.matches("  wrap +0 of 1 +too few to tell .*")), said);
    assertFalse(said.contains("Before and after"), said);
    assertTrue(said.lines().allMatch(l -> l.length() <= 110 && l.equals(l.stripTrailing())), said);
    assertEquals(Exit.OK, questions("--report", "--changed", "2026-11-29"));
    assertTrue(said.contains("it is too soon to tell"), said);
  }

  /** Every number of a row stands in the line of the text that begins with its name. */
  @Test
  void theRowsSayWhatTheTextSays() {
    questions("--report", "--changed", "2026-10-16");
    List<String> text = said.replaceAll("(?<=\\d),(?=\\d)", "").lines().toList();
    assertEquals(Exit.OK, questions("--report", "--csv", "--changed", "2026-10-16"));
    List<Map<String, String>> rows = rows(said);
    assertEquals(1 + 4 + 3 + 5 + 7 + 2 + 4 + 3 * 4, rows.size(), said);
    Map<String, String> all = rows.get(0);
    assertTrue(
        text.get(0)
            .startsWith(
                "%s calls from %s cars handed over: %s per 100, likely %s to %s"
                    .formatted(of(all, "calls", "handovers", "per-100", "low", "high"))),
        text.get(0));
    for (Map<String, String> row : rows) {
      switch (row.get("table")) {
        case "service", "question", "days" -> inText(text, row, "calls", "handovers");
        case "hold" -> inText(text, row, "calls", "of-calls");
        case "page" -> inText(text, row, "place", "at-a-glance", "folded", "not-there");
        case "change" -> changeInText(text, row);
        default -> assertTrue(row.get("table").matches("all|left-out|before|after"), row::toString);
      }
    }
  }

  /** A change stands with what was before and after it, which are rows of their own. */
  private static void changeInText(List<String> text, Map<String, String> row) {
    String name = row.get("id").isEmpty() ? "All calls" : row.get("id");
    String numbers =
        "  %s +\\d+ of \\d+ +\\d+ of \\d+ +%s +%s to %s .*"
            .formatted(name, row.get("per-100"), row.get("low"), row.get("high"));
    assertTrue(text.stream().anyMatch(l -> (l + " ").matches(numbers)), () -> numbers + text);
  }

  private static void inText(List<String> text, Map<String, String> row, String... counts) {
    StringBuilder line = new StringBuilder("  " + row.get("id"));
    int begin = line.length();
    for (Object count : of(row, counts)) {
      line.append(line.length() == begin ? " +" : row.get("table").equals("page") ? " +" : " of ");
      line.append(count.equals("") ? "-" : count);
    }
    if (!row.get("table").equals("page")) {
      line.append(
          row.get("told").equals("too-few")
              ? " +too few to tell"
              : " +%s +%s to %s".formatted(of(row, "per-100", "low", "high")));
    }
    String wanted = line + " .*";
    assertTrue(text.stream().anyMatch(l -> (l + " ").matches(wanted)), () -> wanted + "\n" + text);
  }

  private static Object[] of(Map<String, String> row, String... names) {
    return List.of(names).stream().map(row::get).toArray();
  }

  /** No label of this shop has a comma but the one of later days. */
  private static List<Map<String, String>> rows(String csv) {
    List<String> lines = csv.replace("\"later, so far\"", "later").lines().toList();
    String[] header = lines.get(0).split(",");
    return lines.stream()
        .skip(1)
        .map(line -> line.split(",", -1))
        .map(
            cells ->
                IntStream.range(0, header.length)
                    .boxed()
                    .collect(
                        Collectors.toMap(i -> header[i], i -> cells[i], (a, b) -> a, TreeMap::new)))
        .map(row -> (Map<String, String>) row)
        .toList();
  }
}
