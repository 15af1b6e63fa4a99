package curewindow.page;

import curewindow.cure.Release;
import curewindow.words.Words;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The picture of the days from pickup to the last release. Places along it are percentages of its
 * width, so that its text keeps its size on any screen. Distance grows with the square root of
 * time: the first days, in which most holds end, get the room, and the ticks at each midnight show
 * it.
 */
final class Strip {

  private static final int HIGH = 16;
  private static final int LOW = 20;
  private static final int HEAD = 26;
  private static final int ROW = 40;
  private static final int TEXT = 15;
  private static final int BAR = 21;

  /** A line at a midnight. */
  record Tick(String x, int top, int height, String kind) {}

  /** The name of a day over its tick. */
  record Day(String x, String text, String anchor) {}

  /** One hold. */
  record Bar(
      String label,
      String day,
      String kind,
      String mark,
      int textY,
      int y,
      int markY,
      int lineY,
      String x1,
      String w1,
      String x2,
      String w2,
      String end) {}

  /** The whole picture; sizes in CSS pixels, instants in seconds since 1970. */
  record Picture(
      int height,
      int todayY,
      long start,
      long span,
      Optional<String> flip,
      String left,
      String right,
      List<Tick> ticks,
      List<Day> days,
      List<Bar> bars,
      List<String> twin) {}

  /** Midnights nearer to each other than this, in percent, share a tick. */
  private static final double APART = 2.5;

  /** A letter of a day's name takes this share of the narrowest strip, in percent. */
  private static final double LETTER = 2.2;

  private final Instant start;
  private final Instant last;
  private final ZoneId zone;
  private final Words words;
  private final When when;
  private final List<Release> releases;

  /** The name of a day reaches over this share of the narrowest strip, in percent. */
  private final double name;

  Strip(JobView view) {
    releases = view.timeline().releases();
    zone = view.timeline().zone();
    words = view.words();
    when = new When(view);
    start = view.timeline().pickup();
    last = releases.stream().map(r -> r.end().at()).max(Instant::compareTo).orElse(start);
    int letters =
        Math.max(words.shortDay(start, zone).length(), words.shortDay(last, zone).length());
    name = Math.max(25, LETTER * letters);
  }

  /** The picture, or empty where nothing ends after pickup. */
  Optional<Picture> picture() {
    if (!last.isAfter(start)) {
      return Optional.empty();
    }
    int bottom = HEAD + releases.size() * ROW;
    List<Bar> bars = new ArrayList<>();
    for (int i = 0; i < releases.size(); i++) {
      bars.add(bar(releases.get(i), HEAD + i * ROW));
    }
    boolean flip = words.rightToLeft();
    return Optional.of(
        new Picture(
            bottom + 20,
            bottom + 6,
            start.getEpochSecond(),
            Duration.between(start, last).toSeconds(),
            flip ? Optional.of("1") : Optional.empty(),
            flip ? "100%" : "0",
            flip ? "0" : "100%",
            ticks(bottom),
            days(),
            bars,
            releases.stream().map(this::twin).toList()));
  }

  private Bar bar(Release release, int top) {
    double end = part(release.end().at());
    double likely = Math.min(end, part(release.likely()));
    return new Bar(
        Dated.shortLabel(release, words),
        when.shortDay(release),
        release.kind().id(),
        "#m-" + release.kind().id(),
        top + TEXT,
        top + BAR,
        top + BAR + 4,
        top + BAR + 4,
        percent(left(0, likely)),
        percent(likely),
        percent(left(likely, end)),
        percent(end - likely),
        percent(left(end, end)));
  }

  private List<Tick> ticks(int bottom) {
    List<Tick> ticks = new ArrayList<>();
    List<Instant> named = namedDays();
    ticks.add(new Tick(percent(left(0, 0)), HIGH, bottom - HIGH, "long"));
    double last = 0;
    for (Instant day : midnights()) {
      boolean isNamed = named.contains(day);
      if (!isNamed && part(day) - last < APART) {
        continue;
      }
      last = part(day);
      String x = percent(left(part(day), part(day)));
      int top = isNamed ? HIGH : LOW;
      int height = isNamed ? bottom - HIGH : HEAD - LOW;
      ticks.add(new Tick(x, top, height, isNamed ? "long" : "tick"));
    }
    return ticks;
  }

  private List<Day> days() {
    List<Day> days = new ArrayList<>();
    for (Instant day : namedDays()) {
      double at = left(part(day), part(day));
      days.add(new Day(percent(at), words.shortDay(day, zone), anchor(at)));
    }
    return days;
  }

  private String anchor(double at) {
    boolean low = at < name / 2;
    boolean high = at > 100 - name / 2;
    if (!low && !high) {
      return "middle";
    }
    return low != words.rightToLeft() ? "start" : "end";
  }

  /** Pickup, and midnights so far apart that their names fit on a screen 320 pixels wide. */
  private List<Instant> namedDays() {
    List<Instant> named = new ArrayList<>(List.of(start));
    double taken = name;
    for (Instant day : midnights()) {
      double at = part(day);
      double from = at > 100 - name / 2 ? at - name : at - name / 2;
      if (from >= taken) {
        named.add(day);
        taken = from + name;
      }
    }
    return named;
  }

  private List<Instant> midnights() {
    List<Instant> midnights = new ArrayList<>();
    LocalDate day = start.atZone(zone).toLocalDate().plusDays(1);
    for (; !day.atStartOfDay(zone).toInstant().isAfter(last); day = day.plusDays(1)) {
      midnights.add(day.atStartOfDay(zone).toInstant());
    }
    return midnights;
  }

  private double part(Instant at) {
    double span = Duration.between(start, last).toMillis();
    double gone = Duration.between(start, at).toMillis();
    return 100 * Math.sqrt(Math.min(1, Math.max(0, gone / span)));
  }

  /** The left edge of what reaches from one place to another. */
  private double left(double from, double to) {
    return words.rightToLeft() ? 100 - to : from;
  }

  private static String percent(double value) {
    return String.format(Locale.ROOT, "%.1f%%", value).replace(".0%", "%");
  }

  private String twin(Release release) {
    Optional<String> likely = when.likelyDay(release);
    Optional<String> full = when.fullBy(release);
    String key = full.isPresent() ? "twin-full" : likely.isPresent() ? "twin" : "twin-until";
    return words.text(
        "page.strip." + key,
        Map.of(
            "label",
            words.text("hold." + release.hold() + ".label"),
            "likely",
            likely.orElse(""),
            "full",
            full.orElse(""),
            "safe",
            when.dayAndTime(release)));
  }
}
