package curewindow.why;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.Lamp;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The text, where the weather is so simple that its numbers can be reckoned by hand. */
class WhyTextTest {

  private static final ExplanationChoice WINDOWS =
      new ExplanationChoice(List.of("windows-up"), false, false);

  /**
   * By hand: bond needs 48 reference hours, at 23 C one an hour. Median: 48 h after Wed 12:00, Fri
   * 12:00. Cold: at 13 C it gains exp(-50000/8.314 (1/286.15 - 1/296.15)) = 0.4918 an hour, so 6 h
   * in the bay and 42/0.4918 = 85.4 h after it, Sun 7:24, published for 8:00. In the garage on
   * Wednesday 6 + 6 x 0.4918 = 9.0, then 11.8 more a day.
   */
  @Test
  void showsTheWayToADateReckonedByHand() throws IOException {
    try (var golden = WhyTextTest.class.getResourceAsStream("steady.txt")) {
      String expected = new String(golden.readAllBytes(), StandardCharsets.UTF_8);
      assertEquals(expected, Why.of(Steady.inputs(Trial.NONE)).text(WINDOWS));
    }
  }

  @Test
  void addsUpHoursWhereADriverDecides() {
    String text = Why.of(Steady.inputs(Trial.NONE)).text(ExplanationChoice.USUAL);
    assertTrue(text.contains("48.0 reference hours at 1.000 an hour = 48.0 real hours"), text);
  }

  @Test
  void tellsEndsByTheClockWhereTheCarIs() {
    Why why = Why.of(Steady.inputs(Trial.NONE));
    String text = why.text(ExplanationChoice.USUAL).replaceAll("\\s+", " ");
    assertTrue(text.contains("safe by Sun 6 Sep 2026 08:00 likely"), text);
    assertTrue(why.json(ExplanationChoice.USUAL).contains("\"2026-09-06T08:00Z\""));
  }

  @Test
  void tellsStaysAndWhatWasSeen() {
    String text = flat(Why.of(Steady.cameBack()).text(ExplanationChoice.USUAL));
    String bay =
        "Wed 2 Sep 2026 12:00 to Wed 2 Sep 2026 18:00; Wed 16 Sep 2026 12:00 to Thu 17 Sep";
    assertTrue(text.contains(bay), text);
    assertTrue(text.contains("Seen 2026-09-09: windows-up, haze, fine; came by"), text);
    assertTrue(text.contains("over, as the shop has looked, Wed 9 Sep 2026 08:00"), text);
  }

  /**
   * By hand: a coating in a bay of rate 1 has 6 of its 24 hours after 6 h; 18 h more, or 6 h until
   * the floor of 12 h and for the 12 h left, at 60 C 9.5372 an hour, 75.5 minutes.
   */
  @Test
  void tellsTheShopBeforePickupWhatWouldLetTheCarLeaveInAnyWeather() {
    String text = flat(Why.of(Steady.coated(Optional.empty())).text(ExplanationChoice.USUAL));
    assertTrue(
        text.contains("Keep the coating dry: at pickup Tidewater Paint has 6 of its 24 hours"),
        text);
    assertTrue(
        text.contains(
            "keep the car in 18 hours longer (bay at 23 C), or give each part 80 minutes of lamp at"
                + " 60 C in the bay and keep the car in 6 hours longer, and the way home does no harm in any"
                + " weather; never more heat than its maker allows"),
        text);
    String tint = Why.of(Steady.inputs(Trial.NONE)).text(ExplanationChoice.USUAL);
    assertFalse(tint.contains("Before pickup"), "a roll-down window stays up on the road too");
  }

  /**
   * By hand: 30 min at 60 C gave 4.7686 h, so 13.23 h are left; 6 of them the bay gives until the
   * floor, and 7.23 are 45.5 minutes at 60 C.
   */
  @Test
  void tellsWhatALampGave() {
    String text =
        flat(Why.of(Steady.coated(Optional.of(new Lamp(60, 30)))).text(ExplanationChoice.USUAL));
    assertTrue(text.contains("under the lamp: 30 minutes at 60 C"), text);
    assertTrue(text.contains("has 10 of its 24 hours keep the car in 14 hours longer"), text);
    assertTrue(text.contains("another 50 minutes of lamp at 60 C"), text);
    assertTrue(text.contains("the lamp gave 4.8 of them at the finish"), text);
    assertTrue(text.contains("the lamp gave 4.8 of the 36.0 reference hours needed"), text);
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void namesSpotsInWordsAndHoldsInWordsAndById() {
    String text = Why.of(Steady.inputs(Trial.NONE)).text(ExplanationChoice.USUAL);
    assertTrue(text.contains("front door windows"), text);
    assertFalse(text.contains("front-door-glass"), text);
    assertTrue(text.contains("Windows stay up  [windows-up]"), text);
  }

  @Test
  void drawsEachHoldWhereAskedAndOnlyTheFirstOtherwise() {
    Why why = Why.of(Steady.inputs(Trial.NONE));
    int holds = why.text(ExplanationChoice.USUAL).split(" likely ").length;
    assertEquals(2, why.text(ExplanationChoice.USUAL).split("F floor, N need met").length);
    int drawn =
        why.text(new ExplanationChoice(List.of(), true, false)).split("F floor, N need met").length;
    assertTrue(drawn > 5 && drawn <= holds + 1, drawn + " of " + holds);
  }

  @Test
  void plainTextIsAsciiAndNoLineIsWiderThanATerminal() {
    Why why = Why.of(Steady.inputs(Trial.NONE));
    String plain = why.text(new ExplanationChoice(List.of(), true, true));
    assertTrue(plain.matches("[\\x20-\\x7e\\n]*"), plain);
    String drawn = why.text(new ExplanationChoice(List.of(), true, false));
    assertTrue(drawn.contains("\u2588"), drawn);
    for (String line : (plain + drawn).split("\n")) {
      assertTrue(line.length() <= Lines.WIDTH, line);
    }
  }

  @Test
  void linesBreakBetweenWordsAndInsideOnlyWhereTheyMust() {
    Lines lines = new Lines(true);
    lines.say(2, "%s", "word ".repeat(40) + "x".repeat(200) + " \u00c5ngstr\u00f6m \u4e2d");
    String text = lines.text();
    for (String line : text.split("\n")) {
      assertTrue(line.length() <= Lines.WIDTH && line.startsWith("  "), line);
    }
    assertEquals(40, text.split("word", -1).length - 1);
    assertEquals(200, text.chars().filter(c -> c == 'x').count());
    assertTrue(text.contains("Angstrom ?"), text);
  }
}
