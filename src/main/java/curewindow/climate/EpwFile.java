package curewindow.climate;

import curewindow.problem.Problem;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;

/**
 * A weather file in the EnergyPlus format (EPW), read and checked.
 *
 * @param name the site's name, with region and country as the file has them
 * @param source what the hours are, as the file says, such as {@code TMY3}; may be empty
 * @param latitude degrees north
 * @param longitude degrees east
 * @param height metres above sea level
 * @param offset local standard time, to which the hours belong all year round
 * @param weather the hours and what follows from them
 * @param sunIsEstimated whether the file has no sun, so that it was estimated from the daily range
 *     of temperature
 * @param notices what is worth knowing but stops nothing, such as gaps that were filled
 */
public record EpwFile(
    String name,
    String source,
    double latitude,
    double longitude,
    double height,
    ZoneOffset offset,
    FileWeather weather,
    boolean sunIsEstimated,
    List<Problem> notices) {

  /** Copies the list. */
  public EpwFile {
    notices = List.copyOf(notices);
  }

  /**
   * Whether the clocks of a zone keep the file's time when they keep standard time.
   *
   * @param zone a time zone
   * @return true where both have one offset, as the zone has it on January 1, 2026
   */
  public boolean keepsTimeOf(ZoneId zone) {
    return standardOffset(zone).equals(offset);
  }

  /**
   * The offset of a zone's standard time.
   *
   * @param zone a time zone
   * @return the offset, as the zone has it on January 1, 2026
   */
  public static ZoneOffset standardOffset(ZoneId zone) {
    Instant date =
        LocalDate.of(SolarCalendar.REFERENCE_YEAR, 1, 1).atStartOfDay().toInstant(ZoneOffset.UTC);
    return zone.getRules().getStandardOffset(date);
  }

  /**
   * How far the file's site is from a point.
   *
   * @param toLatitude degrees north, -90 to 90
   * @param toLongitude degrees east, -180 to 180
   * @return great-circle distance, km
   */
  public double distanceKm(double toLatitude, double toLongitude) {
    return Places.distanceKm(latitude, longitude, toLatitude, toLongitude);
  }

  /**
   * How far the file's figures may be off at a point.
   *
   * @param toLatitude degrees north, -90 to 90
   * @param toLongitude degrees east, -180 to 180
   * @param toHeight metres above sea level
   * @return the doubt
   */
  public Doubt doubtAt(double toLatitude, double toLongitude, double toHeight) {
    Doubt here = sunIsEstimated ? Doubt.OF_FILE_WITHOUT_SUN : Doubt.OF_FILE;
    return here.away(distanceKm(toLatitude, toLongitude), toHeight - height);
  }
}
