package curewindow.cure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * When one hold of one job ends, in each of the weathers. Times are seconds of local standard time.
 *
 * <p>In each weather the hold ends with the last of its items. An item that does not have what it
 * needs by its look-by comes after all that have; among those the latest look-by decides.
 *
 * <p>Only two of the ends are asked for, the median and the ninth tenth. So they are not computed
 * one by one: how many weathers are done is counted at whole hours, all weathers at once, and a
 * binary search finds the hour in which the asked one ends; only ends within that hour are
 * computed.
 */
final class HoldEnds {

  /** Hours of the first step when looking for an end. */
  private static final int FIRST_STEP = 24;

  /** The same from the median on. */
  private static final int NEXT_STEP = 6;

  private final JobDoses doses;
  private final List<Claim> claims;
  private final List<Wanted> wanted = new ArrayList<>(4);

  /** Of the wanted, those that decide whether a weather is done. */
  private final List<Wanted> deciding = new ArrayList<>(4);

  private final int members;

  /** For each weather the latest look-by that comes before the need is met, or the least number. */
  private final long[] missed;

  private boolean anyMissed;

  /** No end is earlier: the latest of floors, ends in the bay, and pickup if it takes longer. */
  private long least = Long.MIN_VALUE;

  private long latest = Long.MIN_VALUE;
  private final int done;
  private final Decision median;
  private final Decision ninth;

  /**
   * An end of the hold in one weather.
   *
   * @param claim the deciding item
   * @param member the weather
   * @param at when it ends; the look-by where it does not end before
   * @param past whether the look-by came first
   */
  record Decision(Claim claim, int member, long at, boolean past) {}

  /**
   * Finds the ends.
   *
   * @param doses the job's doses
   * @param claims the items with this hold, at least one
   * @param members how many weathers there are
   */
  HoldEnds(JobDoses doses, List<Claim> claims, int members) {
    this.doses = doses;
    this.claims = claims;
    this.members = members;
    missed = new long[members];
    Arrays.fill(missed, Long.MIN_VALUE);
    for (Claim claim : claims) {
      add(claim);
    }
    done = anyMissed ? count(notMissed()) : members;
    median = end((members + 1) / 2, least);
    ninth = later((9 * members + 9) / 10);
  }

  private void add(Claim claim) {
    least = Math.max(least, claim.floor());
    for (Driver driver : claim.drivers()) {
      long inBay = doses.metInBay(claim, driver);
      if (inBay != DoseTable.NEVER) {
        least = Math.max(least, inBay);
      } else {
        least = Math.max(least, doses.pickup());
        latest = Math.max(latest, claim.lookBy());
        add(doses.wanted(claim, driver));
      }
    }
  }

  private void add(Wanted more) {
    wanted.add(more);
    anyMissed |= more.raiseMissed(missed);
    for (Wanted other : deciding) {
      if (more.isMetWith(other)) {
        return;
      }
    }
    deciding.removeIf(other -> other.isMetWith(more));
    deciding.add(more);
  }

  /** The end that half of the weathers keep. */
  Decision median() {
    return median;
  }

  /** The end that nine of ten weathers keep. */
  Decision ninth() {
    return ninth;
  }

  /**
   * The end of a number in the order of ends.
   *
   * @param number from 1
   * @param from a time that it is not before
   */
  private Decision end(int number, long from) {
    if (number > done) {
      return pastLookBy(number);
    }
    if (deciding.isEmpty()) {
      return decision(0, least);
    }
    int first = hours().hour(from);
    int hour = search(number, first, FIRST_STEP);
    return hour == first ? decision(first(metAt(first)), from) : within(hour, number);
  }

  /** The end of a number that is not before the median's. */
  private Decision later(int number) {
    if (number > done || median.at() == least) {
      return end(number, least);
    }
    int hour = search(number, hours().hour(median.at()), NEXT_STEP);
    return within(hour, number);
  }

  private PickupDoses hours() {
    return deciding.get(0).doses();
  }

