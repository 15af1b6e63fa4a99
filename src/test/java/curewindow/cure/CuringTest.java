package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CuringTest {

  private static final Place CHICAGO = Cases.place("America/Chicago");
  private static final Instant NOON = Cases.at(CHICAGO, "2026-01-15T12:00");
  private static final List<Stay> STAY = List.of(new Stay(NOON, NOON));
  private static final HoldRule WASH = Cases.rule("wash", Map.of(Driver.BOND, 48.0), 24, 336);
  private static final HoldRule DRY = Cases.rule("haze", Map.of(Driver.DRY_OUT, 100.0), 72, 400);

  private static final HoldRule SLOW = Cases.rule("wash", Map.of(Driver.BOND, 480.0), 24, 3360);

  private static Curing steady(double... airs) {
    WeatherYear[] years = new WeatherYear[airs.length];
    for (int i = 0; i < airs.length; i++) {
      years[i] = Cases.steady(airs[i], -20, 0);
    }
    return Curing.with(place -> Cases.weathers(ZoneOffset.ofHours(-6), years));
  }

  private static Instant local(String local) {
    return Cases.at(CHICAGO, local);
  }

  private static Release only(Timeline timeline) {
    assertEquals(1, timeline.releases().size());
    return timeline.releases().get(0);
  }

  private static Release run(Curing curing, Instant pickup, CureItem... items) {
    return only(curing.timeline(Cases.job(CHICAGO, Cases.OUTSIDE, new Bay(23, 50), pickup, items)));
  }

  @Test
  void waitsTheReferenceHoursAtTheReferenceTemperature() {
    Release release =
        run(steady(23), NOON, Cases.item(0, Exposure.BEHIND_GLASS, NOON.minusSeconds(7200), WASH));
    assertEquals(local("2026-01-17T10:00"), release.likely());
    assertEquals(new Release.SafeBy(local("2026-01-17T10:00")), release.end());
    assertEquals("wash", release.hold());
    assertEquals(HoldKind.HOLD, release.kind());
    ExplanationCause because = release.because();
    assertEquals(Optional.of(Driver.BOND), because.driver());
    assertEquals("spot-0", because.spot());
    assertEquals(48, because.needHours());
    assertEquals(48, because.realHours(), 1e-3);
    assertEquals(2, because.bayHours(), 1e-9);
    assertEquals(1, because.meanRate(), 1e-4);
    assertEquals(23, because.meanFilm(), 1e-9);
    assertEquals(
        (2 * 12.03 - 46 * 20) / 48.0, because.meanDewPoint(), 0.01, "12.0 C in the bay, -20 out");
  }

  @Test
  void addsTheBayToTheWeather() {
    double rate = Rates.bond(0, 50_000);
    CureItem item = Cases.item(0, Exposure.OUTSIDE_SIDE, NOON.minus(Duration.ofHours(24)), WASH);
    Release release = run(steady(0), NOON, item);
    long seconds = (long) Math.ceil(24 / rate * 3600);
    assertEquals(NOON.plusSeconds(seconds), release.likely());
    assertEquals(24, release.because().bayHours(), 1e-9);
    assertEquals(24 + seconds / 3600.0, release.because().realHours(), 1e-3);
    assertEquals(
        24 * 23 / (24 + seconds / 3600.0), release.because().meanAir(), 1e-3, "0 C after the bay");
    assertEquals(48 / release.because().realHours(), release.because().meanRate(), 1e-6);
  }

  @Test
  void mayEndInTheBayMonthsBeforePickup() {
    CureItem item = Cases.item(0, Exposure.OUTSIDE_SIDE, local("2025-10-01T09:30"), WASH);
    Release release = run(steady(-30), NOON, item);
    assertEquals(new Release.SafeBy(local("2025-10-03T10:00")), release.end());
    assertEquals(local("2025-10-03T09:30"), release.likely());
    assertEquals(48, release.because().bayHours(), 1e-9);
    assertEquals(23, release.because().meanFilm(), 1e-9);
  }

  @Test
  void neverEndsBeforeTheFloor() {
    Release release = run(steady(60), NOON, Cases.item(0, Exposure.OUTSIDE_SIDE, NOON, WASH));
    assertEquals(NOON.plus(Duration.ofHours(24)), release.likely());
    assertEquals(new Release.SafeBy(local("2026-01-16T12:00")), release.end());
    assertEquals(Optional.empty(), release.because().driver());
    assertEquals(48, release.because().needHours());
    assertEquals(24, release.because().realHours(), 1e-9);
    assertEquals(Rates.bond(60, 50_000), release.because().meanRate(), 1e-9);
  }

  @Test
  void endsAtTheLimitWhereTheWeatherIsNotEnough() {
    Release release = run(steady(-30), NOON, Cases.item(0, Exposure.OUTSIDE_SIDE, NOON, WASH));
    Release.AtLimit end = assertInstanceOf(Release.AtLimit.class, release.end());
    assertEquals(local("2026-01-29T12:00"), end.at());
    double rate = Rates.bond(-30, 50_000);
    assertEquals(336 * rate / 48, end.share(), 1e-9);
    assertEquals(NOON.plus(Duration.ofHours((long) Math.ceil(48 / rate))), end.full());
    assertEquals(NOON.plus(Duration.ofHours(336)), release.likely());
    assertEquals(Optional.of(Driver.BOND), release.because().driver());
    assertEquals(336, release.because().realHours(), 1e-9);
    assertEquals(Rates.bond(-30, 50_000), release.because().meanRate(), 1e-9);
  }

  @Test
  void saysDoneWhereTheNeedIsMetAtTheLimitToTheSecond() {
    HoldRule just = Cases.rule("wash", Map.of(Driver.BOND, 48.0), 24, 48);
    CureItem item = Cases.item(0, Exposure.OUTSIDE_SIDE, NOON, just);
    assertInstanceOf(Release.SafeBy.class, run(steady(23), NOON, item).end());
    assertInstanceOf(Release.AtLimit.class, run(steady(22.999), NOON, item).end());
  }

  @Test
  void endsNotBeforeThePickup() {
    CureItem item = Cases.item(0, Exposure.OUTSIDE_SIDE, local("2025-10-01T09:00"), DRY);
    CureCase job = Cases.job(CHICAGO, Cases.OUTSIDE, Cases.DAMP_BAY, NOON, item);
    Release release = only(steady(23).timeline(job));
    assertEquals(NOON, assertInstanceOf(Release.AtLimit.class, release.end()).at());
    assertEquals(NOON, release.likely());
    assertEquals(0, release.because().meanRate());
  }

  @Test
  void endsWithoutAnyDryingAtAll() {
    CureItem item = Cases.item(0, Exposure.OUTSIDE_SIDE, NOON, DRY);
    Curing fog =
        Curing.with(place -> Cases.weathers(ZoneOffset.ofHours(-6), Cases.steady(-5, -5, 0)));
    assertInstanceOf(Release.AtLimit.class, run(fog, NOON, item).end());
    assertEquals(0, run(fog, NOON, item).because().meanRate());
  }

  @Test
  void handlesAHoldOfNoTimeAtAll() {
    HoldRule none = Cases.rule("now", Map.of(Driver.BOND, 5.0), 0, 0);
    Release release = run(steady(10), NOON, Cases.item(0, Exposure.OUTSIDE_SIDE, NOON, none));
    assertEquals(NOON, assertInstanceOf(Release.AtLimit.class, release.end()).at());
    assertEquals(10, release.because().meanAir(), 1e-9);
  }

  @Test
  void takesTheEarlierOfTwoYearsAsLikelyAndTheLaterAsSafe() {
    CureItem item = Cases.item(0, Exposure.OUTSIDE_SIDE, NOON, WASH);
    for (Curing curing : List.of(steady(23, 15), steady(15, 23))) {
      Release release = run(curing, NOON, item);
      assertEquals(NOON.plus(Duration.ofHours(48)), release.likely());
      double hours = 48 / Rates.bond(15, 50_000);
      assertEquals(hours, release.because().realHours(), 1e-3);
      assertEquals(15, release.because().meanAir(), 1e-9);
      assertEquals(23, release.becauseLikely().meanAir(), 1e-9);
      assertEquals(48, release.becauseLikely().realHours(), 1e-3);
    }
  }

  @Test
  void takesMedianAndNinthTenthOfManyYears() {
    double[] airs = new double[32];
    for (int i = 0; i < 32; i++) {
      airs[i] = 10 + (i * 7) % 32;
    }
    Release release = run(steady(airs), NOON, Cases.item(0, Exposure.OUTSIDE_SIDE, NOON, WASH));
    // 32 years from 41 C (first to end) down to 10 C (last): the 16th and the 29th.
    assertEquals(26, release.becauseLikely().meanAir(), 1e-9);
    assertEquals(13, release.because().meanAir(), 1e-9);
  }

  /** Published is the first end that at least nine of ten weathers keep, likely that half keep. */
  @ParameterizedTest
  @CsvSource({"1, 1, 1", "2, 1, 2", "3, 2, 3", "8, 4, 8", "9, 5, 9", "10, 5, 9", "11, 6, 10"})
  void takesTheFirstEndThatEnoughWeathersKeep(int years, int likely, int safe) {
    double[] airs = new double[years];
    for (int i = 0; i < years; i++) {
      airs[i] = 40 - i;
    }
    Release release = run(steady(airs), NOON, Cases.item(0, Exposure.OUTSIDE_SIDE, NOON, SLOW));
    assertEquals(41 - likely, release.becauseLikely().meanAir(), 1e-9);
    assertEquals(41 - safe, release.because().meanAir(), 1e-9);
  }

  @Test
  void waitsForTheLastDriver() {
    HoldRule both = Cases.rule("both", Map.of(Driver.BOND, 48.0, Driver.DRY_OUT, 24.0), 12, 900);
    CureItem item = Cases.item(0, Exposure.OUTSIDE_SIDE, NOON, both);
    Release dryCold = run(steady(5), NOON, item);
    assertEquals(Optional.of(Driver.BOND), dryCold.because().driver());
    Curing muggy =
        Curing.with(place -> Cases.weathers(ZoneOffset.ofHours(-6), Cases.steady(30, 29.5, 0)));
    Release damp = run(muggy, NOON, item);
    assertEquals(Optional.of(Driver.DRY_OUT), damp.because().driver());
    assertEquals(24, damp.because().needHours());
  }

  @Test
  void namesTheDriverThatHasTheLeastAtTheLookBy() {
    HoldRule both = Cases.rule("both", Map.of(Driver.BOND, 48.0, Driver.DRY_OUT, 4800.0), 12, 24);
    CureItem item = Cases.item(0, Exposure.OUTSIDE_SIDE, NOON, both);
    ExplanationCause because = run(steady(10), NOON, item).because();
    assertEquals(Optional.of(Driver.DRY_OUT), because.driver());
    assertEquals(4800, because.needHours());
  }

  @Test
  void driesInProportionToPermeance() {
    CureItem half = new CureItem(0, "hood", Exposure.OUTSIDE_SIDE, 0.5, NOON, List.of(DRY));
    Release release = run(steady(23), NOON, half);
    // 125.4 Pa over water at a dew point of -20 C (Smithsonian tables, from memory).
    double rate = Rates.dryOut(23, 125.4);
    assertEquals(100 / 0.5 / rate, release.because().realHours(), 0.01 * 100 / rate);
    assertEquals(100 / release.because().realHours(), release.because().meanRate(), 1e-5);
    CureItem bond = new CureItem(0, "hood", Exposure.OUTSIDE_SIDE, 0.5, NOON, List.of(WASH));
    assertEquals(48, run(steady(23), NOON, bond).because().realHours(), 1e-9);
  }

  @Test
  void takesTheLastOfItsItems() {
    CureItem early = Cases.item(0, Exposure.BEHIND_GLASS, NOON.minusSeconds(9 * 3600), WASH);
    CureItem late = Cases.item(1, Exposure.BEHIND_GLASS, NOON.minusSeconds(3600), WASH, DRY);
    Timeline timeline =
        steady(23).timeline(Cases.job(CHICAGO, Cases.OUTSIDE, new Bay(23, 50), NOON, early, late));
    assertEquals(2, timeline.releases().size());
    assertEquals(local("2026-01-17T11:00"), timeline.of("wash").orElseThrow().likely());
    assertEquals(1, timeline.of("wash").orElseThrow().because().item());
    assertEquals(List.of("wash", "haze"), timeline.releases().stream().map(Release::hold).toList());
    assertEquals(Optional.empty(), timeline.of("nothing"));
    assertEquals(NOON, timeline.pickup());
    assertEquals(CHICAGO.zone(), timeline.zone());
  }

  @Test
  void namesTheFirstOfItemsThatEndTogether() {
    CureItem[] doors = new CureItem[4];
    for (int i = 0; i < 4; i++) {
      doors[i] = Cases.item(i, Exposure.BEHIND_GLASS, NOON, WASH);
    }
    assertEquals(0, run(steady(10), NOON, doors).because().item());
  }

  @Test
  void letsDifferentItemsDecideInDifferentWeathers() {
    HoldRule dry = Cases.rule("wash", Map.of(Driver.DRY_OUT, 30.0), 1, 900);
    CureItem bond = Cases.item(0, Exposure.OUTSIDE_SIDE, NOON, WASH);
    CureItem wet = Cases.item(1, Exposure.OUTSIDE_SIDE, NOON, dry);
    Curing curing =
        Curing.with(
            place ->
                Cases.weathers(
                    ZoneOffset.ofHours(-6), Cases.steady(10, -20, 0), Cases.steady(35, 34.5, 0)));
    Release release = run(curing, NOON, bond, wet);
    assertEquals(0, release.becauseLikely().item());
    assertEquals(1, release.because().item());
  }

  /** One item ends at its limit of 100 h, another by itself after 300: the later date counts. */
  @Test
  void endsWithTheLastItemWhetherDoneOrAtItsLimit() {
    HoldRule soon = Cases.rule("wash", Map.of(Driver.BOND, 1000.0), 1, 100);
    HoldRule later = Cases.rule("wash", Map.of(Driver.BOND, 300.0), 1, 900);
    CureItem open = Cases.item(0, Exposure.OUTSIDE_SIDE, NOON, soon);
    CureItem done = Cases.item(1, Exposure.OUTSIDE_SIDE, NOON, later);
    for (CureItem[] items : new CureItem[][] {{open, done}, {done, open}}) {
      Release release = run(steady(23), NOON, items);
      Release.AtLimit end = assertInstanceOf(Release.AtLimit.class, release.end());
      assertEquals(NOON.plus(Duration.ofHours(300)), release.likely());
      assertEquals(NOON.plus(Duration.ofHours(308)), end.at(), "rounded up to 8:00");
      assertEquals(0.3, end.share(), 1e-6, "of the item that has least");
      assertEquals(NOON.plus(Duration.ofHours(1000)), end.full());
      assertEquals(1, release.because().item());
    }
  }

  @Test
  void neverGivesALikelyEndAfterTheLimit() {
    HoldRule soon = Cases.rule("wash", Map.of(Driver.BOND, 60.0), 1, 100);
    HoldRule later = Cases.rule("wash", Map.of(Driver.BOND, 300.0), 1, 900);
    CureItem[] items = {
      Cases.item(0, Exposure.OUTSIDE_SIDE, NOON, soon),
      Cases.item(1, Exposure.OUTSIDE_SIDE, NOON, later)
    };
    Release release = run(steady(23, -10), NOON, items);
    assertInstanceOf(Release.AtLimit.class, release.end());
    assertTrue(!release.likely().isAfter(NOON.plus(Duration.ofHours(900))));
    assertTrue(!release.likely().isAfter(release.end().at()));
  }

  @Test
  void aSettleBeyondItsHorizonIsToldByTheSeason() {
    HoldRule haze = new HoldRule("haze", HoldKind.SETTLE, Map.of(Driver.BOND, 300.0), 72, 4320);
    CureItem item = Cases.item(0, Exposure.OUTSIDE_SIDE, NOON, haze);
    double rate = Rates.bond(-20, 50_000);
    Release release = run(steady(-20), NOON, item);
    Release.BySeason end = assertInstanceOf(Release.BySeason.class, release.end());
    double days = Duration.between(NOON, end.at()).toHours() / 24.0;
    assertEquals(300 / rate / 24, days, 0.8);
    assertTrue(days > 180);
    assertInstanceOf(Release.SafeBy.class, run(steady(5), NOON, item).end());
  }

  @Test
  void roundsByTheClocksOfThePlaceOverDaylightSaving() {
    // Clocks go forward on 8 March 2026 at 2:00; 48 hours after noon on the 7th is 13:00.
    Instant noon = local("2026-03-07T12:00");
    Release release = run(steady(23), noon, Cases.item(0, Exposure.OUTSIDE_SIDE, noon, WASH));
    assertEquals(new Release.SafeBy(local("2026-03-09T13:00")), release.end());
    assertEquals(Duration.ofHours(48), Duration.between(noon, release.end().at()));
  }

  @Test
  void runsFromTheLastDaysOfAYearIntoTheNext() {
    WeatherYear seesaw = Cases.year(hour -> hour < 12 ? 23 : -40, hour -> -50, hour -> 0);
    Curing curing = Curing.with(place -> Cases.weathers(ZoneOffset.ofHours(-6), seesaw));
    HoldRule ten = Cases.rule("wash", Map.of(Driver.BOND, 10.0), 1, 900);
    Instant newYearsEve = local("2027-12-31T20:00");
    Release release =
        run(curing, newYearsEve, Cases.item(0, Exposure.OUTSIDE_SIDE, newYearsEve, ten));
    Duration past = Duration.between(local("2028-01-01T10:00"), release.likely());
    assertTrue(past.abs().toMinutes() < 5, "ten warm hours after midnight, not " + past);
  }

  @Test
  void walksIntoTheSummerOfTheSouthInJanuary() {
    Place sydney = Cases.place("Australia/Sydney");
    WeatherYear south = Cases.year(h -> 18 + 8 * Math.cos(2 * Math.PI * h / 8760), h -> 5, h -> 0);
    Curing curing = Curing.with(place -> Cases.weathers(ZoneOffset.ofHours(10), south));
    Instant summer = Cases.at(sydney, "2027-01-05T12:00");
    Instant winter = Cases.at(sydney, "2027-07-05T12:00");
    Release warm = inSydney(curing, sydney, summer);
    Release cold = inSydney(curing, sydney, winter);
    assertEquals(26, warm.because().meanAir(), 0.2);
    assertEquals(10, cold.because().meanAir(), 0.2);
    assertEquals(12, warm.end().at().atZone(sydney.zone()).getHour(), 4);
  }

  private static Release inSydney(Curing curing, Place sydney, Instant at) {
    return only(
        curing.timeline(
            Cases.job(
                sydney,
                Cases.OUTSIDE,
                new Bay(23, 50),
                at,
                Cases.item(0, Exposure.OUTSIDE_SIDE, at, WASH))));
  }

  /** Warmth comes at 9:00 of standard time: six hours later all is done, by whatever clock. */
  @ParameterizedTest
  @CsvSource({"Asia/Kolkata, 330", "Asia/Kathmandu, 345", "America/St_Johns, -210"})
  void countsHoursByTheClocksOfHalfAndQuarterHours(String zone, int minutes) {
    Place place = Cases.place(zone);
    WeatherYear warmFromNine = Cases.year(hour -> hour < 9 ? -40 : 23, hour -> -50, hour -> 0);
    ZoneOffset standard = ZoneOffset.ofTotalSeconds(60 * minutes);
    Curing curing = Curing.with(p -> Cases.weathers(standard, warmFromNine));
    HoldRule six = Cases.rule("wash", Map.of(Driver.BOND, 6.0), 1, 900);
    Instant morning = Cases.at(place, "2028-01-01T08:00");
    CureItem item = Cases.item(0, Exposure.OUTSIDE_SIDE, morning, six);
    CureCase job = Cases.job(place, Cases.OUTSIDE, new Bay(23, 50), morning, item);
    Instant done = Cases.at(place, "2028-01-01T15:00");
    Release release = only(curing.timeline(job));
    assertEquals(new Release.SafeBy(done), release.end());
    // The frost before nine counts for 15 seconds.
    assertEquals(0, Duration.between(release.likely(), done).toSeconds(), 60);
  }

  @Test
  void countsHoursOnTheFarSideOfTheDateLine() {
    Place kiritimati = Cases.place("Pacific/Kiritimati");
    WeatherYear firstDay = Cases.year(hour -> hour < 24 ? 23 : -40, hour -> -50, hour -> 0);
    Curing curing = Curing.with(place -> Cases.weathers(ZoneOffset.ofHours(14), firstDay));
    HoldRule six = Cases.rule("wash", Map.of(Driver.BOND, 6.0), 1, 900);
    Instant morning = Cases.at(kiritimati, "2028-01-01T08:00");
    CureItem item = Cases.item(0, Exposure.OUTSIDE_SIDE, morning, six);
    CureCase job = Cases.job(kiritimati, Cases.OUTSIDE, new Bay(23, 50), morning, item);
    assertEquals(
        new Release.SafeBy(Cases.at(kiritimati, "2028-01-01T14:00")),
        only(curing.timeline(job)).end());
  }

  @Test
  void tellsHeatAndPaintApart() {
    WeatherYear sunny = Cases.steady(10, 0, 300);
    Curing curing = Curing.with(place -> Cases.weathers(ZoneOffset.ofHours(-6), sunny));
    CureItem hood = Cases.item(0, Exposure.OUTSIDE_UP, NOON, WASH);
    CureCase dark =
        new CureCase(
            List.of(hood), STAY, Cases.OUTSIDE, PaintTone.DARK, CHICAGO, new Bay(23, 50), 50_000);
    CureCase light =
        new CureCase(
            List.of(hood), STAY, Cases.OUTSIDE, PaintTone.LIGHT, CHICAGO, new Bay(23, 50), 50_000);
    Release soon = only(curing.timeline(dark));
    assertTrue(soon.likely().isBefore(only(curing.timeline(light)).likely()));
    assertEquals(10 + 0.052 * 300 - 3.9, soon.because().meanFilm(), 1e-6);
    assertEquals(10, soon.because().meanAir(), 1e-6);
    assertEquals(0, soon.because().meanDewPoint(), 1e-6);
  }

  @Test
  void mixesDayAndNightParking() {
    WeatherYear sunny = Cases.steady(6, 0, 300);
    Curing curing = Curing.with(place -> Cases.weathers(ZoneOffset.ofHours(-6), sunny));
    CureItem side = Cases.item(0, Exposure.OUTSIDE_SIDE, local("2026-03-07T08:00"), WASH);
    CureCase job =
        Cases.job(
            CHICAGO,
            new ParkingPlan(Parking.OUTSIDE, Parking.HEATED),
            new Bay(23, 50),
            local("2026-03-07T08:00"),
            side);
    ExplanationCause because = only(curing.timeline(job)).because();
    double night = 16;
    double day = 6 + 0.5 * 0.039 * 300;
    int dayHours =
        (int) Math.round((because.meanFilm() - night) / (day - night) * because.realHours());
    double dose =
        dayHours * Rates.bond(day, 50_000)
            + (because.realHours() - dayHours) * Rates.bond(night, 50_000);
    assertEquals(48, dose, 1e-2);
    assertEquals(40, dayHours, "four days of ten hours, over the change of clocks");
  }

  @Test
  void asksForThePlacesWeatherOnce() {
    int[] asked = {0};
    Curing curing =
        Curing.with(
            place -> {
              asked[0]++;
              return Cases.weathers(ZoneOffset.ofHours(-6), Cases.steady(5, 0, 0));
            });
    CureItem item = Cases.item(0, Exposure.OUTSIDE_SIDE, NOON, WASH);
    assertEquals(run(curing, NOON, item), run(curing, NOON, item));
    assertEquals(1, asked[0]);
  }

  @Test
  void givesAnEmptyTimelineToAJobWithoutHolds() {
    assertEquals(
        List.of(),
        steady(5)
            .timeline(
                Cases.job(
                    CHICAGO,
                    Cases.OUTSIDE,
                    new Bay(23, 50),
                    NOON,
                    Cases.item(0, Exposure.CABIN, NOON)))
            .releases());
  }

  @Test
  void refusesAnItemFinishedAfterPickup() {
    CureItem item = Cases.item(2, Exposure.OUTSIDE_SIDE, NOON.plusSeconds(1), WASH);
    String message =
        assertThrows(IllegalArgumentException.class, () -> run(steady(5), NOON, item)).getMessage();
    assertTrue(message.contains("item 2 on spot-2") && message.contains("not in the shop"));
  }

  @Test
  void refusesTimesOfOtherCenturies() {
    CureItem old = Cases.item(0, Exposure.CABIN, Instant.parse("1969-12-31T23:59:59Z"), WASH);
    assertThrows(IllegalArgumentException.class, () -> run(steady(5), NOON, old));
    Instant late = Instant.parse("3000-01-01T00:00:00Z");
    CureItem item = Cases.item(0, Exposure.CABIN, NOON, WASH);
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> run(steady(5), late, item))
            .getMessage()
            .startsWith("pickup"));
  }

  @Test
  void refusesOneHoldOfTwoKinds() {
    HoldRule settle = new HoldRule("wash", HoldKind.SETTLE, Map.of(Driver.BOND, 1.0), 1, 2);
    CureItem item = Cases.item(0, Exposure.OUTSIDE_SIDE, NOON, WASH, settle);
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> run(steady(5), NOON, item))
            .getMessage()
            .contains("both hold and settle"));
  }
}
