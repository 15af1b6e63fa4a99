package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.ObservedHours;
import curewindow.climate.Place;
import curewindow.climate.Trials;
import curewindow.climate.WeatherYear;
import curewindow.climate.Weathers;
import curewindow.climate.YearHours;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A car that comes back, against sums taken piece by piece from the weather. */
class StaysTest {

  private static final Place PLACE = Cases.place("America/Chicago");
  private static final ZoneOffset STANDARD = ZoneOffset.ofHours(-6);
  private static final int MEMBERS = 3;
  private static final Bay BAY = new Bay(19, 45);
  private static final Weathers WEATHERS =
      Cases.weathers(
          STANDARD,
          IntStream.range(0, MEMBERS).mapToObj(Cases::lively).toArray(WeatherYear[]::new));
  private static final PlaceTables SITE =
      new PlaceTables(PLACE.zone(), WEATHERS, new ObservedHours(List.of()));

  /** The hours of the one surface of the trials, by year and member. */
  private static final Map<List<Integer>, SurfaceHours> HOURS = new HashMap<>();

  private static final ParkingPlan PARKING = new ParkingPlan(Parking.OUTSIDE, Parking.GARAGE);

  /** The start of an hour some months before a February 29. */
  private static final long FIRST = Instant.parse("2027-11-05T06:00:00Z").getEpochSecond();

  private record Trial(List<Stay> stays, Instant finished, Driver driver, double need) {

    static Trial draw(SplittableRandom random) {
      List<Stay> stays = new ArrayList<>();
      long at = FIRST + random.nextLong(60L * 86_400);
      int count = 2 + random.nextInt(2);
      for (int i = 0; i < count; i++) {
        long pickup = at + random.nextLong(3L * 86_400);
        stays.add(new Stay(Instant.ofEpochSecond(at), Instant.ofEpochSecond(pickup)));
        at = pickup + 7200 + random.nextLong(40L * 86_400);
      }
      Stay of = stays.get(random.nextInt(count));
      long inBay = of.pickup().getEpochSecond() - of.in().getEpochSecond();
      return new Trial(
          stays,
          of.in().plusSeconds(random.nextLong(inBay + 1)),
          Driver.values()[random.nextInt(3)],
          random.nextDouble(1, 600));
    }

    CureCase job() {
      HoldRule rule = Cases.rule("hold", Map.of(driver, need), 0, 5000);
      CureItem item = Cases.item(0, Exposure.OUTSIDE_UP, finished, rule);
      return new CureCase(List.of(item), stays, PARKING, PaintTone.MID, PLACE, BAY, 50_000);
    }

    boolean isInBay(long second) {
      Instant at = Instant.ofEpochSecond(second);
      return stays.stream().anyMatch(s -> !at.isBefore(s.in()) && at.isBefore(s.pickup()));
    }

    /** The rate changes with each hour, and when the car comes or leaves. */
    private long next(long second) {
      long hour = Math.floorDiv(second, 3600L) * 3600 + 3600;
      return stays.stream()
          .flatMap(s -> Stream.of(s.in(), s.pickup()))
          .mapToLong(Instant::getEpochSecond)
          .filter(at -> at > second && at < hour)
          .min()
          .orElse(hour);
    }

    private static SurfaceHours hours(Surface surface, int year, int member) {
      return SurfaceHours.of(SITE.weather(year, member), surface, SITE.dayHours(surface, year));
    }

    double sum(long until, int member) {
      Surface surface = new Surface(PARKING, Exposure.OUTSIDE_UP, PaintTone.MID);
      double sum = 0;
      long at = finished.getEpochSecond();
      while (at < until) {
        long to = Math.min(until, next(at));
        Instant instant = Instant.ofEpochSecond(at);
        int year = instant.atOffset(STANDARD).getYear();
        double rate =
            isInBay(at)
                ? Rates.inBay(driver, BAY, 50_000)
                : HOURS
                    .computeIfAbsent(List.of(year, member), y -> hours(surface, year, member))
                    .rate(YearHours.of(instant, STANDARD), driver, 50_000);
        sum += rate * (to - at) / 3600.0;
        at = to;
      }
      return sum;
    }
  }

  @TestFactory
  Stream<DynamicTest> dosesAreThoseOfBayAndWeatherInTurn() {
    return Trials.of(60, Trial::draw, StaysTest::check);
  }

  private static void check(Trial trial) {
    CureCase job = trial.job();
    Stays stays = Stays.of(job.stays(), STANDARD);
    JobDoses doses = new JobDoses(job, SITE, stays);
    CureItem item = job.items().get(0);
    ItemNeed itemNeed = ItemNeed.of(item, item.rules().get(0), stays, STANDARD);
    long day = 86_400;
    for (int member = 0; member < MEMBERS; member++) {
      long hour = (trial.finished().getEpochSecond() / 3600 + 1) * 3600;
      for (long until : List.of(hour + day, hour + 20 * day, hour + 70 * day)) {
        double expected = trial.sum(until, member);
        double gained = doses.gained(itemNeed, trial.driver(), member, local(until));
        assertEquals(expected, gained, 1e-8 * Math.max(1, expected));
      }
      long met = doses.met(itemNeed, trial.driver(), member);
      if (met != DoseTable.NEVER) {
        long by = met - STANDARD.getTotalSeconds();
        assertTrue(trial.sum(hourAfter(by), member) >= trial.need() - 1e-6, "met within the hour");
        assertTrue(trial.sum(hourAfter(by) - 3600, member) < trial.need() + 1e-6, "not before");
      }
    }
  }

