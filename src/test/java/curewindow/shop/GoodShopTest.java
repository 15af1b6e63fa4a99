package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.Place;
import curewindow.climate.Psychrometrics;
import curewindow.cure.Bay;
import curewindow.cure.Lamp;
import curewindow.cure.PaintTone;
import curewindow.cure.Parking;
import curewindow.cure.ParkingPlan;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Period;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The values read from a shop folder that uses every key. */
class GoodShopTest {

  @TempDir Path dir;

  private ShopRead read;

  @BeforeEach
  void readIt() throws IOException {
    TestShops.base(dir);
    TestShops.copy(TestShops.CASES.resolve("good"), dir);
    read = TestShops.read(dir);
  }

  private Job job(String id) {
    return read.jobs().stream().filter(j -> j.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void theShop() {
    OpenHours morning = new OpenHours(LocalTime.of(9, 0), LocalTime.of(12, 30));
    OpenHours afternoon = new OpenHours(LocalTime.of(13, 30), LocalTime.of(18, 0));
    OpenHours saturday = new OpenHours(LocalTime.of(9, 0), LocalTime.of(13, 0));
    Shop expected =
        new Shop(
            "Taller Ejemplo",
            "555-0100",
            Optional.of("5550101"),
            Optional.of("desk@example.com"),
            List.of("1 Example Street", "Example Town"),
            new AddressParts(List.of("1 Example Street"), "Example Town", "", "", "Ejemplo"),
            URI.create("http://care.example.com/shop/"),
            ZoneId.of("America/New_York"),
            "es",
            Optional.of("es-MX"),
            Optional.of(Units.METRIC),
            "mill-creek",
            new Bay(19.5, 60, 55),
            52_000,
            Map.of(
                DayOfWeek.MONDAY, List.of(morning, afternoon),
                DayOfWeek.SATURDAY, List.of(saturday)),
            List.of(LocalDate.of(2026, 12, 25)),
            Shop.VISIT_WITHIN,
            new ShopLook(Optional.empty(), ShopColor.of(new Rgb(0x0B, 0x5D, 0x57))),
            new HandoutChoice(
                Handout.HANG_TAG,
                Optional.of(SheetPaper.LETTER),
                1,
                new InkChoice(
                    Ink.SPOT,
                    Optional.of("Mill Creek Blue"),
                    Optional.of(PrintingCondition.CGATS_TR_001))),
            Optional.of(Period.ofMonths(18)),
            Optional.of(
                new SendTo(
                    URI.create("sftp://quillhaven@files.example:2022/site"),
                    Optional.of("SHA256:" + "a".repeat(43)),
                    Optional.of(Path.of("/keys/send")))));
    assertEquals(Optional.of(expected), read.shop());
  }

  @Test
  void aJobFile() {
    Job job = job("K-1");
    assertEquals("Íñigo", job.firstName());
    assertEquals("en", job.language());
    assertEquals(
        new Car(
            OptionalInt.of(2019),
            BodyType.PICKUP,
            PaintTone.MID,
            Optional.of("matte"),
            "the red one",
            Set.of(SpotFact.DEFROSTER)),
        job.car());
    assertEquals("own-normals", job.place());
    assertEquals(new ParkingPlan(Parking.SHADE, Parking.HEATED), job.parking());
    // Sydney is 11 hours ahead of UTC in November.
    assertEquals(Instant.parse("2026-11-25T06:00:00Z"), job.pickup());
    assertEquals(
        List.of(
            new FittedItem(
                "tint",
                "fernbank-30",
                List.of("front-door-glass", "back-glass"),
                Instant.parse("2026-11-25T03:30:30Z"),
                OptionalDouble.of(27.5),
                OptionalDouble.of(80),
                Optional.of("17"),
                OptionalInt.of(10),
                Optional.of(new Lamp(60, 30))),
            new FittedItem(
                "paint-coating",
                "tidewater-matte",
                List.of("whole-body"),
                Instant.parse("2026-11-24T23:00:00Z"),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalInt.empty())),
        job.items());
    assertEquals(
        List.of(
            new Finding(
                FindingKind.OLD_FILM,
                List.of("back-glass"),
                OptionalInt.of(2009),
                "Two lines\nof text.")),
        job.found());
  }

  @Test
  void aShortJobFileFallsBackToTheShop() {
    Job job = job("2");
    assertEquals("", job.firstName());
    assertEquals("es", job.language());
    assertEquals("mill-creek", job.place());
    assertEquals(new ParkingPlan(Parking.GARAGE, Parking.GARAGE), job.parking());
    // 9:00 in New York after the clocks went back, 5 hours behind UTC.
    assertEquals(Instant.parse("2026-11-01T14:00:00Z"), job.pickup());
    assertEquals(Instant.parse("2026-11-01T06:30:00Z"), job.items().get(0).finished());
  }

  @Test
  void twoRowsOfTheCsvFileMakeOneJob() {
    Job job = job("C-1");
    assertEquals("Lía", job.firstName());
    assertEquals("la negra, grande", job.car().text());
    assertEquals(Set.of(SpotFact.DEFROSTER, SpotFact.ROLLS), job.car().lacks());
    assertEquals(new ParkingPlan(Parking.OUTSIDE, Parking.GARAGE), job.parking());
    // Los Angeles is 8 hours behind UTC in November.
    assertEquals(Instant.parse("2026-11-26T01:00:00Z"), job.pickup());
    assertEquals(
        List.of(
            new FittedItem(
                "tint",
                "harbor-35",
                List.of("front-door-glass", "rear-door-glass"),
                Instant.parse("2026-11-25T22:30:00Z"),
                OptionalDouble.of(28),
                OptionalDouble.of(81.5),
                Optional.of("B1"),
                OptionalInt.of(5),
                Optional.of(new Lamp(55.5, 20))),
            new FittedItem(
                "headlight-film",
                "beamguard-clear",
                List.of("headlight"),
                Instant.parse("2026-11-25T23:30:00Z"),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalInt.empty())),
        job.items());
    assertEquals(
        List.of(FindingKind.CHIP, FindingKind.OLD_FILM),
        job.found().stream().map(Finding::kind).toList());
  }

  @Test
  void ownPlaces() {
    Place own = read.places().get("own-normals");
    assertEquals(18.5, own.normals().get(0).dailyMin());
    assertEquals(17, own.normals().get(5).dewPoint());
    // 60 percent at the mean of 8 and 18 degrees.
    assertEquals(Psychrometrics.dewPoint(13, 60), own.normals().get(6).dewPoint());
    assertEquals("invented for a test", own.source());
    Place between = read.places().get("mill-creek");
    assertEquals(110, between.height());
    assertTrue(between.source().contains("Seattle"), between.source());
    assertTrue(read.places().containsKey("seattle"));
  }

  @Test
  void theLanguagesThatHaveWordsAndGuides() {
    assertTrue(read.languages().containsAll(List.of("en", "es")));
  }
}
