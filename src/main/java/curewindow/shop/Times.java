package curewindow.shop;

import curewindow.shop.Node.Leaf;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.zone.ZoneOffsetTransition;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads times, which are only a moment together with a time zone, and dates. */
public final class Times {

  /** What options take that need no hour, in words. */
  static final String FORMS =
      "a day such as 2026-12-02, a time by the shop's clock such as 2026-12-02T09:00, or one with its"
          + " offset such as 2026-12-02T09:00-08:00";

  private static final int FIRST_YEAR = 2000;
  private static final int LAST_YEAR = 2099;

  /** Those of the clocks farthest west and east. */
  private static final ZoneOffset LEAST_OFFSET = ZoneOffset.ofHours(-12);

  private static final ZoneOffset MOST_OFFSET = ZoneOffset.ofHours(14);

  private Times() {}

  /**
   * Reads a time with its hour.
   *
   * @param typed a local time, or one with its offset, of the years 2000 to 2099
   * @param zone the zone of local times; empty where none is known
   * @return the moment, or what is wrong; {@link TypedTime.Zoneless} only where no zone is known
   */
  public static TypedTime read(String typed, Optional<ZoneId> zone) {
    Reading reading = new Reading(typed.strip(), zone, OtherTimes.Hour.NEEDED);
    return reading.isDay()
        ? new TypedTime.Wrong(
            "no-hour", "has a date without an hour", "add the hour: " + typed.strip() + "T14:30")
        : reading.moment();
  }

  /**
   * Reads a time whose hour may be left out.
   *
   * @param typed a day, which stands for its first moment, or a time
   * @param zone the zone of days and local times
   * @return the moment, or what is wrong
   */
  public static TypedTime readOrDay(String typed, ZoneId zone) {
    Reading reading = new Reading(typed.strip(), Optional.of(zone), OtherTimes.Hour.POSSIBLE);
    return reading.isDay() ? reading.startOfDay() : reading.moment();
  }

  /**
   * A moment.
   *
   * @param leaf the value, a local time or one with its offset
   * @param zone the zone of local times; empty where none is known
   * @param source where problems go
   * @return the moment; empty after telling why not, or where it lacks its zone
   */
  static Optional<Instant> moment(Leaf leaf, Optional<ZoneId> zone, Source source) {
    TypedTime read = read(leaf.text(), zone);
    if (read instanceof TypedTime.Wrong wrong) {
      return none(leaf, wrong, source);
    }
    // A zone that is missing is told once, in shop.yaml.
    return read instanceof TypedTime.Moment moment ? Optional.of(moment.at()) : Optional.empty();
  }

  /** A day of the calendar. */
  static Optional<LocalDate> day(Leaf leaf, Source source) {
    String text = leaf.text().strip();
    try {
      LocalDate day = LocalDate.parse(text);
      if (!Reading.isOff(day.getYear())) {
        return Optional.of(day);
      }
      return none(leaf, Reading.yearOff(Integer.toString(day.getYear())), source);
    } catch (DateTimeException e) {
      Reading reading = new Reading(text, Optional.empty(), OtherTimes.Hour.NEVER);
      return none(leaf, reading.isDay() ? reading.noDay() : reading.otherForm(), source);
    }
  }

  private static <T> Optional<T> none(Leaf leaf, TypedTime.Wrong wrong, Source source) {
    source.error(
        wrong.code(), leaf.where(), Values.lastKey(leaf) + " " + wrong.what(), wrong.fix());
    return Optional.empty();
  }

  /** What is typed, and how it is read. */
  private record Reading(String text, Optional<ZoneId> zone, OtherTimes.Hour hour) {

    private static final Pattern FORM =
        Pattern.compile(
            "([0-9]{4}-[0-9]{2}-[0-9]{2})"
                + "(?:[T ]([0-9]{2}:[0-9]{2}(?::[0-9]{2})?)(Z|[+-][0-9]{2}:[0-9]{2})?)?");
    private static final DateTimeFormatter SHOWN =
        DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm", Locale.ROOT);

    boolean isDay() {
      Matcher form = FORM.matcher(text);
      return form.matches() && form.group(2) == null;
    }

    private static boolean isOff(int year) {
      return year < FIRST_YEAR || year > LAST_YEAR;
    }

    private static TypedTime.Wrong yearOff(String year) {
      return new TypedTime.Wrong(
          "year-off",
          "is in the year " + year,
          "check the year; it should be from " + FIRST_YEAR + " to " + LAST_YEAR);
    }

