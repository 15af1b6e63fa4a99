package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import curewindow.handout.OfficeCallers.Asked;
import curewindow.handout.OfficeCallers.Caller;
import curewindow.words.Words;
import java.util.List;
import org.junit.jupiter.api.Test;

final class SaidOnceTest {

  private static final Words ENGLISH = SampleJobs.tinted().shippedWords().view().words();
  private static final String ALIKE =
      "It dries slowly, and faster when it is warm. If it lifts or grows, send us a photo today.";

  private static Caller caller(String job, String question, String answer) {
    List<Asked> asked = List.of(new Asked(question, "", answer));
    return new Caller(OfficeCallers.Why.DATE, job, "", "", "", List.of(), asked, 0);
  }

  private static List<String> told(Caller... callers) {
    return SaidOnce.of(List.of(callers), ENGLISH).stream()
        .map(c -> c.asked().get(0).answer())
        .toList();
  }

  @Test
  void onlyTheDateOfTheSecondCarIsSaidAgain() {
    assertEquals(
        List.of("Normal until May 1. " + ALIKE, "Normal until May 9. The rest as with H-1."),
        told(
            caller("H-1", "Haze?", "Normal until May 1. " + ALIKE),
            caller("H-2", "Haze?", "Normal until May 9. " + ALIKE)));
  }

  @Test
  void theSameAnswerIsSaidWithTheFirstAlone() {
    assertEquals(
        List.of(ALIKE, "The rest as with H-1."),
        told(caller("H-1", "Haze?", ALIKE), caller("H-2", "Haze?", ALIKE)));
  }

  @Test
  void whatIsShortOrAskedOtherwiseStays() {
    assertEquals(
        List.of("Yes. Do it.", "Yes. Do it."),
        told(caller("H-1", "May I?", "Yes. Do it."), caller("H-2", "May I?", "Yes. Do it.")));
    assertEquals(
        List.of(ALIKE, ALIKE), told(caller("H-1", "Haze?", ALIKE), caller("H-2", "Dots?", ALIKE)));
  }
}
