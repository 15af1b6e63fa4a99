package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import curewindow.cure.HoldKind;
import curewindow.cure.Timeline;
import curewindow.told.JobView;
import curewindow.told.Printed;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Where a job's dates are brought into agreement, and where they are only handed on. */
class JobViewTest {

  @Test
  void copiesHaveTheSameDatesAndDecideNothingAnew() {
    JobView view = Demo.tint().view();
    Timeline dates = view.timeline();
    assertSame(dates, view.withPrinted(new Printed(List.of(), Optional.empty())).timeline());
    assertSame(dates, view.in(Demo.tint().view().words()).timeline());
    assertSame(dates, view.withTimeline(dates).timeline());
  }

  /** Nobody washes what has to stay dry. */
  @Test
  void datesAsComputedAreBroughtIntoAgreement() {
    Demo demo = new Demo();
    demo.fit("paint-coating", "tidewater-paint", "2026-12-01T12:00", -1, "hood");
    demo.safe("keep-dry", HoldKind.HOLD, "2026-12-09T09:00", "2026-12-08T09:00");
    demo.safe("hand-wash", HoldKind.HOLD, "2026-12-05T09:00", "2026-12-04T09:00");
    JobView view = demo.view();
    Timeline computed = new Timeline(demo.pickup, demo.zone, demo.releases);
    Instant dry = Demo.at("2026-12-09T09:00");
    assertEquals(dry, view.timeline().of("hand-wash").orElseThrow().end().at());
    assertEquals(view.timeline(), view.told(computed));
  }
}
