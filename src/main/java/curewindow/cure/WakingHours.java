package curewindow.cure;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;

/** Rounds times up to a whole hour at which people are awake. */
final class WakingHours {

  /** The first hour of the day at which a date may be published. */
  static final int FIRST = 8;

  /** The last hour of the day at which a date may be published. */
  static final int LAST = 20;

  private WakingHours() {}

  /**
   * The first whole hour by the clock, from 8:00 to 20:00, that is not before a time. Hours that
   * clocks skip are never given.
   *
   * @param at the time
   * @param zone the zone that clocks follow
   */
  static Instant notBefore(Instant at, ZoneId zone) {
    LocalDateTime hour = LocalDateTime.ofInstant(at, zone).truncatedTo(ChronoUnit.HOURS);
    while (true) {
      if (hour.getHour() < FIRST) {
        hour = hour.withHour(FIRST);
      } else if (hour.getHour() > LAST) {
        hour = hour.plusDays(1).withHour(FIRST);
      }
      for (ZoneOffset offset : zone.getRules().getValidOffsets(hour)) {
        Instant found = hour.toInstant(offset);
        if (!found.isBefore(at)) {
          return found;
        }
      }
      hour = hour.plusHours(1);
    }
  }
}
