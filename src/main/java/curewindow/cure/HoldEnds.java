package curewindow.cure;

import java.util.Arrays;
import java.util.List;

/**
 * When one hold of one job ends, in each of the weathers. Times are seconds of local standard time.
 *
 * <p>In each weather the hold ends with the last of its items. An item that does not have what it
 * needs by its look-by comes after all that have; among those the latest look-by decides.
 */
final class HoldEnds {

  /** Added to the look-by of items that do not have what they need by then. */
  private static final long PAST = 1L << 60;

  private final JobDoses doses;
  private final List<Claim> claims;
  private final long[] ends;
  private final long[] sorted;

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
    ends = new long[members];
    Arrays.fill(ends, Long.MIN_VALUE);
    for (Claim claim : claims) {
      add(claim);
    }
    sorted = ends.clone();
    Arrays.sort(sorted);
  }

  /** The end that half of the weathers keep. */
  Decision median() {
    return decision(sorted[(sorted.length + 1) / 2 - 1]);
  }

  /** The end that nine of ten weathers keep. */
  Decision ninth() {
    return decision(sorted[(9 * sorted.length + 9) / 10 - 1]);
  }

  private Decision decision(long end) {
    int member = 0;
    while (ends[member] != end) {
      member++;
    }
    int deciding = 0;
    while (!ends(claims.get(deciding), member, end)) {
      deciding++;
    }
    boolean past = end >= PAST;
    return new Decision(claims.get(deciding), member, past ? end - PAST : end, past);
  }

  private void add(Claim claim) {
    for (Driver driver : claim.rule().need().keySet()) {
      long[] met = doses.met(claim, driver);
      for (int m = 0; m < ends.length; m++) {
        ends[m] = Math.max(ends[m], end(claim, met[m]));
      }
    }
  }

  /** The end of a claim as far as one driver goes, in an order in which the last one decides. */
  private static long end(Claim claim, long met) {
    return met == DoseTable.NEVER ? PAST + claim.lookBy() : Math.max(claim.floor(), met);
  }

  private boolean ends(Claim claim, int member, long end) {
    for (Driver driver : claim.rule().need().keySet()) {
      if (end(claim, doses.met(claim, driver, member)) == end) {
        return true;
      }
    }
    return false;
  }
}
