package curewindow.told;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.Climates;
import curewindow.climate.Place;
import curewindow.climate.Places;
import curewindow.cure.Curing;
import curewindow.cure.HoldKind;
import curewindow.cure.PaintTone;
import curewindow.cure.Parking;
import curewindow.cure.ParkingPlan;
import curewindow.cure.Release;
import curewindow.cure.Stay;
import curewindow.cure.Timeline;
import curewindow.problem.Where;
import curewindow.shop.BodyType;
import curewindow.shop.Car;
import curewindow.shop.Catalogue;
import curewindow.shop.CureCases;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.shop.Shop;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import curewindow.shop.ShopRead;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The starting catalogue over a year: tint, paint film, wrap and coating of a mid-tone car,
 * finished at 14:00 and picked up at 16:00 on the tenth of each month, outside and in an unheated
 * garage, in eighteen cities: 1,728 jobs. The ranges are common practice, no source.
 */
class TradeYearTest {

  private static final List<String> CITIES =
      List.of(
          "seattle",
          "vancouver",
          "chicago",
          "minneapolis",
          "boston",
          "new-york",
          "denver",
          "atlanta",
          "dallas",
          "houston",
          "miami",
          "phoenix",
          "los-angeles",
          "kansas-city",
          "toronto",
          "london",
          "berlin",
          "madrid");

  private static final Map<String, String> FILMS =
      Map.of(
          "tint", "harbor-35",
          "paint-film", "fieldcoat-gloss",
          "wrap", "colorway-satin",
          "paint-coating", "tidewater-paint");

  private static final ShopRead READ =
      ShopFolder.read(new ShopFiles(Path.of("content/demo")), Instant.EPOCH);
  private static final Shop SHOP = READ.shop().orElseThrow();
  private static final Catalogue CATALOGUE = READ.catalogue();
  private static final Curing CURING = Curing.with(Climates::weathers);

  /** A job and its dates as told. */
  private record Told(
      String city, int month, Parking parking, String service, Instant finished, Timeline dates) {

    double days(String hold) {
      return Duration.between(finished, end(hold).at()).toMinutes() / 1440.0;
    }

    Release.End end(String hold) {
      return dates.of(hold).orElseThrow().end();
    }

    boolean isAt(String where, int when, String what) {
      return city.equals(where) && month == when && service.equals(what);
    }
  }

  private static final List<Told> ALL = new ArrayList<>();

  @BeforeAll
  static void computeAll() {
    ALL.clear();
    ALL.addAll(CITIES.parallelStream().flatMap(TradeYearTest::city).toList());
  }

  private static Stream<Told> city(String city) {
    List<Told> told = new ArrayList<>();
    for (int month = 1; month <= 12; month++) {
      for (Parking parking : List.of(Parking.OUTSIDE, Parking.GARAGE)) {
        for (String service : FILMS.keySet()) {
          told.add(told(city, month, parking, service));
        }
      }
    }
    return told.stream();
  }

  private static Told told(String city, int month, Parking parking, String service) {
    Place place = Places.builtIn().get(city);
    Instant finished = LocalDateTime.of(2026, month, 10, 14, 0).atZone(place.zone()).toInstant();
    List<String> spots =
        service.equals("tint")
            ? List.of("front-door-glass", "rear-door-glass", "back-glass")
            : service.equals("paint-film")
                ? List.of("hood", "front-bumper")
                : List.of("whole-body");
    Job job =
        new Job(
            "Y-1",
            "",
            "en",
            new Car(
                OptionalInt.empty(),
                BodyType.SEDAN,
                PaintTone.MID,
                Optional.empty(),
                "blue four-door",
                Set.of()),
            city,
            new ParkingPlan(parking, parking),
            List.of(new Stay(finished, finished.plus(Duration.ofHours(2)))),
            List.of(
                new FittedItem(
                    service,
                    FILMS.get(service),
                    spots,
                    finished,
                    OptionalDouble.empty(),
                    Optional.empty(),
                    OptionalInt.empty())),
            List.of(),
            List.of(),
            Where.file("jobs/Y-1.yaml"));
    Timeline computed = CURING.timeline(CureCases.of(job, SHOP, CATALOGUE, place));
    assertTrue(
        Visit.of(job, CATALOGUE.visits(), computed, SHOP, false).isPresent()
            == !service.equals("paint-coating"));
    return new Told(
        city, month, parking, service, finished, HoldOrder.of(computed, CATALOGUE.holds()));
  }

