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

  private final JobDoses doses;
  private final List<Claim> claims;
  private final List<Wanted> wanted = new ArrayList<>(4);
  private final int members;
  private final long[] missed;
  private final int done;

  /** No end is earlier: the latest of floors, ends in the bay, and pickup if it takes longer. */
  private long least = Long.MIN_VALUE;

  private long latest = Long.MIN_VALUE;
  private final double[] margins;

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
    this.margins = new double[members];
    Arrays.fill(missed, Long.MIN_VALUE);
    for (Claim claim : claims) {
      add(claim);
    }
    done = exclude();
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
          one.targets()[m] = Double.POSITIVE_INFINITY;
        }
      }
    }
    return count;
  }

  /** The end that half of the weathers keep. */
  Decision median() {
    return end((members + 1) / 2);
  }

  /** The end that nine of ten weathers keep. */
  Decision ninth() {
    return end((9 * members + 9) / 10);
  }

  /** The end of a number in the order of ends, from 1. */
  private Decision end(int number) {
    if (number > done) {
      return pastLookBy(number);
    }
    if (wanted.isEmpty() || countAtLeast() >= number) {
      return decision(wanted.isEmpty() ? 0 : firstCounted(), least);
    }
    DoseTable hours = wanted.get(0).table();
    int low = hours.hour(least) + 1;
    int high = hours.hour(latest - 1) + 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (count(middle) >= number) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return within(low, number);
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

  /** The end of a number among those within the hour that ends at an hour's start. */
  private Decision within(int hour, int number) {
    DoseTable hours = wanted.get(0).table();
    int before = hours.second(hour - 1) <= least ? countAtLeast() : count(hour - 1);
    boolean[] early = new boolean[members];
    for (int m = 0; m < members; m++) {
      early[m] = margins[m] >= 0;
    }
    int found = count(hour) - before;
    long[] ends = new long[found];
    int[] whose = new int[found];
    int at = 0;
    for (int m = 0; m < members; m++) {
      if (margins[m] >= 0 && !early[m]) {
        whose[at] = m;
        ends[at++] = exact(m, hour);
      }
    }
    long[] sorted = ends.clone();
    Arrays.sort(sorted);
    long end = sorted[number - before - 1];
    int first = 0;
    while (ends[first] != end) {
      first++;
    }
    return decision(whose[first], end);
  }

  private long exact(int member, int hour) {
    long end = least;
    for (Wanted one : wanted) {
      if (one.table().second(hour - 1) < one.claim().lookBy()) {
        long met = one.table().inHour(one.targets()[member], member, hour);
        end = Math.max(end, Math.min(one.claim().lookBy(), met));
      }
    }
    return end;
  }

  private int firstCounted() {
    int member = 0;
    while (margins[member] < 0) {
      member++;
    }
    return member;
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

  /** How many weathers are done by an hour's start; leaves their margins. */
  private int count(int hour) {
    Arrays.fill(margins, Double.POSITIVE_INFINITY);
    boolean asked = false;
    for (int i = 0; i < wanted.size(); i++) {
      Wanted one = wanted.get(i);
      if (one.table().second(hour) < one.claim().lookBy()) {
        one.table().lower(hour, one.targets(), margins);
        asked = true;
      }
    }
    return asked ? positive() : allDone();
  }

  private int allDone() {
    for (int m = 0; m < members; m++) {
      margins[m] = missed[m] == Long.MIN_VALUE ? 0 : -1;
    }
    return done;
  }

  private int countAtLeast() {
    Arrays.fill(margins, Double.POSITIVE_INFINITY);
    for (Wanted one : wanted) {
      double[] sums = one.table().until(Math.min(least, one.claim().lookBy()));
      for (int m = 0; m < members; m++) {
        margins[m] = Math.min(margins[m], sums[m] - one.targets()[m]);
      }
    }
    return positive();
  }

  private int positive() {
    int count = 0;
    for (int m = 0; m < members; m++) {
      count += margins[m] >= 0 ? 1 : 0;
    }
    return count;
  }
}
