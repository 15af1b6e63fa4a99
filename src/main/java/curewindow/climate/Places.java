package curewindow.climate;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** The built-in places, and places between them. */
public final class Places {

  /** Air cools by this much with height, the lapse of the ICAO standard atmosphere, K per km. */
  private static final double LAPSE = 6.5;

  private static final double EARTH_RADIUS_KM = 6371.0;

  /** Below this clear-sky sum in kWh/m2 a day a month does not tell how clear its sky is. */
  private static final double DARK_MONTH = 0.5;

  private Places() {}

  /**
   * A built-in place and how far away it is.
   *
   * @param place the place
   * @param distanceKm great-circle distance, km
   */
  public record Near(Place place, double distanceKm) {}

  /**
   * The built-in places by id, in the order of their ids.
   *
   * @return an unmodifiable map
   */
  public static Map<String, Place> builtIn() {
    return Table.TABLE.places();
  }

  /**
   * The built-in places by the country's ISO 3166 two-letter code, both in order.
   *
   * @return an unmodifiable map
   */
  public static Map<String, List<Place>> byCountry() {
    Map<String, List<Place>> byCountry = new TreeMap<>();
    Table.TABLE
        .countries()
        .forEach(
            (id, country) ->
                byCountry.computeIfAbsent(country, c -> new ArrayList<>()).add(builtIn().get(id)));
    byCountry.replaceAll((country, places) -> List.copyOf(places));
    return Collections.unmodifiableMap(byCountry);
  }

  /**
   * The nearest built-in place.
   *
   * @param latitude degrees north, -90 to 90
   * @param longitude degrees east, -180 to 180
   * @return the place and its distance; of two at one distance the first in order
   * @throws IllegalArgumentException where a coordinate is out of range or not a number
   */
  public static Near nearest(double latitude, double longitude) {
    inRange("latitude", latitude, 90);
    inRange("longitude", longitude, 180);
    Near best = new Near(null, Double.POSITIVE_INFINITY);
    for (Place place : builtIn().values()) {
      double distance = distanceKm(latitude, longitude, place.latitude(), place.longitude());
      best = distance < best.distanceKm() ? new Near(place, distance) : best;
    }
    return best;
  }

  /**
   * The nearest built-in places, the nearest first.
   *
   * @param latitude degrees north, -90 to 90
   * @param longitude degrees east, -180 to 180
   * @param count how many, 1 or more
   * @return the places and their distances; of two at one distance the first in order stands first
   * @throws IllegalArgumentException where a coordinate is out of range or not a number
   */
  public static List<Near> nearest(double latitude, double longitude, int count) {
    inRange("latitude", latitude, 90);
    inRange("longitude", longitude, 180);
    return builtIn().values().stream()
        .map(p -> new Near(p, distanceKm(latitude, longitude, p.latitude(), p.longitude())))
        .sorted(Comparator.comparingDouble(Near::distanceKm))
        .limit(count)
        .toList();
  }

  /**
   * How much warmer the air is at a height than at a place, by 6.5 K per km.
   *
   * @param from the place
   * @param height metres above sea level
   * @return K, below 0 where the height is above the place
   */
  public static double warmerThan(Place from, double height) {
    return -LAPSE * (height - from.height()) / 1000;
  }

  /**
   * A place between the built-in ones: the nearest one's normals, with air and dew point corrected
   * by 6.5 K per km of height, and with its clearness of the sky under the place's own sun. The
   * source says from where and by how much; the farther the way, the wider the doubt.
   *
   * @param id the place's id
   * @param name the place's name
   * @param latitude degrees north, -90 to 90
   * @param longitude degrees east, -180 to 180
   * @param height metres above sea level, -450 to 6000
   * @param zone its time zone
   * @return the place
   * @throws IllegalArgumentException where a value is out of range or not a number
   */
  public static Place at(
      String id, String name, double latitude, double longitude, double height, ZoneId zone) {
    Near near = nearest(latitude, longitude);
    Place from = near.place();
    double warmer = warmerThan(from, height);
    double[] here = clearSky(latitude);
    double[] there = clearSky(from.latitude());
    List<MonthNormals> normals = new ArrayList<>();
    for (int m = 0; m < MonthCurve.MONTHS; m++) {
      MonthNormals of = from.normals().get(m);
      double share = there[m] < DARK_MONTH ? 1 : Math.min(1, of.sun() / there[m]);
      double sun = there[m] < DARK_MONTH ? Math.min(of.sun(), here[m]) : here[m] * share;
      normals.add(
          new MonthNormals(
              rounded(of.dailyMin() + warmer),
              rounded(of.dailyMax() + warmer),
              rounded(of.dewPoint() + warmer),
              rounded(sun)));
    }
    return new Place(
            id, name, latitude, longitude, height, zone, normals, source(near, height, warmer))
        .doubted(from.doubt().away(near.distanceKm(), height - from.height()));
  }

  private static double rounded(double value) {
    return Math.rint(value * 100) / 100;
  }

  private static String source(Near near, double height, double warmer) {
    return String.format(
        Locale.ROOT,
        "taken from %s, %.0f km away and %.0f m %s, so %.1f K %s; there: %s",
        near.place().name(),
        near.distanceKm(),
        Math.abs(height - near.place().height()),
        height < near.place().height() ? "higher" : "lower",
        Math.abs(warmer),
        warmer < 0 ? "colder" : "warmer",
        near.place().source());
  }

  private static double[] clearSky(double latitude) {
    Sun sun = Sun.over(latitude, 0);
    return MonthCurve.means(Sun.dailySums(sun.clearSkyHours(ZoneOffset.UTC)));
  }

  /**
   * Great-circle distance on a sphere, by the haversine formula.
   *
   * @param latitude1 of one point, degrees, north positive
   * @param longitude1 of one point, degrees, east positive
   * @param latitude2 of the other point, degrees
   * @param longitude2 of the other point, degrees
   * @return km
   */
  public static double distanceKm(
      double latitude1, double longitude1, double latitude2, double longitude2) {
    double phi1 = StrictMath.toRadians(latitude1);
    double phi2 = StrictMath.toRadians(latitude2);
    double up = StrictMath.sin((phi2 - phi1) / 2);
    double along = StrictMath.sin(StrictMath.toRadians(longitude2 - longitude1) / 2);
    double half = up * up + StrictMath.cos(phi1) * StrictMath.cos(phi2) * along * along;
    return 2 * EARTH_RADIUS_KM * StrictMath.asin(Math.min(1, Math.sqrt(half)));
  }

  private static void inRange(String name, double value, double most) {
    if (!(value >= -most && value <= most)) {
      throw new IllegalArgumentException(
          name + " " + value + " is not within -" + most + " to " + most);
    }
  }

  private static final class Table {
    static final PlaceTable TABLE = PlaceTable.builtIn();
  }
}
