package curewindow.climate;

import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A named point with its climate.
 *
 * @param id the name used in files, lower case with hyphens, such as {@code seattle}
 * @param name the name shown to people, such as {@code Seattle, Washington}
 * @param latitude degrees north, -90 to 90
 * @param longitude degrees east, -180 to 180
 * @param height metres above sea level, -450 to 6000
 * @param zone the time zone its clocks follow
 * @param normals twelve months, January first
 * @param source where the normals come from, in words
 * @param fileWeather what a weather file tells of the place beyond its normals, if it has one
 * @param doubt how far the normals may be off
 */
public record Place(
    String id,
    String name,
    double latitude,
    double longitude,
    double height,
    ZoneId zone,
    List<MonthNormals> normals,
    String source,
    Optional<FileWeather> fileWeather,
    Doubt doubt) {

  /** Refuses missing parts, coordinates off the globe and anything but twelve months. */
  public Place {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(zone, "zone");
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(fileWeather, "fileWeather");
    Objects.requireNonNull(doubt, "doubt");
    normals = List.copyOf(normals);
    if (!(latitude >= -90 && latitude <= 90)) {
      throw new IllegalArgumentException("latitude " + latitude + " is not within -90 to 90");
    }
    if (!(longitude >= -180 && longitude <= 180)) {
      throw new IllegalArgumentException("longitude " + longitude + " is not within -180 to 180");
    }
    if (!(height >= -450 && height <= 6000)) {
      throw new IllegalArgumentException("height " + height + " is not within -450 to 6000");
    }
    if (normals.size() != 12) {
      throw new IllegalArgumentException("a place has 12 months, not " + normals.size());
    }
  }

  /**
   * A place of which nothing is known but its normals, typed from a station near by.
   *
   * @param id the name used in files
   * @param name the name shown to people
   * @param latitude degrees north, -90 to 90
   * @param longitude degrees east, -180 to 180
   * @param height metres above sea level, -450 to 6000
   * @param zone the time zone its clocks follow
   * @param normals twelve months, January first
   * @param source where the normals come from, in words
   */
  public Place(
      String id,
      String name,
      double latitude,
      double longitude,
      double height,
      ZoneId zone,
      List<MonthNormals> normals,
      String source) {
    this(
        id,
        name,
        latitude,
        longitude,
        height,
        zone,
        normals,
        source,
        Optional.empty(),
        Doubt.OF_NORMALS);
  }

  /**
   * The same place with another doubt.
   *
   * @param other how far the normals may be off
   * @return the place
   */
  public Place doubted(Doubt other) {
    return new Place(
        id, name, latitude, longitude, height, zone, normals, source, fileWeather, other);
  }

  /** By the id alone, which tells places apart; places are looked up often. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
