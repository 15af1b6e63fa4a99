package curewindow.calendar;

import curewindow.shop.Sha256;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.Objects;
import java.util.Optional;

/**
 * One date as a calendar tells it.
 *
 * @param name a name that stays the same whatever the date, such as the id of a hold
 * @param start when it is
 * @param summary one line
 * @param details several lines
 * @param location where to come to, if the customer should
 * @param rings whether it has an alarm
 */
public record CareEvent(
    String name,
    Start start,
    String summary,
    String details,
    Optional<String> location,
    boolean rings) {

  /** When an event is. */
  public sealed interface Start {
    /**
     * The start and how often it comes again, as one word: another word means another date.
     *
     * @return such as {@code 2026-12-03T22:00:00Z} or {@code 2027-12-01/P12M/9}
     */
    String mark();
  }

  /**
   * An instant.
   *
   * @param at the instant, second precision
   */
  public record At(Instant at) implements Start {
    @Override
    public String mark() {
      return at.toString();
    }
  }

  /**
   * A whole day wherever the reader is, once or again and again.
   *
   * @param day the first day
   * @param months after how many months it comes again, on the same weekday of the month
   * @param times how often in all, at least 1
   */
  public record Day(LocalDate day, int months, int times) implements Start {
    @Override
    public String mark() {
      return times == 1 ? day.toString() : day + "/P" + months + "M/" + times;
    }
  }

  /** Refuses missing parts. */
  public CareEvent {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(summary, "summary");
    Objects.requireNonNull(details, "details");
    Objects.requireNonNull(location, "location");
  }

  /**
   * A short print of all that is said beside the date: another print means another text.
   *
   * @return eight letters of 0-9 and a-f
   */
  public String textPrint() {
    String all = String.join("\n", summary, details, location.orElse(""), String.valueOf(rings));
    byte[] hash = Sha256.of(all);
    return HexFormat.of().formatHex(hash, 0, 4);
  }

  /**
   * The start that a mark stands for.
   *
   * @param mark the mark of an event
   * @return its start
   * @throws java.time.DateTimeException where no event has such a mark
   */
  public static Start start(String mark) {
    if (mark.contains("T")) {
      return new At(Instant.parse(mark));
    }
    String[] parts = mark.split("/");
    LocalDate day = LocalDate.parse(parts[0]);
    if (parts.length == 1) {
      return new Day(day, 1, 1);
    }
    if (parts.length != 3 || !parts[1].matches("P[1-9][0-9]{0,2}M") || !isTimes(parts[2])) {
      throw new java.time.DateTimeException(mark + " is no date that comes again");
    }
    int months = Integer.parseInt(parts[1].substring(1, parts[1].length() - 1));
    return new Day(day, months, Integer.parseInt(parts[2]));
  }

  private static boolean isTimes(String text) {
    return text.matches("[1-9][0-9]{0,3}");
  }
}
