package curewindow.told;

import curewindow.cure.Release;
import curewindow.words.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Dates are told by the clock where the car is. Who reads them in the shop has to know where that
 * is another hour than on the shop's own clock.
 */
public final class OtherClock {

  private OtherClock() {}

  /**
   * Whose clock tells the dates of a job.
   *
   * @param view the job, in the language of the reader
   * @return such as {@code Hours by the clock in Phoenix, Arizona.}; empty where it is the shop's
   *     hour at pickup and at all dates
   */
  public static Optional<String> of(JobView view) {
    Stream<Instant> ends = view.timeline().releases().stream().map(Release::end).map(e -> e.at());
    return Stream.concat(Stream.of(view.job().pickup()), ends).anyMatch(at -> differs(view, at))
        ? Optional.of(view.words().text("office.clock", Map.of("place", place(view))))
        : Optional.empty();
  }

  /**
   * A time with whose clock tells it.
   *
   * @param when the time in words
   * @param at the time
   * @param view the job, in the language of the reader
   * @return the words alone where the shop's clock tells the same
   */
  public static String labelled(String when, Instant at, JobView view) {
    Words words = view.words();
    return differs(view, at)
        ? words.text("office.clock-of", Map.of("when", when, "place", place(view)))
        : when;
  }

  /**
   * A time that was told by some clock, with whose clock that is.
   *
   * @param when the time in words
   * @param at the time
   * @param clock by which it was told; it may be the one where the car stood before
   * @param view the job, in the language of the reader
   * @return the words alone where the shop's clock tells the same
   */
  public static String labelled(String when, Instant at, ZoneId clock, JobView view) {
    if (isSame(clock, view.timeline().zone(), at)) {
      return labelled(when, at, view);
    }
    return isSame(clock, view.shop().zone(), at)
        ? when
        : view.words().text("office.clock-before", Map.of("when", when));
  }

  private static boolean differs(JobView view, Instant at) {
    return !isSame(view.timeline().zone(), view.shop().zone(), at);
  }

  private static boolean isSame(ZoneId one, ZoneId other, Instant at) {
    return one.getRules().getOffset(at).equals(other.getRules().getOffset(at));
  }

  private static String place(JobView view) {
    return view.words().place(view.place().name(), view.timeline().zone());
  }
}
