package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which hold forbids which: common practice, no source. */
class StricterTest {

  private static Optional<String> longer(Demo demo, String hold) {
    JobView view = demo.view();
    Release release = view.timeline().of(hold).orElseThrow();
    return new Stricter(view).than(release).map(Release::hold);
  }

  private static Demo with(String service, String film) {
    Demo demo = Demo.nothingToHold();
    demo.fit(service, film, "2026-12-01T12:00", -1, "whole-body");
    return demo;
  }

  @ParameterizedTest
  @CsvSource({
    "paint-coating, keep-dry, hand-wash, true",
    "paint-coating, keep-dry, machine-wash, true",
    "paint-coating, keep-dry, topper, true",
    "paint-coating, keep-dry, windows-up, false",
    "paint-coating, keep-dry, wet-clean, false",
    "fabric-coating, keep-dry, wet-clean, true",
    "fabric-coating, keep-dry, hand-wash, false",
    "fabric-coating, normal-use, wet-clean, true",
    "windshield-film, wipers, rain, true",
    "paint-coating, rain, keep-dry, true",
    "fabric-coating, rain, keep-dry, false",
    "paint-film, hand-wash, pressure-wash, true",
    "paint-film, pressure-wash, hand-wash, false",
    "paint-film, machine-wash, pressure-wash, false"
  })
  void aLaterHoldForbidsWhatBelongsToIt(
      String service, String stricter, String other, boolean forbids) {
    Demo demo = with(service, "harbor-70");
    demo.safe(other, HoldKind.HOLD, "2026-12-03T14:00", "2026-12-02T14:00");
    demo.safe(stricter, HoldKind.HOLD, "2026-12-05T14:00", "2026-12-04T14:00");
    assertEquals(forbids ? Optional.of(stricter) : Optional.empty(), longer(demo, other));
  }

  @Test
  void aHoldThatEndsNoLaterForbidsNothing() {
    Demo demo = with("paint-coating", "tidewater-paint");
    demo.safe("hand-wash", HoldKind.HOLD, "2026-12-05T14:00", "2026-12-04T14:00");
    demo.safe("keep-dry", HoldKind.HOLD, "2026-12-05T14:00", "2026-12-04T14:00");
    assertEquals(Optional.empty(), longer(demo, "hand-wash"));
    demo.askFor("keep-dry");
    assertEquals(Optional.of("keep-dry"), longer(demo, "hand-wash"));
  }
}
