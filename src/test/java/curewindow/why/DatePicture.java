package curewindow.why;

import curewindow.climate.Climates;
import curewindow.cure.CureCase;
import curewindow.cure.Curing;
import curewindow.cure.Explanation;
import curewindow.cure.ExplanationWay;
import curewindow.cure.Release;
import curewindow.site.LoadedShop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/**
 * Draws how a date of the demo job comes about, for docs/dates-for-shops.md: the weather, the film,
 * the dose against the need, and the ends in all weathers.
 */
final class DatePicture {

  static final Path FILE = Path.of("docs/pictures/how-a-date-comes-about.svg");

  private static final String JOB = "Q-3101";
  private static final String HOLD = "windows-up";
  private static final int MEMBERS = 32;
  private static final int WIDTH = 760;
  private static final int HEIGHT = 742;
  private static final int SQUARE = 14;
  private static final double LEFT = 64;
  private static final double RIGHT = 736;
  private static final String FAT = "stroke=\"" + Ink.INK + "\" stroke-width=\"2.5\"";
  private static final String DASHED =
      "stroke=\"" + Ink.INK + "\" stroke-width=\"1.8\" stroke-dasharray=\"7 4\"";
  private static final String WARM = "stroke=\"" + Ink.ACCENT + "\" stroke-width=\"3\"";
  private static final String THIN = "stroke-width=\"0.5\" opacity=\"0.5\"";
  private static final String DOTTED = "stroke-width=\"1.2\" stroke-dasharray=\"1.5 4\"";
  private static final String SMALL = "font-size=\"12\"";
  private static final String MIDDLE = "font-size=\"12\" text-anchor=\"middle\"";
  private static final String END = "font-size=\"12\" text-anchor=\"end\"";

  private final Explanation explanation;
  private final Instant published;
  private final ZoneId zone;
  private final Instant first;
  private final Instant last;
  private final Ink ink =
      new Ink(
          WIDTH,
          HEIGHT,
          "How a date comes about",
          "Four strips over the same days: outside air, dew point and sun; the temperature of the"
              + " film; the reference hours it has gained, up to the need; and the day on which the"
              + " wait ends in each of 32 weathers, with the published date.");

  private DatePicture(Explanation explanation, Instant published, ZoneId zone) {
    this.explanation = explanation;
    this.published = published;
    this.zone = zone;
    this.first = explanation.safe().finished();
    List<Instant> met = explanation.ends().met();
    Instant latest = met.get(met.size() - 1);
    this.last =
        LocalDate.ofInstant(latest.isAfter(published) ? latest : published, zone)
            .plusDays(1)
            .atStartOfDay(zone)
            .toInstant();
  }

  /** Draws the picture anew. */
  public static void main(String[] arguments) throws IOException {
    Files.createDirectories(FILE.getParent());
    Files.writeString(FILE, drawn());
  }

  static String drawn() {
    LoadedShop shop = LoadedShop.load(Path.of("content/demo"), Clock.systemUTC());
    CureCase job = shop.cureCase(shop.job(JOB).orElseThrow());
    Curing curing = Curing.with(place -> Climates.ensemble(place, MEMBERS));
    Release release = curing.timeline(job).of(HOLD).orElseThrow();
    return new DatePicture(curing.explanation(job, HOLD), release.end().at(), job.place().zone())
        .picture();
  }

  private String picture() {
    ink.text(LEFT, 30, "font-size=\"19\" font-weight=\"bold\"", "How a date comes about");
    ink.text(
        LEFT,
        49,
        SMALL,
        "Window tint, finished in Seattle in late November, car parked outside: when may the windows"
            + " roll?");
    days();
    weather(70, 200);
    film(220, 340);
    dose(360, 530);
    fan(550, 690);
    return ink.done();
  }

  private double x(Instant at) {
    double share =
        Duration.between(first, at).getSeconds()
            / (double) Duration.between(first, last).getSeconds();
    return LEFT + share * (RIGHT - LEFT);
  }

  private void days() {
    LocalDate day = LocalDate.ofInstant(first, zone);
    DateTimeFormatter name = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    while (day.atStartOfDay(zone).toInstant().isBefore(last)) {
      Instant midnight = day.atStartOfDay(zone).toInstant();
      Instant next = day.plusDays(1).atStartOfDay(zone).toInstant();
      double from = x(midnight.isBefore(first) ? first : midnight);
      if (midnight.isAfter(first)) {
        grid(from);
      }
      if (x(next) - from > 50) {
        ink.text((from + x(next)) / 2, 708, MIDDLE, name.format(day));
      }
      day = day.plusDays(1);
    }
  }

  /** Midnight, in the strips but not through their titles. */
  private void grid(double x) {
    double[][] strips = {{90, 200}, {240, 340}, {380, 530}, {570, 690}};
    for (double[] strip : strips) {
      ink.line(x, strip[0], x, strip[1], THIN);
    }
  }

  private void frame(double top, double bottom, String title) {
    ink.line(LEFT, top, LEFT, bottom, "");
    ink.line(LEFT, bottom, RIGHT, bottom, "");
    ink.text(LEFT + 8, top + 14, "font-weight=\"bold\"", title);
  }

  private void weather(double top, double bottom) {
    frame(top, bottom, "1  The weather, here one of the colder ones");
    Scale scale = scale(top + 26, bottom);
    for (ExplanationWay.Stretch day : explanation.safe().days()) {
      double height = Math.min(60, day.sun() * 12);
      if (!day.inBay() && height > 0.5) {
        double middle = (x(day.from()) + x(day.to())) / 2;
        ink.box(
            middle - 9,
            bottom - height,
            18,
            height,
            "fill=\"url(#rays)\" stroke=\"" + Ink.ACCENT + "\"");
      }
    }
    steps(scale, ExplanationWay.Stretch::air, FAT);
    steps(scale, ExplanationWay.Stretch::dewPoint, DASHED);
    scale.marks(ink);
    bay(top + 20, bottom);
    ink.text(
        RIGHT,
        top + 14,
        END,
        "line: air \u00b7 dashes: dew point \u00b7 dotted bars: the day's sun");
  }

