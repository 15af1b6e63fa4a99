package curewindow.why;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.page.JobView;
import curewindow.page.VisitWords;
import curewindow.page.When;
import curewindow.told.Visit;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** A job's dates in few English words, as people at the counter say them. */
final class Told {

  private static final DateTimeFormatter HOUR = pattern(", h a");
  private static final DateTimeFormatter WEEKDAY = pattern("EEE ");
  private static final DateTimeFormatter DAY = pattern("MMM d");
  private static final DateTimeFormatter YEAR = pattern(" yyyy");

  private final JobView view;

  /** The year that goes without saying; 0 where each date has its own. */
  private final int year;

  private Told(JobView view, int year) {
    this.view = view;
    this.year = year;
  }

  /** Dates that name their year only where it is not that of the pickup. */
  static Told besidePickup(JobView view) {
    return new Told(view, view.timeline().pickup().atZone(view.timeline().zone()).getYear());
  }

  /** Dates that all name their year. */
  static Told alone(JobView view) {
    return new Told(view, 0);
  }

  private static DateTimeFormatter pattern(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, Locale.US);
  }

  String label(Release release) {
    return view.words().text("hold." + release.hold() + ".label");
  }

  /** When, and in which sense, such as {@code Sun Dec 13, 1 PM, at the limit (60 % set)}. */
  String end(Release release) {
    if (release.end() instanceof Release.BySeason) {
      String season = new When(view).shortDay(release);
      String year = year(local(release.end().at()).toLocalDate());
      return season.endsWith(year) ? season : season + year;
    }
    ZonedDateTime at = local(release.end().at());
    return weekday(at.toLocalDate()) + HOUR.format(at) + ", " + state(release);
  }

  /** The day alone, such as {@code Sun Dec 13}. */
  String endDay(Release release) {
    return weekday(local(release.end().at()).toLocalDate());
  }

  private static String state(Release release) {
    if (release.end() instanceof Release.AtLimit limit) {
      return String.format(
          Locale.ROOT, "at the limit (%.0f%% set)", Math.min(99, 100 * limit.share()));
    }
    if (release.end() instanceof Release.Seen) {
      return "over, seen by us";
    }
    return release.kind() == HoldKind.HOLD ? "safe by then" : "settled by then";
  }

  /** What is left to be careful with, such as {@code , then gently}; empty where nothing is. */
  String gently(Release release) {
    return release
        .gentleUntil()
        .map(full -> ", then gently, all set about " + day(local(full).toLocalDate()))
        .orElse("");
  }

  String label(Visit visit) {
    return VisitWords.title(visit, view.words());
  }

  String day(Visit visit) {
    return (visit.byPhoto() ? "from " : "any open day from ") + weekday(visit.day()) + " on";
  }

  private ZonedDateTime local(Instant at) {
    return at.atZone(view.timeline().zone());
  }

  private String weekday(LocalDate day) {
    return WEEKDAY.format(day) + day(day);
  }

  private String day(LocalDate day) {
    return DAY.format(day) + year(day);
  }

  private String year(LocalDate day) {
    return day.getYear() == year ? "" : YEAR.format(day);
  }
}
