package curewindow.cure;

import curewindow.climate.Psychrometrics;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Walks through the weathers of one hold day by day. */
final class Accounting {

  private static final double WATTS_PER_KILOWATT = 1000;

  private final JobDoses doses;
  private final Reason reason;
  private final Site site;
  private final Bay bay;
  private final double bayDewPoint;

  Accounting(JobDoses doses, Reason reason, Site site, Bay bay) {
    this.doses = doses;
    this.reason = reason;
    this.site = site;
    this.bay = bay;
    this.bayDewPoint = Psychrometrics.dewPoint(bay.temperature(), bay.relativeHumidity());
  }

  Account of(String hold, HoldEnds ends) {
    return new Account(hold, walk(ends.ninth()), walk(ends.median()), all(ends));
  }

  private Ends all(HoldEnds ends) {
    List<Instant> met = new ArrayList<>();
    for (int rank = 0; rank < site.members(); rank++) {
      HoldEnds.Decision decision = ends.ranked(rank);
      if (!decision.past()) {
        met.add(instant(decision.at()));
      }
    }
    return new Ends(met, site.members() - met.size());
  }

  private Walk walk(HoldEnds.Decision decision) {
    Claim claim = decision.claim();
    Driver driver = reason.slowest(decision);
    long met = doses.met(claim, driver, decision.member());
    long end = Math.max(decision.at(), claim.finished() + 1);
    return new Walk(
        claim.item().item(),
        claim.item().spot(),
        driver,
        claim.rule().need().get(driver),
        instant(claim.finished()),
        instant(claim.floor()),
        instant(claim.lookBy()),
        met == DoseTable.NEVER ? Optional.empty() : Optional.of(instant(met)),
        instant(end),
        days(decision, driver, end));
  }

  private List<Walk.Stretch> days(HoldEnds.Decision decision, Driver driver, long end) {
    List<Walk.Stretch> days = new ArrayList<>();
    Weather weather = new Weather(decision);
    long from = decision.claim().finished();
    while (from < end) {
      LocalDate date = LocalDate.ofInstant(instant(from), site.zone());
      long to = Math.min(end, second(date.plusDays(1).atStartOfDay(site.zone()).toInstant()));
      if (from < doses.pickup()) {
        to = Math.min(to, doses.pickup());
      }
      days.add(weather.stretch(date, driver, from, to));
      from = to;
    }
    return days;
  }

  /** The weather that an item sees. */
  private final class Weather {
    private final Claim claim;
    private final int member;
    private final MeanTable means;
    private final DoseTable sun;

    Weather(HoldEnds.Decision decision) {
      claim = decision.claim();
      member = decision.member();
      means = doses.means(claim.item().exposure(), member);
      sun = doses.sun(claim.item().exposure(), member);
    }

    Walk.Stretch stretch(LocalDate date, Driver driver, long from, long to) {
      boolean inBay = from < doses.pickup();
      double before = dose(driver, from);
      double after = dose(driver, to);
      return new Walk.Stretch(
          date,
          instant(from),
          instant(to),
          inBay,
          inBay ? bay.temperature() : mean(means.air(), from, to),
          inBay ? bay.temperature() : mean(means.film(), from, to),
          inBay ? bayDewPoint : mean(means.dewPoint(), from, to),
          inBay ? 0 : sun.between(from, to) / WATTS_PER_KILOWATT,
          after - before,
          after);
    }

    /** In hours of the catalogue's need, whatever the film's permeance. */
    private double dose(Driver driver, long until) {
      double gained = doses.gained(claim, driver, member, until);
      return gained * claim.rule().need().get(driver) / claim.need(driver);
    }

    private double mean(DoseTable degreeHours, long from, long to) {
      return degreeHours.between(from, to) / ((to - from) / 3600.0);
    }
  }

  private Instant instant(long second) {
    return Instant.ofEpochSecond(second - site.standardOffset().getTotalSeconds());
  }

  private long second(Instant at) {
    return at.getEpochSecond() + site.standardOffset().getTotalSeconds();
  }
}
