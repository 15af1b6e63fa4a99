package curewindow.cure;

import java.util.Objects;
import java.util.Optional;

/**
 * What decides an end, and the weather that went in, from the finish of the deciding item to the
 * time the need is met.
 *
 * @param item the deciding fitted item's position in its job, from 0
 * @param spot the deciding spot's id
 * @param driver the deciding driver; empty where the floor decides
 * @param needHours reference hours the driver needs (of the slowest driver where the floor decides)
 * @param lampHours how many of them a lamp in the bay gave at the finish
 * @param realHours real hours from the finish to the end
 * @param bayHours how many of them in the shop's bay
 * @param meanAir mean air temperature over the real hours, degrees Celsius
 * @param meanFilm mean film temperature over the real hours, degrees Celsius
 * @param meanDewPoint mean dew point of the air over the real hours, degrees Celsius
 * @param meanRate reference hours per real hour of that driver, without the lamp's
 */
public record ExplanationCause(
    int item,
    String spot,
    Optional<Driver> driver,
    double needHours,
    double lampHours,
    double realHours,
    double bayHours,
    double meanAir,
    double meanFilm,
    double meanDewPoint,
    double meanRate) {

  /** Refuses missing parts. */
  public ExplanationCause {
    Objects.requireNonNull(spot, "spot");
    Objects.requireNonNull(driver, "driver");
  }

  /** What may be missing of a need that is met, reference hours: the end is a whole second. */
  private static final double ROUNDING = 0.01;

  /**
   * Reference hours gained by the end.
   *
   * @return what the lamp gave, and mean rate times real hours
   */
  public double gainedHours() {
    return lampHours + meanRate * realHours;
  }

  /**
   * Whether the need is met by the end.
   *
   * @return false where only the limit ends the wait
   */
  public boolean isMet() {
    return driver.isEmpty() || gainedHours() >= needHours - ROUNDING;
  }
}
