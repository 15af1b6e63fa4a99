package curewindow.shop;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/** Tries a time with its day and month the other way round. */
final class SwappedDay {

  private static final DateTimeFormatter SHOWN =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm", Locale.ROOT);

  private SwappedDay() {}

  /** The time with day and month swapped, or empty where that is none, or the same. */
  static Optional<ZonedDateTime> of(Instant at, ZoneId zone) {
    ZonedDateTime time = at.atZone(zone);
    int day = time.getDayOfMonth();
    if (day > 12 || day == time.getMonthValue()) {
      return Optional.empty();
    }
    LocalDate swapped = LocalDate.of(time.getYear(), day, time.getMonthValue());
    return Optional.of(swapped.atTime(time.toLocalTime()).atZone(zone));
  }

  static String shown(ZonedDateTime time) {
    return SHOWN.format(time);
  }

  /**
   * What to write where day and month of one of two times seem to be swapped.
   *
   * @param finished when the work was finished, as written
   * @param pickup when the car was picked up, as written
   * @param zone the zone of both
   * @param longest how long a car stays at most
   * @return what to do, by the swap that makes the shorter stay; empty where none makes a likely
   *     one
   */
  static Optional<String> hint(Instant finished, Instant pickup, ZoneId zone, Duration longest) {
    Optional<ZonedDateTime> pickedUp = of(pickup, zone).filter(p -> isLikely(finished, p, longest));
    Optional<ZonedDateTime> done =
        of(finished, zone).filter(f -> isLikely(f.toInstant(), pickup.atZone(zone), longest));
    boolean doneIsNearer =
        pickedUp.isEmpty()
            || done.isPresent()
                && Duration.between(done.get(), pickup.atZone(zone))
                        .compareTo(Duration.between(finished.atZone(zone), pickedUp.get()))
                    < 0;
    return doneIsNearer ? done.map(d -> told("finished", d)) : pickedUp.map(p -> told("pickup", p));
  }

  private static boolean isLikely(Instant from, ZonedDateTime to, Duration longest) {
    Duration stay = Duration.between(from, to.toInstant());
    return !stay.isNegative() && stay.compareTo(longest) <= 0;
  }

  private static String told(String key, ZonedDateTime time) {
    return "day and month of "
        + key
        + " may be swapped; write "
        + shown(time)
        + " if you mean that";
  }
}
