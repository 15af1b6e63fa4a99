package curewindow.climate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Fits how far normals may be off to the months of stations: the spreads under which the stations'
 * departures from the nearest built-in place, moved to them, are likeliest, if these are normal
 * deviates whose variance is a sum of one near by, one growing with the distance and one with the
 * square of the height between (each 0 or more; least squares, weighted again and again).
 *
 * @param near within 50 km
 * @param far what 100 km more add
 * @param high what a km of height adds
 */
record DoubtFit(Doubt near, Doubt far, Doubt high) {

  private static final double FARTHEST_KM = 400;

  /** Below this a month tells too little of how clear its sky is, kWh/m2 a day. */
  private static final double DARK = 0.5;

  private static final int PARTS = 3;
  private static final int ROUNDS = 25;

  /**
   * A month's departure, and what it may be due to.
   *
   * @param station where
   * @param warmth K
   * @param dryness share of the depression and 4 K
   * @param sun share of the clearness; not a number in dark months
   */
  record Departure(Station station, double warmth, double dryness, double sun) {

    double[] causes() {
      double far = Math.max(0, station.near().distanceKm() - Doubt.NEAR_KM) / 100;
      double high = (station.place().height() - station.near().place().height()) / 1000;
      return new double[] {1, far, high * high};
    }
  }

  /** The months of the stations within 400 km of a built-in place. */
  static List<Departure> departures(List<Station> stations) {
    List<Departure> departures = new ArrayList<>();
    for (Station station : stations) {
      Place there = station.place();
      if (station.near().distanceKm() > FARTHEST_KM) {
        continue;
      }
      Place lent =
          Places.at(
              "lent", "Lent", there.latitude(), there.longitude(), there.height(), there.zone());
      for (int m = 0; m < MonthCurve.MONTHS; m++) {
        departures.add(departure(station, there.normals().get(m), lent.normals().get(m)));
      }
    }
    return departures;
  }

  private static Departure departure(Station station, MonthNormals is, MonthNormals lent) {
    double depression = depression(lent);
    return new Departure(
        station,
        mean(is) - mean(lent),
        (depression(is) - depression) / (depression + Doubt.LEAST_DEPRESSION),
        lent.sun() < DARK ? Double.NaN : is.sun() / lent.sun() - 1);
  }

  private static double mean(MonthNormals month) {
    return (month.dailyMin() + month.dailyMax()) / 2;
  }

  private static double depression(MonthNormals month) {
    return Math.max(0, mean(month) - month.dewPoint());
  }

  static DoubtFit to(List<Departure> departures) {
    double[] warmth = spreads(departures, Departure::warmth);
    double[] dryness = spreads(departures, Departure::dryness);
    double[] sun = spreads(departures, Departure::sun);
    return new DoubtFit(
        new Doubt(warmth[0], dryness[0], sun[0]),
        new Doubt(warmth[1], dryness[1], sun[1]),
        new Doubt(warmth[2], dryness[2], sun[2]));
  }

  private static double[] spreads(List<Departure> all, ToDoubleFunction<Departure> of) {
    List<Departure> known = all.stream().filter(d -> !Double.isNaN(of.applyAsDouble(d))).toList();
    double[][] causes = known.stream().map(Departure::causes).toArray(double[][]::new);
    double[] squares = known.stream().mapToDouble(of).map(v -> v * v).toArray();
    double[] weights = new double[squares.length];
    Arrays.fill(weights, 1);
    double[] parts = new double[PARTS];
    for (int round = 0; round < ROUNDS; round++) {
      parts = leastSquares(causes, squares, weights);
      for (int i = 0; i < weights.length; i++) {
        weights[i] = Math.pow(variance(parts, causes[i]), -2);
      }
    }
    return Arrays.stream(parts).map(Math::sqrt).toArray();
  }

  private static double variance(double[] parts, double[] causes) {
    return Math.max(1e-9, parts[0] + parts[1] * causes[1] + parts[2] * causes[2]);
  }

  /** Of all choices of parts that are not 0, the best of those in which none is below 0. */
  private static double[] leastSquares(double[][] causes, double[] squares, double[] weights) {
    double[][] normal = normalEquations(causes, squares, weights);
    double[] best = new double[PARTS];
    double bestGain = 0;
    for (int chosen = 1; chosen < 1 << PARTS; chosen++) {
      double[] parts = solved(normal, chosen);
      double gain = 0;
      for (int i = 0; i < PARTS; i++) {
        gain += parts[i] * normal[i][PARTS];
      }
      if (Arrays.stream(parts).allMatch(p -> p >= 0) && gain > bestGain) {
        best = parts;
        bestGain = gain;
      }
    }
    return best;
  }

  private static double[][] normalEquations(double[][] causes, double[] squares, double[] weights) {
    double[][] normal = new double[PARTS][PARTS + 1];
    for (int r = 0; r < squares.length; r++) {
      for (int i = 0; i < PARTS; i++) {
        for (int j = 0; j < PARTS; j++) {
          normal[i][j] += weights[r] * causes[r][i] * causes[r][j];
        }
        normal[i][PARTS] += weights[r] * causes[r][i] * squares[r];
      }
    }
    return normal;
  }

  /** Gauss-Jordan over the chosen unknowns (bits); the others are 0. */
  private static double[] solved(double[][] normal, int chosen) {
    double[][] rows = Arrays.stream(normal).map(double[]::clone).toArray(double[][]::new);
    double[] solution = new double[PARTS];
    for (int i = 0; i < PARTS; i++) {
      for (int j = 0; j < PARTS && in(chosen, i); j++) {
        double share = in(chosen, j) && j != i ? rows[j][i] / rows[i][i] : 0;
        for (int k = 0; k <= PARTS; k++) {
          rows[j][k] -= share * rows[i][k];
        }
      }
    }
    for (int i = 0; i < PARTS; i++) {
      solution[i] = in(chosen, i) ? rows[i][PARTS] / rows[i][i] : 0;
    }
    return solution;
  }

  private static boolean in(int chosen, int part) {
    return (chosen >> part & 1) == 1;
  }
}
