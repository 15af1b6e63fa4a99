package curewindow.climate;

import java.util.ArrayList;
import java.util.List;

/**
 * The departures of an ensemble's years, in spreads. Years come in pairs that mirror each other,
 * and the members of each day are scaled to a spread of exactly 1, so that few members already have
 * the right middle and width. December runs into January without a break.
 */
final class Chances {

  private static final long WARMTH_SEED = 20260101;
  private static final long BRIGHTNESS_SEED = 20260102;

  /** How much of a day's departure in temperature is left on the next day. */
  static final double PERSISTENCE = 0.7;

  private Chances() {}

  /** Departures of the daily mean temperature: an autoregressive process of first order. */
  static List<double[]> warmth(int members) {
    return pairs(members, WARMTH_SEED, PERSISTENCE);
  }

  /** The same with a persistence of one's own, 0 to 0.95. */
  static List<double[]> warmth(int members, double persistence) {
    return pairs(members, WARMTH_SEED, persistence);
  }

  /** Departures of the clearness: each day for itself. */
  static List<double[]> brightness(int members) {
    return pairs(members, BRIGHTNESS_SEED, 0);
  }

  private static List<double[]> pairs(int members, long seed, double persistence) {
    if (members < 2 || members > 512 || members % 2 != 0) {
      throw new IllegalArgumentException("members " + members + " is not even within 2 to 512");
    }
    SplitMix random = new SplitMix(seed);
    List<double[]> half = new ArrayList<>();
    for (int i = 0; i < members / 2; i++) {
      half.add(lasting(random, persistence));
    }
    for (int d = 0; d < MonthCurve.DAYS; d++) {
      scaleToOne(half, d);
    }
    List<double[]> all = new ArrayList<>(half);
    half.forEach(year -> all.add(mirrored(year)));
    return all;
  }

  /** Goes round the year twice with the same noise, so that the end leads into the beginning. */
  private static double[] lasting(SplitMix random, double persistence) {
    double[] noise = new double[MonthCurve.DAYS];
    for (int d = 0; d < noise.length; d++) {
      noise[d] = random.nextNormal() * Math.sqrt(1 - persistence * persistence);
    }
    double[] days = new double[MonthCurve.DAYS];
    double last = 0;
    for (int i = 0; i < 2 * days.length; i++) {
      last = persistence * last + noise[i % days.length];
      days[i % days.length] = last;
    }
    return days;
  }

  private static void scaleToOne(List<double[]> years, int day) {
    double squares = 0;
    for (double[] year : years) {
      squares += year[day] * year[day];
    }
    double spread = Math.sqrt(squares / years.size());
    for (double[] year : years) {
      year[day] /= spread;
    }
  }

  private static double[] mirrored(double[] year) {
    double[] mirror = new double[year.length];
    for (int d = 0; d < year.length; d++) {
      mirror[d] = -year[d];
    }
    return mirror;
  }
}
