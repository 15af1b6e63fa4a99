package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Equivalent age after ASTM C1074: the formula from memory, the values computed from it outside
 * this project; activation energy over the gas constant 5000 K, reference 20 degrees Celsius.
 */
class ArrheniusTest {

  @ParameterizedTest
  @CsvSource({"0, 0.2868", "10, 0.5475", "20, 1", "30, 1.7553", "40, 2.9723"})
  void agesLikeConcrete(double celsius, double factor) {
    assertEquals(factor, Arrhenius.factor(5000, celsius, 20), 0.00005);
  }

  @Test
  void addsUpARecordOfTemperatures() {
    double hours =
        4 * Arrhenius.factor(5000, 10, 20)
            + 4 * Arrhenius.factor(5000, 15, 20)
            + 4 * Arrhenius.factor(5000, 25, 20)
            + 12 * Arrhenius.factor(5000, 30, 20);
    assertEquals(31.553, hours, 0.0005);
  }
}
