package curewindow.cure;

import curewindow.climate.Psychrometrics;
import curewindow.climate.YearHours;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Walks through the weathers of one hold day by day. */
final class ExplanationMaker {

  private static final double WATTS_PER_KILOWATT = 1000;

  private final JobDoses doses;
  private final ExplanationCauses reason;
  private final PlaceTables site;
  private final Bay bay;
  private final double bayDewPoint;

  ExplanationMaker(JobDoses doses, ExplanationCauses reason, PlaceTables site, Bay bay) {
    this.doses = doses;
    this.reason = reason;
    this.site = site;
    this.bay = bay;
    this.bayDewPoint = Psychrometrics.dewPoint(bay.temperature(), bay.relativeHumidity());
  }

  /**
   * The explanation of a hold.
   *
   * @param hold its id
   * @param itemNeeds the items with this hold
   */
  Explanation of(String hold, List<ItemNeed> itemNeeds) {
    HoldEnds ends = new HoldEnds(doses, itemNeeds, site.members(), site.safeRank());
    return new Explanation(hold, walk(ends.safe()), walk(ends.median()), all(itemNeeds));
  }

  /** Each weather by itself: in none of them does an end depend on the others. */
  private Ends all(List<ItemNeed> itemNeeds) {
    List<Instant> met = new ArrayList<>();
    for (int member = 0; member < site.members(); member++) {
      end(itemNeeds, member).ifPresent(end -> met.add(instant(end)));
    }
    met.sort(null);
    return new Ends(met, site.members() - met.size(), site.safeRank());
  }

  /** The end in one weather; empty where an item does not have what it needs by its limit. */
  private Optional<Long> end(List<ItemNeed> itemNeeds, int member) {
    long end = Long.MIN_VALUE;
    for (ItemNeed itemNeed : itemNeeds) {
      end = Math.max(end, itemNeed.floor());
      for (Driver driver : itemNeed.rule().need().keySet()) {
        end = Math.max(end, doses.met(itemNeed, driver, member));
      }
    }
    return end == DoseTable.NEVER ? Optional.empty() : Optional.of(end);
  }

  private ExplanationWay walk(HoldEnds.Decision decision) {
    ItemNeed itemNeed = decision.itemNeed();
    Driver driver = reason.slowest(decision);
    long met = doses.met(itemNeed, driver, decision.member());
    long end = Math.max(decision.at(), itemNeed.finished() + 1);
    return new ExplanationWay(
        itemNeed.item().item(),
        itemNeed.item().spot(),
        driver,
        itemNeed.rule().need().get(driver),
        itemNeed.lampHours(driver),
        instant(itemNeed.finished()),
        instant(itemNeed.floor()),
        instant(itemNeed.limit()),
        met == DoseTable.NEVER ? Optional.empty() : Optional.of(instant(met)),
        instant(end),
        days(decision, driver, end));
  }

  private List<ExplanationWay.Stretch> days(HoldEnds.Decision decision, Driver driver, long end) {
    List<ExplanationWay.Stretch> days = new ArrayList<>();
    Weather weather = new Weather(decision);
    long from = decision.itemNeed().finished();
    while (from < end) {
      LocalDate date = LocalDate.ofInstant(instant(from), site.zone());
      long to = Math.min(end, second(date.plusDays(1).atStartOfDay(site.zone()).toInstant()));
      to = Math.min(to, doses.stays().change(from));
      days.add(weather.stretch(date, driver, from, to));
      from = to;
    }
    return days;
  }

  /** The weather that an item sees. */
  private final class Weather {
    private final ItemNeed itemNeed;
    private final int member;
    private final Surface surface;
    private final Map<Integer, SurfaceHours> years = new HashMap<>();

    Weather(HoldEnds.Decision decision) {
      itemNeed = decision.itemNeed();
      member = decision.member();
      surface = doses.surface(itemNeed.item().exposure());
    }

    ExplanationWay.Stretch stretch(LocalDate date, Driver driver, long from, long to) {
      boolean inBay = doses.stays().inBay(from);
      double before = dose(driver, from);
      double after = dose(driver, to);
      double hours = (to - from) / 3600.0;
      return new ExplanationWay.Stretch(
          date,
          instant(from),
          instant(to),
          inBay,
          inBay ? bay.temperature() : sum(from, to, (year, hour) -> of(year).air(hour)) / hours,
          inBay ? bay.temperature() : sum(from, to, (year, hour) -> of(year).film(hour)) / hours,
          inBay ? bayDewPoint : sum(from, to, (year, hour) -> of(year).dewPoint(hour)) / hours,
          inBay ? 0 : sum(from, to, this::sun) / WATTS_PER_KILOWATT,
          after - before,
          after);
    }

    /** With what the lamp gave, in hours of the catalogue's need. */
    private double dose(Driver driver, long until) {
      double gained = doses.gained(itemNeed, driver, member, until);
      return itemNeed.lampHours(driver) + itemNeed.hours(driver, gained);
    }

    private double sum(long from, long to, Hourly hourly) {
      double sum = 0;
      long at = from;
      while (at < to) {
        long next = Math.min(to, Math.floorDiv(at, 3600L) * 3600 + 3600);
        int hour = YearHours.of(instant(at), site.standardOffset());
        sum += hourly.of(Weeks.year(Weeks.of(at)), hour) * (next - at) / 3600.0;
        at = next;
      }
      return sum;
    }

    private SurfaceHours of(int year) {
      return years.computeIfAbsent(
          year, y -> SurfaceHours.of(site.weather(y, member), surface, site.dayHours(surface, y)));
    }

    private double sun(int year, int hour) {
      DayHours days = site.dayHours(surface, year);
      return SurfaceHours.sun(site.weather(year, member), hour, surface, days);
    }
  }

  /** A quantity by calendar year and hour of the weather year. */
  @FunctionalInterface
  private interface Hourly {
    double of(int year, int hour);
  }

  private Instant instant(long second) {
    return Instant.ofEpochSecond(second - site.standardOffset().getTotalSeconds());
  }

  private long second(Instant at) {
    return at.getEpochSecond() + site.standardOffset().getTotalSeconds();
  }
}
