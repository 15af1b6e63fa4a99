package curewindow.site;

import curewindow.tally.Rate;
import curewindow.tally.RateRatio;
import curewindow.tally.Share;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What customers call about, counted: the numbers that text, rows and pictures show alike. A
 * handover is a job whose card was handed over and whose car was picked up; it counts once, from
 * its last pickup on. Labels are in the shop's language.
 *
 * @param basis what was counted
 * @param services by service; a job counts in each of its services
 * @param questions by question, those that were asked
 * @param days by days since pickup, in their order; only handovers count whose days are over
 * @param pages what the pages of those who called answer, and where
 * @param change before and after a day, where one was asked for
 */
public record CallReport(
    Basis basis,
    List<Group> services,
    List<Group> questions,
    List<Group> days,
    Pages pages,
    Optional<Change> change) {

  /** Copies the lists and refuses missing parts. */
  public CallReport {
    Objects.requireNonNull(basis, "basis");
    Objects.requireNonNull(change, "change");
    services = List.copyOf(services);
    questions = List.copyOf(questions);
    days = List.copyOf(days);
    Objects.requireNonNull(pages, "pages");
  }

  /**
   * What is asked for.
   *
   * @param at calls and pickups up to then count
   * @param since the first day whose pickups count; where it is left out, that of the first call
   *     that was noted, as nobody knows who called before
   * @param changed the day on which the shop changed a guide, to compare before and after it
   */
  public record Asked(Instant at, Optional<LocalDate> since, Optional<LocalDate> changed) {

    /** Refuses missing parts. */
    public Asked {
      Objects.requireNonNull(at, "at");
      Objects.requireNonNull(since, "since");
      Objects.requireNonNull(changed, "changed");
    }
  }

  /**
   * What was counted.
   *
   * @param from the first day whose pickups count, by the shop's clock
   * @param to the last day
   * @param all the calls that count, of all handovers
   * @param leftOut the other calls
   */
  public record Basis(LocalDate from, LocalDate to, Rate all, LeftOut leftOut) {

    /** Refuses missing parts. */
    public Basis {
      Objects.requireNonNull(from, "from");
      Objects.requireNonNull(to, "to");
      Objects.requireNonNull(all, "all");
      Objects.requireNonNull(leftOut, "leftOut");
    }
  }

  /**
   * How many calls do not count, and why.
   *
   * @param gone their job is gone, has to be mended, or its id is another car's by now
   * @param notHandedOver no card of their job was handed over, or the car is still in the shop
   * @param earlier their car was picked up before the first day
   * @param beforePickup they came before the day of the last pickup
   */
  public record LeftOut(int gone, int notHandedOver, int earlier, int beforePickup) {

    /**
     * All of them.
     *
     * @return how many calls do not count
     */
    public int all() {
      return gone + notHandedOver + earlier + beforePickup;
    }
  }

  /**
   * How often a group calls.
   *
   * @param id its name: a service, a question, or days such as {@code 2-3} or {@code later}
   * @param label the same for people
   * @param rate calls of handovers
   */
  public record Group(String id, String label, Rate rate) {

    /** Refuses missing parts. */
    public Group {
      Objects.requireNonNull(id, "id");
      Objects.requireNonNull(label, "label");
      Objects.requireNonNull(rate, "rate");
    }
  }

  /**
   * What is known of the pages of those who called, as they are made today. Of very many calls only
   * the newest are looked at, as that takes time.
   *
   * @param calls how many calls with a question of the guides were looked at
   * @param holds what their answers wait for, the most often first; a call may count in several
   * @param places where their questions stand, those that stand worst first
   */
  public record Pages(int calls, List<Held> holds, List<Placed> places) {

    /** Copies the lists. */
    public Pages {
      holds = List.copyOf(holds);
      places = List.copyOf(places);
    }
  }

  /**
   * How many calls are about a hold.
   *
   * @param id the hold
   * @param label its label
   * @param share of the calls that were looked at
   */
  public record Held(String id, String label, Share share) {

    /** Refuses missing parts. */
    public Held {
      Objects.requireNonNull(id, "id");
      Objects.requireNonNull(label, "label");
      Objects.requireNonNull(share, "share");
    }
  }

  /**
   * Where a question stands on the pages of those who called with it, as the pages are made today.
   *
   * @param id the question
   * @param label its text
   * @param atAGlance how many of them see it at a glance
   * @param folded how many have to unfold more questions for it
   * @param off how many do not have it among the questions of their page
   * @param place its usual place where it is on the page, 1 for the first: half of them have it
   *     there or above
   */
  public record Placed(
      String id, String label, int atAGlance, int folded, int off, OptionalInt place) {

    /** So many had to search, or it may be chance; our own choice. */
    private static final int OFTEN = 3;

    /** Refuses missing parts. */
    public Placed {
      Objects.requireNonNull(id, "id");
      Objects.requireNonNull(label, "label");
      Objects.requireNonNull(place, "place");
    }

    /**
     * How many had to search for it, or searched in vain.
     *
     * @return calls
     */
    public int low() {
      return folded + off;
    }

    /**
     * Whether the page answers it too low: at least three calls, and at least half of all, are of
     * people who do not see it at a glance. The bounds are our own, common practice without a
     * source.
     *
     * @return true where it should stand higher
     */
    public boolean isTooLow() {
      return low() >= OFTEN && low() >= atAGlance;
    }
  }

  /**
   * Before and after a day. As many days of pickups are looked at on either side, and of each
   * handover only the calls of its first days, all before the day or all from it on.
   *
   * @param day the day of the change
   * @param days for how many days of pickups, 0 where it is too soon or too little is known before
   * @param compared all calls, then by question
   */
  public record Change(LocalDate day, int days, List<Compared> compared) {

    /** The calls on the day of the pickup and so many days after it count. */
    public static final int FIRST_DAYS = 7;

    /** Copies the list. */
    public Change {
      Objects.requireNonNull(day, "day");
      compared = List.copyOf(compared);
    }

    /**
     * The first pickups before the change that count.
     *
     * @return a day
     */
    public LocalDate beforeFrom() {
      return beforeTo().minusDays(days - 1L);
    }

    /**
     * The last pickups before the change that count.
     *
     * @return a day; its first days are over before the change
     */
    public LocalDate beforeTo() {
      return day.minusDays(FIRST_DAYS + 1L);
    }

    /**
     * The last pickups after the change that count; the first are those of its day.
     *
     * @return a day
     */
    public LocalDate afterTo() {
      return day.plusDays(days - 1L);
    }
  }

  /**
   * How often it was before and after a change.
   *
   * @param id the question; empty for all calls
   * @param label its text; empty for all calls
   * @param ratio both rates
   */
  public record Compared(String id, String label, RateRatio ratio) {

    /** Refuses missing parts. */
    public Compared {
      Objects.requireNonNull(id, "id");
      Objects.requireNonNull(label, "label");
      Objects.requireNonNull(ratio, "ratio");
    }
  }
}
