package curewindow.shop;

import curewindow.cure.Stay;
import curewindow.problem.Where;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Notes what is hardly meant with the times at which a car leaves, as {@link HardlyMeant} does. */
final class PickupSlips {

  /** Nobody leaves a car longer in the shop, days. */
  private static final long LONG_STAY = 60;

  /** Nobody files a job that long before its pickup, days. */
  private static final long FAR_AHEAD = 300;

  /** Work that is noted as finished is not that far ahead, days. */
  private static final long SOON = 14;

  private final Known known;
  private final Source source;
  private final Job job;
  private final ZoneId zone;

  private PickupSlips(Known known, Source source, Job job, ZoneId zone) {
    this.known = known;
    this.source = source;
    this.job = job;
    this.zone = zone;
  }

  /** A stay and where its pickup stands. */
  private record Leaving(Stay stay, Where where) {}

  /**
   * Notes it of the pickup of each stay.
   *
   * @param job a good job
   * @param f what it was read from
   * @param zone the zone of its times
   */
  static void note(Known known, Source source, Job job, Fields f, ZoneId zone) {
    PickupSlips notes = new PickupSlips(known, source, job, zone);
    for (Leaving leaving : notes.pickups(f)) {
      notes.pickup(leaving);
      notes.closed(leaving);
    }
  }

  private List<Leaving> pickups(Fields f) {
    if (!f.has("stays")) {
      return List.of(new Leaving(job.stays().get(0), f.where("pickup")));
    }
    List<Leaving> pickups = new ArrayList<>();
    List<Node> nodes = f.items("stays");
    for (int i = 0; i < nodes.size(); i++) {
      Stay stay = job.stays().get(i);
      Fields.of(nodes.get(i), JobReader.STAY, source)
          .ifPresent(fields -> pickups.add(new Leaving(stay, fields.where("pickup"))));
    }
    return pickups;
  }

  private void pickup(Leaving leaving) {
    Optional<Instant> last =
        job.items().stream()
            .map(FittedItem::finished)
            .filter(leaving.stay()::has)
            .max(Comparator.naturalOrder());
    last.ifPresent(finished -> pickup(leaving, finished));
  }

  private void pickup(Leaving leaving, Instant finished) {
    Instant pickup = leaving.stay().pickup();
    long ahead = days(known.now(), pickup);
    if (late(finished, pickup, zone, leaving.where(), source)) {
      return;
    }
    if (ahead > FAR_AHEAD) {
      String day = pickup.atZone(zone).toLocalDate().toString();
      source.notice(
          "far-pickup",
          leaving.where(),
          "the pickup is " + ahead + " days ahead, on " + day,
          "check the year of pickup and of finished");
    } else if (days(known.now(), finished) > SOON) {
      bothSwapped(finished, leaving);
    }
  }

  /**
   * Notes a pickup that is hardly so long after the work, by the clocks of a zone; whether it is.
   */
  static boolean late(Instant finished, Instant pickup, ZoneId zone, Where where, Source source) {
    long stay = days(finished, pickup);
    if (stay > LONG_STAY) {
      source.notice(
          "late-pickup",
          where,
          "the pickup is " + stay + " days after the work was finished",
          SwappedDay.hint(finished, pickup, zone, Duration.ofDays(LONG_STAY))
              .orElse("check the day, the month and the year of pickup and of finished"));
    }
    return stay > LONG_STAY;
  }

  /** Work that is far ahead, but was done lately with day and month the other way round. */
  private void bothSwapped(Instant written, Leaving leaving) {
    Optional<ZonedDateTime> finished = SwappedDay.of(written, zone);
    Optional<ZonedDateTime> pickup = SwappedDay.of(leaving.stay().pickup(), zone);
    if (finished.isEmpty() || pickup.isEmpty()) {
      return;
    }
    long since = days(finished.get().toInstant(), known.now());
    long stay = days(finished.get().toInstant(), pickup.get().toInstant());
    if (since >= 0 && since <= LONG_STAY && stay >= 0 && stay <= LONG_STAY) {
      source.notice(
          "swapped-days",
          leaving.where(),
          "the work is finished only in " + days(known.now(), written) + " days",
          "with day and month the other way round it was finished "
              + SwappedDay.shown(finished.get())
              + " and picked up "
              + SwappedDay.shown(pickup.get())
              + "; write those if you mean them");
    }
  }

  private void closed(Leaving leaving) {
    Optional<Shop> shop = known.shop().shop();
    Instant pickup = leaving.stay().pickup();
    Optional<LocalDate> day = shop.map(s -> pickup.atZone(s.zone()).toLocalDate());
    if (day.isPresent() && !new OpenDays(shop.get()).isOpen(day.get())) {
      String name = day.get().getDayOfWeek().name();
      String weekday = name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
      source.notice(
          "closed-pickup",
          leaving.where(),
          "the shop is closed on the day of the pickup, " + weekday + " " + day.get(),
          "check pickup, or opening: and closed: in shop.yaml");
    }
  }

  static long days(Instant from, Instant to) {
    return Math.floorDiv(Duration.between(from, to).toMinutes(), 24 * 60);
  }
}
