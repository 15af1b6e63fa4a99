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
 * @param bayHours hours from the pickup until the need would be met in the bay and the floor over,
 *     0 where they are; infinite where the bay's air never meets it
 * @param lampHours hours under the lamp that would give the rest, 0 where there is none; infinite
 *     where the lamp does not help
 */
public record AtPickup(
    int item,
    String spot,
    String hold,
    Driver driver,
    double needHours,
    double hasHours,
    double floorHours,
    double bayHours,
    double lampHours) {

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
        Claim claim = Claim.of(item, rule, stays, ZoneOffset.UTC);
        if (claim.stay() == stays.count() - 1) {
          for (Driver driver : claim.drivers()) {
            needs.add(of(job, claim, driver));
          }
        }
      }
    }
    return needs;
  }

  private static AtPickup of(CureCase job, Claim claim, Driver driver) {
    long pickup = job.pickup().getEpochSecond();
    double bay = Rates.inBay(driver, job.bay(), job.bondEnergy());
    double lamp = Rates.underLamp(driver, job.bay().lamp(), job.bay(), job.bondEnergy());
    double gained = bay * (pickup - claim.finished()) / SECONDS_IN_HOUR;
    double rest = Math.max(0, claim.need(driver) - gained);
    double need = claim.rule().need().get(driver);
    double floor = Math.max(0, (claim.floor() - pickup) / SECONDS_IN_HOUR);
    return new AtPickup(
        claim.item().item(),
        claim.item().spot(),
        claim.rule().hold(),
        driver,
        need,
        Math.min(need, claim.lampHours(driver) + claim.hours(driver, gained)),
        floor,
        Math.max(floor, hours(rest, bay)),
        hours(rest, lamp));
  }

  private static double hours(double rest, double rate) {
    return rest > 0 ? rest / rate : 0;
  }

  /**
   * Whether the hold is over for the item, as far as this need goes.
   *
   * @return true where need and floor are met by the pickup
   */
  public boolean isMet() {
    return bayHours <= 0;
  }
}
