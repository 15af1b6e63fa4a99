package curewindow.handout;

import curewindow.cure.Release;
import curewindow.told.JobView;
import curewindow.told.When;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The picture of the days from pickup to the last date, for paper. As on the customer's page,
 * distance grows with the square root of time, so that the first days get the room. Lengths are
 * percentages of the picture's width, from the side on which the language begins.
 */
final class DayStrip {

  private final Instant start;
  private final Instant last;
  private final ZoneId zone;

  private DayStrip(JobView view, List<Release> releases) {
    start = view.timeline().pickup();
    zone = view.timeline().zone();
    last = releases.stream().map(r -> r.end().at()).max(Instant::compareTo).orElse(start);
  }

  /**
   * The picture.
   *
   * @param rows the dates
   * @param ticks where each midnight is
   */
  record Picture(List<Row> rows, List<String> ticks) {}

  /**
   * A date.
   *
   * @param label what it is about
   * @param link until
   * @param day the date in few letters
   * @param kind {@code hold} or {@code settle}
   * @param solid how long the wait is in most weathers
   * @param may from where it may still be
   * @param open how long it may still be
   * @param end where it is over
   */
  record Row(
      String label,
      String link,
      String day,
      String kind,
      String solid,
      String may,
      String open,
      String end) {}

  static Picture of(JobView view, List<Release> releases) {
    DayStrip strip = new DayStrip(view, releases);
    When when = new When(view);
    List<Row> rows = new ArrayList<>();
    for (Release release : releases) {
      var line = CommonWords.line(view, release);
      rows.add(strip.row(release, line.get("what"), line.get("link"), when.shortDay(release)));
    }
    return new Picture(rows, strip.ticks());
  }

  private Row row(Release release, String label, String link, String day) {
    double end = part(release.end().at());
    double likely = Math.min(end, part(release.likely()));
    return new Row(
        label,
        link,
        day,
        release.kind().id(),
        percent(likely),
        percent(likely),
        percent(end - likely),
        percent(end));
  }

  private List<String> ticks() {
    List<String> ticks = new ArrayList<>();
    LocalDate day = start.atZone(zone).toLocalDate().plusDays(1);
    for (; !day.atStartOfDay(zone).toInstant().isAfter(last); day = day.plusDays(1)) {
      ticks.add(percent(part(day.atStartOfDay(zone).toInstant())));
    }
    return ticks;
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
