package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import curewindow.tally.Rate;
import curewindow.tally.RateRatio;
import curewindow.tally.Share;
import curewindow.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What customers call about, in the shop of {@link CalledShop}; all numbers are counted by hand.
 */
class CallReportTest {

  @TempDir Path shop;

  private CallReport report(Instant at, Optional<String> since, Optional<String> changed) {
    Problems problems = new Problems();
    CallReport report =
        CallReports.of(
            LoadedShop.load(shop, CalledShop.CLOCK),
            new CallReport.Asked(at, since.map(LocalDate::parse), changed.map(LocalDate::parse)),
            problems);
    assertEquals(List.of(), problems.all());
    return report;
  }

  private CallReport report(String... changed) throws IOException {
    CalledShop.layOut(shop);
    return report(
        CalledShop.CLOCK.instant(), Optional.empty(), List.of(changed).stream().findFirst());
  }

  private static List<String> rates(List<CallReport.Group> groups) {
    return groups.stream()
        .map(g -> g.id() + " " + g.rate().events() + "/" + g.rate().of())
        .toList();
  }

  @Test
  void callsOfCarsWithACardCountAndTheOthersAreTold() throws IOException {
    CallReport.Basis basis = report().basis();
    assertEquals(LocalDate.parse("2026-10-01"), basis.from(), "the first call that was noted");
    assertEquals(LocalDate.parse("2026-11-30"), basis.to());
    assertEquals(new Rate(9, 54), basis.all());
    assertEquals(new CallReport.LeftOut(1, 2, 1, 1), basis.leftOut());
    assertEquals(5, basis.leftOut().all());
  }

  @Test
  void aCarCountsInEachOfItsServicesAndTooFewStandLast() throws IOException {
    CallReport report = report();
    assertEquals(List.of("tint 7/25", "paint-film 3/29", "wrap 0/1"), rates(report.services()));
    assertEquals("Window tint", report.services().get(0).label());
    assertFalse(report.services().get(2).rate().isEnough());
  }

  @Test
  void questionsAreRankedByHowOftenTheyAreAsked() throws IOException {
    CallReport report = report();
    assertEquals(
        List.of("haze 4/54", "corner 2/54", "dust 1/54", "other 1/54", "windows 1/54"),
        rates(report.questions()));
    assertEquals("Why does the glass look hazy?", report.questions().get(0).label());
  }

  /** Of Q-3401, picked up two days ago, only the first two days are over. */
  @Test
  void daysCountOnceTheyAreOver() throws IOException {
    assertEquals(
        List.of(
            "0 1/54", "1 3/54", "2-3 1/53", "4-7 1/53", "8-14 1/53", "15-30 0/53", "later 1/53"),
        rates(report().days()));
  }

  /** Haze is asked of haze; the windows of windows-up; dust and corners of no date. */
  @Test
  void holdsAndPlacesAreThoseOfThePagesOfTheCallers() throws IOException {
    CallReport.Pages pages = report().pages();
    assertEquals(8, pages.calls(), "all but the one of another question");
    Map<String, Share> holds =
        pages.holds().stream()
            .collect(Collectors.toMap(CallReport.Held::id, CallReport.Held::share));
    assertEquals(new Share(4, 8), holds.get("haze"));
    assertEquals(new Share(1, 8), holds.get("windows-up"));
    Map<String, CallReport.Placed> places =
        pages.places().stream()
            .collect(Collectors.toMap(CallReport.Placed::id, Function.identity()));
    CallReport.Placed haze = places.get("haze");
    assertEquals(List.of(4, 0, 0), List.of(haze.atAGlance(), haze.folded(), haze.off()));
    assertEquals(OptionalInt.of(1), haze.place(), "the guide has it first");
    CallReport.Placed windows = places.get("windows");
    assertEquals(1, windows.off(), "the guide marks it as later");
    assertEquals(OptionalInt.empty(), windows.place());
    assertEquals(8, places.values().stream().mapToInt(p -> p.atAGlance() + p.low()).sum());
  }

  @Test
  void aQuestionStandsTooLowWhereManyDoNotSeeIt() {
    assertTrue(placed(3, 1, 2).isTooLow());
    assertFalse(placed(4, 1, 2).isTooLow(), "more see it than not");
    assertFalse(placed(0, 1, 1).isTooLow(), "two may be chance");
  }

  private static CallReport.Placed placed(int glance, int folded, int off) {
    return new CallReport.Placed("haze", "", glance, folded, off, OptionalInt.empty());
  }

