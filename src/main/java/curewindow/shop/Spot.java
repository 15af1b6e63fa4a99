package curewindow.shop;

import java.util.Objects;
import java.util.Set;

/**
 * A place on the car.
 *
 * @param id such as {@code front-door-glass}
 * @param up true where it faces the sky, false where it stands upright
 * @param facts what else is true of it
 */
public record Spot(String id, boolean up, Set<SpotFact> facts) {

  /** Refuses missing parts. */
  public Spot {
    Objects.requireNonNull(id, "id");
    facts = Set.copyOf(facts);
  }
}
