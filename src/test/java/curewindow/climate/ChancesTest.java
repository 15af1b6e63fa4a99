package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChancesTest {

  /** The JDK's SplittableRandom is documented to be the same algorithm, an independent coding. */
  @ParameterizedTest
  @ValueSource(longs = {0, 1, -1, 1234567, Long.MIN_VALUE})
  void generatorIsThePublishedOne(long seed) {
    SplitMix ours = new SplitMix(seed);
    SplittableRandom theirs = new SplittableRandom(seed);
    for (int i = 0; i < 1000; i++) {
      assertEquals(theirs.nextLong(), ours.nextLong());
    }
  }

  /** SplitMix64 from seed 1234567: the first number of its published example (from memory). */
  @Test
  void generatorGivesItsPublishedExample() {
    assertEquals(6457827717110365317L, new SplitMix(1234567).nextLong());
  }

  @Test
  void normalDeviatesAreNormal() {
    SplitMix random = new SplitMix(42);
    int n = 200_000;
    double sum = 0;
    double squares = 0;
    int belowTenth = 0;
    for (int i = 0; i < n; i++) {
      double x = random.nextNormal();
      sum += x;
      squares += x * x;
      belowTenth += x < -1.2816 ? 1 : 0;
    }
    // Four standard errors each.
    assertEquals(0, sum / n, 4 / Math.sqrt(n));
    assertEquals(1, squares / n, 4 * Math.sqrt(2.0 / n));
    assertEquals(0.1, belowTenth / (double) n, 4 * Math.sqrt(0.09 / n));
  }

  @Test
  void everyDayHasMeanZeroAndSpreadOne() {
    Chances chances = Chances.of(32);
    for (List<double[]> years :
        List.of(chances.warmth(), chances.brightness(), chances.moisture())) {
      for (int d = 0; d < 365; d++) {
        double sum = 0;
        double squares = 0;
        for (double[] year : years) {
          sum += year[d];
          squares += year[d] * year[d];
        }
        assertEquals(0, sum, 1e-9);
        assertEquals(1, squares / 32, 1e-9);
      }
    }
  }

  /**
   * What lasts from day to day, and over the year's end: as in the hourly typical years of ten
   * places (TMY3), where temperature has 0.63, clearness 0.22 and the rest of the dew point 0.47.
   */
  @Test
  void departuresLastAsInTypicalYears() {
    Chances chances = Chances.of(128);
    assertEquals(0.63, lagged(chances.warmth(), 1), 0.02);
    assertEquals(0.40, lagged(chances.warmth(), 2), 0.03);
    assertEquals(0.25, lagged(chances.brightness(), 1), 0.03);
    assertEquals(0.55, lagged(chances.moisture(), 1), 0.03);
    assertEquals(0.55, lagged(chances.clouds(), 1), 0.02);
    double overNewYear = 0;
    List<double[]> years = Chances.of(512).warmth();
    for (double[] year : years) {
      overNewYear += year[364] * year[0] / years.size();
    }
    assertTrue(overNewYear > 0.5 && overNewYear < 0.8, "over New Year " + overNewYear);
  }

  /** No two of the four have to do with each other; three standard errors of 0.01. */
  @Test
  void departuresAreIndependentOfEachOther() {
    Chances chances = Chances.of(64);
    List<List<double[]>> all = List.of(chances.warmth(), chances.brightness(), chances.moisture());
    for (int i = 0; i < 3; i++) {
      List<double[]> one = all.get(i);
      List<double[]> two = all.get((i + 1) % 3);
      double sum = 0;
      for (int m = 0; m < 64; m++) {
        for (int d = 0; d < 365; d++) {
          sum += one.get(m)[d] * two.get(m)[d] / (64 * 365);
        }
      }
      assertEquals(0, sum, 0.04);
    }
  }

  private static double lagged(List<double[]> years, int days) {
    double sum = 0;
    for (double[] year : years) {
      for (int d = 0; d < year.length; d++) {
        sum += year[d] * year[(d + days) % year.length];
      }
    }
    return sum / ((double) years.get(0).length * years.size());
  }
}
