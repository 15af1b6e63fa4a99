package curewindow.told;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.Climates;
import curewindow.climate.Place;
import curewindow.climate.Places;
import curewindow.cure.Curing;
import curewindow.cure.Parking;
import curewindow.cure.Release;
import curewindow.cure.Stay;
import curewindow.cure.Timeline;
import curewindow.shop.Catalogue;
import curewindow.shop.CureCases;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.shop.PastVisit;
import curewindow.shop.PastVisit.Result;
import curewindow.shop.Shop;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import curewindow.shop.ShopRead;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a visit ends, on the starting catalogue in a damp, mild winter. */
class SeenTest {

  private static final ShopRead DEMO =
      ShopFolder.read(new ShopFiles(Path.of("content/demo")), Instant.EPOCH);
  private static final Shop SHOP = DEMO.shop().orElseThrow();
  private static final Catalogue CATALOGUE = DEMO.catalogue();
  private static final Place PLACE = Places.builtIn().get("seattle");
  private static final Curing CURING = Curing.with(Climates::weathers);
  private static final FittedItem TINT =
      item("tint", "harbor-35", "2026-12-01T22:00:00Z", "front-door-glass", "back-glass");
  private static final FittedItem FILM =
      item("paint-film", "fieldcoat-gloss", "2026-12-01T22:00:00Z", "hood");

  private static FittedItem item(String service, String film, String at, String... spots) {
    return new FittedItem(
        service,
        film,
        List.of(spots),
        Instant.parse(at),
        OptionalDouble.empty(),
        Optional.empty(),
        OptionalInt.empty());
  }

  private static PastVisit seen(String day, String... what) {
    return new PastVisit(LocalDate.parse(day), List.of(what), Result.FINE, "");
  }

  private static Job job(List<FittedItem> items, PastVisit... seen) {
    return job(
        items,
        List.of(
            new Stay(
                TINT.finished(),
                items.stream().map(FittedItem::finished).max(Instant::compareTo).orElseThrow())),
        seen);
  }

  private static Job job(List<FittedItem> items, List<Stay> stays, PastVisit... seen) {
    return BlueCar.job(PLACE.id(), Parking.OUTSIDE, stays, items, List.of(seen));
  }

  private static Timeline told(Job job) {
    Timeline computed =
        CURING.timeline(
            Seen.running(job, SHOP, CATALOGUE, CureCases.of(job, SHOP, CATALOGUE, PLACE)));
    Timeline seen = Seen.over(job, SHOP, CATALOGUE, PLACE, computed);
    Timeline told = HoldOrder.of(seen, CATALOGUE.holds());
    assertEquals(
        told,
        HoldOrder.of(Seen.over(job, SHOP, CATALOGUE, PLACE, told), CATALOGUE.holds()),
        "telling it twice changes nothing");
    return told;
  }

  private static Release of(Timeline told, String hold) {
    return told.of(hold).orElseThrow();
  }

  private static Release.End morning(String day) {
    return new Release.Seen(LocalDate.parse(day).atTime(8, 0).atZone(PLACE.zone()).toInstant());
  }

  private static Optional<Visit> visit(Job job) {
    Timeline computed = CURING.timeline(CureCases.of(job, SHOP, CATALOGUE, PLACE));
    return Visit.of(job, CATALOGUE.visits(), computed, SHOP, false);
  }

  @Test
  void whatWasDueIsOverFromTheMorningOfTheVisit() {
    Timeline before = told(job(List.of(TINT)));
    Timeline after = told(job(List.of(TINT), seen("2026-12-18")));
    for (String settle : List.of("haze", "water-pockets")) {
      assertTrue(of(before, settle).end().at().isAfter(morning("2026-12-18").at()), settle);
      assertEquals(morning("2026-12-18"), of(after, settle).end());
      assertTrue(!of(after, settle).likely().isAfter(of(after, settle).end().at()));
    }
    for (Release release : before.releases()) {
      if (!Set.of("haze", "water-pockets").contains(release.hold())) {
        assertEquals(release, of(after, release.hold()), "was not looked at");
      }
    }
  }

  @Test
  void whatWasOnlyMendedRunsOn() {
    Timeline before = told(job(List.of(TINT)));
    LocalDate day = LocalDate.parse("2026-12-03");
    for (List<String> what : List.of(List.<String>of(), List.of("tint"), List.of("inside-glass"))) {
      Job mended = job(List.of(TINT), new PastVisit(day, what, Result.MENDED, "pressed down"));
      assertEquals(before, told(mended), what.toString());
    }
  }

  @Test
  void aNamedHoldIsOverAndOneThatWasOverByThenStays() {
    Timeline before = told(job(List.of(TINT)));
    Timeline early = told(job(List.of(TINT), seen("2026-12-03", "inside-glass", "hand-wash")));
    assertEquals(morning("2026-12-03"), of(early, "inside-glass").end());
    assertEquals(of(before, "haze"), of(early, "haze"));
    Timeline late = told(job(List.of(TINT), seen("2027-02-25", "inside-glass")));
    assertEquals(of(before, "inside-glass"), of(late, "inside-glass"));
  }

