package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.Place;
import curewindow.climate.WeatherYear;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** What must hold for any job in any weather. */
class CuringPropertiesTest {

  private static final Place PLACE = Cases.place("America/Chicago");
  private static final ZoneOffset STANDARD = ZoneOffset.ofHours(-6);
  private static final WeatherYear MILD = Cases.lively(1);
  private static final WeatherYear COLD = Cases.lively(2);
  private static final Curing CURING = Curing.with(p -> Cases.weathers(STANDARD, MILD, COLD));
  private static final long FIRST = Instant.parse("2027-01-01T00:00:00Z").getEpochSecond();
  private static final long SPAN = 3L * 365 * 86_400;

  private static Release release(
      Curing curing, Driver driver, double need, long finished, long pickup, double permeance) {
    HoldRule rule = Cases.rule("hold", Map.of(driver, need), 12, 1500);
    Instant at = Instant.ofEpochSecond(FIRST + finished);
    CureItem item = new CureItem(0, "hood", Exposure.OUTSIDE_UP, permeance, at, List.of(rule));
    CureCase job =
        Cases.job(
            PLACE,
            new ParkingPlan(Parking.OUTSIDE, Parking.GARAGE),
            new Bay(20, 50),
            Instant.ofEpochSecond(FIRST + finished + pickup),
            item);
    return curing.timeline(job).releases().get(0);
  }

  @Property(tries = 300)
  void endsLaterWhenFinishedLater(
      @ForAll Driver driver,
      @ForAll @DoubleRange(min = 0.5, max = 400) double need,
      @ForAll @LongRange(min = 0, max = SPAN) long finished,
      @ForAll @IntRange(min = 0, max = 100_000) int stay,
      @ForAll @IntRange(min = 0, max = 100_000) int later) {
    int less = Math.min(stay, later);
    Release early = release(CURING, driver, need, finished, stay, 1);
    Release late = release(CURING, driver, need, finished + less, stay - less, 1);
    assertFalse(late.likely().isBefore(early.likely()));
    assertFalse(late.end().at().isBefore(early.end().at()));
  }

  @Property(tries = 300)
  void endsLaterWithALargerNeedOrATighterFilm(
      @ForAll Driver driver,
      @ForAll @DoubleRange(min = 0.5, max = 400) double need,
      @ForAll @DoubleRange(min = 0, max = 50) double more,
      @ForAll @LongRange(min = 0, max = SPAN) long finished) {
    Release little = release(CURING, driver, need, finished, 7200, 1);
    Release much = release(CURING, driver, need + more, finished, 7200, 1);
    Release tight = release(CURING, driver, need, finished, 7200, 0.7);
    assertFalse(much.end().at().isBefore(little.end().at()));
    assertFalse(much.likely().isBefore(little.likely()));
    assertFalse(tight.end().at().isBefore(little.end().at()));
  }

  @Property(tries = 40)
  void bondsSoonerWhenWarmer(
      @ForAll @DoubleRange(min = 0.1, max = 10) double warmer,
      @ForAll @LongRange(min = 0, max = SPAN) long finished) {
    WeatherYear warm =
        Cases.year(h -> MILD.temperature(h) + warmer, MILD::dewPoint, MILD::irradiance);
    Curing mild = Curing.with(p -> Cases.weathers(STANDARD, MILD));
    Curing warmed = Curing.with(p -> Cases.weathers(STANDARD, warm));
    assertFalse(
        release(warmed, Driver.BOND, 100, finished, 0, 1)
            .likely()
            .isAfter(release(mild, Driver.BOND, 100, finished, 0, 1).likely()));
  }

  @Property(tries = 40)
  void driesLaterWhenDamper(
      @ForAll @DoubleRange(min = 0.1, max = 10) double damper,
      @ForAll @LongRange(min = 0, max = SPAN) long finished) {
    WeatherYear damp =
        Cases.year(MILD::temperature, h -> MILD.dewPoint(h) + damper, MILD::irradiance);
    Curing mild = Curing.with(p -> Cases.weathers(STANDARD, MILD));
    Curing damped = Curing.with(p -> Cases.weathers(STANDARD, damp));
    assertFalse(
        release(damped, Driver.DRY_OUT, 100, finished, 0, 1)
            .likely()
            .isBefore(release(mild, Driver.DRY_OUT, 100, finished, 0, 1).likely()));
  }

  @Property(tries = 300)
  void keepsItsPromises(
      @ForAll Driver driver,
      @ForAll @DoubleRange(min = 0.5, max = 2000) double need,
      @ForAll @LongRange(min = 0, max = SPAN) long finished,
      @ForAll @IntRange(min = 0, max = 1_000_000) int stay) {
    Release release = release(CURING, driver, need, finished, stay, 1);
    Instant at = Instant.ofEpochSecond(FIRST + finished);
    assertFalse(release.likely().isBefore(at.plus(Duration.ofHours(12))));
    assertFalse(release.likely().isAfter(release.end().at()));
    int hour = release.end().at().atZone(PLACE.zone()).getHour();
    assertTrue(hour >= 8 && hour <= 20);
    Because because = release.because();
    assertTrue(because.bayHours() <= because.realHours());
    if (release.end() instanceof Release.SafeBy && because.driver().isPresent()) {
      assertEquals(need, because.meanRate() * because.realHours(), need * 1e-3 + 0.02);
    }
    if (release.end() instanceof Release.AskUs) {
      assertTrue(because.meanRate() * because.realHours() < need);
    }
  }

  @Test
  void isTheSameFromManyThreads() throws InterruptedException, ExecutionException {
    Curing shared = Curing.with(p -> Cases.weathers(STANDARD, MILD, COLD));
    ExecutorService threads = Executors.newFixedThreadPool(4);
    List<Future<Release>> futures = new ArrayList<>();
    for (int i = 0; i < 64; i++) {
      Driver driver = Driver.values()[i % 3];
      futures.add(threads.submit(() -> release(shared, driver, 100, SPAN / 3, 3600, 1)));
    }
    for (int i = 0; i < futures.size(); i++) {
      assertEquals(
          release(CURING, Driver.values()[i % 3], 100, SPAN / 3, 3600, 1), futures.get(i).get());
    }
    threads.shutdown();
  }
}
