package curewindow.climate;

import java.util.Arrays;

/**
 * By how much each year of an ensemble as a whole departs from the normals, in spreads of what is
 * in doubt. Each of the three has one year in each of equally likely parts of the normal
 * distribution (a Latin hypercube: McKay, Beckman and Conover 1979); years that mirror each other
 * in their days do so here.
 *
 * @param warmth of the air temperature, a value a year
 * @param dryness of the depression
 * @param sun of the clearness
 */
record Offsets(double[] warmth, double[] dryness, double[] sun) {

  /** Of 200,000 seeds that with which the three of 32 years have least to do with each other. */
  private static final long SEED = 20404527;

  /**
   * Draws the offsets of the years.
   *
   * @param members how many years, even; year i + members / 2 mirrors year i
   */
  static Offsets of(int members) {
    double[] steps = steps(members);
    SplitMix random = new SplitMix(SEED);
    return new Offsets(drawn(steps, random), drawn(steps, random), drawn(steps, random));
  }

  /** The middles of equal parts of the normal distribution's upper half, with a spread of 1. */
  private static double[] steps(int members) {
    double[] steps = new double[members / 2];
    double squares = 0;
    for (int i = 0; i < steps.length; i++) {
      steps[i] = quantile(0.5 + (i + 0.5) / members);
      squares += steps[i] * steps[i] / steps.length;
    }
    for (int i = 0; i < steps.length; i++) {
      steps[i] /= Math.sqrt(squares);
    }
    return steps;
  }

  /** The steps in any order, each up or down, and then mirrored. */
  private static double[] drawn(double[] steps, SplitMix random) {
    int half = steps.length;
    double[] order = Arrays.copyOf(steps, 2 * half);
    for (int i = half - 1; i >= 0; i--) {
      int other = (int) (random.nextShare() * (i + 1));
      double step = order[other];
      order[other] = order[i];
      order[i] = random.nextShare() < 0.5 ? -step : step;
      order[half + i] = -order[i];
    }
    return order;
  }

  /** The value that a normal deviate stays below with the given chance of 0.5 to 1, by halving. */
  private static double quantile(double chance) {
    double low = 0;
    double high = 8;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      boolean below = below(middle) < chance;
      low = below ? middle : low;
      high = below ? high : middle;
    }
    return (low + high) / 2;
  }

  /** The chance of a normal deviate below a value from 0 on, by the series of its integral. */
  private static double below(double value) {
    double term = value;
    double sum = value;
    for (int k = 1; term > 1e-17; k++) {
      term *= value * value / (2 * k + 1);
      sum += term;
    }
    return 0.5 + sum * StrictMath.exp(-value * value / 2) / Math.sqrt(2 * Math.PI);
  }
}