  @Test
  void theFirstOfTwoVisitsCounts() {
    Timeline told = told(job(List.of(TINT), seen("2026-12-20"), seen("2026-12-18", "tint")));
    assertEquals(morning("2026-12-18"), of(told, "haze").end());
  }

  @Test
  void aHoldOfTwoServicesIsOverWhenBothWereSeen() {
    List<FittedItem> both = List.of(TINT, FILM);
    Timeline tint = told(job(both, seen("2026-12-16", "tint")));
    Timeline film = told(job(List.of(FILM)));
    assertEquals(
        of(film, "water-pockets").end(), of(tint, "water-pockets").end(), "the film's own");
    Timeline all = told(job(both, seen("2026-12-16", "tint"), seen("2026-12-18", "paint-film")));
    assertEquals(morning("2026-12-18"), of(all, "water-pockets").end());
  }

  @Test
  void workOfTheSameDayOrLaterIsNotSeen() {
    FittedItem later = item("tint", "harbor-35", "2026-12-18T18:00:00Z", "quarter-glass");
    Timeline told = told(job(List.of(TINT, later), seen("2026-12-18")));
    assertEquals(of(told(job(List.of(later))), "haze").end(), of(told, "haze").end());
  }

  @Test
  void whatIsSeenFineStillWaitsForWhatHoldsItBack() {
    FittedItem coating = item("paint-coating", "tidewater-paint", "2026-12-01T22:00:00Z", "hood");
    Timeline told = told(job(List.of(coating), seen("2026-12-02", "hand-wash")));
    Release wash = of(told, "hand-wash");
    Release rinse = of(told, "rinse");
    assertEquals(rinse.end().at(), wash.end().at());
    assertTrue(wash.end() instanceof Release.SafeBy || wash.end() instanceof Release.AtLimit);
    assertEquals(Optional.of("rinse"), wash.waitsFor());
  }

  @Test
  void whatIsSeenFineAndWaitsForWhatIsSeenFineLaterIsSeenToo() {
    FittedItem coating = item("paint-coating", "tidewater-paint", "2026-12-01T22:00:00Z", "hood");
    Timeline told =
        told(
            job(
                List.of(coating),
                seen("2026-12-02", "hand-wash"),
                seen("2026-12-03", "rinse", "rain", "keep-dry")));
    assertEquals(morning("2026-12-03"), of(told, "rinse").end());
    assertEquals(morning("2026-12-03"), of(told, "hand-wash").end());
  }

  @Test
  void workThatWasFittedAnewBeginsAgain() {
    FittedItem anew = item("tint", "harbor-35", "2026-12-18T18:00:00Z", "back-glass");
    FittedItem kept = item("tint", "harbor-35", "2026-12-01T22:00:00Z", "front-door-glass");
    Stay again = new Stay(anew.finished(), anew.finished().plusSeconds(4 * 3600));
    PastVisit refitted =
        new PastVisit(
            LocalDate.of(2026, 12, 18), List.of("tint", "back-glass"), Result.REFITTED, "");
    Stay first = new Stay(TINT.finished(), TINT.finished());
    Job job = job(List.of(kept, anew), List.of(first, again), refitted);
    Timeline told = told(job);
    Timeline alone = told(job(List.of(anew), List.of(again)));
    for (String hold : List.of("defroster", "inside-glass", "haze", "hand-wash")) {
      assertEquals(of(alone, hold).end(), of(told, hold).end(), hold);
      assertTrue(of(told, hold).end().at().isAfter(again.pickup()), hold);
    }
    Timeline old = told(job(List.of(kept), List.of(first, again)));
    assertEquals(old.of("windows-up"), told.of("windows-up"), "of the door alone");
    LocalDate asked = visit(job).orElseThrow().day();
    assertTrue(!asked.isBefore(LocalDate.of(2027, 1, 1)), "for the new work: " + asked);
  }

  @Test
  void whoHasComeIsNotAskedAgain() {
    assertTrue(visit(job(List.of(TINT))).isPresent());
    assertEquals(Optional.empty(), visit(job(List.of(TINT), seen("2026-12-18"))));
    assertEquals(Optional.empty(), visit(job(List.of(TINT), seen("2026-12-05", "tint"))));
    assertEquals(Optional.empty(), visit(job(List.of(TINT), seen("2026-12-18", "haze"))));
    assertTrue(
        visit(job(List.of(TINT), seen("2026-12-03", "windows-up"))).isPresent(),
        "one hold before it was time is no visit");
    assertEquals(
        List.of("paint-film"),
        visit(job(List.of(TINT, FILM), seen("2026-12-18", "tint"))).orElseThrow().services());
  }
}
