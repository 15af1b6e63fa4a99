package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DailyCycleTest {

  private static final double[] BENDS = bends();

  private static double[] bends() {
    double[] bends = new double[365];
    Arrays.setAll(bends, d -> d % 3 / 4.0);
    return bends;
  }

  /**
   * ASHRAE's fractions of the daily range at full hours (from memory), and halfway between. Ours
   * lie below by the bend times f (1 - f), and are the same at the extremes.
   */
  @ParameterizedTest
  @CsvSource({"1, .88", "5, 1", "10, .38", "14, 0", "15, 0", "20, .50", "0, .82", "10.5, .305"})
  void fractionsOfTheRange(double hour, double fraction) {
    double bend = 0.25 * fraction * (1 - fraction);
    assertEquals(fraction - bend, DailyCycle.belowMax(hour, 0.25), 1e-12);
  }

  /** The day's mean lies as far below the middle of its extremes as the rule tells. */
  @ParameterizedTest
  @CsvSource({"-15, -5, 1.5", "-2, 4, 1.2", "8, 20, 5", "24, 33, 5.5", "23, 30, 4", "20, 40, 8"})
  void meanOfTheDayFollowsTheRule(double low, double high, double sun) {
    MonthNormals month = new MonthNormals(low, high, low, sun);
    double mean = high - meanBelowMax(DailyCycle.bend(month)) * (high - low);
    double middle = (low + high) / 2;
    assertEquals(middle - DailyCycle.belowMiddle(middle, sun), mean, 0.02 * (high - low) / 4);
  }

  /** Worked by hand: 0.165 + 0.0186 * 20 - 0.0846 * 5. */
  @Test
  void ruleWorkedByHand() {
    assertEquals(0.114, DailyCycle.belowMiddle(20, 5), 1e-9);
  }

  /** Falls all night and rises all morning, however strongly bent. */
  @Test
  void strongestBendsKeepTheOrderOfTheHours() {
    for (MonthNormals month :
        new MonthNormals[] {
          new MonthNormals(30, 31, 20, 0), new MonthNormals(-40, -39, -45, 8),
        }) {
      double bend = DailyCycle.bend(month);
      assertEquals(0.8, Math.abs(bend), 1e-12);
      for (double hour = 5.1; hour < 14; hour += 0.1) {
        assertTrue(DailyCycle.belowMax(hour, bend) < DailyCycle.belowMax(hour - 0.1, bend));
      }
    }
  }

  private static double meanBelowMax(double bend) {
    double sum = 0;
    for (int i = 0; i < 240; i++) {
      sum += DailyCycle.belowMax(i / 10.0, bend) / 240;
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
      assertEquals(low[d], DailyCycle.Moment.of(BENDS, 24 * d + 5).temperature(low, high));
      assertEquals(high[d], DailyCycle.Moment.of(BENDS, 24 * d + 14.25).temperature(low, high));
    }
  }

  @Test
  void nightLeadsFromOneDayToTheNextWithoutAStep() {
    double[] low = new double[365];
    double[] high = new double[365];
    Arrays.setAll(low, d -> 10.0 * (d % 2));
    Arrays.setAll(high, d -> 15 + 10.0 * (d % 2));
    double last = DailyCycle.Moment.of(BENDS, -0.01).temperature(low, high);
    for (double t = 0; t < 365 * 24; t += 0.01) {
      double now = DailyCycle.Moment.of(BENDS, t).temperature(low, high);
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
        DailyCycle.Moment.of(BENDS, 365 * 24 - 0.5).temperature(low, high),
        DailyCycle.Moment.of(BENDS, -0.5).temperature(low, high));
    assertEquals(
        DailyCycle.Moment.of(BENDS, 12).temperature(low, high),
        DailyCycle.Moment.of(BENDS, 365 * 24 + 12).temperature(low, high));
  }
}
