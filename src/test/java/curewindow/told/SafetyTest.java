package curewindow.told;

import static org.junit.jupiter.api.Assertions.assertEquals;

import curewindow.cure.HoldKind;
import curewindow.handout.SampleJobs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class SafetyTest {

  private static String of(String language, String... holds) {
    SampleJobs job = SampleJobs.bare().shippedWords().language(language);
    for (int i = 0; i < holds.length; i++) {
      job.hold(holds[i], HoldKind.HOLD, "2026-12-0" + (3 + i) + "T14:00");
    }
    JobView view = job.view();
    return Safety.of(view.timeline().releases(), view).replace('\u00A0', ' ');
  }

  /** Film in the windshield and tint in the rear window: who cannot see is asked once. */
  @ParameterizedTest
  @CsvSource({
    "en, Can’t see? Turn up heat and fan. Turn on the defroster.",
    "es, ¿No ve? Use calor y ventilador. Use el desempañador.",
    "ar, لا ترى؟ شغّل الحرارة والمروحة. شغّل مزيل الضباب."
  })
  void theSameQuestionIsAskedOnce(String language, String said) {
    assertEquals(said, of(language, "demist", "defroster"));
  }

  /** A defroster that ends sooner is no reason to speak of it first. */
  @Test
  void theGravestStandsFirst() {
    assertEquals(
        "Emergency? Open the windows. Can’t see? Turn on the defroster.",
        of("en", "defroster", "windows-up"));
  }

  @Test
  void otherCautionsStandByThemselves() {
    assertEquals(
        "Emergency? Open the windows. Can’t see? Turn on the defroster.",
        of("en", "windows-up", "defroster"));
    assertEquals("", of("en", "hand-wash"));
  }
}
