package curewindow.shop;

import java.util.Objects;
import java.util.OptionalInt;

/**
 * What is due in the months and years after a service.
 *
 * @param yearlyCheck whether the shop wants to look at the work once a year
 * @param topUpMonths months after which a coating is topped up, again and again, 1 to 120
 * @param replaceYears years after which a film has served its time, 1 to 50
 */
public record Upkeep(boolean yearlyCheck, OptionalInt topUpMonths, OptionalInt replaceYears) {

  /** Nothing is due later. */
  public static final Upkeep NONE = new Upkeep(false, OptionalInt.empty(), OptionalInt.empty());

  /** Refuses missing parts. */
  public Upkeep {
    Objects.requireNonNull(topUpMonths, "topUpMonths");
    Objects.requireNonNull(replaceYears, "replaceYears");
  }
}
