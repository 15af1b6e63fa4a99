package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PsychrometricsTest {

  /**
   * ASHRAE Handbook of Fundamentals 2017, chapter 1, table 3, as quoted by the tests of the
   * psychrolib library. Tolerance 0.4 %: the error the fit's authors state for -40 to 50 C (from
   * memory); the table is of another formulation.
   */
  @ParameterizedTest
  @CsvSource({"-20, 103.24", "-5, 401.74", "5, 872.6", "25, 3169.7", "50, 12351.3"})
  void agreesWithHandbookTable(double celsius, double pascal) {
    assertEquals(pascal, Psychrometrics.saturationPressure(celsius), 0.004 * pascal);
  }

  /** Alduchov and Eskridge 1996, worked by hand from the published coefficients. */
  @Test
  void agreesWithItsOwnPublishedCoefficients() {
    assertEquals(2803.8, Psychrometrics.saturationPressure(23), 0.05);
  }

  /**
   * Murphy and Koop 2005, table C1, 240 K. Tolerances: 0.2 % over ice; 1.2 % over supercooled water
   * at -33 C, near the end of the fit's range.
   */
  @Test
  void agreesWithMurphyAndKoopInTheCold() {
    assertEquals(27.272, Psychrometrics.saturationPressureOverIce(240 - 273.15), 0.002 * 27.272);
    assertEquals(37.667, Psychrometrics.saturationPressureOverWater(240 - 273.15), 0.012 * 37.667);
  }

  /**
   * The humidity of air is stated over liquid water below 0 C too (WMO-No. 8, part I, chapter 4,
   * from memory). Air saturated over ice at 240 K has 27.272 of the 37.667 Pa that it could have
   * over water (Murphy and Koop 2005, table C1), 72.4 %. Tolerance 1.2 %, as above.
   */
  @Test
  void humidityOfAirIsOverWaterInTheColdToo() {
    double cold = 240 - 273.15;
    assertEquals(37.667, Psychrometrics.vapourPressure(cold), 0.012 * 37.667);
    assertEquals(cold, Psychrometrics.dewPoint(cold, 100), 1e-9);
    double dew = Psychrometrics.dewPoint(cold, 72.4);
    assertEquals(27.272, Psychrometrics.vapourPressure(dew), 0.012 * 27.272);
    assertEquals(72.4, Psychrometrics.relativeHumidity(cold, dew), 1e-6);
    assertEquals(50, Psychrometrics.relativeHumidity(-10, Psychrometrics.dewPoint(-10, 50)), 1e-6);
  }

  @Test
  void takesIceBelowZeroAndWaterAbove() {
    assertEquals(
        Psychrometrics.saturationPressureOverIce(-10), Psychrometrics.saturationPressure(-10));
    assertEquals(
        Psychrometrics.saturationPressureOverWater(10), Psychrometrics.saturationPressure(10));
    assertTrue(
        Psychrometrics.saturationPressureOverIce(-10)
            < Psychrometrics.saturationPressureOverWater(-10));
  }

  @Test
  void neverFallsWithTemperature() {
    double last = 0;
    for (int i = -1_000_000; i <= 1_500_000; i += 100) {
      double pressure = Psychrometrics.saturationPressure(i / 10_000.0);
      assertTrue(pressure >= last, "at " + i / 10_000.0);
      last = pressure;
    }
  }

  /**
   * Saturated at the dew point; 20 C and 50 % give 9.3 C (common psychrometric charts, from
   * memory).
   */
  @Test
  void dewPointOfRoomAir() {
    assertEquals(9.3, Psychrometrics.dewPoint(20, 50), 0.1);
    assertEquals(20, Psychrometrics.dewPoint(20, 100), 1e-9);
    assertEquals(100, Psychrometrics.relativeHumidity(20, 20), 1e-9);
    assertEquals(872.6, Psychrometrics.vapourPressure(5), 2);
  }

  @ParameterizedTest
  @CsvSource({"35, 20", "20, 50", "5, 40", "0, 99", "-5, 80", "-30, 60", "80, 3", "0.2, 99"})
  void humidityAndDewPointUndoEachOther(double celsius, double percent) {
    double dew = Psychrometrics.dewPoint(celsius, percent);
    assertTrue(dew < celsius);
    assertEquals(percent, Psychrometrics.relativeHumidity(celsius, dew), 1e-6);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -101, 151})
  void refusesAbsurdTemperaturesByName(double celsius) {
    refused("temperature", () -> Psychrometrics.saturationPressure(celsius));
    refused("temperature", () -> Psychrometrics.saturationPressureOverWater(celsius));
    refused("temperature", () -> Psychrometrics.saturationPressureOverIce(celsius));
    refused("dewPoint", () -> Psychrometrics.vapourPressure(celsius));
    refused("dewPoint", () -> Psychrometrics.relativeHumidity(20, celsius));
    refused("temperature", () -> Psychrometrics.dewPoint(celsius, 50));
    refused("relativeHumidity", () -> Psychrometrics.dewPoint(20, celsius));
  }

  private static void refused(String name, Runnable call) {
    String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
    assertTrue(message.startsWith(name + " "), message);
  }
}
