package curewindow.cure;

/**
 * The air in the shop's bay, in which a job stands until pickup.
 *
 * @param temperature degrees Celsius, -10 to 50
 * @param relativeHumidity percent, 1 to 100
 */
public record Bay(double temperature, double relativeHumidity) {

  /** Refuses numbers that are not finite or out of range, by name. */
  public Bay {
    if (!(temperature >= -10 && temperature <= 50)) {
      throw new IllegalArgumentException("temperature " + temperature + " is not within -10 to 50");
    }
    if (!(relativeHumidity >= 1 && relativeHumidity <= 100)) {
      throw new IllegalArgumentException(
          "relativeHumidity " + relativeHumidity + " is not within 1 to 100");
    }
  }
}
