package curewindow.cure;

import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * One film or coating on one spot, as the cure model sees it.
 *
 * @param item the position of the fitted item in its job, from 0
 * @param spot the spot's id
 * @param exposure what the surface sees of sun, sky and cabin
 * @param permeance water permeance relative to the reference film of the service, above 0 to 20; 1
 *     for coatings
 * @param finished when the work on it was finished
 * @param lamp what a lamp in the bay gave it, reference hours by driver, each 0 or more; counted at
 *     the finish
 * @param rules the holds that apply
 */
public record CureItem(
    int item,
    String spot,
    Exposure exposure,
    double permeance,
    Instant finished,
    Map<Driver, Double> lamp,
    List<HoldRule> rules) {

  /** Refuses missing parts, a permeance that is not above 0, and a negative dose of a lamp. */
  public CureItem {
    Objects.requireNonNull(spot, "spot");
    Objects.requireNonNull(exposure, "exposure");
    Objects.requireNonNull(finished, "finished");
    lamp = Collections.unmodifiableMap(new TreeMap<>(lamp));
    rules = List.copyOf(rules);
    if (item < 0) {
      throw new IllegalArgumentException("item " + item + " is below 0");
    }
    if (!(permeance > 0 && permeance <= 20)) {
      throw new IllegalArgumentException("permeance " + permeance + " is not within 0 to 20");
    }
    lamp.forEach(
        (driver, hours) -> {
          if (!(hours >= 0 && hours < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("lamp " + driver.id() + " " + hours + " is below 0");
          }
        });
  }

  /**
   * An item that no lamp was used on.
   *
   * @param item the position of the fitted item in its job, from 0
   * @param spot the spot's id
   * @param exposure what the surface sees of sun, sky and cabin
   * @param permeance water permeance relative to the reference film of the service
   * @param finished when the work on it was finished
   * @param rules the holds that apply
   */
  public CureItem(
      int item,
      String spot,
      Exposure exposure,
      double permeance,
      Instant finished,
      List<HoldRule> rules) {
    this(item, spot, exposure, permeance, finished, Map.of(), rules);
  }

  /**
   * The same item with other holds.
   *
   * @param others the holds that apply
   * @return the item
   */
  public CureItem with(List<HoldRule> others) {
    return new CureItem(item, spot, exposure, permeance, finished, lamp, others);
  }
}
