package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.Psychrometrics;
import curewindow.climate.WeatherYear;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SurfaceHoursTest {

  private static final ParkingPlan SHADE = new ParkingPlan(Parking.SHADE, Parking.SHADE);

  private static SurfaceHours hours(WeatherYear year, ParkingPlan parking, Exposure exposure) {
    return SurfaceHours.of(
        year, new Surface(parking, exposure, PaintTone.DARK), DayHours.NO_MATTER);
  }

  @Test
  void warmsAFilmBehindGlassBySixTenthsOfTheCabin() {
    WeatherYear sunny = Cases.steady(20, 5, 500);
    assertEquals(20 + 0.6 * 14, hours(sunny, Cases.OUTSIDE, Exposure.BEHIND_GLASS).film(7), 1e-9);
    assertEquals(20 + 14, hours(sunny, Cases.OUTSIDE, Exposure.CABIN).film(7), 1e-9);
    assertEquals(20, hours(sunny, Cases.OUTSIDE, Exposure.CABIN).air(7), 1e-9);
  }

  @Test
  void letsFifteenPercentOfTheSunIntoTheShade() {
    WeatherYear sunny = Cases.steady(20, 5, 800);
    assertEquals(20 + 0.052 * 120, hours(sunny, SHADE, Exposure.OUTSIDE_UP).film(0), 1e-9);
    assertEquals(20 + 0.026 * 120, hours(sunny, SHADE, Exposure.OUTSIDE_SIDE).film(0), 1e-9);
    assertEquals(
        20 + 0.052 * 800 - 3.9, hours(sunny, Cases.OUTSIDE, Exposure.OUTSIDE_UP).film(0), 1e-9);
  }

  @ParameterizedTest
  @EnumSource(Exposure.class)
  void keepsEverySurfaceAtTheAirOfAGarage(Exposure exposure) {
    WeatherYear sunny = Cases.steady(10, 5, 800);
    assertEquals(12, hours(sunny, Cases.GARAGE, exposure).film(100), 1e-9);
    assertEquals(16, hours(sunny, Cases.HEATED, exposure).film(100), 1e-9);
    assertEquals(21, hours(Cases.steady(21, 5, 0), Cases.HEATED, exposure).film(100), 1e-9);
  }

  @Test
  void smoothsAGarageOverTheLastDay() {
    WeatherYear step = Cases.year(h -> h < 1000 ? 0 : 24, h -> -10, h -> 0);
    SurfaceHours garage = hours(step, Cases.GARAGE, Exposure.OUTSIDE_UP);
    assertEquals(2, garage.air(999), 1e-9);
    assertEquals(3, garage.air(1000), 1e-9);
    assertEquals(14, garage.air(1011), 1e-9);
    assertEquals(26, garage.air(1023), 1e-9);
    assertEquals(26, garage.air(5000), 1e-9);
  }

  @Test
  void carriesTheLastDayOfTheYearIntoTheFirst() {
    WeatherYear warmEnd = Cases.year(h -> h >= 8736 ? 24 : 0, h -> -10, h -> h >= 8759 ? 500 : 0);
    assertEquals(
        2 + 23, hours(warmEnd, Cases.GARAGE, Exposure.CABIN).air(0), 1e-9, "23 of 24 hours");
    double cabin = 14 * (1 - Math.exp(-2));
    assertEquals(
        cabin * 0.5 * (1 - Math.exp(-2)),
        hours(warmEnd, Cases.OUTSIDE, Exposure.CABIN).film(0),
        1e-9);
  }

  @Test
  void neverLetsTheAirOfAGarageBeMoreThanSaturated() {
    WeatherYear thaw = Cases.year(h -> h < 1000 ? -20 : 10, h -> h < 1000 ? -21 : 9, h -> 0);
    SurfaceHours garage = hours(thaw, Cases.GARAGE, Exposure.OUTSIDE_SIDE);
    assertEquals(garage.air(1003), garage.dewPoint(1003), 1e-12);
    assertEquals(0, garage.rate(1003, Driver.DRY_OUT, 50_000));
    assertEquals(9, garage.dewPoint(1023), 1e-12);
    assertTrue(garage.rate(1023, Driver.DRY_OUT, 50_000) > 0);
  }

  @Test
  void takesTheHumidityForCrosslinkingFromTheAirAtTheSurface() {
    double dew = Psychrometrics.dewPoint(20, 60);
    WeatherYear sunny = Cases.steady(20, dew, 500);
    double energy = 50_000;
    SurfaceHours hood = hours(sunny, Cases.OUTSIDE, Exposure.OUTSIDE_UP);
    assertEquals(
        Rates.crosslink(hood.film(0), 60, energy), hood.rate(0, Driver.CROSSLINK, energy), 1e-9);
    SurfaceHours seat = hours(sunny, Cases.OUTSIDE, Exposure.CABIN);
    assertEquals(
        Rates.crosslink(34, Psychrometrics.relativeHumidity(34, dew), energy),
        seat.rate(0, Driver.CROSSLINK, energy),
        1e-9);
  }

  @Test
  void mixesDayAndNightHourByHour() {
    WeatherYear sunny = Cases.steady(10, 0, 400);
    ParkingPlan plan = new ParkingPlan(Parking.OUTSIDE, Parking.HEATED);
    DayHours days = DayHours.of(ZoneId.of("America/Phoenix"), ZoneOffset.ofHours(-7), 2026);
    SurfaceHours mixed =
        SurfaceHours.of(sunny, new Surface(plan, Exposure.OUTSIDE_SIDE, PaintTone.LIGHT), days);
    assertEquals(16, mixed.film(7), 1e-9);
    assertEquals(10 + 0.013 * 400, mixed.film(8), 1e-9);
    assertEquals(10 + 0.013 * 400, mixed.film(17), 1e-9);
    assertEquals(16, mixed.film(18), 1e-9);
  }

  @Test
  void takesTheWarmCabinIntoTheGarage() {
    WeatherYear sunny = Cases.steady(10, 0, 500);
    ParkingPlan plan = new ParkingPlan(Parking.OUTSIDE, Parking.GARAGE);
    DayHours days = DayHours.of(ZoneId.of("UTC"), ZoneOffset.UTC, 2026);
    SurfaceHours mixed =
        SurfaceHours.of(sunny, new Surface(plan, Exposure.CABIN, PaintTone.LIGHT), days);
    assertEquals(12 + 14 * 0.5 * (1 - Math.exp(-2)), mixed.film(18), 1e-6);
    assertEquals(12, mixed.film(30), 1e-6);
  }

  @ParameterizedTest
  @EnumSource(Exposure.class)
  void sharesTablesOnlyWhereNothingDiffers(Exposure exposure) {
    WeatherYear lively = Cases.lively(3);
    ParkingPlan halfIn = new ParkingPlan(Parking.GARAGE, Parking.HEATED);
    ParkingPlan halfOut = new ParkingPlan(Parking.SHADE, Parking.GARAGE);
    DayHours days = DayHours.of(ZoneId.of("UTC"), ZoneOffset.UTC, 2026);
    for (ParkingPlan plan : new ParkingPlan[] {halfIn, halfOut, Cases.OUTSIDE}) {
      for (PaintTone paint : PaintTone.values()) {
        Surface surface = new Surface(plan, exposure, paint);
        SurfaceHours own = SurfaceHours.of(lively, surface, days);
        SurfaceHours shared = SurfaceHours.of(lively, surface.shared(), days);
        for (int hour = 0; hour < WeatherYear.HOURS; hour += 7) {
          assertEquals(own.film(hour), shared.film(hour));
          assertEquals(
              own.rate(hour, Driver.CROSSLINK, 50_000),
              shared.rate(hour, Driver.CROSSLINK, 50_000));
        }
      }
    }
  }
}
