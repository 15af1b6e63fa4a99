package curewindow.cure;

import static curewindow.cure.CureJudge.mean;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Promises against the hours of TMY3 years (NREL TMY Data Set 2008), with the aims as bounds. */
class CureJudgeTest {

  /** What is asked of the promises: shares of starts, and waits as multiples of the true ones. */
  private record Aim(double kept, double keptWorst, double patience, double nearly) {}

  private static final Map<Known, Aim> AIMS =
      Map.of(
          Known.OWN_NORMALS, new Aim(0.90, 0.75, 1.20, 0.99),
          Known.BUILT_IN, new Aim(0.88, 0.65, 1.25, 0.98));

  static Stream<Arguments> cases() {
    return Stream.of(Known.OWN_NORMALS, Known.BUILT_IN)
        .flatMap(known -> CureJudge.PLANS.stream().map(plan -> Arguments.of(known, plan)));
  }

  /** All sites, every third day, as {@code docs/judged.md} shows it; with {@code -Djudge=true}. */
  @ParameterizedTest
  @MethodSource("cases")
  @Tag("judge")
  @EnabledIfSystemProperty(named = "judge", matches = "true", disabledReason = "asked for by name")
  void keepsPromises(Known known, ParkingPlan parking) throws IOException {
    List<CureJudge.Verdict> verdicts = judged(known, parking, "", 3);
    CureJudge.print(known, parking, verdicts);
    assertKeeps(AIMS.get(known), verdicts);
    assertFixedDaysAreFarWorse(verdicts);
  }

  static Stream<Arguments> someCases() {
    return Stream.of(
        Arguments.of(Known.OWN_NORMALS, CureJudge.PLANS.get(2)),
        Arguments.of(Known.BUILT_IN, CureJudge.PLANS.get(0)),
        Arguments.of(Known.BUILT_IN, CureJudge.PLANS.get(1)));
  }

  /**
   * A cold, a mild and a hot site, every twelfth day: quick enough for every build. Few starts
   * scatter, so the aims are a little lower.
   */
  @ParameterizedTest
  @MethodSource("someCases")
  void keepsPromisesAtSomeSites(Known known, ParkingPlan parking) throws IOException {
    List<CureJudge.Verdict> verdicts = judged(known, parking, "(MN|WA|FL)", 12);
    Aim aim = AIMS.get(known);
    assertKeeps(
        new Aim(
            aim.kept() - 0.02, aim.keptWorst() - 0.05, aim.patience() + 0.03, aim.nearly() - 0.01),
        verdicts);
    if (known == Known.OWN_NORMALS) {
      double early = mean(verdicts, CureJudge.Verdict::early);
      assertTrue(early >= 0.35 && early <= 0.75, "likely: half of the starts, and those of floors");
    }
  }

  private static void assertKeeps(Aim aim, List<CureJudge.Verdict> verdicts) {
    assertTrue(mean(verdicts, CureJudge.Verdict::kept) >= aim.kept(), "kept on the mean");
    for (CureJudge.Verdict verdict : verdicts) {
      assertTrue(
          verdict.kept() >= aim.keptWorst(), "kept at " + verdict.site() + ", " + verdict.hold());
    }
    assertTrue(mean(verdicts, v -> v.ratio(0)) <= aim.patience(), "wait");
    assertTrue(mean(verdicts, v -> v.share(1.25)) >= aim.nearly(), "missed by at most a quarter");
  }

  private static List<CureJudge.Verdict> judged(
      Known known, ParkingPlan parking, String states, int every) throws IOException {
    boolean there = Files.isDirectory(CureJudge.FILES);
    assertTrue(there || !Boolean.getBoolean("judge"), "no weather files at " + CureJudge.FILES);
    assumeTrue(there, "no weather files at " + CureJudge.FILES);
    List<TrueYear> years = CureJudge.realYears("USA_" + states + ".*[.]zip");
    return CureJudge.judge(years, known, parking, every);
  }

  /** A fixed number of days that is kept as often makes people wait more than three times. */
  private static void assertFixedDaysAreFarWorse(List<CureJudge.Verdict> verdicts) {
    for (StartingHolds hold : CureJudge.HOLDS) {
      List<CureJudge.Verdict> of = verdicts.stream().filter(v -> v.hold() == hold).toList();
      double fixed = CureJudge.fixed(of);
      assertTrue(mean(of, v -> v.ratio(fixed)) > 3, hold.words());
    }
  }
}
