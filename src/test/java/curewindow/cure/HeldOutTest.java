package curewindow.cure;

import static curewindow.cure.CureJudge.mean;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import curewindow.climate.Station;
import curewindow.cure.CureJudge.Verdict;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Promises from built-in places at stations that their doubt was not fitted to, in the USA and
 * elsewhere. Of these only twelve months are known, so the true hours are made from the station's
 * own months: it shows what a built-in place's errors do, not how weather varies.
 */
class HeldOutTest {

  /** What is kept there, and waits as multiples of the true ones; docs/judged.md has the aim. */
  private record Bound(double kept, double patience) {}

  private static final Map<Known, Bound> BOUNDS =
      Map.of(Known.BUILT_IN, new Bound(0.85, 1.25), Known.MOVED, new Bound(0.80, 1.25));

  @BeforeAll
  static void needsStations() {
    assertTrue(Station.areThere() || !Boolean.getBoolean("judge"), "no months of stations");
    assumeTrue(Station.areThere(), "no months of stations");
  }

  static Stream<Arguments> cases() {
    return Stream.of(Known.BUILT_IN, Known.MOVED)
        .flatMap(known -> Stream.of(true, false).map(usa -> Arguments.of(known, usa)));
  }

  /** Up to 60 stations of a kind on each side, every sixth day. */
  @ParameterizedTest
  @MethodSource("cases")
  @Tag("judge")
  @EnabledIfSystemProperty(named = "judge", matches = "true", disabledReason = "asked for by name")
  void keepsPromisesWhereNothingWasFitted(Known known, boolean usa) throws IOException {
    List<Station> stations = Station.all().stream().filter(s -> s.usa() == usa).toList();
    List<TrueYear> fitted = years(stations.stream().filter(s -> !s.heldOut()), known, 60);
    List<TrueYear> heldOut = years(stations.stream().filter(Station::heldOut), known, 60);
    for (ParkingPlan plan : CureJudge.PLANS.subList(0, 2)) {
      String what = (usa ? "USA" : "elsewhere") + ", " + known + ", " + plan.day().id();
      print(what + ", fitted to", CureJudge.judge(fitted, known, plan, 6));
      List<Verdict> judged = CureJudge.judge(heldOut, known, plan, 6);
      print(what + ", held out", judged);
      assertWithin(BOUNDS.get(known), judged, what);
    }
  }

  /** A few of both, every 24th day: quick enough for every build. */
  @Test
  void keepsPromisesAtSomeStations() throws IOException {
    List<Station> all = Station.all().stream().filter(Station::heldOut).toList();
    List<TrueYear> years =
        Stream.of(true, false)
            .flatMap(
                usa -> years(all.stream().filter(s -> s.usa() == usa), Known.BUILT_IN, 8).stream())
            .toList();
    for (ParkingPlan plan : CureJudge.PLANS.subList(0, 2)) {
      List<Verdict> judged = CureJudge.judge(years, Known.BUILT_IN, plan, 24);
      print("Some stations, held out, " + plan.day().id(), judged);
      assertWithin(BOUNDS.get(Known.BUILT_IN), judged, plan.day().id());
    }
  }

  private static void assertWithin(Bound bound, List<Verdict> judged, String what) {
    assertTrue(mean(judged, Verdict::kept) >= bound.kept(), what + ": kept");
    assertTrue(mean(judged, v -> v.ratio(0)) <= bound.patience(), what + ": wait");
  }

  /** Made years of the stations of which something is known so, by lot up to a number of them. */
  private static List<TrueYear> years(Stream<Station> stations, Known known, int most) {
    return stations
        .filter(s -> known.of(s.place()).isPresent())
        .sorted(Comparator.comparingLong(Station::lot))
        .limit(most)
        .map(s -> new TrueYear(s.place(), s.madeYear()))
        .toList();
  }

  private static void print(String what, List<Verdict> verdicts) {
    System.out.printf(
        Locale.ROOT,
        "%-45s %2d stations: kept %.1f %%, below 65 %%: %.1f %%, wait %.3f, within 1.25: %.1f %%%n",
        what,
        verdicts.size() / CureJudge.HOLDS.size(),
        100 * mean(verdicts, Verdict::kept),
        100 * mean(verdicts, v -> v.kept() < 0.65 ? 1 : 0),
        mean(verdicts, v -> v.ratio(0)),
        100 * mean(verdicts, v -> v.share(1.25)));
  }
}
