package curewindow.climate;

import java.util.ArrayList;
import java.util.List;

/**
 * The departures of an ensemble's years, in spreads: independent autoregressive processes of first
 * order. Years come in pairs that mirror each other, and the members of each day are scaled to a
 * spread of exactly 1, so that few members already have the right middle and width. December runs
 * into January without a break.
 *
 * @param warmth of the daily mean temperature
 * @param brightness of the clearness
 * @param moisture of what of the dew point does not follow the temperature
 * @param clouds of the clearness within the day, hour by hour
 * @param offsets of the years as wholes
 */
record Chances(
    List<double[]> warmth,
    List<double[]> brightness,
    List<double[]> moisture,
    List<double[]> clouds,
    Offsets offsets) {

  private static final long WARMTH_SEED = 20260101;
  private static final long BRIGHTNESS_SEED = 20260102;
  private static final long MOISTURE_SEED = 20260103;
  private static final long CLOUDS_SEED = 20260104;

  /** How much of a day's departure in temperature is left on the next day. */
  static final double WARMTH_LASTS = 0.63;

  private static final double BRIGHTNESS_LASTS = 0.25;
  private static final double MOISTURE_LASTS = 0.55;

  /** How much of an hour's departure is left in the next hour. */
  private static final double CLOUDS_LAST = 0.55;

  /**
   * Draws the departures of the years.
   *
   * @param members how many years, even, 2 to 512
   */
  static Chances of(int members) {
    return of(members, WARMTH_LASTS);
  }

  /**
   * The same with a persistence of the place's own.
   *
   * @param members how many years, even, 2 to 512
   * @param warmthLasts how much of a day's departure in temperature is left on the next day
   */
  static Chances of(int members, double warmthLasts) {
    return new Chances(
        pairs(members, WARMTH_SEED, warmthLasts, MonthCurve.DAYS),
        pairs(members, BRIGHTNESS_SEED, BRIGHTNESS_LASTS, MonthCurve.DAYS),
        pairs(members, MOISTURE_SEED, MOISTURE_LASTS, MonthCurve.DAYS),
        pairs(members, CLOUDS_SEED, CLOUDS_LAST, WeatherYear.HOURS),
        Offsets.of(members));
  }

  /** How many years there are. */
  int members() {
    return warmth.size();
  }

  private static List<double[]> pairs(int members, long seed, double persistence, int length) {
    if (members < 2 || members > 512 || members % 2 != 0) {
      throw new IllegalArgumentException("members " + members + " is not even within 2 to 512");
    }
    SplitMix random = new SplitMix(seed);
    List<double[]> half = new ArrayList<>();
    for (int i = 0; i < members / 2; i++) {
      half.add(lasting(random, persistence, length));
    }
    for (int d = 0; d < length; d++) {
      scaleToOne(half, d);
    }
    List<double[]> all = new ArrayList<>(half);
    half.forEach(year -> all.add(mirrored(year)));
    return all;
  }

  /** Goes round the year twice with the same noise, so that the end leads into the beginning. */
  private static double[] lasting(SplitMix random, double persistence, int length) {
    double[] noise = new double[length];
    for (int d = 0; d < noise.length; d++) {
      noise[d] = random.nextNormal() * Math.sqrt(1 - persistence * persistence);
    }
    double[] days = new double[length];
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
