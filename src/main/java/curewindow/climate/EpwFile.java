package curewindow.climate;

import curewindow.problem.Problem;
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
}
