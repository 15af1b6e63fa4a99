package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.Place;
import curewindow.climate.WeatherYear;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The explanation of a hold against the dates and against sums by hand. */
class ExplanationTest {

  private static final Place BERLIN = Cases.place("Europe/Berlin");
  private static final ZoneOffset CET = ZoneOffset.ofHours(1);

  private static Curing curing(WeatherYear... years) {
    return Curing.with(place -> Cases.weathers(CET, years));
  }

  private static CureCase job(ParkingPlan parking, String finished, HoldRule rule) {
    Instant at = Cases.at(BERLIN, finished);
    CureItem item = Cases.item(0, Exposure.BEHIND_GLASS, at, rule);
    return Cases.job(BERLIN, parking, Cases.REFERENCE_BAY, at.plus(Duration.ofHours(5)), item);
  }

  private static HoldRule bond(double need, double floor, double lookBy) {
    return Cases.rule("wash", Map.of(Driver.BOND, need), floor, lookBy);
  }

  @Test
  void sumsByHandInSteadyWeather() {
    // A garage is 2 K above the mean air: 21 + 2 = 23 C, at which bond gains 1 an hour.
    Explanation explanation =
        curing(Cases.steady(21, 5, 500))
            .explanation(job(Cases.GARAGE, "2026-06-10T12:00", bond(48, 24, 300)), "wash");
    ExplanationWay walk = explanation.safe();
    assertEquals(Optional.of(Cases.at(BERLIN, "2026-06-12T12:00")), walk.met());
    assertEquals(4, walk.days().size(), "bay, rest of the first day, a whole day, half a day");
    double[] doses = {5, 12, 36, 48};
    for (int i = 0; i < doses.length; i++) {
      ExplanationWay.Stretch day = walk.days().get(i);
      assertEquals(doses[i], day.doseAtEnd(), 1e-6);
      assertEquals(i == 0, day.inBay());
      assertEquals(23, day.film(), 1e-9);
      assertEquals(1, day.rate(), 1e-6);
      assertEquals(0, day.sun(), "no sun in a bay or garage");
    }
    assertEquals(5, walk.days().get(1).dewPoint(), 1e-9);
    assertFalse(walk.floorDecides());
  }

  @Test
  void daysFollowEachOtherAndAddUpInLivelyWeather() {
    Curing curing = curing(Cases.lively(1), Cases.lively(2), Cases.lively(3));
    CureCase job = job(Cases.OUTSIDE, "2026-12-20T14:30", bond(60, 24, 2000));
    Explanation explanation = curing.explanation(job, "wash");
    Release release = curing.timeline(job).of("wash").orElseThrow();
    assertEquals(release.likely(), explanation.likely().end());
    assertEquals(release.likely(), explanation.ends().by(50).orElseThrow());
    assertEquals(
        release.end().at(),
        WakingHours.notBefore(explanation.ends().by(90).orElseThrow(), BERLIN.zone()));
    agrees(explanation.safe(), release.because());
    agrees(explanation.likely(), release.becauseLikely());
  }

  private static void agrees(ExplanationWay walk, ExplanationCause because) {
    assertEquals(walk.finished(), walk.days().get(0).from());
    assertEquals(walk.end(), walk.days().get(walk.days().size() - 1).to());
    double hours = 0;
    double film = 0;
    double dose = 0;
    Instant last = walk.finished();
    for (ExplanationWay.Stretch day : walk.days()) {
      assertEquals(last, day.from());
      assertEquals(day.date(), day.from().atZone(BERLIN.zone()).toLocalDate());
      last = day.to();
      hours += day.hours();
      film += day.film() * day.hours();
      dose += day.dose();
      assertEquals(dose, day.doseAtEnd(), 1e-9);
    }
    assertEquals(because.realHours(), hours, 1e-9);
    assertEquals(because.meanFilm(), film / hours, 1e-9);
    assertEquals(because.meanRate(), walk.dose() / hours, 1e-9);
    assertEquals(because.needHours(), walk.dose(), 0.01, "met to the second");
  }

