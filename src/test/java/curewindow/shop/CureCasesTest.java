package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.Place;
import curewindow.cure.CureCase;
import curewindow.cure.CureItem;
import curewindow.cure.Driver;
import curewindow.cure.Exposure;
import curewindow.cure.HoldRule;
import curewindow.cure.Lamp;
import curewindow.cure.PaintTone;
import curewindow.cure.Parking;
import curewindow.cure.ParkingPlan;
import curewindow.cure.Stay;
import curewindow.problem.Where;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CureCasesTest {

  private static final Instant PICKUP = Instant.parse("2026-11-26T01:00:00Z");
  private static final Instant FINISHED = Instant.parse("2026-11-25T22:30:00Z");

  @TempDir Path dir;

  private ShopRead read;

  @BeforeEach
  void base() throws IOException {
    read = TestShops.read(TestShops.base(dir));
  }

  private static FittedItem item(String service, String film, String... spots) {
    return new FittedItem(
        service,
        film,
        Arrays.asList(spots),
        FINISHED,
        OptionalDouble.empty(),
        Optional.empty(),
        OptionalInt.empty());
  }

  private CureCase of(Set<SpotFact> lacks, FittedItem... items) {
    Car car =
        new Car(OptionalInt.empty(), BodyType.SEDAN, PaintTone.DARK, Optional.empty(), "", lacks);
    Job job =
        new Job(
            "1",
            "",
            "en",
            car,
            "seattle",
            new ParkingPlan(Parking.OUTSIDE, Parking.GARAGE),
            List.of(new Stay(Instant.EPOCH, PICKUP)),
            List.of(items),
            List.of(),
            List.of(),
            Where.file("jobs/1.yaml"));
    Place place = read.places().get("seattle");
    return CureCases.of(job, read.shop().orElseThrow(), read.catalogue(), place);
  }

  private CureItem one(String service, String film, String spot) {
    return of(Set.of(), item(service, film, spot)).items().get(0);
  }

  private static List<String> holds(CureItem item) {
    return item.rules().stream().map(HoldRule::hold).sorted().toList();
  }

  /** The bay without a word in shop.yaml has 50 % humidity, at which both drivers are as fast. */
  @Test
  void aLampIsCountedOnEachSpotOfItsItemAndOnNoOther() {
    FittedItem plain = item("paint-coating", "tidewater-matte", "hood");
    FittedItem lamped =
        new FittedItem(
            plain.service(),
            plain.film(),
            List.of("roof", "trunk"),
            FINISHED,
            plain.vlt(),
            plain.glassVlt(),
            plain.batch(),
            plain.warrantyYears(),
            Optional.of(new Lamp(60, 30)));
    List<CureItem> items = of(Set.of(), plain, lamped).items();
    assertEquals(Map.of(), items.get(0).lamp());
    for (CureItem under : items.subList(1, 3)) {
      // 30 min at 60 C: 4.8 reference hours; common practice, no source.
      assertEquals(4.8, under.lamp().get(Driver.BOND), 0.05);
      assertEquals(4.8, under.lamp().get(Driver.CROSSLINK), 0.05);
    }
    assertEquals(lamped.lamp(), lamped.finishedAt(PICKUP).lamp());
  }

  @Test
  void windowsHoldOnlyWhereAFittedGlassRolls() {
    assertTrue(holds(one("tint", "harbor-35", "front-door-glass")).contains("windows-up"));
    assertEquals(
        List.of(
            "defroster",
            "hand-wash",
            "haze",
            "inside-glass",
            "machine-wash",
            "pressure-wash",
            "water-pockets"),
        holds(one("tint", "harbor-35", "back-glass")));
    assertTrue(holds(one("tint", "harbor-35", "windshield")).contains("demist"));
    assertEquals(
        List.of("hand-wash", "machine-wash", "pressure-wash", "water-pockets", "wipers"),
        holds(one("windshield-film", "clearway-shield", "windshield")));
  }

  @Test
  void aCarThatLacksSomethingHasNoHoldForIt() {
    CureCase lacking =
        of(
            EnumSet.of(SpotFact.DEFROSTER, SpotFact.ROLLS),
            item("tint", "harbor-35", "front-door-glass", "back-glass"));
    assertEquals(2, lacking.items().size());
    for (CureItem item : lacking.items()) {
      assertTrue(!holds(item).contains("defroster") && !holds(item).contains("windows-up"));
      assertTrue(holds(item).contains("haze"));
    }
  }

  @Test
  void exposureFollowsServiceAndSpot() {
    assertEquals(Exposure.BEHIND_GLASS, one("tint", "harbor-35", "back-glass").exposure());
    assertEquals(Exposure.BEHIND_GLASS, one("tint", "harbor-35", "front-door-glass").exposure());
    assertEquals(
        Exposure.OUTSIDE_UP, one("windshield-film", "clearway-shield", "windshield").exposure());
    assertEquals(
        Exposure.OUTSIDE_SIDE,
        one("glass-coating", "tidewater-glass", "front-door-glass").exposure());
    assertEquals(Exposure.OUTSIDE_UP, one("paint-film", "fieldcoat-gloss", "hood").exposure());
    assertEquals(Exposure.OUTSIDE_SIDE, one("wrap", "colorway-satin", "door").exposure());
    assertEquals(Exposure.CABIN, one("fabric-coating", "tidewater-fabric", "seats").exposure());
  }

  @Test
  void permeanceIsRelativeToTheServiceAndKeptInBounds() {
    assertEquals(1, one("tint", "harbor-35", "back-glass").permeance());
    assertEquals(5.2 / 13.6, one("tint", "fernbank-30", "back-glass").permeance(), 1e-12);
    assertEquals(80.0 / 60, one("paint-film", "fieldcoat-light", "hood").permeance(), 1e-12);
    assertEquals(1, one("paint-coating", "tidewater-paint", "hood").permeance());
    assertEquals(CureCases.LEAST_PERMEANCE, withPermeance(0.1).permeance());
    assertEquals(CureCases.MOST_PERMEANCE, withPermeance(1000).permeance());
  }

  private CureItem withPermeance(double permeance) {
    Film odd =
        new Film(
            "odd",
            "tint",
            "Odd",
            "PET",
            OptionalDouble.empty(),
            permeance,
            OptionalDouble.empty(),
            false,
            Optional.empty());
    Catalogue c = read.catalogue();
    read =
        new ShopRead(
            read.shop(),
            new Catalogue(
                c.services(), Map.of("odd", odd), c.spots(), c.holds(), c.rules(), c.visits()),
            read.places(),
            Map.of(),
            read.languages(),
            read.jobs(),
            read.brokenJobs(),
            read.problems());
    CureItem item = one("tint", "odd", "back-glass");
    read = TestShops.read(dir);
    return item;
  }

  @Test
  void onlyAndExceptNarrowARule() {
    Catalogue c = read.catalogue();
    RuleFor rule = c.rules().stream().filter(r -> r.rule().hold().equals("haze")).toList().get(0);
    List<RuleFor> rules =
        List.of(
            new RuleFor("tint", Optional.empty(), List.of("back-glass"), List.of(), rule.rule()),
            new RuleFor(
                "tint",
                Optional.empty(),
                List.of(),
                List.of("back-glass", "sunroof"),
                rule.rule()));
    Catalogue narrow =
        new Catalogue(c.services(), c.films(), c.spots(), c.holds(), rules, c.visits());
    read =
        new ShopRead(
            read.shop(),
            narrow,
            read.places(),
            Map.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    assertEquals(1, one("tint", "harbor-35", "back-glass").rules().size());
    assertEquals(1, one("tint", "harbor-35", "windshield").rules().size());
    assertEquals(0, one("tint", "harbor-35", "sunroof").rules().size());
  }

  @Test
  void theRestIsPassedOn() {
    CureCase both =
        of(
            Set.of(),
            item("paint-film", "fieldcoat-gloss", "hood", "mirror"),
            item("paint-coating", "tidewater-paint", "hood"));
    assertEquals(List.of(0, 0, 1), both.items().stream().map(CureItem::item).toList());
    assertEquals(
        List.of("hood", "mirror", "hood"), both.items().stream().map(CureItem::spot).toList());
    assertEquals(FINISHED, both.items().get(0).finished());
    assertEquals(PICKUP, both.pickup());
    assertEquals(PaintTone.DARK, both.paint());
    assertEquals("seattle", both.place().id());
    assertEquals(50_000, both.bondEnergy());
    assertEquals(21, both.bay().temperature());
    assertEquals(new ParkingPlan(Parking.OUTSIDE, Parking.GARAGE), both.parking());
  }

  @Test
  void aNameThatTheCatalogueLacksIsMisuse() {
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> one("tint", "harbor-99", "back-glass"));
    assertEquals("the catalogue has no harbor-99", e.getMessage());
  }
}
