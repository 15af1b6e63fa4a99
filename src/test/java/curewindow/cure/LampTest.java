package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.Place;
import curewindow.climate.Trials;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a lamp in the bay is worth. */
class LampTest {

  private static final double BOND = 50_000;
  private static final Place PLACE = Cases.place("UTC");
  private static final Instant NOON = Cases.at(PLACE, "2026-03-02T12:00");
  private static final Curing STEADY =
      Curing.with(p -> Cases.weathers(ZoneOffset.UTC, Cases.steady(23, 12, 0)));
  private static final Curing LIVELY =
      Curing.with(
          p -> Cases.weathers(ZoneOffset.UTC, Cases.lively(1), Cases.lively(2), Cases.lively(3)));

  /**
   * exp(50000 / 8.31446 x (1/296.15 - 1/T)) x minutes / 60, computed outside this project. That 30
   * minutes at 60 C are 4.8 reference hours, 9.54 an hour, is common practice's figure too.
   */
  @ParameterizedTest
  @CsvSource({"60, 30, 4.7686", "60, 60, 9.5373", "40, 60, 3.0112", "80, 15, 6.6272"})
  void givesBondByArrhenius(double surface, double minutes, double hours) {
    Lamp lamp = new Lamp(surface, minutes);
    assertEquals(hours, lamp.dose(Cases.REFERENCE_BAY, BOND).get(Driver.BOND), 1e-3);
    assertEquals(hours, lamp.dose(Cases.REFERENCE_BAY, BOND).get(Driver.CROSSLINK), 1e-3);
  }

  /** sqrt(30 / 50) by hand: the coating takes its moisture from the bay's air. */
  @Test
  void hardensACoatingWithTheMoistureOfTheBay() {
    Map<Driver, Double> dry = new Lamp(60, 30).dose(new Bay(23, 30), BOND);
    assertEquals(4.7686, dry.get(Driver.BOND), 1e-3);
    assertEquals(4.7686 * 0.774597, dry.get(Driver.CROSSLINK), 1e-3);
  }

  @Test
  void driesNoMountingWater() {
    assertEquals(
        Optional.empty(),
        Optional.ofNullable(new Lamp(60, 30).dose(Cases.REFERENCE_BAY, BOND).get(Driver.DRY_OUT)));
  }

  @ParameterizedTest
  @CsvSource({
    "29.9, 30, surface",
    "100.1, 30, surface",
    "NaN, 30, surface",
    "60, 0.9, minutes",
    "60, 601, minutes",
    "60, NaN, minutes"
  })
  void refusesAbsurdNumbersByName(double surface, double minutes, String name) {
    String said =
        assertThrows(IllegalArgumentException.class, () -> new Lamp(surface, minutes)).getMessage();
    assertTrue(said.startsWith(name), said);
  }

  private static CureItem item(Optional<Lamp> lamp, Bay bay, HoldRule... rules) {
    return new CureItem(
        0,
        "hood",
        Exposure.OUTSIDE_SIDE,
        1,
        NOON,
        lamp.map(l -> l.dose(bay, BOND)).orElse(Map.of()),
        List.of(rules));
  }

  private static CureCase job(Optional<Lamp> lamp, HoldRule... rules) {
    Bay bay = Cases.REFERENCE_BAY;
    return Cases.job(
        PLACE, Cases.HEATED, bay, NOON.plus(Duration.ofHours(6)), item(lamp, bay, rules));
  }

  /** At rate 1 a need of 40 h lasts 40 h; by hand, half an hour at 60 C takes 4.7686 h off. */
  @Test
  void takesItsHoursOffTheNeed() {
    HoldRule rule = Cases.rule("hold", Map.of(Driver.BOND, 40.0), 12, 200);
    Explanation plain = STEADY.explanation(job(Optional.empty(), rule), "hold");
    Explanation lamp = STEADY.explanation(job(Optional.of(new Lamp(60, 30)), rule), "hold");
    assertEquals(40, hours(plain.safe().met().orElseThrow()), 0.01);
    assertEquals(40 - 4.7686, hours(lamp.safe().met().orElseThrow()), 0.01);
    assertEquals(4.7686, lamp.safe().lampHours(), 1e-3);
    assertEquals(40, lamp.safe().dose(), 0.01, "the lamp's hours are among the dose");
    assertEquals(4.7686 + 6, lamp.safe().days().get(0).doseAtEnd(), 0.01, "at pickup");
    ExplanationCause because =
        STEADY
            .timeline(job(Optional.of(new Lamp(60, 30)), rule))
            .of("hold")
            .orElseThrow()
            .because();
    assertEquals(4.7686, because.lampHours(), 1e-3);
    assertEquals(1, because.meanRate(), 1e-3);
    assertTrue(because.isMet());
  }