  @Test
  void everyHoldEndsWithADateAtItsLimitAtTheLatest() {
    assertEquals(1_728, ALL.size());
    for (Told told : ALL) {
      for (Release release : told.dates().releases()) {
        double latest =
            CATALOGUE.rules().stream()
                .filter(r -> r.service().equals(told.service()))
                .filter(r -> r.rule().hold().equals(release.hold()))
                .mapToDouble(r -> r.rule().limitHours() / 24)
                .findFirst()
                .orElseThrow();
        assertTrue(told.days(release.hold()) <= latest + 1, () -> told.city() + " " + release);
        assertTrue(
            release.kind() == HoldKind.HOLD || release.end() instanceof Release.SafeBy,
            () -> "no settle passes its horizon: " + told.city() + " " + release);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "miami, 7, 1, 1.5",
    "phoenix, 7, 1, 1.5",
    "seattle, 10, 3, 6",
    "minneapolis, 1, 9.9, 10.3"
  })
  void windowsStayUp(String city, int month, double from, double to) {
    within(
        t -> t.isAt(city, month, "tint") && t.parking() == Parking.OUTSIDE, "windows-up", from, to);
  }

  @Test
  void filmIsFirstWashedAfterThreeToSixDaysInJuly() {
    within(
        t -> t.month() == 7 && t.service().equals("paint-film") && t.parking() == Parking.OUTSIDE,
        "hand-wash",
        3,
        6);
  }

  @ParameterizedTest
  @CsvSource({"minneapolis", "chicago", "toronto"})
  void filmIsFirstWashedAfterTwoWeeksInANorthernJanuary(String city) {
    within(t -> t.isAt(city, 1, "paint-film"), "hand-wash", 13.7, 14.8);
  }

  @Test
  void coatingsAreFirstWashedAfterFiveToSevenDaysInJulyAndTwoWeeksAtMost() {
    within(t -> t.month() == 7 && t.service().equals("paint-coating"), "hand-wash", 5, 7);
    within(t -> t.service().equals("paint-coating"), "hand-wash", 5, 14.8);
  }

  private static void within(Predicate<Told> which, String hold, double from, double to) {
    List<Told> found = ALL.stream().filter(which).toList();
    assertTrue(!found.isEmpty());
    for (Told told : found) {
      double days = told.days(hold);
      assertTrue(
          days >= from && days <= to,
          () -> told.city() + " " + told.month() + " " + told.parking() + ": " + days + " d");
    }
  }

  /** Winter ends holds at their limit, summer hardly any; gently fewer than those. */
  @Test
  void theLimitIsForWinter() {
    double winter = share(Set.of(12, 1, 2), r -> r.end() instanceof Release.AtLimit);
    double summer = share(Set.of(6, 7, 8), r -> r.end() instanceof Release.AtLimit);
    double gently = share(Set.of(12, 1, 2), TradeYearTest::isGentle);
    String shares = winter + " in winter, " + gently + " gently, " + summer + " in summer";
    assertTrue(winter > 0.4 && winter < 0.7, shares);
    assertTrue(gently < winter - 0.05, shares);
    assertTrue(summer < 0.02, shares);
  }

  private static boolean isGentle(Release release) {
    return release.end() instanceof Release.AtLimit limit && limit.isGentle();
  }

  private static double share(Set<Integer> months, Predicate<Release> which) {
    List<Release> holds =
        ALL.stream()
            .filter(t -> months.contains(t.month()))
            .flatMap(t -> t.dates().releases().stream())
            .filter(r -> r.kind() == HoldKind.HOLD)
            .toList();
    return holds.stream().filter(which).count() / (double) holds.size();
  }

  @Test
  void whatWaitsNeverEndsBeforeWhatItWaitsFor() {
    for (Told told : ALL) {
      for (String[] pair :
          new String[][] {
            {"rinse", "hand-wash"},
            {"hand-wash", "pressure-wash"},
            {"pressure-wash", "machine-wash"},
            {"hand-wash", "topper"},
            {"keep-dry", "rinse"}
          }) {
        if (told.dates().of(pair[0]).isPresent() && told.dates().of(pair[1]).isPresent()) {
          assertTrue(told.days(pair[0]) <= told.days(pair[1]), () -> told.city() + " " + pair[1]);
        }
      }
    }
  }
}
