package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class SpreadTest {

  /** The rule worked by hand: months of -5 and 15 give a range of 20 K about a mean of 5 C. */
  @Test
  void ruleWorkedByHand() {
    List<MonthNormals> months = new ArrayList<>(Collections.nCopies(6, month(-5)));
    months.addAll(Collections.nCopies(6, month(15)));
    double[] spread = Spread.byMonth(months);
    assertEquals(0.6 + 2.56 + 0.84, spread[0], 1e-12);
    assertEquals(0.6 + 2.56 - 0.84, spread[11], 1e-12);
  }

  @Test
  void staysWithinItsLimits() {
    assertEquals(0.7, Spread.byMonth(Collections.nCopies(12, month(20)))[3], 1e-12);
    List<MonthNormals> months = new ArrayList<>(Collections.nCopies(11, month(-40)));
    months.add(month(20));
    double[] spread = Spread.byMonth(months);
    assertEquals(6.5, spread[0]);
    List<MonthNormals> hot = new ArrayList<>(Collections.nCopies(11, month(0)));
    hot.add(month(40));
    assertTrue(Spread.byMonth(hot)[11] >= 0.7);
  }

  private static MonthNormals month(double mean) {
    return new MonthNormals(mean - 4, mean + 4, mean - 6, 3);
  }
}
