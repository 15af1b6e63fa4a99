package curewindow.page;

import java.time.Instant;
import java.util.Objects;

/**
 * What a customer was told of one hold: by the card that was made first, and by pages and cards
 * made since.
 *
 * @param hold the hold's id
 * @param card the date on the first card
 * @param earliest the earliest date that was promised at any time
 * @param promised whether a date was promised at all; where the shop was always to be asked, {@code
 *     earliest} is the earliest date for that
 * @param slowed whether the weather measured since is what makes the date of today later
 * @param missed whether the customer is asked to come in instead, at a time that is over
 */
public record PrintedDate(
    String hold, Instant card, Instant earliest, boolean promised, boolean slowed, boolean missed) {

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
   * @param promised whether a date was promised at all
   */
  public PrintedDate(String hold, Instant card, Instant earliest, boolean promised) {
    this(hold, card, earliest, promised, false, false);
  }

  /**
   * The same date with what made today's later.
   *
   * @param weather whether it was the weather measured since
   * @return the date
   */
  public PrintedDate slowed(boolean weather) {
    return new PrintedDate(hold, card, earliest, promised, weather, missed);
  }

  /**
   * The same date with whether the time to come in is over.
   *
   * @param over whether it is
   * @return the date
   */
  public PrintedDate missed(boolean over) {
    return new PrintedDate(hold, card, earliest, promised, slowed, over);
  }

  /**
   * Whether the earliest date is the one on the first card.
   *
   * @return false where a page or card made later promised an earlier one
   */
  public boolean isOnFirstCard() {
    return card.equals(earliest);
  }
}
