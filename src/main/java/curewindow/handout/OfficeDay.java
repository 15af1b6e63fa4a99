package curewindow.handout;

import curewindow.shop.OpenDays;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What the counter has to know of one day, in the shop's language. It names first names and jobs,
 * so it never leaves the office.
 *
 * @param day the day that was asked for
 * @param counter the day that it is told for: the same, or the next one on which the shop is open;
 *     empty where no open day is known within 400 days
 * @param pickups the cars that are picked up from the one day to the other, by time
 * @param visits who is asked to come in within seven days, or was within the last 30
 * @param calls whom to call, as a printed date has become too early
 * @param callers who may call, and what they will ask
 * @param leftOut ids, or files, of the jobs that are not among these because they have problems
 */
public record OfficeDay(
    LocalDate day,
    Optional<LocalDate> counter,
    List<Pickup> pickups,
    OfficeVisits visits,
    List<Call> calls,
    OfficeCallers callers,
    List<String> leftOut) {

  /** Copies the lists and refuses missing parts. */
  public OfficeDay {
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(counter, "counter");
    Objects.requireNonNull(visits, "visits");
    Objects.requireNonNull(callers, "callers");
    pickups = List.copyOf(pickups);
    calls = List.copyOf(calls);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * Gathers a day.
   *
   * @param jobs the jobs of the shop
   * @param day the day by the shop's clock
   * @param calls whom to call
   * @param leftOut ids, or files, of the jobs of the shop that have problems
   * @return the day
   */
  public static OfficeDay of(
      OfficeJobs jobs, LocalDate day, List<Call> calls, List<String> leftOut) {
    Optional<LocalDate> counter = new OpenDays(jobs.shop()).firstOpen(day);
    LocalDate last = counter.orElse(day);
    return new OfficeDay(
        day,
        counter,
        OfficePickups.of(jobs, day, last),
        OfficeVisits.of(jobs, day),
        calls,
        OfficeCallers.of(jobs, last, OfficeCallers.Most.ON_PAPER),
        leftOut);
  }

  /**
   * Whether the shop is closed on the day that was asked for.
   *
   * @return true where the day is told for another one, or for none
   */
  public boolean isClosed() {
    return !counter.equals(Optional.of(day));
  }

  /**
   * A car that is picked up.
   *
   * @param day its day in few letters, where that is not the day the paper is for; else empty
   * @param time its hour by the shop's clock
   * @param job the job's id
   * @param firstName whom to greet; may be empty
   * @param car the car's text
   * @param language the customer's language, where it is not the shop's; else empty
   * @param fitted what was fitted where, one text for each service
   * @param parking where the car stands
   * @param give the handout to give
   * @param dates the dates to say aloud, in order of time
   * @param clock whose clock tells their hours, where that is not the shop's; else empty
   */
  public record Pickup(
      String day,
      String time,
      String job,
      String firstName,
      String car,
      String language,
      List<String> fitted,
      String parking,
      String give,
      List<Said> dates,
      String clock) {

    /** Copies the lists. */
    public Pickup {
      fitted = List.copyOf(fitted);
      dates = List.copyOf(dates);
    }
  }

  /**
   * A date to say.
   *
   * @param what what it is about, in few words
   * @param when until when, from when, or when to come in
   */
  public record Said(String what, String when) {}

  /**
   * A call to make.
   *
   * @param who job and first name, each in its own order
   * @param told what was promised
   * @param now what to say now
   */
  public record Call(String who, String told, String now) {}
}