  @Test
  void sunIsThatWhichReachesTheCar() {
    // 500 W/m2 around the clock are 12 kWh/m2 a day; 0.15 of it in the shade.
    HoldRule rule = bond(60, 72, 2000);
    ParkingPlan shade = new ParkingPlan(Parking.SHADE, Parking.SHADE);
    Curing curing = curing(Cases.steady(15, 5, 500));
    ExplanationWay outside =
        curing.explanation(job(Cases.OUTSIDE, "2026-06-10T12:00", rule), "wash").safe();
    ExplanationWay shaded = curing.explanation(job(shade, "2026-06-10T12:00", rule), "wash").safe();
    assertEquals(12, outside.days().get(2).sun(), 1e-9);
    assertEquals(1.8, shaded.days().get(2).sun(), 1e-9);
  }

  @Test
  void theFloorDecidesWhereTheNeedIsMetBefore() {
    ExplanationWay walk =
        curing(Cases.steady(21, 5, 0))
            .explanation(job(Cases.GARAGE, "2026-06-10T12:00", bond(10, 24, 300)), "wash")
            .safe();
    assertTrue(walk.floorDecides());
    assertEquals(walk.floor(), walk.end());
    assertEquals(24, walk.dose(), 1e-6);
  }

  @Test
  void daysByTheClockHaveTwentyFiveHoursWhenClocksGoBack() {
    // Central European Summer Time ends on 25 October 2026.
    ExplanationWay walk =
        curing(Cases.steady(21, 5, 0))
            .explanation(job(Cases.GARAGE, "2026-10-24T12:00", bond(60, 24, 300)), "wash")
            .safe();
    assertEquals(25, walk.days().get(2).hours());
    assertEquals("2026-10-25", walk.days().get(2).date().toString());
  }

  @Test
  void weathersThatAreNotEnoughAreCountedApart() {
    // The cold one gains exp(-50000/R (1/275.15 - 1/296.15)) = 0.212 an hour: 97 h have 5 + 20.
    Explanation explanation =
        curing(Cases.steady(21, 5, 0), Cases.steady(0, -5, 0))
            .explanation(job(Cases.GARAGE, "2026-06-10T12:00", bond(48, 24, 97)), "wash");
    assertEquals(1, explanation.ends().open());
    assertEquals(2, explanation.ends().weathers());
    assertEquals(Optional.empty(), explanation.ends().by(90));
    assertEquals(Optional.empty(), explanation.safe().met());
    assertEquals(explanation.safe().limit(), explanation.safe().end());
    assertEquals(5 + 92 * 0.2123, explanation.safe().dose(), 0.05);
  }

  @Test
  void walksThroughMeasuredWeatherWhereThereIsAny() {
    // Frost on 11 June, by the clocks of summer time from 22:00 UTC the day before.
    Curing curing =
        Curing.with(place -> Cases.weathers(CET, Cases.steady(15, 5, 0)))
            .measured(
                Map.of(BERLIN.id(), ObservedTest.steady("2026-06-10T22:00:00Z", 24, -10, -12)));
    CureCase job = job(Cases.OUTSIDE, "2026-06-10T12:00", bond(60, 24, 2000));
    Explanation explanation = curing.explanation(job, "wash");
    List<ExplanationWay.Stretch> days = explanation.safe().days();
    assertEquals(15, days.get(1).air(), 1e-9);
    assertEquals(-10, days.get(2).air(), 1e-9);
    assertEquals(-12, days.get(2).dewPoint(), 1e-9);
    assertEquals(15, days.get(3).air(), 1e-9);
    agrees(explanation.safe(), curing.timeline(job).of("wash").orElseThrow().because());
  }

  @Test
  void refusesWhatIsNotThere() {
    CureCase job = job(Cases.GARAGE, "2026-06-10T12:00", bond(48, 24, 97));
    Curing curing = curing(Cases.steady(21, 5, 0));
    assertThrows(IllegalArgumentException.class, () -> curing.explanation(job, "wipers"));
    Ends ends = new Ends(List.of(Instant.EPOCH), 0, 1);
    assertThrows(IllegalArgumentException.class, () -> ends.by(0));
    assertThrows(IllegalArgumentException.class, () -> ends.by(101));
    assertThrows(IllegalArgumentException.class, () -> new Ends(List.of(), 0, 1));
    List<Instant> wrong = List.of(Instant.EPOCH.plusSeconds(1), Instant.EPOCH);
    assertThrows(IllegalArgumentException.class, () -> new Ends(wrong, 0, 2));
    assertThrows(
        IllegalArgumentException.class, () -> new Ends(List.of(Instant.EPOCH), 1, 3).by(90));
  }
}
