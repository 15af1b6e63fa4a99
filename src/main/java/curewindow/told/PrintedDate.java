package curewindow.told;

import java.time.Instant;
import java.util.Objects;

/**
 * What a customer was told of one hold: by the card that was handed over first, and by those since.
 *
 * @param hold the hold's id
 * @param card the date on the first card
 * @param earliest the earliest date that was promised at any time
 * @param slowed whether the weather measured since is what makes the date of today later
 */
public record PrintedDate(String hold, Instant card, Instant earliest, boolean slowed) {

  /** Refuses missing parts. */
  public PrintedDate {
    Objects.requireNonNull(hold, "hold");
    Objects.requireNonNull(card, "card");
    Objects.requireNonNull(earliest, "earliest");
  }

  /**
   * What a customer was told, with nothing known of how it went on.
   *
   * @param hold the hold's id
   * @param card the date on the first card
   * @param earliest the earliest date that was promised at any time
   */
  public PrintedDate(String hold, Instant card, Instant earliest) {
    this(hold, card, earliest, false);
  }

  /**
   * The same date with what made today's later.
   *
   * @param weather whether it was the weather measured since
   * @return the date
   */
  public PrintedDate slowed(boolean weather) {
    return new PrintedDate(hold, card, earliest, weather);
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
