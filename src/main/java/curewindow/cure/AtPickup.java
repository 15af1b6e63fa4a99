package curewindow.cure;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * How far one item is with one need of a hold when the car leaves the bay, and what would give it
 * the rest there.
 *
 * @param item the fitted item's position in its job, from 0
 * @param spot the spot's id
 * @param hold the hold's id
 * @param driver the driver of the need
 * @param needHours reference hours needed, as the catalogue has them
 * @param hasHours reference hours it has, up to what it needs
 * @param floorHours hours from the pickup to the floor, 0 where it is over
 * @param restHours hours of the reference film that it lacks at the pickup, 0 where it has all
 * @param bayRate hours of the reference film that an hour in the bay gives, 0 or more
 * @param lampRate the same that the lamp gives on top, 0 or more
 */
public record AtPickup(
    int item,
    String spot,
    String hold,
    Driver driver,
    double needHours,
    double hasHours,
    double floorHours,
    double restHours,
    double bayRate,
    double lampRate) {

  private static final double SECONDS_IN_HOUR = 3600;

  /** Refuses missing parts. */
  public AtPickup {
    Objects.requireNonNull(spot, "spot");
    Objects.requireNonNull(hold, "hold");
    Objects.requireNonNull(driver, "driver");
  }

  /**
   * All needs of what was finished in the last stay; earlier work has been on the road since.
   *
   * @param job the job
   * @return for each item, each of its holds and each driver that the hold needs
   */
  public static List<AtPickup> of(CureCase job) {
    List<AtPickup> needs = new ArrayList<>();
    Stays stays = Stays.of(job.stays(), ZoneOffset.UTC);
    for (CureItem item : job.items()) {
      for (HoldRule rule : item.rules()) {
        ItemNeed itemNeed = ItemNeed.of(item, rule, stays, ZoneOffset.UTC);
        if (itemNeed.stay() == stays.count() - 1) {
          for (Driver driver : itemNeed.drivers()) {
            needs.add(of(job, itemNeed, driver));
          }
        }
      }
    }
    return needs;
  }

  private static AtPickup of(CureCase job, ItemNeed itemNeed, Driver driver) {
    long pickup = job.pickup().getEpochSecond();
    double bay = Rates.inBay(driver, job.bay(), job.bondEnergy());
    double lamp = Rates.underLamp(driver, job.bay().lamp(), job.bay(), job.bondEnergy());
    double gained = bay * (pickup - itemNeed.finished()) / SECONDS_IN_HOUR;
    double need = itemNeed.rule().need().get(driver);
    return new AtPickup(
        itemNeed.item().item(),
        itemNeed.item().spot(),
        itemNeed.rule().hold(),
        driver,
        need,
        Math.min(need, itemNeed.lampHours(driver) + itemNeed.hours(driver, gained)),
        Math.max(0, (itemNeed.floor() - pickup) / SECONDS_IN_HOUR),
        Math.max(0, itemNeed.need(driver) - gained),
        bay,
        lamp);
  }

  /**
   * How long until the hold would be over for the item in the bay, as far as this need goes.
   *
   * @return hours from the pickup until the need is met there and the floor over, 0 where they are;
   *     infinite where the bay's air never meets it
   */
  public double bayHours() {
    return Math.max(floorHours, hours(restHours, bayRate));
  }

  /**
   * The same in a bay whose air is changed at the pickup.
   *
   * @param bay the bay as it is from then on
   * @param bondEnergy activation energy of bond and crosslink, J/mol
   * @return hours from the pickup; infinite where that air never meets it
   */
  public double hoursIn(Bay bay, double bondEnergy) {
    return Math.max(floorHours, hours(restHours, Rates.inBay(driver, bay, bondEnergy)));
  }

  /**
   * How long the lamp would have to shine while the car stays in the bay, whose air counts too.
   *
   * @param stayHours hours from the pickup for which the car stays in at least
   * @return hours under the lamp, 0 where none is wanted; longer than the stay where the car stays
   *     in for as long as the lamp shines; infinite where the lamp does not help
   */
  public double lampHours(double stayHours) {
    double after = hours(Math.max(0, restHours - bayRate * stayHours), lampRate);
    return after <= stayHours ? after : hours(restHours, lampRate > 0 ? bayRate + lampRate : 0);
  }

  /**
   * Whether the hold is over for the item, as far as this need goes.
   *
   * @return true where need and floor are met by the pickup
   */
  public boolean isMet() {
    return bayHours() <= 0;
  }

  private static double hours(double rest, double rate) {
    return rest > 0 ? rest / rate : 0;
  }
}
