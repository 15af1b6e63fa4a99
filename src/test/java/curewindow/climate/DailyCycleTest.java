package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DailyCycleTest {

  /**
   * ASHRAE's fractions of the daily range at full hours (from memory), and halfway between. Ours
   * may lie up to a quarter of f (1 - f) below, and are the same at the extremes.
   */
  @ParameterizedTest
  @CsvSource({"1, .88", "5, 1", "10, .38", "14, 0", "15, 0", "20, .50", "0, .82", "10.5, .305"})
  void fractionsOfTheRange(double hour, double fraction) {
    double bend = 0.25 * fraction * (1 - fraction);
    assertEquals(fraction - bend, DailyCycle.belowMax(hour), 1e-12);
  }

  /** The day's mean lies midway between its extremes: see the comparison with stations. */
  @Test
  void meanOfTheDayIsMidway() {
    assertEquals(0.505, meanBelowMax(), 0.005);
  }

  static double meanBelowMax() {
    double sum = 0;
    for (int i = 0; i < 240; i++) {
      sum += DailyCycle.belowMax(i / 10.0) / 240;
    }
    return sum;
  }

  @Test
  void everyDayReachesItsOwnExtremes() {
    double[] low = new double[365];
    double[] high = new double[365];
    Arrays.setAll(low, d -> d % 7);
    Arrays.setAll(high, d -> 20 + d % 5);
    for (int d = 0; d < 365; d++) {
      assertEquals(low[d], DailyCycle.temperature(low, high, 24 * d + 5));
      assertEquals(high[d], DailyCycle.temperature(low, high, 24 * d + 14.25));
    }
  }

  @Test
  void nightLeadsFromOneDayToTheNextWithoutAStep() {
    double[] low = new double[365];
    double[] high = new double[365];
    Arrays.setAll(low, d -> 10.0 * (d % 2));
    Arrays.setAll(high, d -> 15 + 10.0 * (d % 2));
    double last = DailyCycle.temperature(low, high, -0.01);
    for (double t = 0; t < 365 * 24; t += 0.01) {
      double now = DailyCycle.temperature(low, high, t);
      assertTrue(Math.abs(now - last) < 0.08, "step at " + t);
      last = now;
    }
  }

  @Test
  void theYearGoesRound() {
    double[] low = new double[365];
    double[] high = new double[365];
    Arrays.setAll(low, d -> d / 100.0);
    Arrays.setAll(high, d -> 9 + d / 100.0);
    assertEquals(
        DailyCycle.temperature(low, high, 365 * 24 - 0.5), DailyCycle.temperature(low, high, -0.5));
    assertEquals(
        DailyCycle.temperature(low, high, 12), DailyCycle.temperature(low, high, 365 * 24 + 12));
  }
}
