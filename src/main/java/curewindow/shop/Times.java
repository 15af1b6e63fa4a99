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
final class Times {

  private static final Pattern FORM =
      Pattern.compile(
          "([0-9]{4}-[0-9]{2}-[0-9]{2})"
              + "(?:[T ]([0-9]{2}:[0-9]{2}(?::[0-9]{2})?)(Z|[+-][0-9]{2}:[0-9]{2})?)?");
  private static final DateTimeFormatter SHOWN =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm", Locale.ROOT);
  private static final int FIRST_YEAR = 2000;
  private static final int LAST_YEAR = 2100;

  private Times() {}

  /**
   * A moment.
   *
   * @param leaf the value, a local time or one with its offset
   * @param zone the zone of local times; empty where none is known
   * @param source where problems go
   * @return the moment, or empty after telling why not
   */
  static Optional<Instant> moment(Leaf leaf, Optional<ZoneId> zone, Source source) {
    String text = leaf.text().strip();
    Matcher form = FORM.matcher(text);
    if (!form.matches()) {
      String what = "is not a time: " + Source.shown(text);
      return none(leaf, "not-a-time", what, "write it as 2026-11-25T14:30", source);
    }
    if (form.group(2) == null) {
      String fix = "add the hour: " + text + "T14:30";
      return none(leaf, "no-hour", "has a date without an hour", fix, source);
    }
    try {
      LocalDateTime local = LocalDate.parse(form.group(1)).atTime(LocalTime.parse(form.group(2)));
      if (local.getYear() < FIRST_YEAR || local.getYear() >= LAST_YEAR) {
        return yearOff(leaf, source);
      }
      return form.group(3) == null
          ? local(local, leaf, zone, source)
          : Optional.of(local.toInstant(ZoneOffset.of(form.group(3))));
    } catch (DateTimeException e) {
      String what = "names a day, hour or offset that does not exist: " + Source.shown(text);
      String fix = "check the month, the day, the hour and the offset";
      return none(leaf, "not-a-time", what, fix, source);
    }
  }

  private static Optional<Instant> local(
      LocalDateTime local, Leaf leaf, Optional<ZoneId> zone, Source source) {
    if (zone.isEmpty()) {
      String fix =
          "set zone: in shop.yaml, or write the offset behind the time, such as "
              + SHOWN.format(local)
              + "-08:00";
      return none(leaf, "no-time-zone", "has no time zone", fix, source);
    }
    List<ZoneOffset> offsets = zone.get().getRules().getValidOffsets(local);
    if (offsets.size() == 1) {
      return Optional.of(local.toInstant(offsets.get(0)));
    }
    ZoneOffsetTransition change = zone.get().getRules().getTransition(local);
    String fromTo =
        " from "
            + SHOWN.format(change.getDateTimeBefore())
            + " to "
            + SHOWN.format(change.getDateTimeAfter());
    if (offsets.isEmpty()) {
      String what = "does not exist: the clocks of " + zone.get() + " skip" + fromTo;
      return none(leaf, "skipped-time", what, "write the time that the clock showed", source);
    }
    String what = "happens twice: the clocks of " + zone.get() + " go back" + fromTo;
    return none(leaf, "doubled-time", what, bothOf(local, offsets), source);
  }

  private static String bothOf(LocalDateTime local, List<ZoneOffset> offsets) {
    String time = SHOWN.format(local);
    return "write the offset behind it: "
        + (time + offsets.get(0) + " for the first, ")
        + (time + offsets.get(1) + " for the second");
  }

  /** A day of the calendar. */
  static Optional<LocalDate> day(Leaf leaf, Source source) {
    try {
      LocalDate day = LocalDate.parse(leaf.text().strip());
      if (day.getYear() >= FIRST_YEAR && day.getYear() < LAST_YEAR) {
        return Optional.of(day);
      }
      return yearOff(leaf, source);
    } catch (DateTimeException e) {
      String what = "is not a day: " + Source.shown(leaf.text());
      return none(leaf, "not-a-date", what, "write it as 2026-12-25", source);
    }
  }

  private static <T> Optional<T> yearOff(Leaf leaf, Source source) {
    String what = "is in the year " + Source.shown(leaf.text().strip().substring(0, 4));
    String fix = "check the year; it should be from " + FIRST_YEAR + " to " + (LAST_YEAR - 1);
    return none(leaf, "out-of-range", what, fix, source);
  }

  private static <T> Optional<T> none(
      Leaf leaf, String code, String what, String fix, Source source) {
    source.error(code, leaf.where(), Values.lastKey(leaf) + " " + what, fix);
    return Optional.empty();
  }
}
