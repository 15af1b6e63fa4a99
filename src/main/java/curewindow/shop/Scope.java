package curewindow.shop;

import java.util.List;
import java.util.Optional;

/**
 * Which work a rule is for.
 *
 * @param service only work of this service
 * @param fact only on spots with this fact
 * @param spots only on these spots; empty for all spots
 * @param except not on these spots
 */
record Scope(
    Optional<String> service, Optional<SpotFact> fact, List<String> spots, List<String> except) {

  /** All work. */
  static final Scope ALL = of(Optional.empty());

  /** All work of a service. */
  static Scope of(Optional<String> service) {
    return new Scope(service, Optional.empty(), List.of(), List.of());
  }

  boolean has(String fitted, Spot spot, Car car) {
    return service.map(fitted::equals).orElse(true)
        && fact.map(f -> spot.facts().contains(f) && !car.lacks().contains(f)).orElse(true)
        && (spots.isEmpty() || spots.contains(spot.id()))
        && !except.contains(spot.id());
  }
}