  private static long hourAfter(long second) {
    return Math.floorDiv(second + 3599, 3600L) * 3600;
  }

  private static long local(long second) {
    return second + STANDARD.getTotalSeconds();
  }

  private static Instant day(int day, int hour) {
    return Instant.ofEpochSecond(FIRST + 86_400L * day + 3600L * hour);
  }

  private static CureCase coldJob(List<Stay> stays, CureItem... items) {
    return new CureCase(
        List.of(items), stays, Cases.OUTSIDE, PaintTone.MID, PLACE, Cases.REFERENCE_BAY, 50_000);
  }

  private static CureItem item(int number, Instant finished, double need) {
    HoldRule rule = Cases.rule("wash", Map.of(Driver.DRY_OUT, need), 0, 2000);
    return Cases.item(number, Exposure.OUTSIDE_UP, finished, rule);
  }

  /** Nothing dries outside, and each hour in the bay counts as one. */
  private static Curing onlyInTheBay() {
    return Curing.with(place -> Cases.weathers(STANDARD, Cases.steady(-30, -30, 0)));
  }

  @Test
  void theBayOfALaterStayCountsForEarlierWork() {
    List<Stay> once = List.of(new Stay(day(0, 8), day(0, 18)));
    List<Stay> twice = List.of(once.get(0), new Stay(day(7, 8), day(8, 18)));
    CureItem item = item(0, day(0, 12), 20);
    Release alone = onlyInTheBay().timeline(coldJob(once, item)).releases().get(0);
    assertFalse(alone.becauseLikely().isMet(), "6 hours in the bay are not enough");
    Timeline both = onlyInTheBay().timeline(coldJob(twice, item));
    Release release = both.releases().get(0);
    assertTrue(release.becauseLikely().isMet());
    assertTrue(release.likely().isAfter(day(7, 8)) && release.likely().isBefore(day(8, 18)));
    double inBay = release.becauseLikely().bayHours();
    assertEquals(20, inBay, 1.5, "all that counts is gained in the bay");
    assertEquals(
        inBay, 6 + (release.likely().getEpochSecond() - day(7, 8).getEpochSecond()) / 3600.0, 0.01);
    assertEquals(day(8, 18), both.pickup());
  }

  @Test
  void laterWorkHoldsTheSameHoldLonger() {
    List<Stay> stays = List.of(new Stay(day(0, 8), day(0, 18)), new Stay(day(3, 8), day(3, 18)));
    Timeline told =
        onlyInTheBay().timeline(coldJob(stays, item(0, day(0, 9), 2), item(1, day(3, 12), 3)));
    assertEquals(day(3, 15), told.releases().get(0).likely());
    assertEquals(1, told.releases().get(0).because().item());
  }

  @Test
  void theWalkTellsBayAndWeatherApart() {
    List<Stay> stays = List.of(new Stay(day(0, 8), day(0, 18)), new Stay(day(2, 8), day(2, 12)));
    Explanation explanation =
        onlyInTheBay().explanation(coldJob(stays, item(0, day(0, 12), 60)), "wash");
    List<ExplanationWay.Stretch> bay =
        explanation.likely().days().stream().filter(ExplanationWay.Stretch::inBay).toList();
    assertEquals(10, bay.stream().mapToDouble(ExplanationWay.Stretch::hours).sum(), 1e-9);
    assertEquals(day(2, 8), bay.get(bay.size() - 1).from());
    assertEquals(day(2, 12), bay.get(bay.size() - 1).to());
    assertEquals(10, bay.stream().mapToDouble(ExplanationWay.Stretch::dose).sum(), 1e-6);
  }

  @Test
  void refusesWorkWhileTheCarIsAwayAndStaysThatOverlap() {
    List<Stay> stays = List.of(new Stay(day(0, 8), day(0, 18)), new Stay(day(2, 8), day(2, 12)));
    CureCase away = coldJob(stays, item(0, day(1, 12), 60));
    assertThrows(IllegalArgumentException.class, () -> onlyInTheBay().timeline(away));
    List<Stay> mixed = List.of(stays.get(1), stays.get(0));
    assertThrows(IllegalArgumentException.class, () -> coldJob(mixed));
    assertThrows(IllegalArgumentException.class, () -> coldJob(List.of()));
    assertThrows(IllegalArgumentException.class, () -> new Stay(day(1, 0), day(0, 0)));
  }
}
