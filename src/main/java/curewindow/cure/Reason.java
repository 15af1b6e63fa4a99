package curewindow.cure;

import curewindow.climate.Psychrometrics;
import java.util.Optional;

/** Puts into numbers why a hold ends when it does. */
final class Reason {

  private final JobDoses doses;
  private final Bay bay;
  private final double bayDewPoint;

  /** Gets ready for a job. */
  Reason(JobDoses doses, Bay bay) {
    this.doses = doses;
    this.bay = bay;
    this.bayDewPoint = Psychrometrics.dewPoint(bay.temperature(), bay.relativeHumidity());
  }

  /** What decides an end, and the weather that went in. */
  Because of(HoldEnds.Decision decision) {
    Claim claim = decision.claim();
    Driver slowest = slowest(decision);
    long until = Math.max(decision.at(), claim.finished() + 1);
    double hours = (until - claim.finished()) / 3600.0;
    boolean floor =
        !decision.past()
            && decision.at() == claim.floor()
            && doses.met(claim, slowest, decision.member()) < decision.at();
    double need = claim.rule().need().get(slowest);
    double gained = doses.gained(claim, slowest, decision.member(), until);
    MeanTable means = doses.means(claim, decision.member());
    return new Because(
        claim.item().item(),
        claim.item().spot(),
        floor ? Optional.empty() : Optional.of(slowest),
        need,
        claim.lampHours(slowest),
        hours,
        doses.stays().bayHours(claim.finished(), until),
        mean(decision, means.air(), bay.temperature(), until),
        mean(decision, means.film(), bay.temperature(), until),
        mean(decision, means.dewPoint(), bayDewPoint, until),
        claim.hours(slowest, gained) / hours);
  }

  /** The driver that the deciding item waits for. */
  Driver slowest(HoldEnds.Decision decision) {
    Claim claim = decision.claim();
    Driver slowest = claim.drivers()[0];
    if (claim.drivers().length == 1) {
      return slowest;
    }
    double least = Double.POSITIVE_INFINITY;
    for (Driver driver : claim.drivers()) {
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
    Claim claim = decision.claim();
    long met = doses.met(claim, driver, decision.member());
    return met == DoseTable.NEVER
        ? claim.share(driver, doses.gained(claim, driver, decision.member(), decision.at()))
        : 1 + 1 / (1.0 + met - claim.finished());
  }

  private double mean(HoldEnds.Decision decision, DoseTable degreeHours, double inBay, long until) {
    Stays stays = doses.stays();
    long finished = decision.claim().finished();
    double sum = inBay * stays.bayHours(finished, until);
    for (int stay = decision.claim().stay(); stay < stays.count(); stay++) {
      long back = Math.min(until, stays.in(stay + 1));
      if (back > stays.pickup(stay)) {
        sum += degreeHours.between(stays.pickup(stay), back, 0);
      }
    }
    return sum / ((until - finished) / 3600.0);
  }
}
