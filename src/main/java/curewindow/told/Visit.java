package curewindow.told;

import static java.util.stream.Collectors.toSet;

import curewindow.cure.Timeline;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.shop.OpenDays;
import curewindow.shop.Shop;
import curewindow.shop.VisitRule;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The one day on which the shop would like to see a car, an invitation: any open day from then on
 * will do. Work that the shop has seen since is not asked for again.
 *
 * @param day the first day, by the shop's clock; the shop is open on it
 * @param services ids of the services that are looked at on that day
 * @param byPhoto whether the car lives so far away that a photo will do
 */
public record Visit(LocalDate day, List<String> services, boolean byPhoto) {

  /** Refuses missing parts. */
  public Visit {
    Objects.requireNonNull(day, "day");
    services = List.copyOf(services);
  }

  /** For how many days an invitation stands; our own choice. */
  private static final int INVITED_DAYS = 90;

  /**
   * Until when the invitation stands: who has not come by then was called, or all is well.
   *
   * @param zone of the shop's clock
   * @return the instant
   */
  public Instant invitedUntil(ZoneId zone) {
    return day.plusDays(INVITED_DAYS).atStartOfDay(zone).toInstant();
  }

  /** When a service would like to be looked at, as days. */
  private record Wish(String service, LocalDate earliest, LocalDate best, LocalDate latest) {

    boolean suits(LocalDate day) {
      return !day.isBefore(earliest) && !day.isAfter(latest);
    }

    long away(LocalDate day) {
      return Math.abs(ChronoUnit.DAYS.between(best, day));
    }
  }

  /** A day, the wishes that it suits, and by how many days it misses the best ones of these. */
  private record Choice(LocalDate day, List<Wish> suited, long away) {

    static Choice of(LocalDate day, List<Wish> wishes) {
      List<Wish> suited = wishes.stream().filter(w -> w.suits(day)).toList();
      return new Choice(day, suited, suited.stream().mapToLong(w -> w.away(day)).sum());
    }
  }

  /**
   * The visit of a job: the open day after pickup that suits most of its services, of those the one
   * nearest to the days they like best, the later of two.
   *
   * @param job the job
   * @param rules when the shop would like to look at its work
   * @param dates the job's dates
   * @param shop the shop
   * @param byPhoto whether the car lives too far away to come
   * @return the visit, or empty where no service has one or the shop is not open in time
   */
  public static Optional<Visit> of(
      Job job, List<VisitRule> rules, Timeline dates, Shop shop, boolean byPhoto) {
    List<Wish> wishes = wishes(job, rules, dates, shop);
    LocalDate pickup = day(job.pickup(), shop);
    OpenDays open = new OpenDays(shop);
    return days(wishes)
        .filter(day -> day.isAfter(pickup) && open.isOpen(day))
        .map(day -> Choice.of(day, wishes))
        .min(
            Comparator.comparingInt((Choice choice) -> -choice.suited().size())
                .thenComparingLong(Choice::away)
                .thenComparing(Choice::day, Comparator.reverseOrder()))
        .map(choice -> new Visit(choice.day(), services(choice.suited()), byPhoto));
  }

  private static List<Wish> wishes(Job job, List<VisitRule> rules, Timeline dates, Shop shop) {
    List<Wish> wishes = new ArrayList<>();
    for (FittedItem item : job.items()) {
      for (VisitRule rule : rules) {
        LocalDate finished = day(item.finished(), shop);
        if (rule.service().equals(item.service()) && !hasCome(job, rule, finished)) {
          wishes.add(wish(rule, finished, dates, shop));
        }
      }
    }
    return wishes.stream().distinct().toList();
  }

  /**
   * Whether the work of a service was seen: as a whole at any time, or, where only some holds were
   * looked at, when the time for a visit had come.
   */
  private static boolean hasCome(Job job, VisitRule rule, LocalDate finished) {
    Set<String> services = job.items().stream().map(FittedItem::service).collect(toSet());
    return job.seen().stream()
        .filter(seen -> seen.day().isAfter(finished))
        .anyMatch(
            seen ->
                seen.isOf(rule.service())
                    || !seen.day().isBefore(finished.plusDays(rule.earliest()))
                        && Collections.disjoint(seen.what(), services));
  }

  private static Wish wish(VisitRule rule, LocalDate finished, Timeline dates, Shop shop) {
    LocalDate latest = finished.plusDays(rule.latest());
    LocalDate settled =
        rule.looksAt().stream()
            .flatMap(hold -> dates.of(hold).stream())
            .map(r -> day(r.end().at(), shop).plusDays(1))
            .max(Comparator.naturalOrder())
            .orElse(finished);
    return new Wish(
        rule.service(),
        later(settled, finished.plusDays(rule.earliest()), latest),
        later(settled, finished.plusDays(rule.best()), latest),
        latest);
  }

  private static LocalDate later(LocalDate one, LocalDate other, LocalDate latest) {
    LocalDate later = one.isAfter(other) ? one : other;
    return later.isAfter(latest) ? latest : later;
  }

  private static Stream<LocalDate> days(List<Wish> wishes) {
    return wishes.stream()
        .flatMap(w -> w.earliest().datesUntil(w.latest().plusDays(1)))
        .distinct()
        .sorted();
  }

  private static List<String> services(List<Wish> wishes) {
    return wishes.stream().map(Wish::service).distinct().toList();
  }

  private static LocalDate day(Instant at, Shop shop) {
    return at.atZone(shop.zone()).toLocalDate();
  }
}
