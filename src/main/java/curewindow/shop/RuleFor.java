package curewindow.shop;

import curewindow.cure.HoldRule;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A hold rule and where it applies.
 *
 * @param service id of the service
 * @param fact only on spots with this fact
 * @param spots only on these spots; empty for all spots
 * @param exceptSpots not on these spots
 * @param rule what it needs
 */
public record RuleFor(
    String service,
    Optional<SpotFact> fact,
    List<String> spots,
    List<String> exceptSpots,
    HoldRule rule) {

  /** Refuses missing parts. */
  public RuleFor {
    Objects.requireNonNull(service, "service");
    Objects.requireNonNull(fact, "fact");
    Objects.requireNonNull(rule, "rule");
    spots = List.copyOf(spots);
    exceptSpots = List.copyOf(exceptSpots);
  }

  /** Whether it is for a service's work on a spot of a car. */
  boolean isFor(Service fitted, Spot spot, Car car) {
    return new Scope(Optional.of(service), fact, spots, exceptSpots).has(fitted.id(), spot, car);
  }
}
