package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class MonthCurveTest {

  private static final double[] MONTHS = {-3, -1, 4, 10, 16, 21, 24, 23, 18, 11, 5, -1};

  @Test
  void monthsKeepTheirMeans() {
    assertArrayEquals(MONTHS, MonthCurve.means(MonthCurve.days(MONTHS)), 1e-9);
  }

  @Test
  void weightedMonthsKeepTheirWeightedMeans() {
    double[] weights = new double[365];
    double[] product = new double[365];
    Arrays.setAll(weights, d -> 2 + Math.sin(d / 20.0));
    double[] days = MonthCurve.days(MONTHS, weights);
    Arrays.setAll(product, d -> days[d] * weights[d]);
    double[] means = MonthCurve.means(product);
    double[] weightMeans = MonthCurve.means(weights);
    for (int m = 0; m < 12; m++) {
      assertEquals(MONTHS[m], means[m] / weightMeans[m], 1e-9);
    }
  }

  @Test
  void constantMonthsGiveConstantDays() {
    double[] months = new double[12];
    Arrays.fill(months, 7);
    for (double day : MonthCurve.days(months)) {
      assertEquals(7, day, 1e-9);
    }
  }

  /** No steps between months nor over the year's end: at most the steepest month-to-month slope. */
  @Test
  void daysFollowEachOtherSmoothly() {
    double[] days = MonthCurve.days(MONTHS);
    for (int d = 0; d < 365; d++) {
      assertTrue(Math.abs(days[d] - days[(d + 1) % 365]) < 0.35, "day " + d);
    }
  }

  @Test
  void monthsBeginOnTheirFirstDay() {
    assertEquals(0, MonthCurve.month(30));
    assertEquals(1, MonthCurve.month(31));
    assertEquals(1, MonthCurve.month(58));
    assertEquals(2, MonthCurve.month(59));
    assertEquals(11, MonthCurve.month(364));
  }
}
