package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The command {@code why} as a user types it, on the demo shop. */
class WhyCommandTest {

  private static final Pattern SUM =
      Pattern.compile("([0-9.]+) reference hours at ([0-9.]+) an hour = ([0-9.]+) real hours");
  private static final Pattern SAFE = Pattern.compile("(?m)^  safe by (.*)");

  private String said = "";

  private int run(String... rest) {
    StringWriter out = new StringWriter();
    List<String> all = new ArrayList<>(List.of("why", "--shop", "content/demo"));
    all.addAll(List.of(rest));
    PrintWriter writer = new PrintWriter(out);
    int code = Curewindow.run(Clock.systemUTC(), writer, writer, all.toArray(String[]::new));
    writer.flush();
    said = out.toString();
    return code;
  }

  @ParameterizedTest
  @ValueSource(strings = {"Q-3101", "Q-3105", "Q-3110", "Q-3112", "Q-3116"})
  void isNoWiderThanATerminalAndTheSameEachTime(String job) {
    assertEquals(Exit.OK, run(job, "--all"), () -> said);
    String first = said;
    for (String line : first.split("\n")) {
      assertTrue(line.codePointCount(0, line.length()) <= 80, line);
    }
    run(job, "--all");
    assertEquals(first, said);
    run(job, "--all", "--plain");
    assertTrue(said.matches("[\\x20-\\x7e\\n]*"), said);
  }

  /** Rate to three digits and hours to one leave a product within a thousandth of each. */
  @ParameterizedTest
  @ValueSource(strings = {"Q-3101", "Q-3105", "Q-3110", "Q-3116"})
  void realHoursTimesRateAreTheReferenceHoursWhereADriverDecides(String job) {
    run(job);
    Matcher sum = SUM.matcher(said.replaceAll("\\s+", " "));
    int sums = 0;
    while (sum.find()) {
      double need = Double.parseDouble(sum.group(1));
      double rate = Double.parseDouble(sum.group(2));
      double real = Double.parseDouble(sum.group(3));
      double tolerance = 0.05 + 0.0005 * real + 0.05 * rate;
      assertEquals(need, rate * real, tolerance, sum.group());
      sums++;
    }
    assertTrue(sums > 0, said);
  }

  @Test
  void showsOnlyTheHoldsAskedForAndNamesTheNearestOne() {
    assertEquals(Exit.OK, run("Q-3101", "--hold", "windows-up,haze"));
    assertTrue(said.contains("[windows-up]") && said.contains("[haze]"), said);
    assertFalse(said.contains("[hand-wash]"), said);
    assertEquals(3, said.split("F floor, N need met").length);
    assertEquals(Exit.USAGE, run("Q-3101", "--hold", "window-up"));
    assertTrue(said.contains("did you mean windows-up?"), said);
  }

  @Test
  void triesAnotherCaseAndSaysThatItIsATrial() {
    run("Q-3101", "--hold", "windows-up");
    String asItIs = said;
    assertFalse(asItIs.contains("TRIAL"), asItIs);
    assertEquals(Exit.OK, run("Q-3101", "--hold", "windows-up", "--parking", "outside,heated"));
    assertTrue(said.startsWith("A TRIAL: not the job as its file has it"), said);
    assertTrue(said.contains("tried: parked outside by day, heated by night"), said);
    assertTrue(said.contains("Parking: outside by day, heated by night"), said);
    assertFalse(safe(asItIs).equals(safe(said)));
    run("Q-3101", "--hold", "windows-up", "--parking", "outside");
    assertEquals(asItIs, said.substring(said.indexOf("Job ")), "what it is, tried");
  }

  @Test
  void theDataSayWhatWasTriedAndHaveOnlyTheHoldsAskedFor() {
    assertEquals(Exit.OK, run("Q-3101", "--json", "--hold", "haze", "--parking", "garage"));
    assertTrue(said.contains("\"triedParking\" : true"), said);
    assertTrue(said.contains("\"triedPlace\" : false"), said);
    assertEquals(2, said.split("\"hold\" : \"").length);
    String once = said;
    run("Q-3101", "--json", "--hold", "haze", "--parking", "garage,garage");
    assertEquals(once, said);
  }

