package curewindow.cure;

import curewindow.climate.Psychrometrics;
import java.util.Optional;

/** Puts into numbers why a hold ends when it does. */
final class ExplanationCauses {

  private final JobDoses doses;
  private final Bay bay;
  private final double bayDewPoint;

  /** Gets ready for a job. */
  ExplanationCauses(JobDoses doses, Bay bay) {
    this.doses = doses;
    this.bay = bay;
    this.bayDewPoint = Psychrometrics.dewPoint(bay.temperature(), bay.relativeHumidity());
  }

  /** What decides an end, and the weather that went in. */
  ExplanationCause of(HoldEnds.Decision decision) {
    ItemNeed itemNeed = decision.itemNeed();
    Driver slowest = slowest(decision);
    long until = Math.max(decision.at(), itemNeed.finished() + 1);
    double hours = (until - itemNeed.finished()) / 3600.0;
    boolean floor =
        !decision.past()
            && decision.at() == itemNeed.floor()
            && doses.met(itemNeed, slowest, decision.member()) < decision.at();
    double need = itemNeed.rule().need().get(slowest);
    double gained = doses.gained(itemNeed, slowest, decision.member(), until);
    MeanTable means = doses.means(itemNeed, decision.member());
    return new ExplanationCause(
        itemNeed.item().item(),
        itemNeed.item().spot(),
        floor ? Optional.empty() : Optional.of(slowest),
        need,
        itemNeed.lampHours(slowest),
        hours,
        doses.stays().bayHours(itemNeed.finished(), until),
        mean(decision, means.air(), bay.temperature(), until),
        mean(decision, means.film(), bay.temperature(), until),
        mean(decision, means.dewPoint(), bayDewPoint, until),
        itemNeed.hours(slowest, gained) / hours);
  }

  /** The driver that the deciding item waits for. */
  Driver slowest(HoldEnds.Decision decision) {
    ItemNeed itemNeed = decision.itemNeed();
    Driver slowest = itemNeed.drivers()[0];
    if (itemNeed.drivers().length == 1) {
      return slowest;
    }
    double least = Double.POSITIVE_INFINITY;
    for (Driver driver : itemNeed.drivers()) {
      double readiness = readiness(decision, driver);
      if (readiness < least) {
        least = readiness;
        slowest = driver;
      }
    }
    return slowest;
  }

  /** Orders drivers: those not met by how much they have, before those met, the last one first. */
  private double readiness(HoldEnds.Decision decision, Driver driver) {
    ItemNeed itemNeed = decision.itemNeed();
    long met = doses.met(itemNeed, driver, decision.member());
    return met == DoseTable.NEVER
        ? itemNeed.share(driver, doses.gained(itemNeed, driver, decision.member(), decision.at()))
        : 1 + 1 / (1.0 + met - itemNeed.finished());
  }

  private double mean(HoldEnds.Decision decision, DoseTable degreeHours, double inBay, long until) {
    Stays stays = doses.stays();
    long finished = decision.itemNeed().finished();
    double sum = inBay * stays.bayHours(finished, until);
    for (int stay = decision.itemNeed().stay(); stay < stays.count(); stay++) {
      long back = Math.min(until, stays.in(stay + 1));
      if (back > stays.pickup(stay)) {
        sum += degreeHours.between(stays.pickup(stay), back, 0);
      }
    }
    return sum / ((until - finished) / 3600.0);
  }
}
