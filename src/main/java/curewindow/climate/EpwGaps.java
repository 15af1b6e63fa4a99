package curewindow.climate;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import java.util.ArrayList;
import java.util.List;

/**
 * Fills short gaps in the hours of a weather file: air temperature and dew point in a straight
 * line, sun by the clearness of the day around. Gaps at the file's ends take the nearest value.
 */
final class EpwGaps {

  /** The longest gap that is filled, in hours. */
  static final int MOST_HOURS = 6;

  /** The clearness around a gap in the sun is that of so many hours before and after it. */
  private static final int AROUND = 24;

  private final String file;
  private final EpwHours hours;
  private final List<Problem> notices = new ArrayList<>();

  EpwGaps(String file, EpwHours hours) {
    this.file = file;
    this.hours = hours;
  }

  /** What was filled. */
  List<Problem> notices() {
    return List.copyOf(notices);
  }

  /** Fills air temperature and dew point. */
  void fillAir() throws EpwFault {
    fill(
        "dry bulb temperature",
        hours.air(),
        (row, start, end) -> line(hours.air(), start, end, row));
    fill("dew point", hours.dew(), (row, start, end) -> line(hours.dew(), start, end, row));
    for (int row = 0; row < hours.rows(); row++) {
      hours.dew()[row] = Math.min(hours.dew()[row], hours.air()[row]);
    }
  }

  /**
   * Fills the sun.
   *
   * @param clearSky the cloudless sun for each row, W/m2
   */
  void fillSun(double[] clearSky) throws EpwFault {
    fill(
        "global horizontal radiation",
        hours.sun(),
        (row, start, end) -> clearSky[row] * clearness(clearSky, start, end));
  }

  /** A value for a row in the gap from start to before end. */
  private interface Filling {
    double at(int row, int start, int end);
  }

  private void fill(String what, double[] values, Filling filling) throws EpwFault {
    int filled = 0;
    int first = 0;
    for (int start = 0; start < hours.rows(); start++) {
      if (!Double.isNaN(values[start])) {
        continue;
      }
      int end = end(what, values, start);
      double[] found = new double[end - start];
      for (int row = start; row < end; row++) {
        found[row - start] = filling.at(row, start, end);
      }
      System.arraycopy(found, 0, values, start, found.length);
      first = filled == 0 ? hours.line(start) : first;
      filled += found.length;
      start = end;
    }
    if (filled > 0) {
      notices.add(notice(what, filled, first));
    }
  }

  private int end(String what, double[] values, int start) throws EpwFault {
    int end = start;
    while (end < hours.rows() && Double.isNaN(values[end])) {
      end++;
    }
    if (end - start > MOST_HOURS) {
      boolean all = end - start == hours.rows();
      throw new EpwFault(
          "epw-missing-values",
          hours.line(start),
          "the "
              + what
              + " is missing in "
              + (all ? "all rows" : (end - start) + " rows from here on"),
          "fill them in, or use another file; gaps of up to " + MOST_HOURS + " hours are bridged");
    }
    return end;
  }

  private Problem notice(String what, int filled, int line) {
    return Problem.notice(
        "epw-gaps-filled",
        Where.line(file, line, 1),
        "the "
            + what
            + " was missing in "
            + filled
            + (filled == 1 ? " row" : " rows")
            + ", first here; short gaps were bridged from the hours around",
        "nothing has to be done");
  }

  private double line(double[] values, int start, int end, int row) {
    if (start == 0) {
      return values[end];
    }
    if (end == hours.rows()) {
      return values[start - 1];
    }
    double share = (row - start + 1.0) / (end - start + 1);
    return values[start - 1] + share * (values[end] - values[start - 1]);
  }

  private double clearness(double[] clearSky, int start, int end) {
    double measured = 0;
    double clear = 0;
    for (int row = Math.max(0, start - AROUND); row < Math.min(hours.rows(), end + AROUND); row++) {
      if (!Double.isNaN(hours.sun()[row])) {
        measured += hours.sun()[row];
        clear += clearSky[row];
      }
    }
    return clear == 0 ? 0 : Math.min(1, measured / clear);
  }
}
