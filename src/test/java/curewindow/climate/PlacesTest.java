package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class PlacesTest {

  static List<Place> places() {
    return List.copyOf(Places.builtIn().values());
  }

  @Test
  void manyPlacesInAllClimatesAndBothHemispheres() {
    assertTrue(places().size() >= 120, "only " + places().size());
    long south = places().stream().filter(p -> p.latitude() < 0).count();
    long polar = places().stream().filter(p -> Math.abs(p.latitude()) > 60).count();
    long tropical = places().stream().filter(p -> Math.abs(p.latitude()) < 23.4).count();
    long high = places().stream().filter(p -> p.height() > 1500).count();
    assertTrue(south >= 25 && polar >= 8 && tropical >= 40 && high >= 10);
    Set<String> states = new HashSet<>();
    Places.byCountry().get("US").forEach(p -> states.add(p.name().split(", ")[1]));
    assertEquals(51, states.size(), "states and the capital's district");
    Set<String> provinces = new HashSet<>();
    Places.byCountry().get("CA").forEach(p -> provinces.add(p.name().split(", ")[1]));
    assertEquals(13, provinces.size(), "provinces and territories");
  }

  @Test
  void orderIsStableAndMapsCannotBeChanged() {
    List<String> ids = new ArrayList<>(Places.builtIn().keySet());
    assertEquals(ids.stream().sorted().toList(), ids);
    Map<String, Place> map = Places.builtIn();
    assertThrows(UnsupportedOperationException.class, map::clear);
    Map<String, List<Place>> countries = Places.byCountry();
    assertThrows(UnsupportedOperationException.class, countries::clear);
    assertEquals(ids.size(), countries.values().stream().mapToInt(List::size).sum());
    assertTrue(Set.of(Locale.getISOCountries()).containsAll(countries.keySet()));
  }

  @ParameterizedTest
  @MethodSource("places")
  void everyPlaceIsWellFormed(Place place) {
    assertTrue(place.id().matches("[a-z]+(-[a-z]+)*"), place.id());
    assertSame(place, Places.builtIn().get(place.id()));
    assertTrue(place.source().contains("from memory"), place.id());
    assertEquals(List.of(), Climates.impossible(place));
    for (MonthNormals month : place.normals()) {
      assertTrue(month.dailyMax() - month.dailyMin() >= 3, place.id());
      assertTrue(month.dailyMax() - month.dailyMin() <= 20, place.id());
      double mean = (month.dailyMin() + month.dailyMax()) / 2;
      assertTrue(month.dewPoint() <= mean, place.id() + " dew point");
      double humidity = Psychrometrics.relativeHumidity(mean, month.dewPoint());
      assertTrue(humidity > 6, place.id() + " humidity " + humidity);
    }
  }

  /** North of 30 degrees January is the colder, duller month; south of 30 July is. */
  @ParameterizedTest
  @MethodSource("places")
  void seasonsFitTheHemisphere(Place place) {
    MonthNormals january = place.normals().get(0);
    MonthNormals july = place.normals().get(6);
    if (place.latitude() > 30) {
      assertTrue(january.dailyMin() < july.dailyMin() && january.sun() < july.sun());
    } else if (place.latitude() < -30) {
      assertTrue(july.dailyMin() < january.dailyMin() && july.sun() < january.sun());
    }
  }

  /** Clocks are at most three hours off the sun, so no longitude has lost its sign. */
  @ParameterizedTest
  @MethodSource("places")
  void zonesFitLongitudes(Place place) {
    double offset = PlaceDays.standardOffset(place).getTotalSeconds() / 3600.0;
    double off = Math.IEEEremainder(place.longitude() / 15 - offset, 24);
    assertTrue(Math.abs(off) < 3, place.id() + " " + off);
  }

  /**
   * Great-circle distances: a quarter of the way round is 10,007.5 km on a sphere of 6,371 km; New
   * York to London airports about 5,555 km (from memory); Fiji and Samoa lie near one another
   * across the date line.
   */
  @Test
  void distances() {
    assertEquals(10_007.5, Places.distanceKm(0, 0, 90, 0), 0.1);
    assertEquals(20_015.1, Places.distanceKm(0, 0, 0, 180), 0.1);
    assertEquals(5555, Places.distanceKm(40.64, -73.78, 51.47, -0.46), 25);
    assertTrue(Places.distanceKm(-18.15, 178.45, -13.81, -171.78) < 1200);
  }

  @ParameterizedTest
  @CsvSource({
    "47.6, -122.3, seattle", "-36.8, 174.7, auckland", "-13.9, 179.5, suva",
    "-14.2, -170.7, apia", "90, 0, tromso", "-90, 0, mcmurdo"
  })
  void nearest(double latitude, double longitude, String id) {
    assertEquals(id, Places.nearest(latitude, longitude).place().id());
  }

  @Test
  void aPlaceIsNearestToItself() {
    for (Place place : places()) {
      Places.Near near = Places.nearest(place.latitude(), place.longitude());
      assertSame(place, near.place());
      assertEquals(0, near.distanceKm(), 1e-6);
    }
  }

  @ParameterizedTest
  @CsvSource({"91, 0", "-91, 0", "NaN, 0", "0, 181", "0, -181", "0, NaN"})
  void refusesPointsOffTheGlobe(double latitude, double longitude) {
    assertThrows(IllegalArgumentException.class, () -> Places.nearest(latitude, longitude));
  }

  /** A thousand metres up is 6.5 K colder (ICAO standard atmosphere). */
  @Test
  void heightCorrectsAirAndDewPoint() {
    Place seattle = Places.builtIn().get("seattle");
    Place up = at(47.46, -122.31, seattle.height() + 1000);
    for (int m = 0; m < 12; m++) {
      MonthNormals below = seattle.normals().get(m);
      MonthNormals above = up.normals().get(m);
      assertEquals(below.dailyMin() - 6.5, above.dailyMin(), 1e-9);
      assertEquals(below.dailyMax() - 6.5, above.dailyMax(), 1e-9);
      assertEquals(below.dewPoint() - 6.5, above.dewPoint(), 1e-9);
      assertEquals(below.sun(), above.sun(), 1e-9);
    }
    assertTrue(up.source().contains("Seattle, Washington, 0 km away and 1000 m lower"));
    assertTrue(up.source().contains("6.5 K colder"), up.source());
    Place down = at(47.46, -122.31, seattle.height() - 100);
    assertTrue(down.source().contains("100 m higher, so 0.7 K warmer"), down.source());
  }

  @Test
  void sunFollowsTheLatitude() {
    Place place = at(45.0, -122.6, 6);
    Place portland = Places.builtIn().get("portland-oregon");
    assertTrue(place.normals().get(0).sun() > portland.normals().get(0).sun());
    assertEquals(List.of(), Climates.impossible(place));
  }

  @Test
  void sunInPolarNightNeverExceedsTheSky() {
    Place pole = at(89, 18, 0);
    assertEquals(0, pole.normals().get(0).sun());
    assertEquals(List.of(), Climates.impossible(pole));
    assertEquals(List.of(), Climates.impossible(at(67, 19, 0)));
  }

  @Test
  void heightsBeyondReasonAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> at(47, -122, 7000));
    assertThrows(IllegalArgumentException.class, () -> at(47, -122, Double.NaN));
  }

  @Test
  void anywhereOnTheGlobeHasWeather() {
    for (double latitude = -90; latitude <= 90; latitude += 30) {
      for (double longitude = -180; longitude <= 180; longitude += 60) {
        Place place = at(latitude, longitude, 100);
        assertFalse(Climates.weathers(place).years().isEmpty());
      }
    }
  }

  private static Place at(double latitude, double longitude, double height) {
    return Places.at("here", "Here", latitude, longitude, height, ZoneId.of("UTC"));
  }
}
