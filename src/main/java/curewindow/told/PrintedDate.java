package curewindow.told;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.Optional;

/**
 * What a customer was told of one hold: by the card that was handed over first, and by those since.
 *
 * @param hold the hold's id
 * @param card the date on the first card
 * @param earliest the earliest date that was promised at any time
 * @param slowed whether the weather measured since is what makes the date of today later
 * @param clocks whose hours these were told in; empty where that is not known
 */
public record PrintedDate(
    String hold, Instant card, Instant earliest, boolean slowed, Optional<Clocks> clocks) {

  /** Refuses missing parts. */
  public PrintedDate {
    Objects.requireNonNull(hold, "hold");
    Objects.requireNonNull(card, "card");
    Objects.requireNonNull(earliest, "earliest");
    Objects.requireNonNull(clocks, "clocks");
  }

  /**
   * How far the clocks were from UTC by which hours were told. A car that lives elsewhere by now
   * has other clocks, and its card still says what it said.
   *
   * @param card of the date on the first card
   * @param earliest of the earliest date
   */
  public record Clocks(ZoneOffset card, ZoneOffset earliest) {

    /** Refuses missing parts. */
    public Clocks {
      Objects.requireNonNull(card, "card");
      Objects.requireNonNull(earliest, "earliest");
    }
  }

  /**
   * What a customer was told, with nothing known of how it went on.
   *
   * @param hold the hold's id
   * @param card the date on the first card
   * @param earliest the earliest date that was promised at any time
   */
  public PrintedDate(String hold, Instant card, Instant earliest) {
    this(hold, card, earliest, false, Optional.empty());
  }

  /**
   * The same date, told by the hours of some clocks.
   *
   * @param by the clocks
   * @return the date
   */
  public PrintedDate by(Clocks by) {
    return new PrintedDate(hold, card, earliest, slowed, Optional.of(by));
  }

  /**
   * The same date with what made today's later.
   *
   * @param weather whether it was the weather measured since
   * @return the date
   */
  public PrintedDate slowed(boolean weather) {
    return new PrintedDate(hold, card, earliest, weather, clocks);
  }

  /**
   * The clock that gives the hour on the first card.
   *
   * @param usual where the car is, for where it is not known
   * @return the clock
   */
  public ZoneId cardClock(ZoneId usual) {
    return clocks.<ZoneId>map(Clocks::card).orElse(usual);
  }

  /**
   * The clock that gives the hour of the earliest date as it was told.
   *
   * @param usual where the car is, for where it is not known
   * @return the clock
   */
  public ZoneId earliestClock(ZoneId usual) {
    return clocks.<ZoneId>map(Clocks::earliest).orElse(usual);
  }

  /**
   * Whether the earliest date is the one on the first card.
   *
   * @return false where a card handed over later promised an earlier one
   */
  public boolean isOnFirstCard() {
    return card.equals(earliest);
  }
}
