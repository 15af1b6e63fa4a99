package curewindow.cure;

import java.util.ArrayList;
import java.util.List;

/**
 * The weathers in which a hold's need is not met by a look-by. They come after all in which it is:
 * by the latest look-by missed, and among those with the same one by how much of the need is
 * lacking at it, so that a weather in the middle of the order is one in the middle of all.
 */
final class Missed {

  private final int members;
  private final WeatherSet others;

  private final List<Claim> claims = new ArrayList<>(2);

  /** For each weather the latest look-by missed. */
  private long[] lookBy = new long[0];

  /** Which share of a need is lacking at it, the most; 0 where all is met. */
  private double[] lacking = new double[0];

  /** Whose need that is, by the number of the claim. */
  private int[] whose = new int[0];

  private int[] order = new int[0];

  /**
   * No weathers yet.
   *
   * @param members how many weathers there are
   */
  Missed(int members) {
    this.members = members;
    this.others = WeatherSet.all(members);
  }

  /** Puts in the weathers in which a need is not met by its look-by. */
  void add(Wanted wanted) {
    if (!wanted.isMetInAll(members)) {
      double[] lacks = wanted.lacking();
      for (int m = 0; m < members; m++) {
        if (lacks[m] > 0) {
          add(wanted, m, lacks[m]);
        }
      }
    }
  }

  private void add(Wanted wanted, int member, double share) {
    if (claims.isEmpty()) {
      lookBy = new long[members];
      lacking = new double[members];
      whose = new int[members];
    }
    if (claims.isEmpty() || claims.get(claims.size() - 1) != wanted.claim()) {
      claims.add(wanted.claim());
    }
    long at = wanted.claim().lookBy();
    boolean first = lacking[member] == 0;
    if (first || at > lookBy[member] || at == lookBy[member] && share > lacking[member]) {
      lookBy[member] = at;
      lacking[member] = share;
      whose[member] = claims.size() - 1;
      others.remove(member);
    }
  }

  /** Whether there are such weathers. */
  boolean isAny() {
    return !claims.isEmpty();
  }

  /** The other weathers, to be changed. */
  WeatherSet others() {
    return others.copy();
  }

  /**
   * A weather by its place in the order. Only once all are in.
   *
   * @param number its place, from 1
   */
  int member(int number) {
    if (order.length == 0) {
      order = inOrder();
    }
    return order[number - 1];
  }

  private int[] inOrder() {
    int[] sorted = new int[members];
    int count = 0;
    for (int m = 0; m < members; m++) {
      if (lacking[m] > 0) {
        int at = count++;
        while (at > 0 && isAfter(sorted[at - 1], m)) {
          sorted[at] = sorted[at - 1];
          at--;
        }
        sorted[at] = m;
      }
    }
    return sorted;
  }

  private boolean isAfter(int one, int other) {
    return lookBy[one] == lookBy[other]
        ? lacking[one] > lacking[other]
        : lookBy[one] > lookBy[other];
  }

  /** The item that lacks most at the latest look-by that a weather misses. */
  Claim claim(int member) {
    return claims.get(whose[member]);
  }
}
