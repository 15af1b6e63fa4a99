package curewindow.told;

import curewindow.climate.Place;
import curewindow.cure.CureCase;
import curewindow.cure.CureItem;
import curewindow.cure.HoldRule;
import curewindow.cure.Release;
import curewindow.cure.Timeline;
import curewindow.shop.Catalogue;
import curewindow.shop.CureCases;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.shop.PastVisit;
import curewindow.shop.Shop;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which holds and settles are over because the shop has looked: what was found fine is over from
 * the day of the visit on, for all work that was finished on a day before it.
 */
public final class Seen {

  /** The first hour at which a date is told. */
  private static final LocalTime MORNING = LocalTime.of(8, 0);

  private final Job job;
  private final Catalogue catalogue;
  private final ZoneId zone;

  /** By hold: for each item that has it, the day from which on it is over; empty where it runs. */
  private final Map<String, List<Optional<LocalDate>>> days = new HashMap<>();

  private Seen(Job job, Shop shop, Catalogue catalogue, CureCase computed) {
    this.job = job;
    this.catalogue = catalogue;
    this.zone = shop.zone();
    for (CureItem item : computed.items()) {
      for (HoldRule rule : item.rules()) {
        days.computeIfAbsent(rule.hold(), h -> new ArrayList<>()).add(over(item, rule));
      }
    }
  }

  /**
   * What the dates of a job are still computed from. Where a hold runs on for newer work, the work
   * that was found fine no longer has a say in it.
   *
   * @param job the job
   * @param shop the shop, by whose clock visits have their day
   * @param catalogue the catalogue
   * @param all all holds of all items
   * @return the same without what is over while its hold runs on
   */
  public static CureCase running(Job job, Shop shop, Catalogue catalogue, CureCase all) {
    if (job.seen().isEmpty()) {
      return all;
    }
    Seen seen = new Seen(job, shop, catalogue, all);
    return all.with(all.items().stream().map(seen::running).toList());
  }

  /**
   * The dates with what was seen: a hold that was found to be over ends in the morning of that day,
   * unless it was over by then.
   *
   * @param job the job
   * @param shop the shop, by whose clock visits have their day
   * @param catalogue the catalogue
   * @param place where the car stands
   * @param computed the dates as computed
   * @return the dates
   */
  public static Timeline over(
      Job job, Shop shop, Catalogue catalogue, Place place, Timeline computed) {
    if (job.seen().isEmpty()) {
      return computed;
    }
    Seen seen = new Seen(job, shop, catalogue, CureCases.of(job, shop, catalogue, place));
    return new Timeline(
        computed.pickup(),
        computed.zone(),
        computed.releases().stream().map(r -> seen.over(r, computed.zone())).toList());
  }

  /** The day on which a hold of an item was first found to be over. */
  private Optional<LocalDate> over(CureItem item, HoldRule rule) {
    FittedItem fitted = job.items().get(item.item());
    LocalDate finished = LocalDate.ofInstant(fitted.finished(), zone);
    return job.seen().stream()
        .filter(visit -> visit.result() == PastVisit.Result.FINE)
        .filter(visit -> finished.isBefore(visit.day()))
        .filter(visit -> looksAt(visit, fitted.service(), rule.hold()))
        .map(PastVisit::day)
        .findFirst();
  }

  private boolean looksAt(PastVisit visit, String service, String hold) {
    boolean due =
        catalogue.visits().stream()
            .filter(rule -> rule.service().equals(service))
            .anyMatch(rule -> rule.looksAt().contains(hold));
    return visit.what().contains(hold) || due && visit.isOf(service);
  }

  private CureItem running(CureItem item) {
    return item.with(
        item.rules().stream()
            .filter(r -> over(item, r).isEmpty() || day(r.hold()).isPresent())
            .toList());
  }

  /** The day from which on a hold is over for all items that have it. */
  private Optional<LocalDate> day(String hold) {
    List<Optional<LocalDate>> all = days.getOrDefault(hold, List.of(Optional.empty()));
    return all.stream().allMatch(Optional::isPresent)
        ? all.stream().flatMap(Optional::stream).max(LocalDate::compareTo)
        : Optional.empty();
  }

  private Release over(Release release, ZoneId there) {
    return day(release.hold())
        .map(day -> day.atTime(MORNING).atZone(there).toInstant())
        .filter(at -> at.isBefore(release.end().at()))
        .map(release::overAt)
        .orElse(release);
  }
}
