package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How far normals may be off, and what the years of an ensemble make of it. */
class DoubtTest {

  @ParameterizedTest
  @CsvSource({
    "NaN, 0, 0, warmth",
    "-0.1, 0, 0, warmth",
    "20.1, 0, 0, warmth",
    "0, NaN, 0, dryness",
    "0, 1.1, 0, dryness",
    "0, 0, -1, sun",
    "0, 0, NaN, sun"
  })
  void refusesByName(double warmth, double dryness, double sun, String name) {
    String message =
        assertThrows(IllegalArgumentException.class, () -> new Doubt(warmth, dryness, sun))
            .getMessage();
    assertTrue(message.startsWith(name + " "), message);
  }

  @ParameterizedTest
  @CsvSource({"NaN, 0, distance", "-1, 0, distance", "0, NaN, height", "0, 20000, height"})
  void refusesWaysThatCannotBe(double km, double metres, String name) {
    String message =
        assertThrows(IllegalArgumentException.class, () -> Doubt.OF_BUILT_IN.away(km, metres))
            .getMessage();
    assertTrue(message.startsWith(name + " "), message);
  }

  /** Variances add up: 1.7 K in town, 1.4 K for 100 km beyond 50, 2.2 K a km of height. */
  @Test
  void growsWithTheWay() {
    assertEquals(Doubt.OF_BUILT_IN, Doubt.OF_BUILT_IN.away(50, 0));
    Doubt far = Doubt.OF_BUILT_IN.away(150, -1000);
    assertEquals(Math.sqrt(1.7 * 1.7 + 1.4 * 1.4 + 2.2 * 2.2), far.warmth(), 1e-12);
    assertEquals(Math.sqrt(0.16 * 0.16 + 0.09 * 0.09 + 0.2 * 0.2), far.dryness(), 1e-12);
    assertEquals(Math.sqrt(0.16 * 0.16 + 0.07 * 0.07 + 0.07 * 0.07), far.sun(), 1e-12);
    assertEquals(Doubt.OF_BUILT_IN.away(400, 3000), Doubt.OF_BUILT_IN.away(20_000, 6000));
  }

  /** Least is known where the normals come from afar, most where there is a file. */
  @Test
  void dependsOnTheSource() {
    Place builtIn = Places.builtIn().get("denver");
    Place near = Places.at("x", "X", 39.75, -105.2, 1730, ZoneId.of("America/Denver"));
    Place high = Places.at("x", "X", 39.6, -106.5, 2500, ZoneId.of("America/Denver"));
    List<MonthNormals> typed = builtIn.normals();
    Place own = new Place("x", "X", 39.7, -105, 1700, near.zone(), typed, "typed");
    List<Doubt> widening =
        List.of(Doubt.OF_FILE, own.doubt(), builtIn.doubt(), near.doubt(), high.doubt());
    for (int i = 1; i < widening.size(); i++) {
      assertTrue(widening.get(i).warmth() >= widening.get(i - 1).warmth(), "warmth " + i);
      assertTrue(widening.get(i).dryness() >= widening.get(i - 1).dryness(), "dryness " + i);
      assertTrue(widening.get(i).sun() >= widening.get(i - 1).sun(), "sun " + i);
    }
    assertTrue(high.doubt().warmth() > near.doubt().warmth() + 0.3);
    assertEquals(Doubt.OF_BUILT_IN, builtIn.doubt());
  }

  /** Quantiles of the normal distribution, from tables (from memory): 0.1 is -1.2816. */
  @Test
  void offsetsAreSpreadAsNormalDeviates() {
    Offsets offsets = Offsets.of(32);
    for (double[] of : List.of(offsets.warmth(), offsets.dryness(), offsets.sun())) {
      double[] sorted = Arrays.stream(of).sorted().toArray();
      assertEquals(0, Arrays.stream(of).sum(), 1e-12);
      assertEquals(1, Arrays.stream(of).map(v -> v * v).average().orElseThrow(), 1e-12);
      // The third and the fourth of 32 stand for 2.5 and 3.5 of 32; a tenth is 3.2 of 32.
      assertTrue(sorted[2] < -1.2816 && sorted[3] > -1.2816, "tenth");
      assertEquals(-1.2816, (sorted[2] * 0.3 + sorted[3] * 0.7), 0.05);
      for (int i = 0; i < 16; i++) {
        assertEquals(-of[i], of[i + 16], "mirrored as the days are");
      }
    }
    assertEquals(0, product(offsets.warmth(), offsets.dryness()), 0.04);
    assertEquals(0, product(offsets.dryness(), offsets.sun()), 0.04);
    assertEquals(0, product(offsets.sun(), offsets.warmth()), 0.04);
  }

  private static double product(double[] one, double[] two) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * two[i] / one.length;
    }
    return sum;
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 4, 8, 64, 512})
  void offsetsForOtherNumbersOfYears(int members) {
    Offsets offsets = Offsets.of(members);
    assertEquals(members, offsets.sun().length);
    assertEquals(1, Arrays.stream(offsets.sun()).map(v -> v * v).average().orElseThrow(), 1e-9);
  }

  /**
   * The means of the years spread by the doubt, beside what chance leaves of the days: 365 days
   * that are left to 0.63 on the next stand for 83 of their own.
   */
  @Test
  void yearsSpreadAsTheirMeansAreInDoubt() {
    MonthNormals month = new MonthNormals(10, 20, 7, 4);
    Place place =
        new Place("x", "X", 30, 0, 0, ZoneOffset.UTC, Collections.nCopies(12, month), "invented");
    Doubt doubt = new Doubt(1.5, 0.1, 0.1);
    Weathers sure = Climates.weathers(place.doubted(Doubt.NONE));
    Weathers unsure = Climates.weathers(place.doubted(doubt));
    assertEquals(0.06, spread(sure, DoubtTest::air), 0.06);
    assertEquals(1.5, spread(unsure, DoubtTest::air), 0.1);
    // 0.1 of the depression of 8 K and the 4 K that go with it.
    assertEquals(1.2, spread(unsure, y -> air(y) - dew(y)), 0.15);
    // 0.1 of 4 kWh/m2, less what skies cannot be: brighter than clear.
    assertEquals(0.36, spread(unsure, DoubtTest::sun), 0.05);
    assertEquals(mean(sure, DoubtTest::air), mean(unsure, DoubtTest::air), 0.02);
    assertEquals(mean(sure, DoubtTest::dew), mean(unsure, DoubtTest::dew), 0.1);
    assertEquals(mean(sure, DoubtTest::sun), mean(unsure, DoubtTest::sun), 0.01);
  }

  private static double air(WeatherYear year) {
    return meanOf(year::temperature);
  }

  private static double dew(WeatherYear year) {
    return meanOf(year::dewPoint);
  }

  /** Daily sun, kWh/m2. */
  private static double sun(WeatherYear year) {
    return meanOf(year::irradiance) * 24 / 1000;
  }

  private static double meanOf(IntToDoubleFunction hours) {
    double sum = 0;
    for (int h = 0; h < WeatherYear.HOURS; h++) {
      sum += hours.applyAsDouble(h) / WeatherYear.HOURS;
    }
    return sum;
  }

  private static double mean(Weathers weathers, ToDoubleFunction<WeatherYear> of) {
    return weathers.years().stream().mapToDouble(of).average().orElseThrow();
  }

  private static double spread(Weathers weathers, ToDoubleFunction<WeatherYear> of) {
    double mean = mean(weathers, of);
    return Math.sqrt(mean(weathers, y -> Math.pow(of.applyAsDouble(y) - mean, 2)));
  }
}
