package curewindow.climate;

import java.time.Month;
import java.util.Locale;

/**
 * The hour that the next row of a weather file has to have: hours 1 to 24 of each day, hour 1 from
 * midnight to 1:00, and whole years one after the other. February 29 may be there or not.
 */
final class EpwClock {

  private static final int[] LENGTH = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

  private int month = 1;
  private int day = 1;
  private int hour = 1;
  private int rows;
  private boolean leapDay;
  private int lastOrder;

  /** Whether a year is complete, so that the file may end or another year may begin. */
  boolean atYearStart() {
    return month == 1 && day == 1 && hour == 1;
  }

  /**
   * Takes the next row.
   *
   * @return true where it belongs to February 29
   */
  boolean take(int rowMonth, int rowDay, int rowHour, int line) throws EpwFault {
    if (atYearStart()) {
      rows = 0;
      leapDay = false;
    }
    boolean toLeapDay = month == 3 && day == 1 && hour == 1 && rowMonth == 2 && rowDay == 29;
    if (toLeapDay && !leapDay) {
      leapDay = true;
      month = 2;
      day = 29;
    }
    if (rowMonth != month || rowDay != day || rowHour != hour) {
      throw misplaced(rowMonth, rowDay, rowHour, line);
    }
    boolean onLeapDay = day == 29 && month == 2;
    lastOrder = order(rowMonth, rowDay, rowHour);
    rows++;
    step();
    return onLeapDay;
  }

  private void step() {
    hour = hour == 24 ? 1 : hour + 1;
    if (hour > 1) {
      return;
    }
    day++;
    boolean over = day > LENGTH[month - 1];
    day = over ? 1 : day;
    month = over ? month % 12 + 1 : month;
  }

  private EpwFault misplaced(int rowMonth, int rowDay, int rowHour, int line) {
    int found = order(rowMonth, rowDay, rowHour);
    int expected = order(month, day, hour);
    String late = found > expected ? "hours are missing before " : "out of order: ";
    String what = found == lastOrder ? "a second row for " : late;
    return new EpwFault(
        "epw-row-order",
        line,
        what
            + words(rowMonth, rowDay, rowHour)
            + ", where "
            + words(month, day, hour)
            + " was expected",
        "get the file again from where it came; rows must follow hour by hour through whole years");
  }

  private static int order(int month, int day, int hour) {
    return (month * 40 + day) * 24 + hour;
  }

  private static String words(int month, int day, int hour) {
    String name = Month.of(month).name();
    return name.charAt(0)
        + name.substring(1).toLowerCase(Locale.ROOT)
        + " "
        + day
        + ", hour "
        + hour;
  }

  /** What is said where the file ends in the middle of a year. */
  EpwFault cutShort(int line) {
    return new EpwFault(
        "epw-part-of-year",
        line,
        "the file ends before "
            + words(month, day, hour)
            + "; its last year has "
            + rows
            + " rows, not 8760 (or 8784 with February 29)",
        "get the file again from where it came; the download may have been cut");
  }
}
