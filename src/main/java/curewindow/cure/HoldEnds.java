package curewindow.cure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

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
  private static final int FIRST_STEP = 12;

  private final JobDoses doses;
  private final List<Claim> claims;
  private final List<Wanted> wanted = new ArrayList<>(4);
  private final int members;
  private final long[] missed;
  private final int done;

  /** No end is earlier: the latest of floors, ends in the bay, and pickup if it takes longer. */
  private long least = Long.MIN_VALUE;

  private long latest = Long.MIN_VALUE;

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
   * Gets ready to find ends.
   *
   * @param doses the job's doses
   * @param claims the items with this hold, at least one
   * @param members how many weathers there are
   */
  HoldEnds(JobDoses doses, List<Claim> claims, int members) {
    this.doses = doses;
    this.claims = claims;
    this.members = members;
    this.missed = new long[members];
    Arrays.fill(missed, Long.MIN_VALUE);
    for (Claim claim : claims) {
      add(claim);
    }
    done = exclude();
    median = end((members + 1) / 2);
    ninth = later((9 * members + 9) / 10, median);
  }

  private void add(Claim claim) {
    least = Math.max(least, claim.floor());
    for (Driver driver : claim.rule().need().keySet()) {
      long inBay = doses.metInBay(claim, driver);
      if (inBay != DoseTable.NEVER) {
        least = Math.max(least, inBay);
      } else {
        least = Math.max(least, doses.pickup());
        latest = Math.max(latest, claim.lookBy());
        Wanted more = doses.wanted(claim, driver);
        more.raiseMissed(missed);
        wanted.add(more);
      }
    }
  }

  /** Keeps weathers in which a look-by comes first from ever being counted; counts the others. */
  private int exclude() {
    int count = 0;
    for (int m = 0; m < members; m++) {
      if (missed[m] == Long.MIN_VALUE) {
        count++;
      } else {
        for (Wanted one : wanted) {
          one.leaveOut(m);
        }
      }
    }
    return count;
  }

  /** The end that half of the weathers keep. */
  Decision median() {
    return median;
  }

  /** The end that nine of ten weathers keep. */
  Decision ninth() {
    return ninth;
  }

  /** The end of a number in the order of ends, from 1. */
  private Decision end(int number) {
    if (number > done) {
      return pastLookBy(number);
    }
    if (wanted.isEmpty()) {
      return decision(0, least);
    }
    boolean[] early = metAt(least);
    return count(early) >= number
        ? decision(first(early), least)
        : search(number, hours().hour(least) + 1, early);
  }

  /** The end of a number that is not before another's. */
  private Decision later(int number, Decision other) {
    if (number > done) {
      return pastLookBy(number);
    }
    if (wanted.isEmpty()) {
      return other;
    }
    boolean[] early = metAt(other.at());
    return count(early) >= number ? other : search(number, hours().hour(other.at()) + 1, early);
  }

  private DoseTable hours() {
    return wanted.get(0).table();
  }

  /**
   * Searches an end by the hour, first in growing steps, then by halves.
   *
   * @param number its number in the order of ends
   * @param first the first hour by whose start it may have been reached
   * @param early which weathers are done when the search begins, within the hour before
   */
  private Decision search(int number, int first, boolean[] early) {
    int low = first;
    int high = hours().hour(latest - 1) + 1;
    int step = FIRST_STEP;
    while (low + step < high && count(low + step) < number) {
      low += step + 1;
      step *= 2;
    }
    high = Math.min(high, low + step);
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (count(middle) >= number) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return within(low, number, low == first ? early : metAt(low - 1));
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
      Claim claim = one.claim();
      if (claim.lookBy() == lookBy
          && (wanted.size() == 1 || doses.met(claim, one.driver(), member) == DoseTable.NEVER)) {
        return claim;
      }
    }
    throw new IllegalStateException("no item misses the look-by " + lookBy);
  }

  /**
   * The end of a number among those within an hour.
   *
   * @param hour the hour's end
   * @param number the number
   * @param early which weathers are done before that hour
   */
  private Decision within(int hour, int number, boolean[] early) {
    boolean[] met = metAt(hour);
    long[] ends = new long[members];
    int found = 0;
    for (int m = 0; m < members; m++) {
      if (met[m] && !early[m]) {
        ends[m] = exact(m, hour);
        found++;
      }
    }
    long[] sorted = new long[found];
    for (int m = 0; m < members; m++) {
      if (met[m] && !early[m]) {
        sorted[--found] = ends[m];
      }
    }
    Arrays.sort(sorted);
    long end = sorted[number - count(early) - 1];
    int first = 0;
    while (ends[first] != end) {
      first++;
    }
    return decision(first, end);
  }

  private long exact(int member, int hour) {
    long end = least;
    for (int i = 0; i < wanted.size(); i++) {
      if (wanted.get(i).matters(hour - 1)) {
        end = Math.max(end, wanted.get(i).metInHour(member, hour));
      }
    }
    return end;
  }

  private Decision decision(int member, long end) {
    if (claims.size() == 1) {
      return new Decision(claims.get(0), member, end, false);
    }
    Claim last = null;
    long lastEnd = Long.MIN_VALUE;
    for (Claim claim : claims) {
      long ends = end(claim, member);
      if (ends > lastEnd) {
        lastEnd = ends;
        last = claim;
      }
    }
    return new Decision(last, member, end, false);
  }

  private long end(Claim claim, int member) {
    long end = claim.floor();
    for (Driver driver : claim.rule().need().keySet()) {
      end = Math.max(end, doses.met(claim, driver, member));
    }
    return end;
  }

  /** How many weathers are done by the start of an hour. */
  private int count(int hour) {
    if (wanted.size() > 1) {
      return count(metAt(hour));
    }
    Wanted only = wanted.get(0);
    return only.matters(hour) ? only.count(hour) : done;
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
    for (int i = 0; i < wanted.size(); i++) {
      if (wanted.get(i).matters(hour)) {
        wanted.get(i).and(hour, met);
      }
    }
    return met;
  }

  /** Which weathers are done by a time. */
  private boolean[] metAt(long second) {
    boolean[] met = notMissed();
    for (int i = 0; i < wanted.size(); i++) {
      wanted.get(i).and(second, met);
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
