package curewindow.told;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.Climates;
import curewindow.climate.Places;
import curewindow.cure.Curing;
import curewindow.shop.Catalogue;
import curewindow.shop.Shop;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import curewindow.shop.ShopRead;
import java.nio.file.Path;
import java.time.Instant;
import java.time.Month;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class YearHereTest {

  private static final ShopRead READ =
      ShopFolder.read(new ShopFiles(Path.of("content/demo")), Instant.EPOCH);
  private static final Shop SHOP = READ.shop().orElseThrow();
  private static final Catalogue CATALOGUE = READ.catalogue();
  private static final YearHere SEATTLE = at("seattle", CATALOGUE);

  private static YearHere at(String place, Catalogue catalogue) {
    return YearHere.of(
        SHOP, catalogue, Places.builtIn().get(place), Curing.with(Climates::weathers));
  }

  private static YearHere.Course course(YearHere year, String service, String hold) {
    return year.services().stream()
        .filter(s -> s.service().equals(service))
        .flatMap(s -> s.courses().stream())
        .filter(c -> c.hold().equals(hold))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyServiceWithHoldsHasItsYearAndTheMarkedHoldsAreShown() {
    assertEquals(
        List.copyOf(CATALOGUE.services().keySet()),
        SEATTLE.services().stream().map(YearHere.Work::service).toList());
    List<String> shown =
        SEATTLE.services().get(0).courses().stream()
            .filter(YearHere.Course::shown)
            .map(YearHere.Course::hold)
            .toList();
    assertEquals(List.of("windows-up", "hand-wash", "haze", "water-pockets"), shown);
    assertFalse(course(SEATTLE, "tint", "defroster").shown());
  }

  /** The ranges are those of the trade; common practice, no source. */
  @Test
  void windowsStayUpForADayOrThreeInSummerAndTenDaysAtMostInWinter() {
    YearHere.Course windows = course(SEATTLE, "tint", "windows-up");
    int july = windows.months().get(6).outside().safe();
    int january = windows.months().get(0).outside().safe();
    assertTrue(july >= 1 && july <= 3, "July " + july);
    assertTrue(january >= 7 && january <= 10, "January " + january);
    YearHere.Range range = SEATTLE.range(windows);
    assertTrue(range.least().safe() <= july && range.most().safe() >= january, range.toString());
  }

  /** The days are those that a job's page tells. */
  @Test
  void daysAreThoseOfAJobFinishedThen() {
    YearHere.Days july = course(SEATTLE, "paint-film", "hand-wash").months().get(6).outside();
    assertTrue(july.likely() >= 3 && july.safe() <= 6, july.toString());
    YearHere frost = at("minneapolis", CATALOGUE);
    YearHere.Days january = course(frost, "paint-film", "hand-wash").months().get(0).garage();
    assertEquals(14, january.safe());
    assertTrue(january.full() > january.safe(), "gently after the limit: " + january);
  }

  @Test
  void ofMonthsAlikeTheWarmestIsTheShortestAndTheColdestTheLongest() {
    YearHere.Range dry = at("phoenix", CATALOGUE).of("coating", "keep-dry").orElseThrow();
    assertEquals(1, dry.least().safe());
    assertEquals(Month.JULY, dry.shortest());
    YearHere.Range south = SEATTLE.of("tint", "windows-up").orElseThrow();
    assertTrue(List.of(Month.DECEMBER, Month.JANUARY).contains(south.longest()), south.toString());
  }

  @Test
  void aGuideHearsOfItsOwnServicesElseOfAll() {
    assertEquals(
        SEATTLE.range(course(SEATTLE, "tint", "hand-wash")),
        SEATTLE.of("tint", "hand-wash").orElseThrow());
    int most = SEATTLE.of("washing", "hand-wash").orElseThrow().most().safe();
    assertEquals(14, most, "the longest of all services");
    assertEquals(SEATTLE.of("coating", "keep-dry"), SEATTLE.of("tint", "keep-dry"));
    assertTrue(SEATTLE.of("tint", "no-such-hold").isEmpty());
  }

  @Test
  void servicesWithoutFilmsAreLeftOutAndTheSameInputGivesTheSame() {
    Catalogue bare =
        new Catalogue(
            CATALOGUE.services(),
            Map.of("harbor-35", CATALOGUE.films().get("harbor-35")),
            CATALOGUE.spots(),
            CATALOGUE.holds(),
            CATALOGUE.rules(),
            CATALOGUE.visits());
    assertEquals(
        List.of("tint"),
        at("seattle", bare).services().stream().map(YearHere.Work::service).toList());
    assertEquals(SEATTLE, at("seattle", CATALOGUE));
    assertThrows(IllegalArgumentException.class, () -> new YearHere.Days(3, 2, 2));
    assertThrows(
        IllegalArgumentException.class, () -> new YearHere.Course("haze", true, List.of()));
  }
}
