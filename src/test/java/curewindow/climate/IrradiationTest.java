package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IrradiationTest {

  /**
   * FAO Irrigation and Drainage Paper 56, example 15: Lyon, 45.72 N, July, 14.8 to 26.6 C gives
   * 22.3 MJ/m2 a day (from memory). Tolerance 1.5 %: an older solar constant and the 15th for all
   * of July.
   */
  @Test
  void fromDailyRangeAgreesWithFao56() {
    assertEquals(22.3 / 3.6, Irradiation.fromDailyRange(45.72, 7, 14.8, 26.6), 0.093);
  }

  /**
   * FAO-56, example 10: Rio de Janeiro, 22.9 S, May, 220 sunny of 337.9 daylight hours gives 14.5
   * MJ/m2 a day (from memory). Tolerance 1.5 %: rounding and an older solar constant.
   */
  @Test
  void fromSunshineAgreesWithFao56() {
    double sun = Irradiation.fromSunshineShare(-22.9, 5, 220 / 337.9);
    assertEquals(14.5 / 3.6, sun, 0.06);
  }

  /**
   * The built-in places' sun, told from memory, against what their daily ranges say: two sources
   * that know nothing of each other. Away from coasts the method is good to 0.64 kWh/m2.
   */
  @Test
  void builtInSunIsInLineWithDailyRanges() {
    double squares = 0;
    int count = 0;
    for (Place place : Places.builtIn().values()) {
      for (int m = 0; m < 12; m++) {
        MonthNormals month = place.normals().get(m);
        double estimate =
            Irradiation.fromDailyRange(place.latitude(), m + 1, month.dailyMin(), month.dailyMax());
        squares += (month.sun() - estimate) * (month.sun() - estimate);
        count++;
      }
    }
    double rmse = Math.sqrt(squares / count);
    assertTrue(rmse < 0.75, "RMSE " + rmse);
  }

  @ParameterizedTest
  @CsvSource({
    "91, 7, 10, 20",
    "NaN, 7, 10, 20",
    "40, 0, 10, 20",
    "40, 13, 10, 20",
    "40, 7, 20, 10",
    "40, 7, NaN, 20",
    "40, 7, -30, 20",
    "-91, 7, 10, 20"
  })
  void refusesAbsurdRanges(double latitude, int month, double low, double high) {
    assertThrows(
        IllegalArgumentException.class,
        () -> Irradiation.fromDailyRange(latitude, month, low, high));
  }

  @ParameterizedTest
  @CsvSource({"-0.1", "1.1", "NaN"})
  void refusesAbsurdShares(double share) {
    assertThrows(IllegalArgumentException.class, () -> Irradiation.fromSunshineShare(40, 7, share));
  }
}
