package curewindow.cure;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;

/**
 * When the car of one job stands in the bay, and when outside. Times are seconds of local standard
 * time; stays are numbered from 0.
 */
final class Stays {

  /** After the last stay the car does not come back. */
  private static final long NEVER = Long.MAX_VALUE;

  private final long[] in;
  private final long[] pickup;

  private Stays(long[] in, long[] pickup) {
    this.in = in;
    this.pickup = pickup;
  }

  /**
   * The stays of a job.
   *
   * @param stays one after the other, at least one
   * @param standard the offset of local standard time
   */
  static Stays of(List<Stay> stays, ZoneOffset standard) {
    long[] in = new long[stays.size()];
    long[] pickup = new long[stays.size()];
    for (int i = 0; i < in.length; i++) {
      in[i] = second(stays.get(i).in(), standard);
      pickup[i] = second(stays.get(i).pickup(), standard);
    }
    return new Stays(in, pickup);
  }

  private static long second(Instant at, ZoneOffset standard) {
    return at.getEpochSecond() + standard.getTotalSeconds();
  }

  int count() {
    return in.length;
  }

  /** When the car comes; never, for the number after the last. */
  long in(int stay) {
    return stay < in.length ? in[stay] : NEVER;
  }

  /** When the car leaves. */
  long pickup(int stay) {
    return pickup[stay];
  }

  /** The stay in whose time work was finished. */
  int of(long finished) {
    int stay = in.length - 1;
    while (stay > 0 && in[stay] > finished) {
      stay--;
    }
    return stay;
  }

  /** Whether the car stands in the bay just after a time. */
  boolean inBay(long second) {
    return in[of(second)] <= second && second < pickup[of(second)];
  }

  /** The first time after another at which the car comes or leaves. */
  long change(long second) {
    int stay = of(second);
    return second < in[stay] ? in[stay] : second < pickup[stay] ? pickup[stay] : in(stay + 1);
  }

  /** How long the car stands in the bay between two times, hours. */
  double bayHours(long from, long to) {
    return bayHours(0, from, to);
  }

  /** The same, of the stays from a number on. */
  double bayHours(int first, long from, long to) {
    long seconds = 0;
    for (int stay = first; stay < in.length; stay++) {
      seconds += Math.max(0, Math.min(to, pickup[stay]) - Math.max(from, in[stay]));
    }
    return seconds / 3600.0;
  }
}
