package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import curewindow.climate.Climates;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Promises against the hours of TMY3 years (NREL TMY Data Set 2008), with the aims as bounds. */
class CureJudgeTest {

  static List<ParkingPlan> plans() {
    return CureJudge.PLANS;
  }

  /** All sites, every third day, as {@code docs/judged.md} shows it; with {@code -Djudge=true}. */
  @ParameterizedTest
  @MethodSource("plans")
  @Tag("judge")
  @EnabledIfSystemProperty(named = "judge", matches = "true", disabledReason = "asked for by name")
  void keepsPromises(ParkingPlan parking) throws IOException {
    List<CureJudge.Verdict> verdicts = judged(parking, "", 3);
    CureJudge.print(parking, verdicts);
    assertTrue(mean(verdicts, CureJudge.Verdict::kept) >= 0.90, "kept on the mean");
    for (CureJudge.Verdict verdict : verdicts) {
      assertTrue(verdict.kept() >= 0.75, "kept at " + verdict.site() + ", " + verdict.hold());
    }
    assertTrue(mean(verdicts, v -> v.ratio(0)) <= 1.20, "wait");
    assertTrue(mean(verdicts, v -> v.share(1.25)) >= 0.99, "missed by at most a quarter");
    assertFixedDaysAreFarWorse(verdicts);
  }

  /** A cold, a mild and a hot site, every twelfth day: quick enough for every build. */
  @ParameterizedTest
  @MethodSource("plans")
  void keepsPromisesAtSomeSites(ParkingPlan parking) throws IOException {
    List<CureJudge.Verdict> verdicts = judged(parking, "(MN|WA|FL)", 12);
    assertTrue(mean(verdicts, CureJudge.Verdict::kept) >= 0.88, "kept on the mean");
    assertTrue(all(verdicts, CureJudge.Verdict::kept).min().orElseThrow() >= 0.70, "kept, worst");
    assertTrue(mean(verdicts, v -> v.ratio(0)) <= 1.23, "wait");
    assertTrue(mean(verdicts, v -> v.share(1.25)) >= 0.98, "missed by at most a quarter");
    double early = mean(verdicts, CureJudge.Verdict::early);
    assertTrue(early >= 0.35 && early <= 0.75, "likely: half of the starts, and those of floors");
  }

  private static List<CureJudge.Verdict> judged(ParkingPlan parking, String states, int every)
      throws IOException {
    boolean there = Files.isDirectory(CureJudge.FILES);
    assertTrue(there || !Boolean.getBoolean("judge"), "no weather files at " + CureJudge.FILES);
    assumeTrue(there, "no weather files at " + CureJudge.FILES);
    List<Path> files =
        CureJudge.files().stream()
            .filter(f -> f.getFileName().toString().matches("USA_" + states + ".*"))
            .toList();
    return CureJudge.judge(files, Climates::weathers, parking, every);
  }

  /** A fixed number of days that is kept as often makes people wait more than three times. */
  private static void assertFixedDaysAreFarWorse(List<CureJudge.Verdict> verdicts) {
    for (StartingHolds hold : CureJudge.HOLDS) {
      List<CureJudge.Verdict> of = verdicts.stream().filter(v -> v.hold() == hold).toList();
      double fixed = CureJudge.fixed(of);
      assertTrue(mean(of, v -> v.ratio(fixed)) > 3, hold.words());
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
