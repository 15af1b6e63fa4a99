package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import curewindow.climate.Climates;
import curewindow.climate.Places;
import curewindow.climate.Psychrometrics;
import curewindow.climate.WeatherYear;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The model's steps (an hour outside, half an hour in the cabin) are short enough: an integrator of
 * its own, with half of them and with steps of a minute, finds nearly the same times.
 */
class StepTest {

  private static final WeatherYear YEAR =
      Climates.weathers(Places.builtIn().get("seattle")).years().get(0);
  private static final double ENERGY = 50_000;

  @ParameterizedTest
  @EnumSource(Driver.class)
  void movesEndsByLessThanOnePercent(Driver driver) {
    Surface surface = new Surface(Cases.OUTSIDE, Exposure.CABIN, PaintTone.MID);
    SurfaceHours hours = SurfaceHours.of(YEAR, surface, DayHours.NO_MATTER);
    DoseTable table = Cases.table(2027, h -> hours.rate(h, driver, ENERGY));
    SplittableRandom random = new SplittableRandom(9);
    for (int i = 0; i < 300; i++) {
      int start = random.nextInt(WeatherYear.HOURS);
      double need = 24 + random.nextDouble() * 300;
      long from = Cases.newYear(2027) + start * 3600L;
      double whole =
          (table.reach(table.until(from, 0) + need, 0, from, Cases.newYear(2029)) - from) / 3600.0;
      double quarters = integrated(driver, start, need, 4);
      double minutes = integrated(driver, start, need, 60);
      assertEquals(quarters, whole, 0.01 * quarters, "quarter hours, start " + start);
      assertEquals(minutes, whole, 0.01 * minutes, "minutes, start " + start);
    }
  }

  /** Hours until the need is met, stepping from a day before so that the cabin has settled. */
  private static double integrated(Driver driver, int start, double need, int steps) {
    double excess = 0;
    double dose = 0;
    for (int hour = start - 24; ; hour++) {
      int h = Math.floorMod(hour, WeatherYear.HOURS);
      double air = YEAR.temperature(h);
      double settled = 0.028 * YEAR.irradiance(h);
      for (int i = 0; i < steps; i++) {
        double next = settled + (excess - settled) * Math.exp(-2.0 / steps);
        double film = air + (excess + next) / 2;
        excess = next;
        if (hour < start) {
          continue;
        }
        double gain = rate(driver, film, YEAR.dewPoint(h)) / steps;
        dose += gain;
        if (dose >= need) {
          return hour - start + (i + 1 - (dose - need) / gain) / steps;
        }
      }
    }
  }

  /** The equations of the model, written once more. */
  private static double rate(Driver driver, double film, double dewPoint) {
    double inverse = 1 / 296.15 - 1 / (film + 273.15);
    double bond = Math.exp(ENERGY / 8.314462618 * inverse);
    double vapour = Psychrometrics.vapourPressure(dewPoint);
    double over = Psychrometrics.saturationPressure(film);
    double humidity = 100 * vapour / over;
    double moist =
        humidity <= 70
            ? Math.sqrt(humidity / 50)
            : Math.sqrt(1.4) * Math.max(0.3, 1 - (humidity - 70) / 60);
    return switch (driver) {
      case BOND -> bond;
      case CROSSLINK -> bond * moist;
      case DRY_OUT ->
          Math.max(0, over - vapour)
              / (0.5 * Psychrometrics.saturationPressure(23))
              * Math.exp(5000 / 8.314462618 * inverse);
    };
  }
}
