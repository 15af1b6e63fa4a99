package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.Place;
import curewindow.climate.Trials;
import curewindow.climate.WeatherYear;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What must hold for any job in any weather. */
class CuringPropertiesTest {

  private static final Place PLACE = Cases.place("America/Chicago");
  private static final ZoneOffset STANDARD = ZoneOffset.ofHours(-6);
  private static final WeatherYear MILD = Cases.lively(1);
  private static final WeatherYear COLD = Cases.lively(2);
  private static final Curing CURING = Curing.with(p -> Cases.weathers(STANDARD, MILD, COLD));
  private static final long FIRST = Instant.parse("2027-01-01T00:00:00Z").getEpochSecond();
  private static final long SPAN = 3L * 365 * 86_400;

  /**
   * A fitted item.
   *
   * @param finished seconds from the start of 2027
   * @param stay seconds from the finish to the pickup
   * @param more by how much the other case differs, 0 to 1
   */
  private record Fitted(
      Driver driver,
      Exposure exposure,
      double need,
      double permeance,
      long finished,
      int stay,
      double more) {

    static Fitted draw(SplittableRandom random) {
      return new Fitted(
          Driver.values()[random.nextInt(3)],
          Exposure.values()[random.nextInt(4)],
          Math.exp(random.nextDouble(Math.log(0.5), Math.log(1000))),
          Math.exp(random.nextDouble(-1.5, 1.5)),
          random.nextLong(SPAN),
          random.nextInt(200_000),
          random.nextDouble());
    }

    Fitted needing(double need) {
      return new Fitted(driver, exposure, need, permeance, finished, stay, more);
    }

    Fitted through(double permeance) {
      return new Fitted(driver, exposure, need, permeance, finished, stay, more);
    }

    Fitted later(int seconds) {
      return new Fitted(
          driver, exposure, need, permeance, finished + seconds, stay - seconds, more);
    }

    Fitted of(Driver driver) {
      return new Fitted(driver, exposure, need, permeance, finished, stay, more);
    }
  }

  private static Stream<DynamicTest> fitted(int count, Consumer<Fitted> check) {
    return Trials.of(count, Fitted::draw, check);
  }

  private static Release release(Curing curing, Fitted fitted) {
    HoldRule rule = Cases.rule("hold", Map.of(fitted.driver(), fitted.need()), 12, 1500);
    Instant at = Instant.ofEpochSecond(FIRST + fitted.finished());
    CureItem item =
        new CureItem(0, "spot", fitted.exposure(), fitted.permeance(), at, List.of(rule));
    CureCase job =
        Cases.job(
            PLACE,
            new ParkingPlan(Parking.OUTSIDE, Parking.GARAGE),
            new Bay(20, 50),
            at.plusSeconds(fitted.stay()),
            item);
    return curing.timeline(job).releases().get(0);
  }

  private static void notBefore(Release early, Release late) {
    assertFalse(late.likely().isBefore(early.likely()), "likely");
    assertFalse(late.end().at().isBefore(early.end().at()), "published");
  }

  @TestFactory
  Stream<DynamicTest> endsLaterWhenFinishedLater() {
    return fitted(
        400,
        f -> notBefore(release(CURING, f), release(CURING, f.later((int) (f.more() * f.stay())))));
  }

  @TestFactory
  Stream<DynamicTest> endsLaterWithALargerNeed() {
    return fitted(
        400,
        f -> notBefore(release(CURING, f), release(CURING, f.needing(f.need() * (1 + f.more())))));
  }

  @TestFactory
  Stream<DynamicTest> endsLaterUnderATighterFilm() {
    return fitted(
        400,
        f ->
            notBefore(
                release(CURING, f), release(CURING, f.through(f.permeance() * (1 - f.more())))));
  }

  @TestFactory
  Stream<DynamicTest> bondsSoonerWhenWarmer() {
    Curing mild = Curing.with(p -> Cases.weathers(STANDARD, MILD));
    Curing[] warmer = new Curing[10];
    for (int i = 0; i < warmer.length; i++) {
      double more = 0.05 + i;
      WeatherYear warm =
          Cases.year(h -> MILD.temperature(h) + more, MILD::dewPoint, MILD::irradiance);
      warmer[i] = Curing.with(p -> Cases.weathers(STANDARD, warm));
    }
    return fitted(
        400,
        f -> {
          Fitted bond = f.of(Driver.BOND);
          notBefore(release(warmer[(int) (10 * f.more())], bond), release(mild, bond));
        });
  }

  @TestFactory
  Stream<DynamicTest> driesLaterWhenDamper() {
    Curing mild = Curing.with(p -> Cases.weathers(STANDARD, MILD));
    Curing[] damper = new Curing[10];
    for (int i = 0; i < damper.length; i++) {
      double more = 0.05 + i;
      WeatherYear damp =
          Cases.year(MILD::temperature, h -> MILD.dewPoint(h) + more, MILD::irradiance);
      damper[i] = Curing.with(p -> Cases.weathers(STANDARD, damp));
    }
    return fitted(
        400,
        f -> {
          Fitted dry = f.of(Driver.DRY_OUT);
          notBefore(release(mild, dry), release(damper[(int) (10 * f.more())], dry));
        });
  }

  @TestFactory
  Stream<DynamicTest> keepsItsPromises() {
    return fitted(500, CuringPropertiesTest::keepsItsPromises);
  }

  private static void keepsItsPromises(Fitted fitted) {
    Release release = release(CURING, fitted);
    Instant at = Instant.ofEpochSecond(FIRST + fitted.finished());
    assertFalse(release.likely().isBefore(at.plus(Duration.ofHours(12))));
    assertFalse(release.likely().isAfter(release.end().at()));
    int hour = release.end().at().atZone(PLACE.zone()).getHour();
    assertTrue(hour >= 8 && hour <= 20);
    ExplanationCause because = release.because();
    double need = fitted.need();
    assertTrue(because.bayHours() <= because.realHours());
    if (release.end() instanceof Release.SafeBy && because.driver().isPresent()) {
      assertEquals(need, because.meanRate() * because.realHours(), need * 1e-3 + 0.02);
    }
    if (release.end() instanceof Release.AtLimit) {
      assertTrue(because.meanRate() * because.realHours() < need);
    }
  }

  @Test
  void isTheSameFromManyThreads() throws InterruptedException, ExecutionException {
    Curing shared = Curing.with(p -> Cases.weathers(STANDARD, MILD, COLD));
    ExecutorService threads = Executors.newFixedThreadPool(4);
    List<Future<Release>> futures = new ArrayList<>();
    for (int i = 0; i < 64; i++) {
      Fitted fitted = Fitted.draw(new SplittableRandom(i));
      futures.add(threads.submit(() -> release(shared, fitted)));
    }
    for (int i = 0; i < futures.size(); i++) {
      assertEquals(release(CURING, Fitted.draw(new SplittableRandom(i))), futures.get(i).get());
    }
    threads.shutdown();
  }
}