  /**
   * Changed on October 16: cars of October 1 to 8, whose first eight days are over on the 15th, and
   * those of the eight days from the 16th on. Before: 8 tinted and 14 with film; after: 8, 14 and
   * the wrap. The call of Q-3204 came on the eighth day after its pickup and is out.
   */
  @Test
  void beforeAndAfterAChangeCountAlike() throws IOException {
    CallReport.Change change = report("2026-10-16").change().orElseThrow();
    assertEquals(8, change.days());
    assertEquals(
        "2026-10-01 2026-10-08 2026-10-23",
        change.beforeFrom() + " " + change.beforeTo() + " " + change.afterTo());
    Map<String, RateRatio> ratios =
        change.compared().stream()
            .collect(Collectors.toMap(CallReport.Compared::id, CallReport.Compared::ratio));
    assertEquals(new RateRatio(new Rate(5, 22), new Rate(1, 23)), ratios.get(""));
    assertEquals(new RateRatio(new Rate(3, 22), new Rate(0, 23)), ratios.get("haze"));
    assertEquals(new RateRatio(new Rate(1, 22), new Rate(1, 23)), ratios.get("corner"));
    assertEquals(new RateRatio(new Rate(1, 22), new Rate(0, 23)), ratios.get("windows"));
    assertEquals(4, ratios.size());
    // 1/23 of 5/22; 1 of 6 is 0.0042 to 0.6412 (Clopper and Pearson), its odds times 22/23.
    assertEquals(OptionalInt.of(19), ratios.get("").percent());
    assertEquals(OptionalInt.of(0), ratios.get("").low());
    assertEquals(OptionalInt.of(171), ratios.get("").high());
    assertEquals(RateRatio.Verdict.UNSURE, ratios.get("").verdict());
  }

  @Test
  void whereItIsTooSoonNothingIsCompared() throws IOException {
    for (String day : List.of("2026-10-08", "2026-11-23", "2026-11-30")) {
      assertEquals(0, reportAgain(day).days(), day);
    }
    assertEquals(1, reportAgain("2026-10-09").days());
    assertEquals(1, reportAgain("2026-11-22").days());
  }

  private CallReport.Change reportAgain(String day) throws IOException {
    if (!Files.exists(shop.resolve("shop.yaml"))) {
      CalledShop.layOut(shop);
    }
    return report(CalledShop.CLOCK.instant(), Optional.empty(), Optional.of(day))
        .change()
        .orElseThrow();
  }

  /** From September 15 on, Q-3503 counts with its call. */
  @Test
  void theShopMaySaySinceWhenCallsWereNoted() throws IOException {
    CalledShop.layOut(shop);
    CallReport.Basis basis =
        report(CalledShop.CLOCK.instant(), Optional.of("2026-09-15"), Optional.empty()).basis();
    assertEquals(new Rate(10, 55), basis.all());
    assertEquals(0, basis.leftOut().earlier());
  }

  /** On the evening of October 5: 5 tinted cars and 14 with film, 3 calls. */
  @Test
  void anEarlierDayIsToldAsItWas() throws IOException {
    CalledShop.layOut(shop);
    CallReport report =
        report(Instant.parse("2026-10-06T06:59:59Z"), Optional.empty(), Optional.empty());
    assertEquals(new Rate(3, 19), report.basis().all());
    assertFalse(report.basis().all().isEnough());
    String text = CallReportText.of(report, english());
    assertTrue(text.contains("3 calls from 19 cars handed over, which is too few to tell."), text);
    assertFalse(text.contains("stands too low"), text);
  }

  private Words english() {
    return LoadedShop.load(shop, CalledShop.CLOCK).words().of("en");
  }

  @Test
  void aShopWithoutCallsHasNone() throws IOException {
    CalledShop.layOut(shop);
    Files.delete(shop.resolve(Callbacks.FILE));
    CallReport report =
        report(CalledShop.CLOCK.instant(), Optional.empty(), Optional.of("2026-10-16"));
    assertEquals(new Rate(0, 0), report.basis().all());
    assertTrue(CallReportText.of(report, english()).contains("0 calls from 0 cars handed over"));
    assertTrue(CallReportCsv.of(report).contains("\nall,,,2026-11-30,2026-11-30,0,0,"));
  }

  /** Another car under the id of a card is nobody's who called. */
  @Test
  void whoseIdIsAnothersIsNoHandover() throws IOException {
    CalledShop.layOut(shop);
    Path cards = shop.resolve("handed-over.csv");
    Files.writeString(
        cards,
        Files.readString(cards)
            .replace(
                "Q-3301,Mara,2023 sedan black four-door,2026-10-05",
                "Q-3301,Ivo,2019 van white van,2025-03-05"));
    CallReport.Basis basis =
        report(CalledShop.CLOCK.instant(), Optional.empty(), Optional.empty()).basis();
    assertEquals(new Rate(8, 53), basis.all());
    assertEquals(2, basis.leftOut().gone());
  }

  /** A question that the guides have no more still counts, by its id. */
  @Test
  void aQuestionThatIsGoneStillCounts() throws IOException {
    CalledShop.layOut(shop);
    Path calls = shop.resolve(Callbacks.FILE);
    Files.writeString(calls, Files.readString(calls).replace(",corner,", ",rattle,"));
    CallReport report = report(CalledShop.CLOCK.instant(), Optional.empty(), Optional.empty());
    CallReport.Group rattle = report.questions().get(1);
    assertEquals("rattle rattle", rattle.id() + " " + rattle.label());
    assertEquals(new Rate(2, 54), rattle.rate());
  }

  /**
   * Whatever else the machine does: a report that goes through all for each of all takes longer.
   */
  @Test
  void tenThousandHandoversAreCountedAtOnce() throws IOException {
    CalledShop.layOutMany(shop, 10_000);
    CallReport report =
        assertTimeoutPreemptively(
            Duration.ofSeconds(30),
            () -> report(CalledShop.CLOCK.instant(), Optional.empty(), Optional.of("2026-06-01")));
    assertEquals(new Rate(3334, 10_000), report.basis().all());
    assertEquals(100, report.pages().calls(), "the newest");
  }
}
