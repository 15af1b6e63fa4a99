package curewindow.climate;

/**
 * The course of the year in twelve monthly means.
 *
 * @param mean mean of the months
 * @param range highest less lowest month
 */
record Course(double mean, double range) {

  static Course of(double[] means) {
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    double sum = 0;
    for (double mean : means) {
      lowest = Math.min(lowest, mean);
      highest = Math.max(highest, mean);
      sum += mean;
    }
    return new Course(sum / means.length, highest - lowest);
  }
}
