package curewindow.bench;

import curewindow.climate.Climates;
import curewindow.climate.Place;
import curewindow.climate.Places;
import curewindow.climate.Weathers;
import curewindow.cure.Bay;
import curewindow.cure.CureCase;
import curewindow.cure.CureItem;
import curewindow.cure.Curing;
import curewindow.cure.Driver;
import curewindow.cure.Exposure;
import curewindow.cure.HoldKind;
import curewindow.cure.HoldRule;
import curewindow.cure.PaintTone;
import curewindow.cure.Parking;
import curewindow.cure.ParkingPlan;
import curewindow.cure.Stay;
import curewindow.cure.Timeline;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long dates take: one job of ten holds (a tinted car with a film on its front and a coating)
 * with tables that are there, the tables it needs, and the weathers of a place. Run with {@code mvn
 * -q -Pbench test-compile exec:exec}.
 */
@State(Scope.Benchmark)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class CureBenchmark {

  /** Months that end most holds by the weather, by floors, and by limits. */
  @Param({"phoenix 1", "seattle 7", "minneapolis 1"})
  private String where;

  private Place place;
  private Weathers weathers;
  private Curing warm;
  private CureCase job;

  /** Made by the benchmark's runner. */
  public CureBenchmark() {}

  /** Lays the job out and asks for its dates once, so that the tables are there. */
  @Setup
  public void prepare() {
    place = Places.builtIn().get(where.split(" ")[0]);
    weathers = Climates.weathers(place);
    warm = Curing.with(p -> weathers);
    job = tenHolds(place, Integer.parseInt(where.split(" ")[1]));
    if (warm.timeline(job).releases().size() != 10) {
      throw new IllegalStateException("the job is to have ten holds");
    }
  }

  /**
   * The dates of one job with tables that are there.
   *
   * @return the dates
   */
  @Benchmark
  public Timeline timeline() {
    return warm.timeline(job);
  }

  /**
   * The dates of the first job of a place and parking, for which the tables are built: behind
   * glass, facing up, upright; all that the ten holds need of three drivers.
   *
   * @return the dates
   */
  @Benchmark
  public Timeline tables() {
    return Curing.with(p -> weathers).timeline(job);
  }

  /**
   * The weathers of a place.
   *
   * @return the weathers
   */
  @Benchmark
  public Weathers weathers() {
    return Climates.weathers(place);
  }

  private static CureCase tenHolds(Place place, int month) {
    Instant day = LocalDateTime.of(2026, month, 12, 14, 0).atZone(place.zone()).toInstant();
    List<CureItem> items =
        List.of(
            item(0, "front-door-glass", Exposure.BEHIND_GLASS, day, tint().subList(0, 3)),
            item(1, "back-glass", Exposure.BEHIND_GLASS, day.minusSeconds(3600), tint()),
            item(2, "hood", Exposure.OUTSIDE_UP, day.minusSeconds(7200), film()),
            item(3, "fender", Exposure.OUTSIDE_SIDE, day.minusSeconds(7200), film()),
            item(4, "whole-body", Exposure.OUTSIDE_UP, day.minusSeconds(10_800), coating()));
    ParkingPlan outside = new ParkingPlan(Parking.OUTSIDE, Parking.OUTSIDE);
    return new CureCase(
        items,
        List.of(new Stay(day.minusSeconds(10_800), day.plusSeconds(7200))),
        outside,
        PaintTone.MID,
        place,
        new Bay(20, 50),
        50_000);
  }

  private static CureItem item(
      int number, String spot, Exposure exposure, Instant finished, List<HoldRule> rules) {
    return new CureItem(number, spot, exposure, 1, finished, rules);
  }

  private static List<HoldRule> tint() {
    return List.of(
        rule("windows-up", Map.of(Driver.BOND, 48.0), 24, 336),
        rule("haze", Map.of(Driver.DRY_OUT, 336.0), 72, 1440),
        rule("inside-glass", Map.of(Driver.BOND, 168.0, Driver.DRY_OUT, 240.0), 168, 720),
        rule("defroster", Map.of(Driver.BOND, 96.0, Driver.DRY_OUT, 168.0), 72, 720));
  }

  private static List<HoldRule> film() {
    return List.of(
        rule("film-wash", Map.of(Driver.BOND, 120.0), 72, 336),
        rule("film-pockets", Map.of(Driver.DRY_OUT, 240.0), 72, 1080),
        rule("film-touchless", Map.of(Driver.BOND, 336.0), 240, 720));
  }

  private static List<HoldRule> coating() {
    return List.of(
        rule("coating-dry", Map.of(Driver.CROSSLINK, 24.0), 12, 72),
        rule("coating-wash", Map.of(Driver.CROSSLINK, 168.0), 120, 336),
        rule("coating-full", Map.of(Driver.CROSSLINK, 336.0), 168, 720));
  }

  private static HoldRule rule(String hold, Map<Driver, Double> need, double floor, double lookBy) {
    return new HoldRule(hold, HoldKind.HOLD, need, floor, lookBy);
  }
}
