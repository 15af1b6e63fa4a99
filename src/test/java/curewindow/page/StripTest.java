package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StripTest {

  private static double number(String percent) {
    return Double.parseDouble(percent.replace("%", ""));
  }

  @Test
  void placesGrowWithTheSquareRootOfTime() {
    Demo demo = Demo.nothingToHold();
    demo.pickup = Demo.at("2026-12-01T16:00");
    demo.safe("windows-up", HoldKind.HOLD, "2026-12-09T22:00", "2026-12-01T10:00");
    Strip.Picture picture = new Strip(demo.view()).picture().orElseThrow();
    // Haze ends after exactly 33 days; 8.25 days is a quarter of that, so half the width.
    Strip.Bar windows = picture.bars().get(0);
    assertEquals("50%", windows.end());
    assertEquals("0%", windows.w1(), "likely before pickup leaves nothing solid");
    assertEquals("50%", windows.w2());
    Strip.Bar haze = picture.bars().get(1);
    assertEquals("100%", haze.end());
    assertEquals(100, number(haze.w1()) + number(haze.w2()), 0.11);
    assertEquals("settle", haze.kind());
    assertEquals("#m-settle", haze.mark());
  }

  /** At the limit and by the season nothing is likely or safe: the list says what is known. */
  @Test
  void theListPromisesNothingWhereNothingIsPromised() {
    Demo demo = Demo.tint();
    demo.releases.clear();
    demo.safe("windows-up", HoldKind.HOLD, "2026-12-15T14:00", "2026-12-15T14:00");
    demo.limit("windows-up", 0.6, "2027-02-20T12:00");
    Instant spring = Demo.at("2027-06-26T09:00");
    demo.releases.add(demo.release("haze", HoldKind.SETTLE, new Release.BySeason(spring), spring));
    assertEquals(
        List.of(
            "Windows stay up: until Tuesday, December 15, 2 PM, then gently, all set about"
                + " February 20.",
            "Haze is normal: until about the end of June."),
        new Strip(demo.view())
            .picture().orElseThrow().twin().stream()
                .map(t -> t.replace('\u00A0', ' ').replace('\u202F', ' '))
                .toList());
  }

  @Test
  void everyMidnightIsTickedOverAChangeOfTheClocks() {
    Demo demo = Demo.nothingToHold();
    demo.zone = ZoneId.of("America/Denver");
    demo.pickup = Demo.at("2027-03-13T09:00");
    demo.releases.clear();
    demo.safe("windows-up", HoldKind.HOLD, "2027-03-17T09:00", "2027-03-16T09:00");
    Strip.Picture picture = new Strip(demo.view()).picture().orElseThrow();
    assertEquals(1 + 4, picture.ticks().size());
    // 95 hours: the night of 13 to 14 March has an hour less. Midnight comes after 15 of them.
    assertEquals(100 * Math.sqrt(15 / 95.0), number(picture.ticks().get(1).x()), 0.05);
    assertEquals(100 * Math.sqrt(38 / 95.0), number(picture.ticks().get(2).x()), 0.05);
  }

  @Test
  void namesOfDaysKeepClearOfEachOther() {
    for (Demo demo : List.of(Demo.tint(), Demo.coatedFilm(), Demo.atLimit())) {
      double end = -1;
      for (Strip.Day day : new Strip(demo.view()).picture().orElseThrow().days()) {
        double from = number(day.x());
        from -= day.anchor().equals("middle") ? 12.5 : day.anchor().equals("end") ? 25 : 0;
        assertTrue(from >= end - 0.2, day + " starts before " + end);
        end = from + 25;
        assertTrue(end <= 100.2);
      }
    }
  }

  @Test
  void thereIsNoPictureWhereNothingEndsAfterPickup() {
    Demo demo = Demo.nothingToHold();
    demo.releases.clear();
    assertEquals(Optional.empty(), new Strip(demo.view()).picture());
    demo.safe("windows-up", HoldKind.HOLD, "2026-11-30T10:00", "2026-11-29T10:00");
    assertEquals(Optional.empty(), new Strip(demo.view()).picture());
    assertTrue(demo.html().contains("Nothing to hold off from."));
  }
}
