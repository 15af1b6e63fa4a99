package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class ExplanationCauseTest {

  private static ExplanationCause because(Optional<Driver> driver, double need, double rate) {
    return new ExplanationCause(0, "hood", driver, need, 0, 100, 0, 10, 12, 5, rate);
  }

  @Test
  void aNeedIsMetWhenItsHoursAreGained() {
    assertEquals(48, because(Optional.of(Driver.BOND), 48, 0.48).gainedHours(), 1e-9);
    assertTrue(because(Optional.of(Driver.BOND), 48, 0.48).isMet());
    assertFalse(because(Optional.of(Driver.BOND), 48.5, 0.48).isMet());
  }

  @Test
  void theFloorWaitsForNoDriver() {
    assertTrue(because(Optional.empty(), 336, 0.48).isMet());
  }
}
