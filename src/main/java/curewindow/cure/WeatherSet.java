package curewindow.cure;

import java.util.Arrays;

/** Some of the weathers of a place, as bits. */
final class WeatherSet {

  /** Weathers that are handled at once. */
  static final int BITS = 64;

  private final long[] words;

  private WeatherSet(long[] words) {
    this.words = words;
  }

  /**
   * All weathers.
   *
   * @param members how many there are, above 0
   */
  static WeatherSet all(int members) {
    long[] words = new long[(members + BITS - 1) / BITS];
    Arrays.fill(words, -1);
    words[words.length - 1] >>>= words.length * BITS - members;
    return new WeatherSet(words);
  }

  /** The same weathers, to be changed apart. */
  WeatherSet copy() {
    return new WeatherSet(words.clone());
  }

  /**
   * Takes away all of some weathers but those given.
   *
   * @param from the first of them, a multiple of {@link #BITS}
   * @param bits those that may stay, the first in the lowest bit
   */
  void keep(int from, long bits) {
    words[from / BITS] &= bits;
  }

  /** Takes away one weather. */
  void remove(int member) {
    words[member / BITS] &= ~(1L << member);
  }

  /** Takes away those of another set. */
  void removeAll(WeatherSet other) {
    for (int i = 0; i < words.length; i++) {
      words[i] &= ~other.words[i];
    }
  }

  /** How many weathers are left. */
  int count() {
    int count = 0;
    for (long word : words) {
      count += Long.bitCount(word);
    }
    return count;
  }

  /** The first weather that is not before a number, or -1 where there is none. */
  int next(int member) {
    for (int i = member / BITS; i < words.length; i++) {
      long left = i == member / BITS ? words[i] & -1L << member : words[i];
      if (left != 0) {
        return i * BITS + Long.numberOfTrailingZeros(left);
      }
    }
    return -1;
  }
}
