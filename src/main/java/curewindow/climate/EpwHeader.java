package curewindow.climate;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the header of a weather file says, of its lines LOCATION and DATA PERIODS.
 *
 * @param name the name of the site, with region and country
 * @param source what the hours are, such as {@code TMY3}
 * @param latitude degrees north
 * @param longitude degrees east
 * @param offset local standard time
 * @param height metres above sea level
 */
record EpwHeader(
    String name,
    String source,
    double latitude,
    double longitude,
    ZoneOffset offset,
    double height) {

  private static final int LINES = 8;
  private static final int LOCATION_FIELDS = 10;
  private static final int PERIOD_FIELDS = 4;
  private static final int MOST_PERIODS = 60;

  /** A site's clock is never so far from its sun, in degrees of longitude (15 an hour). */
  private static final double MOST_FROM_SUN = 60;

  private static final Pattern MONTH_AND_DAY =
      Pattern.compile("([0-9]{1,2}) */ *([0-9]{1,2})( */ *[0-9]{1,4})?");

  /** Reads the header's lines, up to and with DATA PERIODS. */
  static EpwHeader read(EpwLines lines) throws EpwFault {
    EpwHeader header = location(EpwLines.fields(lines.next()));
    for (int i = 1; i < LINES; i++) {
      List<String> fields = EpwLines.fields(lines.next());
      if (is(fields, "DATA PERIODS")) {
        checkPeriods(fields, lines.number());
        return header;
      }
    }
    throw new EpwFault(
        "epw-header",
        LINES,
        "none of the first " + LINES + " lines begins with DATA PERIODS",
        "get the file again from where it came; its header is cut or has lines too many");
  }

  private static boolean is(List<String> fields, String keyword) {
    return fields.get(0).toUpperCase(Locale.ROOT).equals(keyword);
  }

  private static EpwHeader location(List<String> f) throws EpwFault {
    if (!is(f, "LOCATION")) {
      throw new EpwFault(
          "epw-header",
          1,
          "the first line does not begin with LOCATION, so this is no EnergyPlus weather file",
          "use the file that ends in .epw, or the zip that it came in");
    }
    if (f.size() != LOCATION_FIELDS) {
      throw new EpwFault(
          "epw-header",
          1,
          "LOCATION has " + (f.size() - 1) + " values, not 9",
          "take out a comma inside a name, or get the file again from where it came");
    }
    double longitude = EpwNumbers.within("the longitude", f.get(7), -180, 180, 1);
    double hours = EpwNumbers.within("the time zone", f.get(8), -12, 14, 1);
    EpwHeader header =
        new EpwHeader(
            name(f),
            f.get(4),
            EpwNumbers.within("the latitude", f.get(6), -90, 90, 1),
            longitude,
            offset(hours, f.get(8)),
            EpwNumbers.within("the elevation", f.get(9), -450, 6000, 1));
    double fromSun = Math.abs(Math.IEEEremainder(15 * hours - longitude, 360));
    if (fromSun > MOST_FROM_SUN) {
      throw new EpwFault(
          "epw-header",
          1,
          "longitude " + f.get(7) + " and time zone " + f.get(8) + " do not go together",
          "correct the wrong one in LOCATION: east is positive, west negative, in both");
    }
    return header;
  }

  private static ZoneOffset offset(double hours, String field) throws EpwFault {
    if (4 * hours != Math.rint(4 * hours)) {
      throw new EpwFault(
          "epw-header",
          1,
          "the time zone is " + field + ", which is not in quarters of an hour",
          "write it in hours, such as 5.5 for half past five");
    }
    return ZoneOffset.ofTotalSeconds((int) (3600 * hours));
  }

  private static String name(List<String> f) {
    StringBuilder name = new StringBuilder();
    for (String part : f.subList(1, 4)) {
      String plain =
          part.replaceAll("[\\x00-\\x1f\\x7f-\\xa0]+", " ").replaceAll(" +", " ").strip();
      if (!plain.isEmpty() && !plain.equals("-")) {
        name.append(name.isEmpty() ? "" : ", ").append(plain);
      }
    }
    String whole = name.isEmpty() ? "unnamed" : name.toString();
    return whole.length() > 80 ? whole.substring(0, 80).strip() : whole;
  }

  private static void checkPeriods(List<String> f, int line) throws EpwFault {
    if (f.size() < 3) {
      throw new EpwFault(
          "epw-header", line, "DATA PERIODS is cut", "get the file again from where it came");
    }
    int periods = EpwNumbers.whole("the number of periods", f.get(1), 1, MOST_PERIODS, line);
    int perHour = EpwNumbers.whole("the number of records an hour", f.get(2), 1, 60, line);
    if (perHour != 1) {
      throw new EpwFault(
          "epw-not-hourly",
          line,
          "the file has " + perHour + " records an hour",
          "use a file with one record an hour");
    }
    if (f.size() < 3 + PERIOD_FIELDS * periods) {
      throw new EpwFault(
          "epw-header",
          line,
          "DATA PERIODS tells of fewer than its " + periods + " periods",
          "get the file again from where it came");
    }
    if (periods == 1 && !(wholeYear(f.get(5), 1, 1) && wholeYear(f.get(6), 12, 31))) {
      throw new EpwFault(
          "epw-part-of-year",
          line,
          "the hours go from " + EpwFault.shown(f.get(5)) + " to " + EpwFault.shown(f.get(6)),
          "use a file of whole years, from 1/1 to 12/31");
    }
  }

  /** Dates in words or as a day of the year are left for the rows to prove. */
  private static boolean wholeYear(String date, int month, int day) {
    Matcher numbers = MONTH_AND_DAY.matcher(date);
    return !numbers.matches()
        || Integer.parseInt(numbers.group(1)) == month && Integer.parseInt(numbers.group(2)) == day;
  }
}
