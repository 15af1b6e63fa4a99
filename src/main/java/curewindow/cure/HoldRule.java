package curewindow.cure;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * What one fitted item needs before one hold ends.
 *
 * @param hold the hold's id, such as {@code windows-up}
 * @param kind what the hold asks of the customer
 * @param need reference hours per driver, all of which must be met; each above 0; at least one
 * @param floorHours hours after the finish before which the hold never ends, 0 or more
 * @param limitHours hours after the finish at which a hold ends in any weather, or beyond which a
 *     settle is told by the season; {@code floorHours} or more
 */
public record HoldRule(
    String hold, HoldKind kind, Map<Driver, Double> need, double floorHours, double limitHours) {

  /** Refuses empty or impossible needs, by name. */
  public HoldRule {
    Objects.requireNonNull(hold, "hold");
    Objects.requireNonNull(kind, "kind");
    if (need.isEmpty()) {
      throw new IllegalArgumentException("hold " + hold + " needs at least one driver");
    }
    need = Collections.unmodifiableMap(new EnumMap<>(need));
    need.forEach(
        (driver, hours) -> {
          if (!(hours > 0 && hours <= 20_000)) {
            throw new IllegalArgumentException(
                hold + ": need " + driver.id() + " " + hours + " is not within 0 to 20000 hours");
          }
        });
    if (!(floorHours >= 0 && floorHours <= limitHours && limitHours <= 20_000)) {
      throw new IllegalArgumentException(
          hold + ": floor " + floorHours + " and limit " + limitHours + " are out of order");
    }
  }
}
