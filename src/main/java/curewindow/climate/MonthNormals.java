package curewindow.climate;

/**
 * A month's normals at a place.
 *
 * @param dailyMin mean of the daily minimum air temperatures, degrees Celsius, -80 to 60
 * @param dailyMax mean of the daily maximum air temperatures, degrees Celsius, not below {@code
 *     dailyMin}
 * @param dewPoint mean dew point, degrees Celsius, not above {@code dailyMax}
 * @param sun mean daily global horizontal irradiation, kWh/m2 per day, 0 to 12
 */
public record MonthNormals(double dailyMin, double dailyMax, double dewPoint, double sun) {

  /** Refuses numbers that are not finite or out of range, by name. */
  public MonthNormals {
    inRange("dailyMin", dailyMin, -80, 60);
    inRange("dailyMax", dailyMax, -80, 65);
    inRange("dewPoint", dewPoint, -90, 40);
    inRange("sun", sun, 0, 12);
    if (dailyMax < dailyMin) {
      throw new IllegalArgumentException("dailyMax " + dailyMax + " is below dailyMin " + dailyMin);
    }
    if (dewPoint > dailyMax) {
      throw new IllegalArgumentException("dewPoint " + dewPoint + " is above dailyMax " + dailyMax);
    }
  }

  private static void inRange(String name, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          name + " " + value + " is not within " + low + " to " + high);
    }
  }
}
