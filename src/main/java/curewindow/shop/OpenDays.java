package curewindow.shop;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
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

  /**
   * The first time from another one on at which somebody is there.
   *
   * @param from a time by the shop's clock
   * @return the time itself where the shop is open then; where it states no hours, the first time
   *     on a day on which it is not closed; empty where there is none within 400 days
   */
  public Optional<LocalDateTime> firstOpen(LocalDateTime from) {
    return Stream.iterate(from.toLocalDate(), d -> d.plusDays(1))
        .limit(LONGEST_CLOSED)
        .filter(this::isOpen)
        .flatMap(
            day ->
                times(day)
                    .filter(h -> !day.atTime(h.to()).isBefore(from))
                    .map(h -> day.atTime(h.from())))
        .findFirst()
        .map(opens -> opens.isAfter(from) ? opens : from);
  }

  private Stream<OpenHours> times(LocalDate day) {
    return shop.opening().isEmpty()
        ? Stream.of(new OpenHours(LocalTime.MIN, LocalTime.MAX))
        : hours(day).stream();
  }

  /** When the shop closes on a day; empty where it is closed all day, or states no hours. */
  Optional<LocalTime> closing(LocalDate day) {
    List<OpenHours> hours = hours(day);
    return hours.isEmpty() ? Optional.empty() : Optional.of(hours.get(hours.size() - 1).to());
  }

  private List<OpenHours> hours(LocalDate day) {
    return closed.contains(day)
        ? List.of()
        : shop.opening().getOrDefault(day.getDayOfWeek(), List.of());
  }
}
