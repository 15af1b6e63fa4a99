package curewindow.tally;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Exact intervals against published ones. */
class ExactTest {

  /**
   * 0: the R package epitools 0.5-10.1, manual of {@code pois.exact} (3.689). 25: GraphPad
   * QuickCalcs, "How QuickCalcs computes the confidence interval of a count" (16.18 to 36.90). The
   * others are those of Garwood's table (Biometrika 28, 1936), from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0, 3.689, 3",
    "1, 0.0253, 5.572, 3",
    "2, 0.2422, 7.225, 3",
    "5, 1.623, 11.668, 3",
    "10, 4.795, 18.39, 2",
    "25, 16.18, 36.90, 2",
    "100, 81.36, 121.63, 2"
  })
  void aCount(int events, double low, double high, int digits) {
    double near = 0.6 * Math.pow(10, -digits);
    assertEquals(low, Exact.poissonLow(events), near);
    assertEquals(high, Exact.poissonHigh(events), near);
  }

  /** By hand: of n events none, and all: the ends are 1 - 0.025^(1/n) and 0.025^(1/n). */
  @ParameterizedTest
  @CsvSource({"1", "5", "10", "200"})
  void aShareOfNoneOrAll(int of) {
    double end = Math.pow(0.025, 1.0 / of);
    assertEquals(0, Exact.shareLow(0, of));
    assertEquals(1 - end, Exact.shareHigh(0, of), 1e-12);
    assertEquals(end, Exact.shareLow(of, of), 1e-12);
    assertEquals(1, Exact.shareHigh(of, of));
  }
}
