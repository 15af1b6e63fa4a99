package curewindow.cure;

import java.util.function.IntPredicate;

/** Looks for the first hour at which something holds that goes on to hold, near a guess. */
final class Search {

  private Search() {}

  /**
   * Steps away from the guess, each step longer than the last, then halves the last one.
   *
   * @param first the first hour that can be found
   * @param last the last hour that can be found, at which it holds
   * @param guess an hour, maybe outside those
   * @param step length of the first step, above 0
   * @param holds whether it holds at an hour
   * @return the first hour at which it holds
   */
  static int first(int first, int last, int guess, int step, IntPredicate holds) {
    int at = Math.max(first, Math.min(guess, last));
    int low = first;
    int high = last;
    if (at == last || holds.test(at)) {
      high = at;
      for (int way = step; high - way > low; way *= 2) {
        if (!holds.test(high - way)) {
          low = high - way + 1;
          break;
        }
        high -= way;
      }
    } else {
      low = at + 1;
      for (int way = step; low + way < high; way *= 2) {
        if (holds.test(low + way - 1)) {
          high = low + way - 1;
          break;
        }
        low += way;
      }
    }
    return halve(low, high, holds);
  }

  private static int halve(int first, int last, IntPredicate holds) {
    int low = first;
    int high = last;
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
}
