package curewindow.shop;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** When a shop is open for a visit, by its own clock. */
public final class OpenDays {

  /** A shop that is closed longer than this has no open day to offer. */
  private static final int LONGEST_CLOSED = 400;

  private final Shop shop;
  private final Set<LocalDate> closed;

  /**
   * The open days of a shop.
   *
   * @param shop the shop
   */
  public OpenDays(Shop shop) {
    this.shop = shop;
    this.closed = Set.copyOf(shop.closed());
  }

  /**
   * The first time at or after another at which the shop is open. A time that is within opening
   * hours stays as it is; the closing time itself is not within them.
   *
   * @param at the time
   * @return the first open time; the time itself where the shop states no opening hours, or has no
   *     open day within 400 days
   */
  public Instant notBefore(Instant at) {
    ZoneId zone = shop.zone();
    LocalDate first = at.atZone(zone).toLocalDate();
    for (LocalDate day = first; day.isBefore(first.plusDays(LONGEST_CLOSED)); ) {
      for (OpenHours hours : hours(day)) {
        Instant from = ZonedDateTime.of(day, hours.from(), zone).toInstant();
        Instant to = ZonedDateTime.of(day, hours.to(), zone).toInstant();
        if (to.isAfter(at) && to.isAfter(from)) {
          return from.isAfter(at) ? from : at;
        }
      }
      day = day.plusDays(1);
    }
    return at;
  }

  /**
   * Whether the shop is open on a day.
   *
   * @param day a day by the shop's clock
   * @return true where it has opening hours on it; a shop that states none at all is open but for
   *     the single days on which it is closed
   */
  public boolean isOpen(LocalDate day) {
    return shop.opening().isEmpty() ? !closed.contains(day) : !hours(day).isEmpty();
  }

  /**
   * The first open day from a day on.
   *
   * @param day a day by the shop's clock
   * @return the day itself where the shop is open on it; empty where it has no open day within 400
   *     days
   */
  public Optional<LocalDate> firstOpen(LocalDate day) {
    return Stream.iterate(day, d -> d.plusDays(1))
        .limit(LONGEST_CLOSED)
        .filter(this::isOpen)
        .findFirst();
  }

  private List<OpenHours> hours(LocalDate day) {
    return closed.contains(day)
        ? List.of()
        : shop.opening().getOrDefault(day.getDayOfWeek(), List.of());
  }
}
