package curewindow.calendar;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.parameter.Related;
import biweekly.property.Status;
import biweekly.property.Summary;
import biweekly.property.Trigger;
import biweekly.util.DateTimeComponents;
import biweekly.util.DayOfWeek;
import biweekly.util.Duration;
import biweekly.util.Frequency;
import biweekly.util.ICalDate;
import biweekly.util.Recurrence;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Date;
import java.util.HashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes iCalendar text (RFC 5545): instants in UTC, days without a zone, lines folded by octets.
 * It names no method, so a file is a calendar to read and no invitation to answer; the stamp of an
 * event is then the time of its last change (3.8.7.2).
 */
final class CalendarText {

  private static final String PRODUCT = "-//Curewindow//Care dates//EN";
  private static final Duration LENGTH = Duration.builder().minutes(15).build();
  private static final Duration AT_ONCE = Duration.builder().seconds(0).build();
  private static final Duration EVENING_BEFORE = Duration.builder().prior(true).hours(6).build();
  private static final int WEEK = 7;

  private static final String BEGIN = "BEGIN:VEVENT\r\n";
  private static final String END = "END:VEVENT\r\n";
  private static final Pattern URL = Pattern.compile("^URL:(.*)$", Pattern.MULTILINE);

  private final ICalendar calendar = new ICalendar();
  private final String language;
  private final UnaryOperator<String> uids;

  /**
   * An empty calendar.
   *
   * @param name its name
   * @param language the language of its texts
   * @param uids the lasting name of each event by the name it has in its job
   */
  CalendarText(String name, String language, UnaryOperator<String> uids) {
    this.language = language;
    this.uids = uids;
    calendar.setProductId(PRODUCT);
    calendar.setName(Plain.text(name));
  }

  CalendarText add(CareEvent told, Revisions.Revision revision, String url) {
    VEvent event = event(told.name(), told.start(), revision);
    event.setTransparency(true);
    Summary summary = event.setSummary(Plain.text(told.summary()));
    summary.setLanguage(language);
    event.setDescription(Plain.text(told.details())).setLanguage(language);
    event.setUrl(url);
    told.location().ifPresent(where -> event.setLocation(Plain.text(where)));
    if (told.rings()) {
      Duration when = told.start() instanceof CareEvent.At ? AT_ONCE : EVENING_BEFORE;
      event.addAlarm(VAlarm.display(new Trigger(when, Related.START), summary.getValue()));
    }
    return this;
  }

  /** An event that was given out before and no longer holds. */
  CalendarText takeBack(Revisions.Gone gone, String url, String summary) {
    VEvent event = event(gone.name(), gone.start(), gone.revision());
    event.setUrl(url);
    event.setStatus(Status.cancelled());
    event.setSummary(Plain.text(summary)).setLanguage(language);
    return this;
  }

  private VEvent event(String name, CareEvent.Start start, Revisions.Revision revision) {
    VEvent event = new VEvent();
    event.setUid(uids.apply(name));
    event.setDateTimeStamp(Date.from(revision.changed()));
    event.setSequence(revision.sequence());
    if (start instanceof CareEvent.At at) {
      event.setDateStart(Date.from(at.at()));
      event.setDuration(LENGTH);
    } else if (start instanceof CareEvent.Day day) {
      event.setDateStart(date(day.day()), false);
      again(event, day);
    }
    calendar.addEvent(event);
    return event;
  }

  private static ICalDate date(LocalDate day) {
    return new ICalDate(
        new DateTimeComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth()), false);
  }

  /** On the same weekday of the month, so that it falls on a day of the week that is open. */
  private static void again(VEvent event, CareEvent.Day day) {
    if (day.times() == 1) {
      return;
    }
    int week = (day.day().getDayOfMonth() - 1) / WEEK + 1;
    DayOfWeek weekday = DayOfWeek.valueOf(day.day().getDayOfWeek().name());
    event.setRecurrenceRule(
        new Recurrence.Builder(Frequency.MONTHLY)
            .interval(day.months())
            .byDay(week == 5 ? -1 : week, weekday)
            .count(day.times())
            .build());
  }

  /** The text, lines ended by CR LF and folded at 75 octets; to be written as UTF-8. */
  String text() {
    StringWriter text = new StringWriter();
    try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
      writer.write(calendar);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Fold.lines(text.toString());
  }

  /** The events alone, as they stand in {@link #text}. */
  String events() {
    String text = text();
    int first = text.indexOf(BEGIN);
    return first < 0 ? "" : text.substring(first, text.lastIndexOf(END) + END.length());
  }

  /** The text with events from elsewhere, as of {@link #events}. */
  String with(Collection<String> events) {
    String text = text();
    int end = text.lastIndexOf("END:VCALENDAR");
    return text.substring(0, end) + String.join("", events) + text.substring(end);
  }

  /** The events of a text by their URL; those of one stand together. */
  static Map<String, String> byAddress(String text) {
    Map<String, String> events = new HashMap<>();
    int from = text.indexOf(BEGIN);
    while (from >= 0) {
      int to = text.indexOf(END, from) + END.length();
      String event = text.substring(from, to);
      Matcher url = URL.matcher(event.replace("\r\n ", ""));
      if (url.find()) {
        events.merge(url.group(1), event, String::concat);
      }
      from = text.indexOf(BEGIN, to);
    }
    return events;
  }

  /** The time of the first revision of a job's dates, where no later one is known. */
  static Instant first(Instant pickup) {
    return Instant.ofEpochSecond(pickup.getEpochSecond());
  }
}