  /**
   * The first hour, not before a given one, by whose start so many weathers are done. None is done
   * before each of the needs is met in as many, which is quickly found.
   */
  private int search(int number, int first, int firstStep) {
    int low = first;
    for (int i = 0; i < deciding.size(); i++) {
      Wanted one = deciding.get(i);
      low = search(low, firstStep, hour -> one.count(hour, members) >= number);
    }
    return deciding.size() == 1 && !anyMissed
        ? low
        : search(low, 0, hour -> count(metAt(hour)) >= number);
  }

  /** The first hour at which something holds that goes on to hold: growing steps, then halves. */
  private int search(int first, int firstStep, IntPredicate holds) {
    int low = first;
    int high = hours().hour(latest - 1) + 1;
    int step = firstStep;
    while (low + step < high && !holds.test(low + step)) {
      low += step + 1;
      step = 2 * step + 1;
    }
    high = Math.min(high, low + step);
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (holds.test(middle)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  private Decision pastLookBy(int number) {
    long[] sorted = missed.clone();
    Arrays.sort(sorted);
    long lookBy = sorted[number - 1];
    int member = 0;
    while (missed[member] != lookBy) {
      member++;
    }
    return new Decision(missing(member, lookBy), member, lookBy, true);
  }

  private Claim missing(int member, long lookBy) {
    for (Wanted one : wanted) {
      if (one.claim().lookBy() == lookBy && one.met(member) == DoseTable.NEVER) {
        return one.claim();
      }
    }
    throw new IllegalStateException("no item misses the look-by " + lookBy);
  }

  /**
   * The end of a number among those within the hour that ends with an hour's start.
   *
   * @param hour an hour by which it is reached, and not by the hour before
   * @param number the number
   */
  private Decision within(int hour, int number) {
    boolean[] met = metAt(hour);
    boolean[] early = metAt(hour - 1);
    long[] ends = new long[members];
    long[] sorted = new long[members];
    int found = 0;
    for (int m = 0; m < members; m++) {
      if (met[m] && !early[m]) {
        ends[m] = exact(m, hour);
        insert(ends[m], sorted, found++);
      }
    }
    long end = sorted[number - count(early) - 1];
    int first = 0;
    while (ends[first] != end || early[first]) {
      first++;
    }
    return decision(first, end);
  }

  /** Puts a number where it belongs among so many in order. */
  private static void insert(long number, long[] sorted, int count) {
    int at = count;
    while (at > 0 && sorted[at - 1] > number) {
      sorted[at] = sorted[at - 1];
      at--;
    }
    sorted[at] = number;
  }

  private long exact(int member, int hour) {
    long end = least;
    for (int i = 0; i < deciding.size(); i++) {
      if (deciding.get(i).matters(hour - 1)) {
        end = Math.max(end, deciding.get(i).metInHour(member, hour));
      }
    }
    return end;
  }

  /** The end that is so many seconds, decided by the item that ends last. */
  private Decision decision(int member, long end) {
    Claim last = claims.get(0);
    if (claims.size() > 1) {
      long lastEnd = Long.MIN_VALUE;
      for (Claim claim : claims) {
        long ends = end(claim, member);
        if (ends > lastEnd) {
          lastEnd = ends;
          last = claim;
        }
      }
    }
    return new Decision(last, member, end, false);
  }

  private long end(Claim claim, int member) {
    long end = claim.floor();
    for (Driver driver : claim.drivers()) {
      end = Math.max(end, doses.met(claim, driver, member));
    }
    return end;
  }

  private static int count(boolean[] met) {
    int count = 0;
    for (boolean one : met) {
      count += one ? 1 : 0;
    }
    return count;
  }

  private static int first(boolean[] met) {
    int member = 0;
    while (!met[member]) {
      member++;
    }
    return member;
  }

  /** Which weathers are done by the start of an hour. */
  private boolean[] metAt(int hour) {
    boolean[] met = notMissed();
    for (int i = 0; i < deciding.size(); i++) {
      Wanted one = deciding.get(i);
      if (one.matters(hour)) {
        one.doses().and(hour, one.dose(), met);
      }
    }
    return met;
  }

  private boolean[] notMissed() {
    boolean[] met = new boolean[members];
    for (int m = 0; m < members; m++) {
      met[m] = missed[m] == Long.MIN_VALUE;
    }
    return met;
  }
}
