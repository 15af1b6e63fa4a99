package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import curewindow.climate.Climates;
import curewindow.climate.Place;
import curewindow.climate.Weathers;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Promises against the hours of TMY3 years (NREL TMY Data Set 2008). Runs with {@code
 * -Djudge=true}.
 */
@Tag("judge")
@EnabledIfSystemProperty(named = "judge", matches = "true", disabledReason = "asked for by name")
class CureJudgeTest {

  private enum Promise {
    PAIR(Climates::of, 0.90, 1.6),
    /** The aim is 0.75 and 1.20; these are what is reached and must not be lost. */
    ENSEMBLE(place -> Climates.ensemble(place, 32), 0.70, 1.25);

    private final Function<Place, Weathers> weathers;
    private final double least;
    private final double wait;

    Promise(Function<Place, Weathers> weathers, double least, double wait) {
      this.weathers = weathers;
      this.least = least;
      this.wait = wait;
    }
  }

  @ParameterizedTest
  @EnumSource(Promise.class)
  void keepsPromises(Promise promise) throws IOException {
    assumeTrue(Files.isDirectory(CureJudge.FILES), "no weather files at " + CureJudge.FILES);
    for (Parking parking : List.of(Parking.OUTSIDE, Parking.GARAGE)) {
      List<CureJudge.Verdict> verdicts = CureJudge.judge(promise.weathers, parking);
      String what = promise + " " + parking;
      assertTrue(mean(verdicts, CureJudge.Verdict::kept) >= 0.90, what);
      assertTrue(all(verdicts, CureJudge.Verdict::kept).min().orElseThrow() >= promise.least, what);
      assertTrue(mean(verdicts, v -> v.share(1.25)) >= 0.99, what);
      assertTrue(mean(verdicts, v -> v.ratio(0)) <= promise.wait, what);
    }
  }

  private static double mean(
      List<CureJudge.Verdict> verdicts, ToDoubleFunction<CureJudge.Verdict> of) {
    return all(verdicts, of).average().orElseThrow();
  }

  private static DoubleStream all(
      List<CureJudge.Verdict> verdicts, ToDoubleFunction<CureJudge.Verdict> of) {
    return verdicts.stream().mapToDouble(of);
  }
}
