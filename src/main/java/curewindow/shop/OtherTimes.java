package curewindow.shop;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds out what times mean that are written as in daily life, and how to write them here. */
final class OtherTimes {

  /** Three numbers with the same sign between them, and perhaps an hour. */
  private static final Pattern DAILY =
      Pattern.compile(
          "([0-9]{1,4})([-/.])\\s?([0-9]{1,2})\\2\\s?([0-9]{1,4})"
              + "(?:(?:\\s*,)?[\\sTt]\\s*([0-9]{1,2})(?:[:.h]([0-9]{2}))?(?::[0-9]{2})?"
              + "\\s*(?:([ap])\\.?m\\.?)?)?",
          Pattern.CASE_INSENSITIVE);

  private OtherTimes() {}

  /** Whether a day has its hour. */
  enum Hour {
    NEEDED,
    POSSIBLE,
    NEVER
  }

  /**
   * Whether three numbers stand there as for a day, but the calendar has none of that name.
   *
   * @param text what is no time
   * @return true such as for 29/02/2027
   */
  static boolean isNoDay(String text) {
    Matcher daily = DAILY.matcher(text.strip());
    return daily.matches() && hasYear(daily) && days(daily).isEmpty();
  }

  /**
   * What to write instead.
   *
   * @param text what is no time
   * @param want whether it should have its hour
   * @return what to do
   */
  static String fix(String text, Hour want) {
    Matcher daily = DAILY.matcher(text.strip());
    TreeSet<LocalDate> days = new TreeSet<>();
    if (daily.matches()) {
      days(daily).stream().filter(OtherTimes::isNear).forEach(days::add);
    }
    Optional<String> hour = days.isEmpty() ? Optional.empty() : hour(daily);
    if (days.isEmpty() || daily.group(5) != null && hour.isEmpty()) {
      return switch (want) {
        case NEEDED -> "write it as 2026-11-25T14:30";
        case POSSIBLE -> "write " + Times.FORMS;
        case NEVER -> "write it as 2026-12-25";
      };
    }
    String behind = want == Hour.NEVER ? "" : hour.map(h -> "T" + h).orElse("");
    boolean lacks = want == Hour.NEEDED && hour.isEmpty();
    String example = days.last() + "T14:30";
    if (days.size() == 1) {
      return "write it as " + (lacks ? example + ", with its hour" : days.first() + behind);
    }
    String readings = days.last() + behind + " or " + days.first() + behind;
    return readings + ": write the one you mean" + (lacks ? ", with the hour: " + example : "");
  }

  private static boolean hasYear(Matcher daily) {
    int last = daily.group(4).length();
    return daily.group(1).length() == 4 || last == 4 || last == 2;
  }

  private static boolean isNear(LocalDate day) {
    return day.getYear() >= 2000 && day.getYear() <= 2099;
  }

  private static TreeSet<LocalDate> days(Matcher daily) {
    TreeSet<LocalDate> days = new TreeSet<>();
    String first = daily.group(1);
    String second = daily.group(3);
    String third = daily.group(4);
    if (first.length() == 4) {
      day(first, second, third).ifPresent(days::add);
    } else if (third.length() == 4 || third.length() == 2) {
      String year = third.length() == 2 ? "20" + third : third;
      day(year, second, first).ifPresent(days::add);
      day(year, first, second).ifPresent(days::add);
    }
    return days;
  }

  private static Optional<LocalDate> day(String year, String month, String day) {
    try {
      return Optional.of(
          LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static Optional<String> hour(Matcher daily) {
    if (daily.group(5) == null) {
      return Optional.empty();
    }
    int hour = Integer.parseInt(daily.group(5));
    int minute = daily.group(6) == null ? 0 : Integer.parseInt(daily.group(6));
    if (daily.group(7) != null) {
      if (hour < 1 || hour > 12) {
        return Optional.empty();
      }
      hour = hour % 12 + (daily.group(7).toLowerCase(Locale.ROOT).equals("p") ? 12 : 0);
    }
    return hour > 23 || minute > 59
        ? Optional.empty()
        : Optional.of(LocalTime.of(hour, minute).toString());
  }
}
