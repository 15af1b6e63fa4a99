package curewindow.climate;

import java.time.Instant;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The weather of one hour as somebody measured it.
 *
 * @param start when the hour begins
 * @param temperature air temperature, degrees Celsius, -60 to 60
 * @param dewPoint dew point, degrees Celsius, -100 to 45; above the air temperature it counts as
 *     that
 * @param irradiance global horizontal irradiance, W/m2, 0 to 1500, where it was measured
 */
public record ObservedHour(
    Instant start, double temperature, double dewPoint, OptionalDouble irradiance) {

  /** Refuses missing parts and values out of range. */
  public ObservedHour {
    Objects.requireNonNull(start, "start");
    inRange("temperature", temperature, -60, 60);
    inRange("dewPoint", dewPoint, -100, 45);
    irradiance.ifPresent(g -> inRange("irradiance", g, 0, 1500));
  }

  private static void inRange(String name, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          name + " " + value + " is not within " + low + " to " + high);
    }
  }
}