  private void film(double top, double bottom) {
    frame(top, bottom, "2  The film on the glass");
    Scale scale = scale(top + 26, bottom);
    steps(scale, ExplanationWay.Stretch::film, WARM);
    scale.marks(ink);
    bay(top + 20, bottom);
    ink.text(RIGHT, top + 14, END, "warm in the shop's bay, then as the weather has it");
  }

  private void dose(double top, double bottom) {
    ExplanationWay safe = explanation.safe();
    frame(top, bottom, "3  What the glue has gained");
    Scale scale = new Scale(0, safe.needHours() * 1.1, top + 34, bottom);
    double need = scale.y(safe.needHours());
    ink.line(LEFT, need, RIGHT, need, "stroke-width=\"1.5\"");
    ink.text(
        LEFT + 8,
        need - 4,
        SMALL,
        String.format(Locale.ROOT, "the need: %.0f reference hours", safe.needHours()));
    bay(need, bottom);
    gained(scale, explanation.likely(), DASHED);
    gained(scale, safe, WARM);
    double floor = x(safe.floor());
    ink.line(floor, need, floor, bottom, DOTTED);
    ink.text(floor + 4, bottom - 6, SMALL, "floor: never sooner");
    for (int hours = 0; hours < safe.needHours(); hours += 12) {
      ink.text(LEFT - 6, scale.y(hours) + 4, END, hours + " h");
    }
    ink.text(RIGHT, top + 14, END, "thick: the colder weather \u00b7 dashes: the middle one");
  }

  private void gained(Scale scale, ExplanationWay walk, String style) {
    List<double[]> points = new ArrayList<>();
    points.add(new double[] {x(walk.finished()), scale.y(0)});
    for (ExplanationWay.Stretch day : walk.days()) {
      points.add(new double[] {x(day.to()), scale.y(day.doseAtEnd())});
    }
    ink.path(points, style);
  }

  private void fan(double top, double bottom) {
    frame(top, bottom, "4  The end in each of " + explanation.ends().weathers() + " weathers");
    Map<Long, Integer> stacked = new TreeMap<>();
    int number = 0;
    int kept = (90 * explanation.ends().weathers() + 99) / 100;
    for (Instant at : explanation.ends().met()) {
      number++;
      long column = Math.round((x(at) - LEFT) / SQUARE);
      int height = stacked.merge(column, 1, Integer::sum);
      String fill = number <= kept ? Ink.INK : "url(#rain)";
      ink.box(
          LEFT + column * SQUARE - 6,
          bottom - height * SQUARE,
          12,
          12,
          "fill=\"" + fill + "\" stroke=\"" + Ink.INK + "\"");
    }
    mark(explanation.ends().by(50), "half of them: likely", top + 40, bottom);
    mark(explanation.ends().by(90), "nine in ten", top + 58, bottom);
    String when =
        DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH)
            .format(published.atZone(zone));
    ink.stamp(LEFT + 110, top + 66, "SAFE BY", when);
    ink.line(x(published), top + 20, x(published), bottom, "stroke-width=\"2\"");
    ink.text(x(published) - 5, top + 30, END, "rounded up to a waking hour");
    ink.text(
        LEFT,
        730,
        SMALL,
        "Each square is one weather. Hatched squares: the one in ten that takes longer.");
  }

  private void mark(Optional<Instant> at, String words, double top, double bottom) {
    at.ifPresent(
        end -> {
          ink.line(x(end), top, x(end), bottom, DOTTED);
          ink.text(x(end) - 4, top + 10, END, words);
        });
  }

  /** The hours in the shop's bay. */
  private void bay(double top, double bottom) {
    ExplanationWay.Stretch inBay = explanation.safe().days().get(0);
    ink.box(LEFT, top, x(inBay.to()) - LEFT, bottom - top, "fill=\"url(#rain)\" opacity=\"0.45\"");
  }

  private void steps(Scale scale, ToDoubleFunction<ExplanationWay.Stretch> value, String style) {
    List<double[]> points = new ArrayList<>();
    for (ExplanationWay.Stretch day : explanation.safe().days()) {
      double y = scale.y(value.applyAsDouble(day));
      points.add(new double[] {x(day.from()), y});
      points.add(new double[] {x(day.to()), y});
    }
    ink.path(points, style);
  }

  private Scale scale(double top, double bottom) {
    double low = 0;
    double high = 0;
    for (ExplanationWay.Stretch day : explanation.safe().days()) {
      low = Math.min(low, Math.min(day.dewPoint(), day.air()));
      high = Math.max(high, Math.max(day.film(), day.air()));
    }
    return new Scale(Math.floor(low / 5) * 5, Math.ceil(high / 5) * 5, top, bottom);
  }

  private record Scale(double low, double high, double top, double bottom) {

    double y(double value) {
      return bottom - (value - low) / (high - low) * (bottom - top);
    }

    void marks(Ink ink) {
      for (double value = Math.ceil(low / 10) * 10; value <= high; value += 10) {
        double fahrenheit = value * 1.8 + 32;
        ink.text(
            LEFT - 6, y(value) + 4, END, String.format(Locale.ROOT, "%.0f\u00b0F", fahrenheit));
      }
    }
  }
}
