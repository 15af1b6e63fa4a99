package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClimatesTest {

  static List<Place> places() {
    return List.copyOf(Places.builtIn().values());
  }

  /**
   * Every built-in place's years give back the normals they were made from, on the mean.
   * Tolerances: hours are means over the hour, so the extremes lie up to 2 % of the daily range
   * inside; the sun is off by up to 1.5 % where the usual sky is nearly the clearest there is, as
   * in Lhasa in winter, and says nothing in months with next to none.
   */
  @ParameterizedTest
  @MethodSource("places")
  void everyBuiltInPlaceHasItsYears(Place place) {
    assertEquals(Climates.MEMBERS, Climates.weathers(place).years().size());
    givesBackTheNormals(place, MeanYear.of(place));
  }

  private static void givesBackTheNormals(Place place, WeatherYear year) {
    double[] low = MonthCurve.means(lowest(year));
    double[] high = MonthCurve.means(highest(year));
    double[] sun = MonthCurve.means(dailySun(year));
    for (int m = 0; m < 12; m++) {
      MonthNormals normals = place.normals().get(m);
      double range = normals.dailyMax() - normals.dailyMin();
      String where = place.id() + " month " + (m + 1);
      assertEquals(normals.dailyMin(), low[m], 0.1 + 0.02 * range, where);
      assertEquals(normals.dailyMax(), high[m], 0.1 + 0.02 * range, where);
      assertEquals(
          normals.sun(), sun[m], normals.sun() < 0.25 ? 0.25 : 0.015 * normals.sun(), where);
    }
  }

  /** The warmest part of the day is the early afternoon in solar time, not by the clock. */
  @ParameterizedTest
  @CsvSource({"seattle, 14", "urumqi, 14", "madrid, 14", "apia, 14", "kathmandu, 14"})
  void theDayFollowsTheSun(String id, int solarHour) {
    Place place = Places.builtIn().get(id);
    double offset = PlaceDays.standardOffset(place).getTotalSeconds() / 3600.0;
    double clock = solarHour + 0.5 - (place.longitude() / 15 - offset);
    double expected = ((clock % 24) + 24) % 24;
    assertEquals(expected, hottestHour(MeanYear.of(place)) + 0.5, 0.9, id);
  }

  @Test
  void seasonsAreThoseOfTheHemisphere() {
    WeatherYear north = MeanYear.of(Places.builtIn().get("chicago"));
    WeatherYear south = MeanYear.of(Places.builtIn().get("melbourne"));
    int january = 14 * 24 + 12;
    int july = 195 * 24 + 12;
    assertTrue(north.temperature(july) > north.temperature(january) + 20);
    assertTrue(south.temperature(january) > south.temperature(july) + 8);
    assertTrue(north.irradiance(july) > 2 * north.irradiance(january));
    assertTrue(south.irradiance(january) > 2 * south.irradiance(july));
  }

  /** Standard offsets by the tz database; half and quarter hours are kept, daylight time is not. */
  @ParameterizedTest
  @CsvSource({
    "seattle, -08:00",
    "delhi, +05:30",
    "kathmandu, +05:45",
    "adelaide, +09:30",
    "st-johns, -03:30",
    "darwin, +09:30",
    "sydney, +10:00",
    "london, +00:00",
    "dublin, +00:00"
  })
  void standardOffsetLeavesDaylightTimeOut(String id, String offset) {
    Weathers weathers = Climates.ensemble(Places.builtIn().get(id), 2);
    assertEquals(ZoneOffset.of(offset), weathers.standardOffset());
  }

  /**
   * A year's sun lies about its noon, which the clock shows at 12:00 less what the sun is ahead of
   * it: four minutes for each degree east of the clock's meridian. The equation of time takes back
   * in autumn what it gives in winter, but for some minutes.
   */
  @ParameterizedTest
  @ValueSource(strings = {"delhi", "kathmandu", "adelaide", "darwin", "st-johns", "seattle"})
  void theSunKeepsItsNoonInZonesOfHalfAndQuarterHours(String id) {
    Place place = Places.builtIn().get(id);
    WeatherYear year = MeanYear.of(place);
    double sum = 0;
    double moment = 0;
    for (int h = 0; h < WeatherYear.HOURS; h++) {
      sum += year.irradiance(h);
      moment += year.irradiance(h) * (h % 24 + 0.5);
    }
    double offset = PlaceDays.standardOffset(place).getTotalSeconds() / 3600.0;
    assertEquals(12 - (place.longitude() / 15 - offset), moment / sum, 0.12, id);
  }

  @Test
  void polarNightHasNoSunAndPolarDayHasItAllNight() {
    WeatherYear tromso = MeanYear.of(Places.builtIn().get("tromso"));
    assertEquals(0, tromso.irradiance(12));
    assertTrue(tromso.irradiance(171 * 24 + 23) > 0);
    WeatherYear mcmurdo = MeanYear.of(Places.builtIn().get("mcmurdo"));
    assertEquals(0, mcmurdo.irradiance(171 * 24 + 12));
    assertTrue(mcmurdo.irradiance(0) > 0);
  }

  @Test
  void theYearsEndLeadsIntoItsBeginning() {
    int last = WeatherYear.HOURS - 1;
    for (String id : List.of("fargo", "melbourne", "apia", "kathmandu")) {
      WeatherYear year = MeanYear.of(Places.builtIn().get(id));
      double before = year.temperature(last) - year.temperature(last - 1);
      double across = year.temperature(0) - year.temperature(last);
      double after = year.temperature(1) - year.temperature(0);
      // As steep as the hours around it.
      assertEquals((before + after) / 2, across, 0.4, id);
    }
  }

  /** Dew stays the same all day, unless the air itself is colder. */
  @Test
  void dewPointIsConstantOverTheDayAndCappedByTheAir() {
    Weathers weathers = Climates.ensemble(Places.builtIn().get("seattle"), 4);
    boolean capped = false;
    for (WeatherYear year : weathers.years()) {
      for (int d = 0; d < 365; d++) {
        double dew = highestOf(year::dewPoint, d);
        for (int h = 24 * d; h < 24 * d + 24; h++) {
          assertEquals(Math.min(dew, year.temperature(h)), year.dewPoint(h), 1e-9);
          capped |= year.dewPoint(h) < dew;
        }
      }
    }
    assertTrue(capped, "the cap was never needed, so this test would prove nothing");
  }

  @Test
  void refusesMoreSunThanTheSkyHas() {
    Place dazzling = flat(60, 10, 11.5);
    String message =
        assertThrows(IllegalArgumentException.class, () -> Climates.weathers(dazzling))
            .getMessage();
    assertTrue(message.contains("somewhere: sun 11.5 in month 1 "), message);
    assertEquals(message.split("; ").length, Climates.impossible(dazzling).size());
    assertThrows(IllegalArgumentException.class, () -> Climates.ensemble(dazzling, 2));
    assertEquals(List.of(), Climates.impossible(flat(60, 10, 0)));
  }

  @Test
  void aPlaceWithoutAnySunIsDarkButPossible() {
    WeatherYear year = MeanYear.of(flat(0, 0, 0));
    for (int h = 0; h < WeatherYear.HOURS; h++) {
      assertTrue(year.irradiance(h) < 25);
    }
  }

  @Test
  void extremesStayWithinWhatAYearOfWeatherMayHold() {
    MonthNormals hot = new MonthNormals(60, 65, 40, 5);
    MonthNormals cold = new MonthNormals(-80, -79, -90, 5);
    for (MonthNormals month : List.of(hot, cold)) {
      Place place =
          new Place("x", "X", 0, 0, 0, ZoneOffset.UTC, Collections.nCopies(12, month), "invented");
      Weathers weathers = Climates.ensemble(place, 8);
      assertEquals(8, weathers.years().size());
    }
  }

  @Test
  void ensembleIsTheSameOnEveryRunAndItsMembersDiffer() {
    Place place = Places.builtIn().get("chicago");
    Weathers one = Climates.ensemble(place, 32);
    Weathers two = Climates.ensemble(place, 32);
    assertEquals(32, one.years().size());
    for (int i = 0; i < 32; i++) {
      for (int h = 0; h < WeatherYear.HOURS; h += 7) {
        assertEquals(one.years().get(i).temperature(h), two.years().get(i).temperature(h));
        assertEquals(one.years().get(i).irradiance(h), two.years().get(i).irradiance(h));
      }
    }
    assertNotEquals(one.years().get(0).temperature(99), one.years().get(1).temperature(99));
    assertNotEquals(one.years().get(0).irradiance(12), one.years().get(1).irradiance(12));
  }

  /** Over the members, each month's mean of the daily extremes is the normal's, and so is sun. */
  @ParameterizedTest
  @ValueSource(strings = {"chicago", "phoenix", "singapore", "melbourne", "yakutsk"})
  void ensembleKeepsTheNormalsOnAverage(String id) {
    Place place = Places.builtIn().get(id);
    double[] mean = new double[12];
    double[] sun = new double[12];
    Weathers weathers = Climates.ensemble(place, 32);
    for (WeatherYear year : weathers.years()) {
      add(mean, MonthCurve.means(highest(year)), 32);
      add(sun, MonthCurve.means(dailySun(year)), 32);
    }
    for (int m = 0; m < 12; m++) {
      MonthNormals normals = place.normals().get(m);
      double range = normals.dailyMax() - normals.dailyMin();
      // Days on which the evening outdoes the afternoon lift the mean of the extremes a little.
      assertEquals(normals.dailyMax(), mean[m], 0.3 + 0.03 * range, id + " month " + (m + 1));
      // Clearness is cut off at a clear sky, which costs a little; dark months tell nothing.
      double tolerance = normals.sun() < 0.25 ? 0.12 : 0.05 + 0.03 * normals.sun();
      assertEquals(normals.sun(), sun[m], tolerance, id + " month " + (m + 1));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {-2, 0, 1, 7, 514})
  void refusesOddNumbersOfMembers(int members) {
    Place place = Places.builtIn().get("chicago");
    String message =
        assertThrows(IllegalArgumentException.class, () -> Climates.ensemble(place, members))
            .getMessage();
    assertTrue(message.startsWith("members " + members), message);
  }

  private static Place flat(double latitude, double longitude, double sun) {
    MonthNormals month = new MonthNormals(10, 20, 8, sun);
    return new Place(
        "somewhere",
        "Somewhere",
        latitude,
        longitude,
        10,
        ZoneId.of("UTC"),
        new ArrayList<>(Collections.nCopies(12, month)),
        "invented");
  }

  private static int hottestHour(WeatherYear year) {
    double[] sums = new double[24];
    for (int h = 0; h < WeatherYear.HOURS; h++) {
      sums[h % 24] += year.temperature(h);
    }
    int best = 0;
    for (int h = 0; h < 24; h++) {
      best = sums[h] > sums[best] ? h : best;
    }
    return best;
  }

  private static double highestOf(IntToDoubleFunction hours, int day) {
    double best = Double.NEGATIVE_INFINITY;
    for (int h = 24 * day; h < 24 * day + 24; h++) {
      best = Math.max(best, hours.applyAsDouble(h));
    }
    return best;
  }

  private static double[] highest(WeatherYear year) {
    double[] days = new double[365];
    for (int d = 0; d < 365; d++) {
      days[d] = highestOf(year::temperature, d);
    }
    return days;
  }

  private static double[] lowest(WeatherYear year) {
    double[] days = new double[365];
    for (int d = 0; d < 365; d++) {
      days[d] = -highestOf(h -> -year.temperature(h), d);
    }
    return days;
  }

  private static double[] dailySun(WeatherYear year) {
    double[] days = new double[365];
    for (int h = 0; h < WeatherYear.HOURS; h++) {
      days[h / 24] += year.irradiance(h) / 1000;
    }
    return days;
  }

  private static void add(double[] sums, double[] values, int of) {
    for (int i = 0; i < sums.length; i++) {
      sums[i] += values[i] / of;
    }
  }
}