  /** By hand: 5 h at 60 C are 47.7 reference hours, all of 40 and more. */
  @Test
  void aNeedThatTheLampMeetsAloneEndsAtTheFloor() {
    HoldRule rule = Cases.rule("hold", Map.of(Driver.BOND, 40.0), 12, 200);
    Release release =
        STEADY.timeline(job(Optional.of(new Lamp(60, 300)), rule)).of("hold").orElseThrow();
    assertEquals(NOON.plus(Duration.ofHours(12)), release.likely());
    assertEquals(Optional.empty(), release.because().driver(), "the floor decides");
    Explanation explanation = STEADY.explanation(job(Optional.of(new Lamp(60, 300)), rule), "hold");
    assertTrue(explanation.safe().floorDecides());
    assertEquals(40, explanation.safe().lampHours(), 1e-9);
  }

  /** By hand: at the limit of 24 h there are 24 + 4.7686 of 40 reference hours. */
  @Test
  void countsInTheShareAtTheLimit() {
    HoldRule rule = Cases.rule("hold", Map.of(Driver.BOND, 40.0), 12, 24);
    Release.AtLimit end =
        (Release.AtLimit)
            STEADY
                .timeline(job(Optional.of(new Lamp(60, 30)), rule))
                .of("hold")
                .orElseThrow()
                .end();
    assertEquals((24 + 4.7686) / 40, end.share(), 0.01);
    assertEquals(Math.ceil(40 - 4.7686), hours(end.full()), "up to the hour");
  }

  @Test
  void ofTwoEqualItemsTheOneWithoutTheLampDecides() {
    HoldRule rule = Cases.rule("hold", Map.of(Driver.BOND, 40.0), 12, 200);
    Bay bay = Cases.REFERENCE_BAY;
    CureCase job =
        Cases.job(
            PLACE,
            Cases.HEATED,
            bay,
            NOON,
            item(Optional.of(new Lamp(60, 30)), bay, rule),
            item(Optional.empty(), bay, rule));
    assertEquals(0, STEADY.explanation(job, "hold").safe().lampHours());
    assertEquals(40, hours(STEADY.explanation(job, "hold").safe().met().orElseThrow()), 0.01);
  }

  private record Draw(double surface, double minutes, double more, double need) {

    HoldRule rule() {
      Map<Driver, Double> needs =
          Map.of(Driver.BOND, need, Driver.CROSSLINK, need / 2, Driver.DRY_OUT, 20.0);
      return Cases.rule("hold", needs, 12, 400);
    }
  }

  /** More minutes or more heat never bring a later date. */
  @TestFactory
  Stream<DynamicTest> endsNoLaterUnderMoreLamp() {
    return Trials.of(
        300,
        random ->
            new Draw(
                random.nextDouble(30, 99),
                random.nextDouble(1, 500),
                random.nextDouble(1, 100),
                random.nextDouble(2, 300)),
        d -> {
          Release less = lively(new Lamp(d.surface(), d.minutes()), d.rule());
          notAfter(lively(new Lamp(d.surface(), d.minutes() + d.more()), d.rule()), less);
          double hotter = Math.min(100, d.surface() + d.more());
          notAfter(lively(new Lamp(hotter, d.minutes()), d.rule()), less);
        });
  }

  private static Release lively(Lamp lamp, HoldRule rule) {
    return LIVELY.timeline(job(Optional.of(lamp), rule)).of("hold").orElseThrow();
  }

  private static void notAfter(Release more, Release less) {
    assertFalse(more.likely().isAfter(less.likely()), "likely");
    assertFalse(more.end().at().isAfter(less.end().at()), "published");
  }

  private static double hours(Instant at) {
    return Duration.between(NOON, at).getSeconds() / 3600.0;
  }
}
