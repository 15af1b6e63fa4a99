package curewindow.cure;

import curewindow.climate.Place;
import java.time.Instant;
import java.util.List;
import java.util.Objects;

/**
 * Everything the dates of one job depend on.
 *
 * @param items the fitted spots
 * @param stays when the car is in the shop's bay, one stay after the other, at least one
 * @param parking where it stands between and after them
 * @param paint how much sun its paint takes up
 * @param place whose weather it stands in
 * @param bay the air in the bay
 * @param bondEnergy activation energy of bond and crosslink, J/mol, 30000 to 80000; 50000 is the
 *     starting value
 */
public record CureCase(
    List<CureItem> items,
    List<Stay> stays,
    ParkingPlan parking,
    PaintTone paint,
    Place place,
    Bay bay,
    double bondEnergy) {

  /** Refuses missing parts. */
  public CureCase {
    items = List.copyOf(items);
    stays = List.copyOf(stays);
    if (stays.isEmpty()) {
      throw new IllegalArgumentException("a job has at least one stay");
    }
    for (int i = 1; i < stays.size(); i++) {
      if (stays.get(i).in().isBefore(stays.get(i - 1).pickup())) {
        throw new IllegalArgumentException(
            "the car comes at " + stays.get(i).in() + ", before it left");
      }
    }
    Objects.requireNonNull(parking, "parking");
    Objects.requireNonNull(paint, "paint");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(bay, "bay");
    if (!(bondEnergy >= 30_000 && bondEnergy <= 80_000)) {
      throw new IllegalArgumentException(
          "bondEnergy " + bondEnergy + " is not within 30000 to 80000 J/mol");
    }
  }

  /**
   * The same case with other items.
   *
   * @param others the fitted spots
   * @return the case
   */
  public CureCase with(List<CureItem> others) {
    return new CureCase(others, stays, parking, paint, place, bay, bondEnergy);
  }

  /**
   * When the car leaves for the last time.
   *
   * @return the pickup of the last stay
   */
  public Instant pickup() {
    return stays.get(stays.size() - 1).pickup();
  }
}
