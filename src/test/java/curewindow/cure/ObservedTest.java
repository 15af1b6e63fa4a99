package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.ObservedHour;
import curewindow.climate.ObservedHours;
import curewindow.climate.WeatherYear;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Measured hours stand in for all weathers, in their own calendar year and hours only. */
class ObservedTest {

  private static final ZoneOffset STANDARD = ZoneOffset.ofHours(-6);
  private static final WeatherYear MILD = Cases.steady(10, 4, 100);
  private static final WeatherYear COLD = Cases.steady(2, -3, 50);

  static ObservedHours steady(String from, int hours, double air, double dewPoint) {
    List<ObservedHour> list = new ArrayList<>();
    Instant start = Instant.parse(from);
    for (int i = 0; i < hours; i++) {
      list.add(
          new ObservedHour(start.plus(Duration.ofHours(i)), air, dewPoint, OptionalDouble.empty()));
    }
    return new ObservedHours(list);
  }

  @Test
  void measuredHoursReplaceThoseOfTheirYearAndKeepTheSunThatNobodyMeasured() {
    ObservedHours measured = steady("2026-12-31T20:00:00Z", 24, -8, -12);
    assertEquals(java.util.Set.of(2026, 2027), measured.years(STANDARD));
    WeatherYear year = measured.in(MILD, 2026, STANDARD);
    int first = 8760 - 24 + 14;
    assertEquals(10, year.temperature(first - 1));
    assertEquals(-8, year.temperature(first));
    assertEquals(-12, year.dewPoint(8759));
    assertEquals(100, year.irradiance(first));
    assertEquals(10, year.temperature(0), "the first of January of the same weather year");
    WeatherYear next = measured.in(MILD, 2027, STANDARD);
    assertEquals(-8, next.temperature(13));
    assertEquals(10, next.temperature(14));
    assertEquals(10, next.temperature(8759));
  }

  @Test
  void februaryTwentyNinthKeepsTheWeatherOfTheDayBefore() {
    ObservedHours measured = steady("2028-02-29T06:00:00Z", 24, -8, -12);
    WeatherYear year = measured.in(MILD, 2028, STANDARD);
    for (int hour = 0; hour < WeatherYear.HOURS; hour++) {
      assertEquals(10, year.temperature(hour));
    }
  }

  @Test
  void allMembersAreTheSameWhereWeatherWasMeasured() {
    ObservedYears years =
        new ObservedYears(
            Cases.weathers(STANDARD, MILD, COLD), steady("2026-12-01T06:00:00Z", 48, 20, 5));
    int hour = 24 * 334;
    assertEquals(2026, years.kind(2026));
    assertEquals(ObservedYears.USUAL, years.kind(2027));
    assertEquals(20, years.of(2026, 0).temperature(hour));
    assertEquals(20, years.of(2026, 1).temperature(hour + 47));
    assertEquals(2, years.of(2026, 1).temperature(hour + 48));
    assertEquals(2, years.of(ObservedYears.USUAL, 1).temperature(hour));
  }

  @Test
  void warmHoursEndHoldsSoonerAndColdOnesLater() {
    CureCase job = tinted(Instant.parse("2026-12-01T22:00:00Z"));
    Instant usual = end(job, new ObservedHours(List.of()));
    Instant warm = end(job, steady("2026-12-01T22:00:00Z", 72, 24, 8));
    Instant cold = end(job, steady("2026-12-01T22:00:00Z", 72, -9, -14));
    Instant elsewhen = end(job, steady("2025-12-01T22:00:00Z", 72, -9, -14));
    assertTrue(warm.isBefore(usual), warm + " against " + usual);
    assertTrue(cold.isAfter(usual), cold + " against " + usual);
    assertEquals(usual, elsewhen, "weather of another year");
  }

  @Test
  void whatEndedWithinMeasuredWeatherIsAsCertainAsItsMeasurement() {
    CureCase job = tinted(Instant.parse("2026-12-01T22:00:00Z"));
    Curing curing =
        Curing.with(p -> Cases.weathers(STANDARD, MILD, COLD))
            .measured(Map.of(job.place().id(), steady("2026-12-01T22:00:00Z", 24 * 10, 24, 8)));
    Release release = curing.timeline(job).of("windows-up").orElseThrow();
    Duration apart = Duration.between(release.likely(), release.end().at());
    assertTrue(apart.compareTo(Duration.ofHours(12)) <= 0, "only the rounding is left: " + apart);
    assertEquals(24, release.because().meanAir(), 1.5);
  }

  @Test
  void modelsWithAndWithoutWhatWasMeasuredShareThePlacesWeathers() {
    CureCase job = tinted(Instant.parse("2026-12-01T22:00:00Z"));
    AtomicInteger asked = new AtomicInteger();
    Curing usual =
        Curing.with(
            p -> {
              asked.incrementAndGet();
              return Cases.weathers(STANDARD, MILD, COLD);
            });
    Curing measured =
        usual.measured(Map.of(job.place().id(), steady("2026-12-01T22:00:00Z", 72, -9, -14)));
    assertNotEquals(usual.timeline(job), measured.timeline(job));
    assertEquals(1, asked.get());
  }

  private static CureCase tinted(Instant finished) {
    HoldRule windows = Cases.rule("windows-up", Map.of(Driver.BOND, 48.0), 24, 336);
    return Cases.job(
        Cases.place("America/Chicago"),
        Cases.OUTSIDE,
        Cases.REFERENCE_BAY,
        finished,
        Cases.item(0, Exposure.OUTSIDE_SIDE, finished, windows));
  }

  private static Instant end(CureCase job, ObservedHours observed) {
    return Curing.with(p -> Cases.weathers(STANDARD, MILD, COLD))
        .measured(Map.of(job.place().id(), observed))
        .timeline(job)
        .of("windows-up")
        .orElseThrow()
        .end()
        .at();
  }
}
