package curewindow.shop;

import java.util.List;
import java.util.Objects;

/**
 * A kind of work the shop does.
 *
 * @param id such as {@code tint}
 * @param inside true where it is fitted on the inside face of glass or in the cabin
 * @param film true for films, false for coatings
 * @param referencePermeance water permeance of the film the reference hours are for, g/m2 per day
 *     at 38 degrees Celsius and 90 percent; 1 for coatings
 * @param spots ids of the spots it can be fitted on
 * @param guide id of the care guide it belongs to
 * @param upkeep what is due in later months and years
 */
public record Service(
    String id,
    boolean inside,
    boolean film,
    double referencePermeance,
    List<String> spots,
    String guide,
    Upkeep upkeep) {

  /** Refuses missing parts. */
  public Service {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(guide, "guide");
    Objects.requireNonNull(upkeep, "upkeep");
    spots = List.copyOf(spots);
  }

  /**
   * A service after which nothing is due later.
   *
   * @param id such as {@code tint}
   * @param inside true where it is fitted on the inside face of glass or in the cabin
   * @param film true for films, false for coatings
   * @param referencePermeance water permeance of the film the reference hours are for
   * @param spots ids of the spots it can be fitted on
   * @param guide id of the care guide it belongs to
   */
  public Service(
      String id,
      boolean inside,
      boolean film,
      double referencePermeance,
      List<String> spots,
      String guide) {
    this(id, inside, film, referencePermeance, spots, guide, Upkeep.NONE);
  }
}
