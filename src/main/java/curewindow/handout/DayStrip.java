package curewindow.handout;

import curewindow.cure.Release;
import curewindow.told.JobView;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The table of the days from pickup to the last date, with a line for each date. As on the
 * customer's page, distance grows with the square root of time, so that the first days get the
 * room. Lengths are percentages of the lines' width, from the side on which the language begins.
 */
final class DayStrip {

  /** The width of the lines and the size of the names above them, as the template has them. */
  private static final double WIDTH = 33.5;

  private static final double POINTS = 10;

  /** Between two names, percent. */
  private static final double GAP = 4;

  private final JobView view;
  private final Instant start;
  private final Instant last;
  private final ZoneId zone;

  private DayStrip(JobView view, List<Release> releases) {
    this.view = view;
    start = view.timeline().pickup();
    zone = view.timeline().zone();
    last = releases.stream().map(r -> r.end().at()).max(Instant::compareTo).orElse(start);
  }

  /**
   * The table.
   *
   * @param rows the dates
   * @param days the days that are named above them
   */
  record Picture(List<Row> rows, List<Day> days) {}

  /**
   * A day that is named.
   *
   * @param name the day in few letters
   * @param at where the middle of its name is
   * @param tick where the day itself is: its noon, or the last date
   */
  record Day(String name, String at, String tick) {}

  /**
   * A date.
   *
   * @param what it is about
   * @param when the day, and the hour where it has one
   * @param brief the same without the weekday
   * @param kind {@code hold} or {@code settle}
   * @param solid how long the wait is in most weathers
   * @param open how long it may still be after that
   * @param end where it is over
   */
  record Row(
      String what, String when, String brief, String kind, String solid, String open, String end) {}

  static Picture of(JobView view, List<Release> releases) {
    DayStrip strip = new DayStrip(view, releases);
    return new Picture(releases.stream().map(strip::row).toList(), strip.days());
  }

  private Row row(Release release) {
    var line = CommonWords.line(view, release);
    double end = part(release.end().at());
    double likely = Math.min(end, part(release.likely()));
    return new Row(
        line.get("what"),
        line.get("when"),
        line.get("brief"),
        release.kind().id(),
        percent(likely),
        percent(end - likely),
        percent(end));
  }

  /**
   * The day of the last date at the far end, and as many before it as have room for their names.
   */
  private List<Day> days() {
    List<Day> days = new ArrayList<>();
    double free = GAP / 2;
    String end = view.words().monthDay(last, zone);
    boolean ends = free + room(end) - GAP <= 100;
    double most = ends ? 100 - room(end) : 100 + GAP;
    for (int after = 1; at(after).isBefore(last); after++) {
      Instant noon = at(after);
      String name = view.words().monthDay(noon, zone);
      double half = room(name) / 2;
      double at = part(noon);
      if (at - half >= free && at + half <= most) {
        days.add(new Day(name, percent(at), percent(at)));
        free = at + half;
      }
    }
    if (ends) {
      days.add(new Day(end, percent(100 - (room(end) - GAP) / 2), percent(100)));
    }
    return days;
  }

  /** Noon of a day after pickup. */
  private Instant at(int after) {
    return start.atZone(zone).toLocalDate().plusDays(after).atTime(12, 0).atZone(zone).toInstant();
  }

  /** The room that a name takes, percent. */
  private static double room(String name) {
    return 100 * PaperFont.NARROW.width(name, POINTS) / WIDTH + GAP;
  }

  private double part(Instant at) {
    double span = Duration.between(start, last).toMillis();
    double gone = Duration.between(start, at).toMillis();
    return span <= 0 ? 0 : 100 * Math.sqrt(Math.min(1, Math.max(0, gone / span)));
  }

  private static String percent(double value) {
    return String.format(Locale.ROOT, "%.1f%%", value);
  }
}
