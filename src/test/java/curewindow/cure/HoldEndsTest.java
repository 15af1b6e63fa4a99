package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.ObservedHours;
import curewindow.climate.Place;
import curewindow.climate.Trials;
import curewindow.climate.WeatherYear;
import curewindow.climate.Weathers;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The ends that are searched for, against those of all weathers computed one by one and sorted. */
class HoldEndsTest {

  private static final Place PLACE = Cases.place("America/Chicago");
  private static final ZoneOffset STANDARD = ZoneOffset.ofHours(-6);
  private static final int MEMBERS = 11;
  private static final PlaceTables SITE =
      new PlaceTables(PLACE.zone(), weathers(), new ObservedHours(List.of()));
  private static final long FIRST = Instant.parse("2027-01-01T06:00:00Z").getEpochSecond();

  private static Weathers weathers() {
    return Cases.weathers(
        STANDARD, IntStream.range(0, MEMBERS).mapToObj(Cases::lively).toArray(WeatherYear[]::new));
  }

  /** What one item needs, and when; hours from the start of 2027. */
  private record Need(
      Exposure exposure, Map<Driver, Double> need, double floor, double lookBy, double finished) {

    static Need draw(SplittableRandom random, double pickup) {
      Map<Driver, Double> need = new EnumMap<>(Driver.class);
      int drivers = 1 + random.nextInt(2);
      while (need.size() < drivers) {
        need.put(Driver.values()[random.nextInt(3)], Math.exp(random.nextDouble(0, Math.log(600))));
      }
      double floor = random.nextInt(3) * random.nextInt(100);
      double lookBy = floor + random.nextInt(1200) * random.nextDouble();
      double finished = pickup - random.nextInt(4) * random.nextDouble(20);
      return new Need(
          Exposure.values()[random.nextInt(4)], need, floor, lookBy, Math.max(0, finished));
    }

    Need notBefore(double in) {
      return new Need(exposure, need, floor, lookBy, Math.max(in, finished));
    }

    CureItem item(int number) {
      Instant at = at(finished);
      HoldRule rule = new HoldRule("hold", HoldKind.HOLD, need, floor, lookBy);
      return new CureItem(number, "spot", exposure, 1, at, List.of(rule));
    }
  }

  /** Work of one stay, or of two; hours from the start of 2027. */
  private record Fitted(double pickup, double away, double again, List<Need> needs) {

    static Fitted draw(SplittableRandom random) {
      double pickup = random.nextInt(3 * 8760) + random.nextInt(2) * random.nextDouble();
      double away = random.nextInt(2) * random.nextDouble(1, 900);
      double again = random.nextDouble(72);
      List<Need> needs = new ArrayList<>();
      int items = 1 + random.nextInt(3);
      for (int i = 0; i < items; i++) {
        boolean second = away > 0 && random.nextBoolean();
        Need need = Need.draw(random, second ? pickup + away + again : pickup);
        needs.add(second ? need.notBefore(pickup + away) : need);
      }
      return new Fitted(pickup, away, again, needs);
    }

    List<Stay> stays() {
      Stay first = new Stay(at(0).minusSeconds(1), at(pickup));
      return away == 0
          ? List.of(first)
          : List.of(first, new Stay(at(pickup + away), at(pickup + away + again)));
    }
  }

  private static Instant at(double hours) {
    return Instant.ofEpochSecond(FIRST + (long) (3600 * hours));
  }

  @TestFactory
  Stream<DynamicTest> equalsSortedEndsOfAllWeathers() {
    return Trials.of(1200, Fitted::draw, HoldEndsTest::check);
  }

  private static void check(Fitted fitted) {
    CureItem[] items =
        IntStream.range(0, fitted.needs().size())
            .mapToObj(i -> fitted.needs().get(i).item(i))
            .toArray(CureItem[]::new);
    CureCase job =
        new CureCase(
            List.of(items),
            fitted.stays(),
            new ParkingPlan(Parking.OUTSIDE, Parking.GARAGE),
            PaintTone.MID,
            PLACE,
            new Bay(18, 60),
            50_000);
    Stays stays = Stays.of(job.stays(), STANDARD);
    List<ItemNeed> itemNeeds =
        Arrays.stream(items).map(i -> ItemNeed.of(i, i.rules().get(0), stays, STANDARD)).toList();
    JobDoses doses = new JobDoses(job, SITE, stays);
    HoldEnds ends = new HoldEnds(doses, itemNeeds, MEMBERS, SITE.safeRank());
    long[] sorted = IntStream.range(0, MEMBERS).mapToLong(m -> end(doses, itemNeeds, m)).toArray();
    Arrays.sort(sorted);
    check(doses, itemNeeds, ends.median(), sorted[5]);
    check(doses, itemNeeds, ends.safe(), sorted[9]);
    checkLate(doses, itemNeeds, ends);
  }