  @Test
  void aTriedPlaceMovesTheCarButNotTheWork() {
    assertEquals(Exit.OK, run("Q-3101", "--hold", "windows-up", "--place", "miami"));
    assertTrue(said.contains("tried: the car stands in Miami"), said);
    // 14:30 in Seattle is 17:30 in Miami.
    assertTrue(said.replaceAll("\\s+", " ").contains("finished Tue 24 Nov 2026 17:30"), said);
  }

  @Test
  void aTriedFinishIsByTheClocksWhereTheCarStandsAndThePickupMovesAlong() {
    run("Q-3101", "--hold", "windows-up", "--finished", "2026-07-01T10:00");
    assertTrue(said.contains("tried: all work finished Wed 1 Jul 2026 10:00"), said);
    assertTrue(said.contains("moved along, as long in the bay: pickup Wed 1 Jul 2026 12:30"), said);
    String local = said;
    run("Q-3101", "--hold", "windows-up", "--finished", "2026-07-01T13:00-04:00");
    assertEquals(local, said);
    run("Q-3101", "--place", "miami", "--finished", "2026-07-01T13:00", "--hold", "windows-up");
    assertTrue(said.contains("all work finished Wed 1 Jul 2026 13:00"), said);
    run("Q-3101", "--finished", "2026-07-01T10:00", "--pickup", "2026-07-01T18:00");
    assertTrue(said.contains("tried: pickup Wed 1 Jul 2026 18:00"), said);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--parking|outsid|did you mean outside?",
        "--parking|garage,heatd|did you mean heated?",
        "--parking|garage,|one is missing",
        "--parking|a,b,c|one each for day and night",
        "--place|seatle|did you mean seattle?",
        "--finished|yesterday|write it as 2026-11-25T14:30",
        "--finished|2026-02-30T10:00|check the month, the day and the year",
        "--finished|2026-12-02|add the hour: 2026-12-02T14:30",
        "--finished|02/12/2026 17:00|2026-12-02T17:00 or 2026-02-12T17:00: write the one you mean",
        "--finished|1999-12-01T10:00|2000 to 2099",
        "--finished|2026-03-08T02:30|skip from 2026-03-08T02:00",
        "--finished|2026-11-01T01:30|happens twice",
        "--pickup|2026-11-24T10:00|before the work is finished",
      })
  void whatCannotBeTriedIsSaidWithWhatToDo(String option, String value, String words) {
    assertEquals(Exit.USAGE, run("Q-3101", option, value), said);
    assertTrue(said.contains(words), said);
  }

  /** Q-3103 stands in Minneapolis in December; all is told by the clocks there. */
  @Test
  void aColdJobSaysHowFarItIsAtItsLimit() {
    assertEquals(Exit.OK, run("Q-3103", "--json", "--all"), () -> said);
    Matcher end =
        Pattern.compile(
                "\"state\" : \"at-limit\",\\s+\"end\" : \"[^\"]*-06:00\",[^}]*?\"share\" : 0\\.[0-9]+")
            .matcher(said);
    assertTrue(end.find(), said);
    assertEquals(Exit.OK, run("Q-3103"), () -> said);
    assertTrue(said.contains("cured in the median weather, fully about"), said);
    assertTrue(said.contains("by then fully cured in the median weather\n"), said);
  }

  /** Q-3110 stands in the warmth, where five days are more than a coating needs for its wash. */
  @Test
  void saysThatTheFloorDecidesInsteadOfASumThatDoesNotAddUp() {
    assertEquals(Exit.OK, run("Q-3110"), () -> said);
    assertTrue(said.contains("the floor decides: never sooner"), said);
    assertTrue(said.replaceAll("\\s+", " ").contains("reference hours of the 96.0 needed"), said);
  }

  private static String safe(String text) {
    Matcher safe = SAFE.matcher(text);
    assertTrue(safe.find(), text);
    return safe.group(1);
  }
}
