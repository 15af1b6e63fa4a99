package curewindow.told;

import static org.junit.jupiter.api.Assertions.assertEquals;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.handout.SampleJobs;
import java.util.List;
import org.junit.jupiter.api.Test;

final class UrgencyTest {

  private static List<String> chosen(SampleJobs job, int most) {
    return Urgency.all(job.view()).stream().limit(most).map(Release::hold).toList();
  }

  @Test
  void windowsComeFirstThenRank() {
    assertEquals(List.of("windows-up", "defroster"), chosen(SampleJobs.tinted(), 2));
    assertEquals(
        List.of("windows-up", "defroster", "hand-wash", "haze"), chosen(SampleJobs.tinted(), 9));
  }

  @Test
  void holdsWithoutRankComeLastByDate() {
    SampleJobs job =
        SampleJobs.bare()
            .hold("zinc-later", HoldKind.HOLD, "2026-12-03T09:00")
            .hold("amber-latest", HoldKind.HOLD, "2026-12-05T09:00")
            .hold("hand-wash", HoldKind.HOLD, "2026-12-09T09:00");
    assertEquals(List.of("hand-wash", "zinc-later", "amber-latest"), chosen(job, 3));
  }

  /** The pickup of these jobs is November 30, 4:30 PM. */
  @Test
  void whatIsOverByPickupIsNotPrinted() {
    SampleJobs job =
        SampleJobs.bare()
            .hold("windows-up", HoldKind.HOLD, "2026-11-30T16:00")
            .hold("hand-wash", HoldKind.HOLD, "2026-12-09T09:00")
            .hold("haze", HoldKind.SETTLE, "2026-12-28T09:00");
    assertEquals(List.of("hand-wash", "haze"), chosen(job, 3));
  }

  @Test
  void aJobWithoutDatesHasNone() {
    assertEquals(List.of(), chosen(SampleJobs.bare(), 2));
  }
}