  /** Share and full end of what is late, against those of all weathers in order. */
  private static void checkLate(JobDoses doses, List<ItemNeed> itemNeeds, HoldEnds ends) {
    long at = ends.safe().at();
    double[] shares = new double[MEMBERS];
    for (int m = 0; m < MEMBERS; m++) {
      shares[m] = share(doses, itemNeeds, m, at);
    }
    Arrays.sort(shares);
    assertShown(doses, itemNeeds, ends.median(), 6);
    assertShown(doses, itemNeeds, ends.safe(), 10);
    assertEquals(shares[MEMBERS - 10] < 1, ends.late().isPresent());
    ends.late()
        .ifPresent(
            l -> {
              assertEquals(shares[MEMBERS - 6], l.share(), 1e-9);
              assertTrue(isEnoughOnTheMean(doses, itemNeeds, l.full(), 1e-9));
              assertTrue(
                  l.full() == at || !isEnoughOnTheMean(doses, itemNeeds, l.full() - 3600, -1e-9));
            });
  }

  private static boolean isEnoughOnTheMean(
      JobDoses doses, List<ItemNeed> itemNeeds, long at, double error) {
    return itemNeeds.stream()
        .allMatch(
            c ->
                c.rule().need().keySet().stream()
                    .allMatch(
                        d ->
                            IntStream.range(0, MEMBERS)
                                    .mapToDouble(m -> doses.gained(c, d, m, at))
                                    .average()
                                    .orElseThrow()
                                >= c.need(d) - error));
  }

  private static long end(JobDoses doses, List<ItemNeed> itemNeeds, int member) {
    return itemNeeds.stream().mapToLong(c -> end(doses, c, member)).max().orElseThrow();
  }

  private static long end(JobDoses doses, ItemNeed itemNeed, int member) {
    long end = itemNeed.floor();
    for (Driver driver : itemNeed.rule().need().keySet()) {
      end = Math.max(end, doses.met(itemNeed, driver, member));
    }
    return Math.min(end, itemNeed.limit());
  }

  private static double share(JobDoses doses, List<ItemNeed> itemNeeds, int member, long at) {
    return itemNeeds.stream()
        .flatMap(
            c ->
                c.rule().need().keySet().stream()
                    .map(d -> doses.gained(c, d, member, at) / c.need(d)))
        .mapToDouble(share -> Math.min(1, share))
        .min()
        .orElseThrow();
  }

  /** Among weathers that end at the same limit the one shown is in the middle, or the ninth. */
  private static void assertShown(
      JobDoses doses, List<ItemNeed> itemNeeds, HoldEnds.Decision found, int number) {
    if (found.past()) {
      double[] shares =
          IntStream.range(0, MEMBERS)
              .mapToDouble(m -> share(doses, itemNeeds, m, found.at()))
              .toArray();
      double shown = shares[found.member()];
      double[] sorted = shares.clone();
      Arrays.sort(sorted);
      double expected = sorted[MEMBERS - number];
      boolean endsThen =
          IntStream.range(0, MEMBERS)
              .anyMatch(m -> shares[m] == expected && end(doses, itemNeeds, m) == found.at());
      assertTrue(!endsThen || Math.abs(expected - shown) < 1e-9, "in the order of shares");
    }
  }

  private static void check(
      JobDoses doses, List<ItemNeed> itemNeeds, HoldEnds.Decision found, long expected) {
    assertEquals(expected, found.at());
    assertEquals(expected, end(doses, itemNeeds, found.member()), "the weather has this end");
    if (found.past()) {
      assertEquals(found.itemNeed().limit(), expected, "its limit decides");
    }
    assertTrue(end(doses, found.itemNeed(), found.member()) >= expected, "the item decides it");
  }
}
