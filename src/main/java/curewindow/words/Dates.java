package curewindow.words;

import com.ibm.icu.text.DateFormat;
import com.ibm.icu.text.DateTimePatternGenerator;
import com.ibm.icu.text.SimpleDateFormat;
import com.ibm.icu.text.SimpleFormatter;
import com.ibm.icu.util.GregorianCalendar;
import com.ibm.icu.util.TimeZone;
import com.ibm.icu.util.ULocale;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Date;

/**
 * Dates and hours by CLDR patterns. The local date and time come from java.time's zone rules, so
 * that texts and computed dates can never disagree about a change of the clocks; ICU only writes
 * them. Safe for use by several threads.
 */
final class Dates {

  private final SimpleDateFormat day;
  private final SimpleDateFormat shortDay;
  private final SimpleDateFormat weekday;
  private final SimpleDateFormat monthDay;
  private final SimpleDateFormat fullWeekday;
  private final SimpleDateFormat fullMonthDay;
  private final SimpleDateFormat month;
  private final SimpleDateFormat date;
  private final SimpleDateFormat hour;
  private final SimpleDateFormat hourAndMinute;
  private final SimpleFormatter dayAndTime;

  Dates(ULocale locale) {
    DateTimePatternGenerator patterns = DateTimePatternGenerator.getInstance(locale);
    day = format(locale, patterns.getBestPattern("EEEEMMMMd"));
    shortDay = format(locale, patterns.getBestPattern("EEEMMMd"));
    weekday = format(locale, patterns.getBestPattern("ccc"));
    monthDay = format(locale, patterns.getBestPattern("MMMd"));
    fullWeekday = format(locale, patterns.getBestPattern("cccc"));
    fullMonthDay = format(locale, patterns.getBestPattern("MMMMd"));
    month = format(locale, "LLLL");
    date = format(locale, patterns.getBestPattern("yMMMMd"));
    hourAndMinute = format(locale, patterns.getBestPattern("jm"));
    String hourAlone = patterns.getBestPattern("j");
    boolean halfDays = hourAlone.indexOf('h') >= 0 || hourAlone.indexOf('K') >= 0;
    hour = halfDays ? format(locale, hourAlone) : hourAndMinute;
    dayAndTime = SimpleFormatter.compile(patterns.getDateTimeFormat(DateFormat.MEDIUM));
  }

  private static SimpleDateFormat format(ULocale locale, String pattern) {
    SimpleDateFormat format = new SimpleDateFormat(pattern, locale);
    GregorianCalendar calendar = new GregorianCalendar(TimeZone.GMT_ZONE, locale);
    calendar.setGregorianChange(new Date(Long.MIN_VALUE));
    format.setCalendar(calendar);
    return format;
  }

  String day(Instant at, ZoneId zone) {
    return write(day, at.atZone(zone).toLocalDateTime());
  }

  String shortDay(Instant at, ZoneId zone) {
    return write(shortDay, at.atZone(zone).toLocalDateTime());
  }

  String weekday(Instant at, ZoneId zone) {
    return write(weekday, at.atZone(zone).toLocalDateTime());
  }

  String monthDay(Instant at, ZoneId zone) {
    return write(monthDay, at.atZone(zone).toLocalDateTime());
  }

  String fullWeekday(Instant at, ZoneId zone) {
    return write(fullWeekday, at.atZone(zone).toLocalDateTime());
  }

  String fullMonthDay(Instant at, ZoneId zone) {
    return write(fullMonthDay, at.atZone(zone).toLocalDateTime());
  }

  String month(Instant at, ZoneId zone) {
    return write(month, at.atZone(zone).toLocalDateTime());
  }

  String time(Instant at, ZoneId zone) {
    LocalDateTime local = at.atZone(zone).toLocalDateTime();
    return write(local.getMinute() == 0 ? hour : hourAndMinute, local);
  }

  String dayAndTime(Instant at, ZoneId zone) {
    return dayAndTime.format(time(at, zone), day(at, zone));
  }

  String date(LocalDate at) {
    return write(date, at.atStartOfDay());
  }

  private static String write(SimpleDateFormat format, LocalDateTime local) {
    Date asIfUtc = Date.from(local.toInstant(ZoneOffset.UTC));
    synchronized (format) {
      return Spaces.common(format.format(asIfUtc));
    }
  }
}
