package curewindow.told;

import static org.junit.jupiter.api.Assertions.assertEquals;

import curewindow.cure.Driver;
import curewindow.cure.ExplanationCause;
import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.cure.Timeline;
import curewindow.shop.Hold;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** In which order things become free; common practice, no source. Days are counted from pickup. */
class HoldOrderTest {

  private static final Instant PICKUP = Instant.parse("2026-12-01T16:00:00Z");

  private static final Map<String, Hold> STARTING =
      ShopFolder.read(new ShopFiles(Path.of("no-such-shop")), Instant.EPOCH).catalogue().holds();

  private static Release release(String hold, double days) {
    Instant at = PICKUP.plus(Duration.ofHours((long) (24 * days)));
    ExplanationCause because =
        new ExplanationCause(0, "hood", Optional.of(Driver.BOND), 48, 0, 70, 2, 1, 6, -6, 0.7);
    return new Release(
        hold, HoldKind.HOLD, new Release.SafeBy(at), at, because, because, Optional.empty());
  }

  private static Timeline told(Map<String, Hold> catalogue, Release... releases) {
    return HoldOrder.of(new Timeline(PICKUP, ZoneOffset.UTC, List.of(releases)), catalogue);
  }

  private static double days(Timeline told, String hold) {
    Instant at = told.of(hold).orElseThrow().end().at();
    return Duration.between(PICKUP, at).toHours() / 24.0;
  }

  @ParameterizedTest
  @CsvSource({
    "keep-dry, rain, true",
    "keep-dry, rinse, true",
    "keep-dry, hand-wash, true",
    "keep-dry, machine-wash, true",
    "keep-dry, topper, true",
    "keep-dry, windows-up, false",
    "keep-dry, wet-clean, false",
    "rain, rinse, true",
    "rinse, hand-wash, true",
    "hand-wash, rinse, false",
    "hand-wash, pressure-wash, true",
    "pressure-wash, hand-wash, false",
    "pressure-wash, machine-wash, true",
    "hand-wash, topper, true",
    "topper, hand-wash, false",
    "seats, wet-clean, true",
    "wipers, rain, false"
  })
  void aLaterHoldHoldsBackWhatWaitsForIt(String stricter, String other, boolean waits) {
    Timeline told = told(STARTING, release(other, 2), release(stricter, 5));
    assertEquals(waits ? 5 : 2, days(told, other));
    assertEquals(5, days(told, stricter));
    assertEquals(
        waits ? Optional.of(stricter) : Optional.empty(), told.of(other).orElseThrow().waitsFor());
  }

  @Test
  void aHoldThatEndsNoLaterHoldsNothingBack() {
    Timeline told = told(STARTING, release("keep-dry", 2), release("hand-wash", 5));
    assertEquals(2, days(told, "keep-dry"));
    assertEquals(5, days(told, "hand-wash"));
  }

  @Test
  void waitsAreHandedOn() {
    Timeline told =
        told(STARTING, release("topper", 3), release("hand-wash", 4), release("rinse", 9));
    assertEquals(9, days(told, "hand-wash"));
    assertEquals(9, days(told, "topper"), "nobody waxes a car that may not be washed");
  }

  /** A hold of the shop's own, with names that the program has never heard of. */
  @Test
  void aHoldOfTheShopsOwnBehaves() {
    Map<String, Hold> catalogue = new HashMap<>(STARTING);
    catalogue.put("foam", hold("foam", Set.of(), Set.of("water"), List.of("rinse")));
    catalogue.put("no-pollen", hold("no-pollen", Set.of("pollen"), Set.of(), List.of()));
    catalogue.put("picnic", hold("picnic", Set.of(), Set.of("pollen"), List.of()));
    Timeline told =
        told(
            catalogue,
            release("foam", 1),
            release("keep-dry", 3),
            release("picnic", 1),
            release("no-pollen", 2));
    assertEquals(3, days(told, "foam"));
    assertEquals(2, days(told, "picnic"));
  }

  private static Hold hold(String id, Set<String> forbids, Set<String> brings, List<String> after) {
    return new Hold(id, HoldKind.HOLD, 50, forbids, brings, after, Set.of(), Set.of());
  }

  @Test
  void holdsThatWaitForEachOtherEndTogether() {
    Map<String, Hold> catalogue =
        Map.of(
            "a", hold("a", Set.of(), Set.of(), List.of("b")),
            "b", hold("b", Set.of(), Set.of(), List.of("c")),
            "c", hold("c", Set.of(), Set.of(), List.of("a")));
    Timeline told = told(catalogue, release("a", 1), release("b", 2), release("c", 7));
    for (String hold : List.of("a", "b", "c")) {
      assertEquals(7, days(told, hold));
    }
  }

  @Test
  void whatIsOverByPickupIsLeftOut() {
    Timeline forbidden = told(STARTING, release("rain", -0.5), release("keep-dry", 1));
    assertEquals(Optional.empty(), forbidden.of("rain"), "keep-dry says it all");
    assertEquals(Optional.empty(), told(STARTING, release("seats", -0.5)).of("seats"));
    Timeline planned = told(STARTING, release("hand-wash", -0.5), release("keep-dry", 1));
    assertEquals(1, days(planned, "hand-wash"), "people plan by it");
    Timeline waiting = told(STARTING, release("hand-wash", -0.5), release("rinse", 1));
    assertEquals(1, days(waiting, "hand-wash"), "nobody washes before the rinse");
  }

  @Test
  void ordersTheSameDatesOnceMoreToTheSame() {
    List<Release> releases = new ArrayList<>();
    int days = STARTING.size();
    for (String hold : STARTING.keySet()) {
      releases.add(release(hold, days--));
    }
    Timeline told = told(STARTING, releases.toArray(Release[]::new));
    assertEquals(told, HoldOrder.of(told, STARTING));
  }

  @Test
  void anEndAtTheLimitIsFurtherWhenItIsToldLater() {
    Instant end = PICKUP.plus(Duration.ofDays(1));
    Instant early = PICKUP.plusSeconds(7200);
    assertEquals(new Release.AtLimit(end, 1, end), washAfterADay(early));
    Instant late = PICKUP.plusSeconds(3600).plus(Duration.ofHours(46));
    assertEquals(new Release.AtLimit(end, 0.8, late), washAfterADay(late));
  }

  private static Release.End washAfterADay(Instant full) {
    Release limit =
        new Release(
            "hand-wash",
            HoldKind.HOLD,
            new Release.AtLimit(PICKUP.plusSeconds(3600), 0.6, full),
            PICKUP,
            release("x", 1).because(),
            release("x", 1).because(),
            Optional.empty());
    Timeline told = told(STARTING, limit, release("keep-dry", 1));
    return told.of("hand-wash").orElseThrow().end();
  }
}
