package curewindow.climate;

/**
 * Random numbers that are the same on every machine: the SplitMix64 generator of Steele, Lea and
 * Flood 2014, "Fast splittable pseudorandom number generators", and normal deviates from it by the
 * polar method of Marsaglia and Bray 1964.
 */
final class SplitMix {

  private static final long GOLDEN_GAMMA = 0x9e3779b97f4a7c15L;

  private long state;

  SplitMix(long seed) {
    state = seed;
  }

  long nextLong() {
    state += GOLDEN_GAMMA;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
    z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
    return z ^ (z >>> 31);
  }

  /** A number from 0 to below 1, on a grid of 2^-53. */
  double nextShare() {
    return (nextLong() >>> 11) * 0x1.0p-53;
  }

  /** A deviate of mean 0 and standard deviation 1. */
  double nextNormal() {
    while (true) {
      double x = 2 * nextShare() - 1;
      double y = 2 * nextShare() - 1;
      double square = x * x + y * y;
      if (square > 0 && square < 1) {
        return x * StrictMath.sqrt(-2 * StrictMath.log(square) / square);
      }
    }
  }
}
