package curewindow.cure;

import curewindow.climate.Place;
import java.time.Instant;
import java.util.List;
import java.util.Objects;

/**
 * Everything the dates of one job depend on.
 *
 * @param items the fitted spots
 * @param pickup when the car leaves the shop's bay
 * @param parking where it stands from then on
 * @param paint how much sun its paint takes up
 * @param place whose weather it stands in
 * @param bay the air in the bay until pickup
 * @param bondEnergy activation energy of bond and crosslink, J/mol, 30000 to 80000; 50000 is the
 *     starting value
 */
public record CureCase(
    List<CureItem> items,
    Instant pickup,
    ParkingPlan parking,
    PaintTone paint,
    Place place,
    Bay bay,
    double bondEnergy) {

  /** Refuses missing parts. */
  public CureCase {
    items = List.copyOf(items);
    Objects.requireNonNull(pickup, "pickup");
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
    return new CureCase(others, pickup, parking, paint, place, bay, bondEnergy);
  }
}
