package curewindow.cure;

import java.time.ZoneOffset;

/**
 * One fitted item's claim on a hold. Times are seconds of local standard time.
 *
 * @param item the item
 * @param rule what it needs before the hold ends
 * @param drivers the drivers of the rule
 * @param needs by driver, in hours of the reference film, all that the item needs
 * @param lamp by driver, how much of it the lamp gave
 * @param stay the number of the stay in which the item was finished
 * @param pickup when the car leaves after it
 * @param finished when the item was finished
 * @param floor the hold never ends before
 * @param limit the hold ends then at the latest, met or not; not before the pickup, as until then
 *     the shop has the car before its eyes
 */
record ItemNeed(
    CureItem item,
    HoldRule rule,
    Driver[] drivers,
    double[] needs,
    double[] lamp,
    int stay,
    long pickup,
    long finished,
    long floor,
    long limit) {

  private static final Driver[] DRIVERS = Driver.values();
  private static final double[] NO_LAMP = new double[DRIVERS.length];

  /**
   * The claim of an item.
   *
   * @param item the item
   * @param rule one of its rules
   * @param stays when the car is in the bay
   * @param standard the offset of local standard time
   */
  static ItemNeed of(CureItem item, HoldRule rule, Stays stays, ZoneOffset standard) {
    long finished = item.finished().getEpochSecond() + standard.getTotalSeconds();
    int stay = stays.of(finished);
    long pickup = stays.pickup(stay);
    double[] needs = needs(item, rule);
    return new ItemNeed(
        item,
        rule,
        drivers(rule),
        needs,
        lamp(item, needs),
        stay,
        pickup,
        finished,
        finished + seconds(rule.floorHours()),
        Math.max(pickup, finished + seconds(rule.limitHours())));
  }

  private static long seconds(double hours) {
    return (long) Math.ceil(hours * 3600 - 0.001);
  }

  /** Whether another claim always ends when this one does. */
  boolean endsWith(ItemNeed other) {
    return finished == other.finished
        && item.exposure() == other.item.exposure()
        && item.permeance() == other.item.permeance()
        && item.lamp().equals(other.item.lamp())
        && (rule == other.rule || rule.equals(other.rule));
  }

  /**
   * What time and weather have to give of one of the rule's drivers, in hours of the reference
   * film: 0 where the lamp gave it all.
   */
  double need(Driver driver) {
    return needs[driver.ordinal()] - lamp[driver.ordinal()];
  }

  /** All that is needed of one of the rule's drivers, in hours of the reference film. */
  double whole(Driver driver) {
    return needs[driver.ordinal()];
  }

  /**
   * Which share of all it needs of a driver an item has.
   *
   * @param driver one of the rule's drivers
   * @param gained what time and weather gave, in hours of the reference film
   */
  double share(Driver driver, double gained) {
    return (lamp[driver.ordinal()] + gained) / needs[driver.ordinal()];
  }

  /**
   * The same in hours of the catalogue's need, whatever the film's permeance.
   *
   * @param driver one of the rule's drivers
   * @param gained what time and weather gave, in hours of the reference film
   */
  double hours(Driver driver, double gained) {
    return gained * rule.need().get(driver) / needs[driver.ordinal()];
  }

  /** What the lamp gave of what is needed of a driver, in hours of the catalogue's need. */
  double lampHours(Driver driver) {
    return hours(driver, lamp[driver.ordinal()]);
  }

  private static double[] needs(CureItem item, HoldRule rule) {
    double[] needs = new double[DRIVERS.length];
    for (Driver driver : DRIVERS) {
      Double hours = rule.need().get(driver);
      if (hours != null) {
        needs[driver.ordinal()] = driver == Driver.DRY_OUT ? hours / item.permeance() : hours;
      }
    }
    return needs;
  }

  private static double[] lamp(CureItem item, double[] needs) {
    if (item.lamp().isEmpty()) {
      return NO_LAMP;
    }
    double[] lamp = new double[needs.length];
    item.lamp().forEach((d, hours) -> lamp[d.ordinal()] = Math.min(hours, needs[d.ordinal()]));
    return lamp;
  }

  private static Driver[] drivers(HoldRule rule) {
    Driver[] drivers = new Driver[rule.need().size()];
    int count = 0;
    for (Driver driver : DRIVERS) {
      if (rule.need().containsKey(driver)) {
        drivers[count++] = driver;
      }
    }
    return drivers;
  }
}