    TypedTime startOfDay() {
      try {
        LocalDate day = LocalDate.parse(text);
        return isOff(day.getYear())
            ? yearOff(text.substring(0, 4))
            : new TypedTime.Moment(day.atStartOfDay(zone.orElseThrow()).toInstant());
      } catch (DateTimeException e) {
        return noDay();
      }
    }

    TypedTime moment() {
      Matcher form = FORM.matcher(text);
      if (!form.matches()) {
        return otherForm();
      }
      try {
        LocalDate day = LocalDate.parse(form.group(1));
        if (isOff(day.getYear())) {
          return yearOff(text.substring(0, 4));
        }
        if (form.group(2).startsWith("24:00")) {
          return midnight(day);
        }
        LocalDateTime local = day.atTime(LocalTime.parse(form.group(2)));
        return form.group(3) == null ? local(local) : at(local, ZoneOffset.of(form.group(3)));
      } catch (DateTimeException e) {
        return isDate(form.group(1))
            ? missing("time or offset", "the hour, the minute and the offset")
            : noDay();
      }
    }

    private static boolean isDate(String text) {
      try {
        LocalDate.parse(text);
        return true;
      } catch (DateTimeException e) {
        return false;
      }
    }

    private TypedTime.Wrong midnight(LocalDate day) {
      return new TypedTime.Wrong(
          "not-a-time",
          "names an hour that no clock shows: " + Source.shown(text),
          "midnight at the end of that day is " + day.plusDays(1) + "T00:00");
    }

    /** What is written in another form, which may be as in daily life. */
    TypedTime.Wrong otherForm() {
      if (OtherTimes.isNoDay(text)) {
        return noDay();
      }
      String what = hour == OtherTimes.Hour.NEVER ? "is not a day: " : "is not a time: ";
      return new TypedTime.Wrong(
          hour == OtherTimes.Hour.NEVER ? "not-a-date" : "not-a-time",
          what + Source.shown(text),
          OtherTimes.fix(text, hour));
    }

    TypedTime.Wrong noDay() {
      return missing("day", "the month, the day and the year");
    }

    private static TypedTime at(LocalDateTime local, ZoneOffset offset) {
      int seconds = offset.getTotalSeconds();
      return seconds < LEAST_OFFSET.getTotalSeconds() || seconds > MOST_OFFSET.getTotalSeconds()
          ? new TypedTime.Wrong(
              "no-such-offset",
              "has an offset that no clock has: " + offset,
              "check it; offsets go from " + LEAST_OFFSET + " to " + MOST_OFFSET)
          : new TypedTime.Moment(local.toInstant(offset));
    }

    private TypedTime.Wrong missing(String what, String check) {
      return new TypedTime.Wrong(
          hour == OtherTimes.Hour.NEVER ? "not-a-date" : "not-a-time",
          "names a " + what + " that does not exist: " + Source.shown(text),
          "check " + check);
    }

    private TypedTime local(LocalDateTime local) {
      if (zone.isEmpty()) {
        return new TypedTime.Zoneless();
      }
      List<ZoneOffset> offsets = zone.get().getRules().getValidOffsets(local);
      return offsets.size() == 1
          ? new TypedTime.Moment(local.toInstant(offsets.get(0)))
          : changing(local, offsets);
    }

    /** An hour that the clocks skip, or show twice. */
    private TypedTime.Wrong changing(LocalDateTime local, List<ZoneOffset> offsets) {
      ZoneOffsetTransition change = zone.orElseThrow().getRules().getTransition(local);
      String fromTo =
          " from "
              + SHOWN.format(change.getDateTimeBefore())
              + " to "
              + SHOWN.format(change.getDateTimeAfter());
      return offsets.isEmpty()
          ? new TypedTime.Wrong(
              "skipped-time",
              "does not exist: the clocks of " + zone.get() + " skip" + fromTo,
              "write the time that the clock showed")
          : new TypedTime.Wrong(
              "doubled-time",
              "happens twice: the clocks of " + zone.get() + " go back" + fromTo,
              bothOf(local, offsets));
    }

    private static String bothOf(LocalDateTime local, List<ZoneOffset> offsets) {
      String time = SHOWN.format(local);
      return "write the offset behind it: "
          + (time + offsets.get(0) + " for the first, ")
          + (time + offsets.get(1) + " for the second");
    }
  }
}
