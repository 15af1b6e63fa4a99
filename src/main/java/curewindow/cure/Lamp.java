package curewindow.cure;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * A short-wave infrared lamp on fitted work in the shop's bay.
 *
 * @param surface temperature of the film or coating under it, degrees Celsius, 30 to 100
 * @param minutes how long it shines on the work, 1 to 600
 */
public record Lamp(double surface, double minutes) {

  /** The shortest time, minutes. */
  public static final double SHORTEST = 1;

  /** The longest time, minutes. */
  public static final double LONGEST = 600;

  private static final double MINUTES_IN_HOUR = 60;

  /** Refuses numbers that are not finite or out of range, by name. */
  public Lamp {
    if (!(surface >= Bay.COOLEST_LAMP && surface <= Bay.HOTTEST_LAMP)) {
      throw new IllegalArgumentException("surface " + surface + " is not within 30 to 100");
    }
    if (!(minutes >= SHORTEST && minutes <= LONGEST)) {
      throw new IllegalArgumentException("minutes " + minutes + " is not within 1 to 600");
    }
  }

  /**
   * What it gives. Drying of mounting water is not counted.
   *
   * @param bay the air in the bay, whose moisture helps a coating
   * @param bondEnergy activation energy of bond and crosslink, J/mol, 30000 to 80000
   * @return reference hours of bond and crosslink
   */
  public Map<Driver, Double> dose(Bay bay, double bondEnergy) {
    Map<Driver, Double> dose = new EnumMap<>(Driver.class);
    for (Driver driver : Driver.values()) {
      double rate = Rates.underLamp(driver, surface, bay, bondEnergy);
      if (rate > 0) {
        dose.put(driver, rate * minutes / MINUTES_IN_HOUR);
      }
    }
    return Collections.unmodifiableMap(dose);
  }
}
