package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.Place;
import curewindow.climate.WeatherYear;
import curewindow.climate.Weathers;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Dates from years that happened. The year to come is one more of them: it keeps the end number k
 * of n with a chance of k in n + 1, as each of the n + 1 is equally likely to have any rank.
 */
class RealYearsTest {

  private static final Place PLACE = Cases.place("UTC");
  private static final Instant NOON = Instant.parse("2026-06-10T12:00:00Z");

  /** The ninth of ten alone would be kept 9 times in 11. */
  @ParameterizedTest
  @CsvSource({"9, 9", "10, 10", "11, 11", "18, 18", "19, 18", "20, 19", "29, 27", "60, 55"})
  void theYearToComeKeepsTheDateNineTimesInTen(int years, int safe) {
    assertTrue(safe / (years + 1.0) >= 0.9, "kept often enough");
    assertTrue((safe - 1) / (years + 1.0) < 0.9, "no later than needed");
    List<WeatherYear> real = new ArrayList<>();
    for (int i = 1; i <= years; i++) {
      real.add(Cases.steady(40 - i / 2.0, -20, 0));
    }
    Curing curing = Curing.with(p -> new Weathers(ZoneOffset.UTC, real, true));
    CureItem item =
        Cases.item(
            0,
            Exposure.OUTSIDE_SIDE,
            NOON,
            Cases.rule("wash", Map.of(Driver.BOND, 400.0), 12, 2000));
    CureCase job = Cases.job(PLACE, Cases.OUTSIDE, Cases.REFERENCE_BAY, NOON, item);
    Release release = curing.timeline(job).of("wash").orElseThrow();
    assertEquals(40 - safe / 2.0, release.because().meanAir(), 1e-9);
    Instant ninth = curing.explanation(job, "wash").ends().by(90).orElseThrow();
    assertEquals(
        release.end().at(), WakingHours.notBefore(ninth, PLACE.zone()), "why marks the same");
  }
}
