package curewindow.intake;

import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A time of day as another program writes it.
 *
 * @param clock what the clock shows
 * @param offset its offset, such as -08:00; empty where none stands there
 */
record DayTime(LocalTime clock, String offset) {

  private static final String MORNING =
      "a ?\\.? ?m\\.?|a|\u03c0\\.? ?\u03bc\\.?|\u0635|\u4e0a\u5348|\u5348\u524d|\uc624\uc804";
  private static final String EVENING =
      "p ?\\.? ?m\\.?|p|\u03bc\\.? ?\u03bc\\.?|\u0645|\u4e0b\u5348|\u5348\u5f8c|\uc624\ud6c4";
  private static final Pattern TIME =
      Pattern.compile(
          "(?:(?:("
              + MORNING
              + ")|("
              + EVENING
              + ")) ?)?"
              + "(\\d{1,2})(?: ?[:.h] ?(\\d{2})(?:[:.](\\d{2})(?:[.,]\\d{1,9})?)?)?"
              + "(?: ?(?:("
              + MORNING
              + ")|("
              + EVENING
              + ")|(h|hrs?|uhr|\u0447\\.?)))?"
              + " ?(z|[+-]\\d{2}:?\\d{2})?");
  private static final Pattern COMPACT = Pattern.compile("(\\d{2})(\\d{2})(?:(\\d{2}))?");
  private static final Pattern BEFORE =
      Pattern.compile("^(?:[\\s,]|t(?=\\d)|(?:um|at|a las|\u00e0)\\s)+");

  /** The time behind a day, without what joins the two. */
  static Optional<DayTime> behind(String text) {
    return of(BEFORE.matcher(text).replaceFirst(""));
  }

  /** A time alone, in plain characters ({@link PlainCell}). */
  static Optional<DayTime> of(String text) {
    Matcher m = TIME.matcher(text.strip());
    if (m.matches()) {
      boolean morning = m.group(1) != null || m.group(6) != null;
      boolean evening = m.group(2) != null || m.group(7) != null;
      // A number alone may be anything.
      boolean isTime = m.group(4) != null || morning || evening || m.group(8) != null;
      String second = m.group(5) == null ? "0" : m.group(5);
      String minute = m.group(4) == null ? "0" : m.group(4);
      return isTime && !(morning && evening)
          ? hour(m.group(3), morning, evening)
              .flatMap(hour -> clock(hour, minute, second))
              .map(clock -> new DayTime(clock, offset(m.group(9))))
          : Optional.empty();
    }
    Matcher compact = COMPACT.matcher(text.strip());
    return compact.matches()
        ? clock(
                Integer.parseInt(compact.group(1)),
                compact.group(2),
                compact.group(3) == null ? "0" : compact.group(3))
            .map(clock -> new DayTime(clock, ""))
        : Optional.empty();
  }

  /** Twelve is the first hour of its half of the day; 14:30 PM is taken for 14:30. */
  private static Optional<Integer> hour(String digits, boolean morning, boolean evening) {
    int hour = Integer.parseInt(digits);
    if (!morning && !evening || evening && hour > 12) {
      return Optional.of(hour);
    }
    return hour < 1 || hour > 12 ? Optional.empty() : Optional.of(hour % 12 + (evening ? 12 : 0));
  }

  private static Optional<LocalTime> clock(int hour, String minute, String second) {
    try {
      return Optional.of(LocalTime.of(hour, Integer.parseInt(minute), Integer.parseInt(second)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static String offset(String typed) {
    if (typed == null) {
      return "";
    }
    return typed.equals("z") || typed.contains(":")
        ? typed.toUpperCase(Locale.ROOT)
        : typed.substring(0, 3) + ":" + typed.substring(3);
  }

  /** Whether it is the first minute of a day, which some programs write where they know no hour. */
  boolean isMidnight() {
    return clock.equals(LocalTime.MIDNIGHT);
  }

  /** The time as a job file has it: seconds only where there are any. */
  String told() {
    return clock + offset;
  }
}
