package curewindow.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.handout.SampleJobs;
import curewindow.told.JobView;
import curewindow.words.Words;
import java.util.List;
import org.junit.jupiter.api.Test;

final class OfficeCalendarTest {

  /** The customer reads Spanish, the shop English. */
  private static List<CareEvent> visits() {
    JobView view = SampleJobs.tinted().shippedWords().language("es").firstName("Ines").view();
    Words english = SampleJobs.tinted().shippedWords().view().words();
    return OfficeCalendar.visits(view, english);
  }

  private static CareEvent visit(String name) {
    return visits().stream().filter(e -> e.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void aVisitNamesJobCustomerAndCar() {
    String car = SampleJobs.tinted().view().car();
    assertEquals("H-1042, Ines, " + car + ": Come in so we can check it", visit("visit").summary());
  }

  @Test
  void aVisitSaysWhatToLookAtInTheShopsLanguage() {
    String details = visit("visit").details();
    assertTrue(details.contains("Window tint"), details);
    assertTrue(details.contains("front door windows"), details);
    assertTrue(details.contains("Haze should be gone."), details);
    assertTrue(details.contains("https://care.example/C/"), details);
  }

  @Test
  void whatIsDueLaterNamesTheWorkAndNoHazeOfLongAgo() {
    String details = visits().get(1).details();
    assertTrue(details.contains("Window tint"), details);
    assertFalse(details.contains("gone"), details);
  }
}
