package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FilmTemperatureTest {

  /** ASHRAE's sol-air temperature of a horizontal surface; constants from memory. */
  @ParameterizedTest
  @CsvSource({"LIGHT, 53.2", "MID, 64.25", "DARK, 75.3"})
  void heatsRoofsLikeSolAir(PaintTone paint, double celsius) {
    assertEquals(celsius, FilmTemperature.up(35, 850, paint, true), 0.001);
  }

  @Test
  void coolsRoofsBelowTheAirOnlyUnderTheNightSky() {
    assertEquals(6.1, FilmTemperature.up(10, 0, PaintTone.DARK, true), 1e-12);
    assertEquals(10, FilmTemperature.up(10, 0, PaintTone.DARK, false), 1e-12);
  }

  @Test
  void heatsSidesHalfAsMuch() {
    assertEquals(35 + 0.052 * 425, FilmTemperature.side(35, 850, PaintTone.DARK), 1e-12);
    assertEquals(35, FilmTemperature.side(35, 0, PaintTone.DARK), 1e-12);
  }

  /**
   * Closed cars on sunny days, McLaren, Null and Quinn 2005 (Pediatrics 116), from memory: about 22
   * K within the hour, some 80 % of it in the first half. The model's single time constant gives 73
   * %.
   */
  @Test
  void heatsCabinsLikeClosedCars() {
    double sun = 900;
    double hour = FilmTemperature.cabinAfterHour(0, sun);
    double half = FilmTemperature.CABIN_GAIN * sun * (1 - Math.exp(-1));
    assertEquals(22, hour, 1.5);
    assertEquals(0.80, half / hour, 0.08);
  }

  @Test
  void followsTheExponentialExactly() {
    int steps = 100_000;
    double excess = 4;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      double middle = excess + (20 - excess) * (0.5 / steps) / 0.5;
      sum += middle / steps;
      excess += (20 - middle) / steps / 0.5;
    }
    double sun = 20 / FilmTemperature.CABIN_GAIN;
    assertEquals(excess, FilmTemperature.cabinAfterHour(4, sun), 1e-6);
    assertEquals(sum, FilmTemperature.cabinOverHour(4, sun), 1e-6);
  }

  @Test
  void coolsDownAfterSunset() {
    double after = FilmTemperature.cabinAfterHour(20, 0);
    assertEquals(20 * Math.exp(-2), after, 1e-12);
    assertTrue(FilmTemperature.cabinOverHour(20, 0) > after);
  }
}
