package curewindow.climate;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The hours of a weather file as read, row by row; not a number where a value is missing.
 *
 * <p>Fields, units and missing-value codes after the weather data dictionary in the EnergyPlus
 * documentation (Auxiliary Programs, Weather Converter Program): dry bulb and dew point in C,
 * relative humidity in percent, global horizontal radiation in Wh/m2. The ranges are narrower where
 * the open air on earth is.
 */
final class EpwHours {

  private static final int HOURS_OF_YEAR = WeatherYear.HOURS;
  private static final int MOST_YEARS = 60;
  private static final int LEAST_FIELDS = 14;
  private static final EpwField AIR = new EpwField(6, "the dry bulb temperature", -70, 60, 99.9);
  private static final EpwField DEW = new EpwField(7, "the dew point", -70, 40, 99.9);
  private static final EpwField HUMIDITY = new EpwField(8, "the relative humidity", 0, 110, 999);
  private static final EpwField SUN =
      new EpwField(13, "the global horizontal radiation", 0, 1500, 9999);

  /** Dew points this far above the air temperature are rounding; more is a mistake. */
  private static final double ROUNDING = 1;

  private final int firstLine;
  private double[] air = new double[HOURS_OF_YEAR];
  private double[] dew = new double[HOURS_OF_YEAR];
  private double[] sun = new double[HOURS_OF_YEAR];
  private boolean[] leapDay = new boolean[HOURS_OF_YEAR];
  private int rows;
  private int fieldCount;

  private EpwHours(int firstLine) {
    this.firstLine = firstLine;
  }

  /** Reads all rows after the header. */
  static EpwHours read(EpwLines lines) throws EpwFault {
    EpwHours hours = new EpwHours(lines.number() + 1);
    EpwClock clock = new EpwClock();
    while (lines.hasMore()) {
      String line = lines.next();
      if (line.isBlank()) {
        onlyBlankFrom(lines);
        break;
      }
      hours.add(EpwLines.fields(line), clock, lines.number());
    }
    if (!clock.atYearStart() || hours.rows == 0) {
      throw clock.cutShort(lines.number());
    }
    return hours;
  }

  private static void onlyBlankFrom(EpwLines lines) throws EpwFault {
    int blank = lines.number();
    while (lines.hasMore()) {
      if (!lines.next().isBlank()) {
        throw new EpwFault(
            "epw-row-order", blank, "an empty line stands between the rows", "take it out");
      }
    }
  }

  private void add(List<String> f, EpwClock clock, int line) throws EpwFault {
    checkFields(f.size(), line);
    EpwNumbers.whole("the year", f.get(0), 0, 9999, line);
    int month = EpwNumbers.whole("the month", f.get(1), 1, 12, line);
    int day = EpwNumbers.whole("the day", f.get(2), 1, 31, line);
    int hour = hour(f.get(3), line);
    EpwNumbers.whole("the minute", f.get(4), 0, 60, line);
    makeRoom(line);
    leapDay[rows] = clock.take(month, day, hour, line);
    air[rows] = AIR.value(f, line);
    dew[rows] = dewPoint(f, air[rows], line);
    sun[rows] = SUN.value(f, line);
    rows++;
  }

  private void checkFields(int count, int line) throws EpwFault {
    if (rows == 0 && count >= LEAST_FIELDS) {
      fieldCount = count;
    }
    if (count != fieldCount) {
      throw new EpwFault(
          "epw-row-fields",
          line,
          "the row has "
              + count
              + " fields, "
              + (rows == 0
                  ? "fewer than the " + LEAST_FIELDS + " needed"
                  : "not " + fieldCount + " as the first row"),
          "get the file again from where it came; the row is cut or broken");
    }
  }

  private static int hour(String field, int line) throws EpwFault {
    int hour = EpwNumbers.whole("the hour", field, 0, 24, line);
    if (hour == 0) {
      throw new EpwFault(
          "epw-out-of-range",
          line,
          "the hour is 0, but the hours of a day go from 1 to 24",
          "write hour 1 for midnight to 1:00, and so on, in the whole file");
    }
    return hour;
  }

  private void makeRoom(int line) throws EpwFault {
    if (rows >= MOST_YEARS * (HOURS_OF_YEAR + 24)) {
      throw new EpwFault(
          "epw-too-many-years",
          line,
          "the file has more than " + MOST_YEARS + " years",
          "use a file of the last 30 years");
    }
    if (rows == air.length) {
      air = Arrays.copyOf(air, 2 * rows);
      dew = Arrays.copyOf(dew, 2 * rows);
      sun = Arrays.copyOf(sun, 2 * rows);
      leapDay = Arrays.copyOf(leapDay, 2 * rows);
    }
  }

  /** The dew point; where it is missing, from relative humidity, which EPW states over water. */
  private static double dewPoint(List<String> f, double air, int line) throws EpwFault {
    double dew = DEW.value(f, line);
    double humidity = HUMIDITY.value(f, line);
    if (Double.isNaN(dew) && !Double.isNaN(air) && !Double.isNaN(humidity)) {
      return Psychrometrics.dewPoint(air, Math.max(1, Math.min(100, humidity)));
    }
    if (dew > air + ROUNDING) {
      throw new EpwFault(
          "epw-out-of-range",
          line,
          String.format(Locale.ROOT, "the dew point %s is above the air's %s C", dew, air),
          "correct it, or write 99.9 where it is missing");
    }
    return dew;
  }

  /** How many rows there are. */
  int rows() {
    return rows;
  }

  /** The line of a row, from 1. */
  int line(int row) {
    return firstLine + row;
  }

  /** Whether a row belongs to February 29. */
  boolean onLeapDay(int row) {
    return leapDay[row];
  }

  double[] air() {
    return air;
  }

  double[] dew() {
    return dew;
  }

  double[] sun() {
    return sun;
  }
}
