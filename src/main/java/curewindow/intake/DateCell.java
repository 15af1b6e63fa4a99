package curewindow.intake;

import curewindow.shop.DateOrder;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A time as another program writes it, as long as it is not known which number is the day.
 *
 * @param days the day that it is in each order in which it is a day of the calendar
 * @param likely whether the year may well stand first; else only where that is said
 * @param time the time of day, where one stands there
 */
record DateCell(Map<DateOrder, LocalDate> days, boolean likely, Optional<DayTime> time) {

  /** Longer than any time is written. */
  private static final int LONGEST = 80;

  private static final Pattern NUMBERS =
      Pattern.compile(
          "(?:\\p{L}{1,12}[.,]*\\s)?(\\d{4}|\\d{1,2})(\\s?[./-]\\s?|\\s)(\\d{1,2})(?:\\s?[./-]\\s?|\\s)"
              + "(\\d{4}|\\d{1,2})\\.?(?:\\s?(?:\u0433|\u0440)\\.)?(?![\\d])(.*)");
  private static final Pattern COMPACT = Pattern.compile("(\\d{4})(\\d{2})(\\d{2})(?:[t\\s](.*))?");
  private static final Pattern DAY_WORD =
      Pattern.compile(
          "(?:\\p{L}{1,12}[.,]*\\s)?(\\d{1,2})(?:st|nd|rd|th|er)?[.\\s/-]*(?:(?:de|of)\\s)?"
              + "(\\p{L}[\\p{L}\\p{M}]*)\\.?[\\s,/-]*(?:del?\\s)?(\\d{4}|\\d{2})(?![\\d:])(.*)");
  private static final Pattern WORD_DAY =
      Pattern.compile(
          "(?:\\p{L}{1,12}[.,]*\\s)?(\\p{L}[\\p{L}\\p{M}]*)\\.?[\\s-](\\d{1,2})(?:st|nd|rd|th)?,?[\\s-]"
              + "(\\d{4})(?![\\d:])(.*)");

  /** Takes all that stands there for what it may mean; empty where it is no day with a time. */
  static Optional<DateCell> of(String cell) {
    if (cell.length() > LONGEST) {
      return Optional.empty();
    }
    String text = PlainCell.of(cell);
    return numbers(text).or(() -> compact(text)).or(() -> word(text));
  }

  private static Optional<DateCell> numbers(String text) {
    Matcher m = NUMBERS.matcher(text);
    if (!m.matches()) {
      return Optional.empty();
    }
    Map<DateOrder, LocalDate> days = new EnumMap<>(DateOrder.class);
    String first = m.group(1);
    String third = m.group(4);
    if (first.length() == 4) {
      all(days, day(first, m.group(3), third));
    } else if (third.length() == 4 || third.length() == 2) {
      day(third, m.group(3), first).ifPresent(d -> days.put(DateOrder.DAY_FIRST, d));
      day(third, first, m.group(3)).ifPresent(d -> days.put(DateOrder.MONTH_FIRST, d));
    }
    if (first.length() == 2 && third.length() < 3) {
      day(first, m.group(3), third).ifPresent(d -> days.put(DateOrder.YEAR_FIRST, d));
    }
    // Nobody is known to write 26.11.24 or 26/11/24 for the year 2026, but some 26-11-24.
    boolean likely = m.group(2).contains("-") || m.group(2).contains(" ");
    return cell(days, likely, m.group(5));
  }

  private static Optional<DateCell> compact(String text) {
    Matcher m = COMPACT.matcher(text);
    if (!m.matches()) {
      return Optional.empty();
    }
    Map<DateOrder, LocalDate> days = new EnumMap<>(DateOrder.class);
    all(days, day(m.group(1), m.group(2), m.group(3)));
    return cell(days, true, m.group(4) == null ? "" : m.group(4));
  }

  private static Optional<DateCell> word(String text) {
    Matcher first = DAY_WORD.matcher(text);
    if (first.matches()) {
      return word(first.group(3), first.group(2), first.group(1), first.group(4));
    }
    Matcher second = WORD_DAY.matcher(text);
    return second.matches()
        ? word(second.group(3), second.group(1), second.group(2), second.group(4))
        : Optional.empty();
  }

  private static Optional<DateCell> word(String year, String word, String day, String behind) {
    OptionalInt month = MonthNames.month(word);
    if (month.isEmpty()) {
      return Optional.empty();
    }
    Map<DateOrder, LocalDate> days = new EnumMap<>(DateOrder.class);
    all(days, day(year, Integer.toString(month.getAsInt()), day));
    return cell(days, true, behind);
  }

  private static void all(Map<DateOrder, LocalDate> days, Optional<LocalDate> day) {
    for (DateOrder order : DateOrder.values()) {
      day.ifPresent(d -> days.put(order, d));
    }
  }

  private static Optional<DateCell> cell(
      Map<DateOrder, LocalDate> days, boolean likely, String behind) {
    Optional<DayTime> time = DayTime.behind(behind);
    return days.isEmpty() || time.isEmpty() && !behind.isBlank()
        ? Optional.empty()
        : Optional.of(new DateCell(days, likely, time));
  }

  /** Years of two digits are of this century: no job is older. */
  private static Optional<LocalDate> day(String year, String month, String day) {
    try {
      int full = Integer.parseInt(year) + (year.length() == 4 ? 0 : 2000);
      return Optional.of(LocalDate.of(full, Integer.parseInt(month), Integer.parseInt(day)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /**
   * The time as a job file has it.
   *
   * @param order which number is the day
   * @param clock the time of day to write, whatever stands in the cell
   * @return such as 2026-11-24T14:30, the day alone where there is no time, or empty where it is no
   *     day in that order
   */
  Optional<String> told(DateOrder order, Optional<DayTime> clock) {
    return Optional.ofNullable(days.get(order))
        .map(day -> day + clock.map(t -> "T" + t.told()).orElse(""));
  }
}
