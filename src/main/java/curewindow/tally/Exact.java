package curewindow.tally;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Exact intervals of counts, which hold what is true at least 19 times in 20 (95 %), half of what
 * is left out at each end.
 */
final class Exact {

  private static final double TAIL = 0.025;

  private Exact() {}

  /**
   * The lower end of how many events are to be expected where some were counted (F. Garwood,
   * Fiducial limits for the Poisson distribution, Biometrika 28, 1936).
   *
   * @param events how many were counted, 0 or more
   * @return events, 0 or more
   */
  static double poissonLow(int events) {
    return events == 0
        ? 0
        : ChiSquaredDistribution.of(2.0 * events).inverseCumulativeProbability(TAIL) / 2;
  }

  /** The upper end; above 0. */
  static double poissonHigh(int events) {
    return ChiSquaredDistribution.of(2.0 * events + 2).inverseSurvivalProbability(TAIL) / 2;
  }

  /**
   * The lower end of a share (C. J. Clopper and E. S. Pearson, The use of confidence or fiducial
   * limits illustrated in the case of the binomial, Biometrika 26, 1934).
   *
   * @param events how many were counted, 0 or more
   * @param of among how many, as many or more
   * @return 0 to 1
   */
  static double shareLow(int events, int of) {
    return events == 0
        ? 0
        : BetaDistribution.of(events, of - events + 1.0).inverseCumulativeProbability(TAIL);
  }

  /** The upper end; 0 to 1. */
  static double shareHigh(int events, int of) {
    return events == of
        ? 1
        : BetaDistribution.of(events + 1.0, of - events).inverseSurvivalProbability(TAIL);
  }
}
