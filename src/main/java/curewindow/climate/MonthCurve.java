package curewindow.climate;

import java.util.Arrays;

/**
 * Turns twelve month values into 365 day values without changing the months' means.
 *
 * <p>Method: a periodic curve of straight lines between the middles of the months, whose twelve
 * heights are solved for (twelve linear equations) so that the mean over each month's days,
 * weighted where asked, is the month's value exactly.
 */
final class MonthCurve {

  static final int DAYS = 365;
  static final int MONTHS = 12;

  private static final int[] LENGTH = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  private static final int[] MONTH_OF_DAY = monthOfDay();

  private MonthCurve() {}

  private static int[] monthOfDay() {
    int[] months = new int[DAYS];
    int day = 0;
    for (int m = 0; m < MONTHS; m++) {
      for (int i = 0; i < LENGTH[m]; i++) {
        months[day++] = m;
      }
    }
    return months;
  }

  /** The month, 0 to 11, of a day of the year, 0 to 364. */
  static int month(int day) {
    return MONTH_OF_DAY[day];
  }

  /** Means of 365 day values over the twelve months. */
  static double[] means(double[] days) {
    double[] sums = new double[MONTHS];
    for (int d = 0; d < DAYS; d++) {
      sums[month(d)] += days[d] / LENGTH[month(d)];
    }
    return sums;
  }

  /** Day values whose plain mean over each month is the month's value. */
  static double[] days(double[] months) {
    double[] even = new double[DAYS];
    Arrays.fill(even, 1);
    return days(months, even);
  }

  /**
   * Day values whose weighted mean over each month is the month's value.
   *
   * @param months twelve values
   * @param weights 365 weights, not negative, with a sum above 0 in every month
   */
  static double[] days(double[] months, double[] weights) {
    double[][] shares = shares();
    double[][] equations = new double[MONTHS][MONTHS + 1];
    for (int d = 0; d < DAYS; d++) {
      double[] row = equations[month(d)];
      for (int m = 0; m < MONTHS; m++) {
        row[m] += weights[d] * shares[d][m];
      }
      row[MONTHS] += weights[d] * months[month(d)];
    }
    double[] heights = solved(equations);
    double[] days = new double[DAYS];
    for (int d = 0; d < DAYS; d++) {
      for (int m = 0; m < MONTHS; m++) {
        days[d] += shares[d][m] * heights[m];
      }
    }
    return days;
  }

  /** How much each of the twelve heights counts on each day. */
  private static double[][] shares() {
    double[] middle = new double[MONTHS];
    double start = 0;
    for (int m = 0; m < MONTHS; m++) {
      middle[m] = start + LENGTH[m] / 2.0;
      start += LENGTH[m];
    }
    double[][] shares = new double[DAYS][MONTHS];
    for (int d = 0; d < DAYS; d++) {
      int month = month(d);
      int before = d + 0.5 < middle[month] ? Math.floorMod(month - 1, MONTHS) : month;
      int after = (before + 1) % MONTHS;
      double gap = middle[after] - middle[before] + (after == 0 ? DAYS : 0);
      double gone = d + 0.5 - middle[before];
      double share = (gone < 0 ? gone + DAYS : gone) / gap;
      shares[d][before] += 1 - share;
      shares[d][after] += share;
    }
    return shares;
  }

  /** Gauss elimination with row exchange; each row is a left side followed by its right side. */
  private static double[] solved(double[][] rows) {
    for (int c = 0; c < MONTHS; c++) {
      int best = c;
      for (int r = c + 1; r < MONTHS; r++) {
        best = Math.abs(rows[r][c]) > Math.abs(rows[best][c]) ? r : best;
      }
      double[] pivot = rows[best];
      rows[best] = rows[c];
      rows[c] = pivot;
      for (int r = 0; r < MONTHS; r++) {
        double factor = r == c ? 0 : rows[r][c] / pivot[c];
        for (int k = c; factor != 0 && k <= MONTHS; k++) {
          rows[r][k] -= factor * pivot[k];
        }
      }
    }
    double[] heights = new double[MONTHS];
    for (int m = 0; m < MONTHS; m++) {
      heights[m] = rows[m][MONTHS] / rows[m][m];
    }
    return heights;
  }
}
