package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DateListTest {

  private static DateList.Dates dates(Demo demo) {
    return new DateList(new Cases(List.of(demo.view()))).dates();
  }

  private static DateList.Row row(DateList.Dates dates, String hold) {
    return dates.rows().stream().filter(r -> r.hold().equals(hold)).findFirst().orElseThrow();
  }

  /** The last hold ends 24 days less 7 hours after the pickup; the line is linear until then. */
  @Test
  void theLineIsLinearFromThePickupToTheLastHold() {
    Demo demo = Demo.tint();
    DateList.Dates dates = dates(demo);
    Duration whole = Duration.between(demo.pickup, Demo.at("2026-12-25T09:00"));
    assertEquals(demo.pickup.getEpochSecond(), dates.start());
    assertEquals(whole.toSeconds(), dates.span());
    assertEquals(List.of("Dec 1", "Dec 25"), dates.days());
    assertEquals("100%", row(dates, "inside-glass").bar());
    double windows = 100.0 * Duration.ofHours(70).toMinutes() / whole.toMinutes();
    assertEquals(
        windows, Double.parseDouble(row(dates, "windows-up").bar().replace("%", "")), 0.05);
    assertEquals(Optional.empty(), row(dates, "windows-up").cut(), "whole");
  }

  @Test
  void whatIsNormalForLongerRunsOffTheLine() {
    DateList.Row haze = row(dates(Demo.tint()), "haze");
    assertEquals("100%", haze.bar());
    assertEquals("100%", haze.sure());
    assertEquals(Optional.of("inline"), haze.cut(), "drawn broken");
  }

  @Test
  void withNoHoldTheLineEndsWithWhatIsNormal() {
    DateList.Dates dates = dates(Demo.nothingToHold());
    assertEquals("100%", row(dates, "haze").bar());
    assertEquals(Optional.empty(), row(dates, "haze").cut());
    Demo none = Demo.nothingToHold();
    none.releases.clear();
    assertEquals(List.of(), dates(none).rows());
    assertTrue(dates(none).span() > 0);
  }

  /** At the limit and by the season nothing is likely: the list says what is known. */
  @Test
  void nothingIsCalledLikelyWhereNothingIs() {
    Demo demo = Demo.tint();
    demo.releases.clear();
    demo.safe("windows-up", HoldKind.HOLD, "2026-12-15T14:00", "2026-12-15T14:00");
    demo.limit("windows-up", 0.6, "2027-02-20T12:00");
    Instant spring = Demo.at("2027-06-26T09:00");
    demo.releases.add(demo.release("haze", HoldKind.SETTLE, new Release.BySeason(spring), spring));
    demo.safe("hand-wash", HoldKind.HOLD, "2026-12-04T15:00", "2026-12-04T10:10");
    DateList.Dates dates = dates(demo);
    assertEquals(List.of(), row(dates, "windows-up").likelyDay());
    assertTrue(row(dates, "windows-up").first(), "the answer on top says how far it is set");
    assertEquals("about the end of June", row(dates, "haze").day().get(0).text());
    assertEquals(List.of(), row(dates, "haze").time(), "no hour");
    assertEquals(List.of(), row(dates, "haze").likelyDay());
    assertEquals(List.of(), row(dates, "hand-wash").likelyDay(), "on the same day");
  }

  /** How far a hold is set at its limit stands in its row; that of the answer on top hides it. */
  @Test
  void aRowSaysHowFarItIsSetAtItsLimit() {
    Demo demo = Demo.tint();
    demo.releases.clear();
    demo.safe("windows-up", HoldKind.HOLD, "2026-12-04T14:00", "2026-12-04T10:10");
    demo.safe("hand-wash", HoldKind.HOLD, "2026-12-15T14:00", "2026-12-15T14:00");
    demo.limit("hand-wash", 0.6, "2027-02-20T12:00");
    assertEquals(
        "About 60% cured by then, fully about Feb 20.",
        row(dates(demo), "hand-wash").set().get(0).text());
    String html = demo.html();
    assertEquals(1, html.split("About 60% cured", -1).length - 1, "once");
  }

  @Test
  void whatEndsAHoldAtOnceStandsInItsRow() {
    DateList.Dates dates = dates(Demo.tint());
    assertTrue(row(dates, "windows-up").first(), "its row hides what the answer says");
    assertFalse(row(dates, "defroster").first());
    assertEquals(
        Optional.of("Can’t see? Turn on the defroster."), row(dates, "defroster").safety());
  }
}
