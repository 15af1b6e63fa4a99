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
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Dates and hours by CLDR patterns. The local date and time come from java.time's zone rules, so
 * that texts and computed dates can never disagree about a change of the clocks; ICU only writes
 * them. Safe for use by several threads.
 */
final class Dates {

  /** What is longer before or after the time that is spoken of has its year. */
  private static final int MONTHS_BEFORE = 6;

  private static final int MONTHS_AFTER = 9;

  private final Formats formats;

  /** The time that is spoken of; empty where no date has its year. */
  private final Optional<Instant> about;

  Dates(ULocale locale) {
    this(new Formats(locale), Optional.empty());
  }

  private Dates(Formats formats, Optional<Instant> about) {
    this.formats = formats;
    this.about = about;
  }

  /** The same for dates about a time. */
  Dates around(Instant time) {
    return new Dates(formats, Optional.of(time));
  }

  /** A way to write a day or a month, and the same with its year. */
  private record Form(Days bare, Days withYear) {}

  /**
   * A pattern that writes days, and what it wrote: the same few hundred are asked for all the time.
   */
  private record Days(SimpleDateFormat format, Map<LocalDate, String> written) {

    Days(SimpleDateFormat format) {
      this(format, new ConcurrentHashMap<>());
    }

    String write(LocalDate day) {
      return written.computeIfAbsent(day, d -> Dates.write(format, d.atStartOfDay()));
    }
  }

  /** The patterns of a language. */
  private static final class Formats {

    private final Form day;
    private final Form shortDay;
    private final Form monthDay;
    private final Form fullMonthDay;
    private final Form month;
    private final Days weekday;
    private final Days fullWeekday;
    private final SimpleDateFormat hour;
    private final SimpleDateFormat hourAndMinute;
    private final SimpleFormatter dayAndTime;

    Formats(ULocale locale) {
      DateTimePatternGenerator patterns = DateTimePatternGenerator.getInstance(locale);
      day = form(locale, patterns, "EEEEMMMMd");
      shortDay = form(locale, patterns, "EEEMMMd");
      monthDay = form(locale, patterns, "MMMd");
      fullMonthDay = form(locale, patterns, "MMMMd");
      month = new Form(days(locale, "LLLL"), days(locale, patterns.getBestPattern("yMMMM")));
      weekday = days(locale, patterns.getBestPattern("ccc"));
      fullWeekday = days(locale, patterns.getBestPattern("cccc"));
      hourAndMinute = format(locale, patterns.getBestPattern("jm"));
      String hourAlone = patterns.getBestPattern("j");
      boolean halfDays = hourAlone.indexOf('h') >= 0 || hourAlone.indexOf('K') >= 0;
      hour = halfDays ? format(locale, hourAlone) : hourAndMinute;
      dayAndTime = SimpleFormatter.compile(patterns.getDateTimeFormat(DateFormat.MEDIUM));
    }

    private static Form form(ULocale locale, DateTimePatternGenerator patterns, String skeleton) {
      return new Form(
          days(locale, patterns.getBestPattern(skeleton)),
          days(locale, patterns.getBestPattern("y" + skeleton)));
    }

    private static Days days(ULocale locale, String pattern) {
      return new Days(format(locale, pattern));
    }
  }

  private static SimpleDateFormat format(ULocale locale, String pattern) {
    SimpleDateFormat format = new SimpleDateFormat(pattern, locale);
    GregorianCalendar calendar = new GregorianCalendar(TimeZone.GMT_ZONE, locale);
    calendar.setGregorianChange(new Date(Long.MIN_VALUE));
    format.setCalendar(calendar);
    return format;
  }

  String day(Instant at, ZoneId zone) {
    return write(formats.day, at, zone);
  }

  String shortDay(Instant at, ZoneId zone) {
    return write(formats.shortDay, at, zone);
  }

  String weekday(Instant at, ZoneId zone) {
    return formats.weekday.write(at.atZone(zone).toLocalDate());
  }

  String monthDay(Instant at, ZoneId zone) {
    return write(formats.monthDay, at, zone);
  }

  String fullWeekday(Instant at, ZoneId zone) {
    return formats.fullWeekday.write(at.atZone(zone).toLocalDate());
  }

  String fullMonthDay(Instant at, ZoneId zone) {
    return write(formats.fullMonthDay, at, zone);
  }

  String month(Instant at, ZoneId zone) {
    return write(formats.month, at, zone);
  }

  String time(Instant at, ZoneId zone) {
    LocalDateTime local = at.atZone(zone).toLocalDateTime();
    return write(local.getMinute() == 0 ? formats.hour : formats.hourAndMinute, local);
  }

  String dayAndTime(Instant at, ZoneId zone) {
    return formats.dayAndTime.format(time(at, zone), day(at, zone));
  }

  String date(LocalDate at) {
    return formats.fullMonthDay.withYear().write(at);
  }

  private String write(Form form, Instant at, ZoneId zone) {
    LocalDate day = at.atZone(zone).toLocalDate();
    boolean isFar =
        about
            .map(time -> time.atZone(zone).toLocalDate())
            .filter(
                now ->
                    day.isBefore(now.minusMonths(MONTHS_BEFORE))
                        || day.isAfter(now.plusMonths(MONTHS_AFTER)))
            .isPresent();
    return (isFar ? form.withYear() : form.bare()).write(day);
  }

  private static String write(SimpleDateFormat format, LocalDateTime local) {
    Date asIfUtc = Date.from(local.toInstant(ZoneOffset.UTC));
    synchronized (format) {
      return Spaces.common(format.format(asIfUtc));
    }
  }
}
