package curewindow.shop;

import java.util.Collections;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/**
 * A place on the car.
 *
 * @param id such as {@code front-door-glass}
 * @param up true where it faces the sky, false where it stands upright
 * @param facts what else is true of it
 * @param notOn the bodies that usually lack it
 */
public record Spot(String id, boolean up, Set<SpotFact> facts, Set<BodyType> notOn) {

  /** Refuses missing parts. */
  public Spot {
    Objects.requireNonNull(id, "id");
    facts = Collections.unmodifiableSet(new TreeSet<>(facts));
    notOn = Collections.unmodifiableSet(new TreeSet<>(notOn));
  }

  /**
   * A place that every car has.
   *
   * @param id such as {@code hood}
   * @param up true where it faces the sky, false where it stands upright
   * @param facts what else is true of it
   */
  public Spot(String id, boolean up, Set<SpotFact> facts) {
    this(id, up, facts, Set.of());
  }
}
