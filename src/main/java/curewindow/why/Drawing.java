package curewindow.why;

import curewindow.cure.Explanation;
import curewindow.cure.ExplanationWay;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Locale;

/** Draws how a date comes about: weather, film and dose by day, and the ends in all weathers. */
final class Drawing {

  private static final int BAR = 18;

  private final Naming names;
  private final Lines lines;
  private final ZoneId zone;

  Drawing(Naming names, Lines lines, ZoneId zone) {
    this.names = names;
    this.lines = lines;
    this.zone = zone;
  }

  void draw(Explanation explanation) {
    decides(explanation);
    lines.gap();
    table(explanation);
    lines.gap();
    new Fan(lines, zone).draw(explanation.ends());
  }

  private void decides(Explanation explanation) {
    ExplanationWay walk = explanation.safe();
    lines.say(2, "decided by %s", names.item(walk.item(), walk.spot()));
    lines.say(2, "waits for %s", Naming.driver(walk.driver()));
    lines.say(
        2,
        "needs %.1f reference hours; floor %s; limit %s",
        walk.needHours(),
        names.when(walk.floor()),
        names.when(walk.limit()));
    if (walk.lampHours() > 0) {
      lines.say(2, "the lamp gave %.1f of them at the finish", walk.lampHours());
    }
    lines.say(2, "%s", outcome(walk));
    ExplanationWay likely = explanation.likely();
    if (likely.item() != walk.item() || likely.driver() != walk.driver()) {
      lines.say(
          2,
          "in the median weather %s decides, waiting for %s",
          names.item(likely.item(), likely.spot()),
          Naming.driver(likely.driver()));
    }
  }

  private String outcome(ExplanationWay walk) {
    if (walk.met().isEmpty()) {
      return String.format(
          Locale.ROOT,
          "not done by the limit: %.1f of %.1f reference hours",
          walk.dose(),
          walk.needHours());
    }
    String met = "need met " + names.when(walk.met().get());
    return walk.floorDecides()
        ? met + ", before the floor: the floor decides, whatever the weather"
        : met;
  }

  private void table(Explanation explanation) {
    ExplanationWay walk = explanation.safe();
    lines.row(
        String.format(
            Locale.ROOT,
            "  %-15s%6s%6s%6s%6s%7s%8s  of %.1f needed",
            "day",
            "air",
            "film",
            "dew",
            "sun",
            "rate",
            "dose",
            walk.needHours()));
    Instant from = walk.finished();
    for (Rows.Row row : Rows.of(walk.days())) {
      row(explanation, row, from);
      from = row.to();
    }
    lines.say(
        2,
        "bar: %s nine-in-ten weather, %s the median weather is so far ahead",
        lines.sign(Lines.Sign.FULL),
        lines.sign(Lines.Sign.HALF));
    lines.say(2, "F floor, N need met, L limit; air, film and dew point are means, C;");
    lines.say(2, "sun: kWh/m2 a day that reach the car; rate: reference hours an hour");
  }

  private void row(Explanation explanation, Rows.Row row, Instant from) {
    lines.row(
        String.format(
            Locale.ROOT,
            "  %-15s%6.1f%6.1f%6.1f%6.1f%7.3f%8.1f  %s %s",
            row.label(),
            row.air(),
            row.film(),
            row.dewPoint(),
            row.sun(),
            row.rate(),
            row.doseAtEnd(),
            bar(
                row.doseAtEnd() / explanation.safe().needHours(),
                share(explanation.likely(), row.to())),
            marks(explanation.safe(), from, row.to())));
  }

  private String bar(double safe, double likely) {
    int full = cells(safe);
    int half = Math.max(full, cells(likely)) - full;
    return lines.sign(Lines.Sign.FULL).repeat(full)
        + lines.sign(Lines.Sign.HALF).repeat(half)
        + lines.sign(Lines.Sign.EMPTY).repeat(BAR - full - half);
  }

  /** Cells are filled only for what is there: the last one when the need is met. */
  private static int cells(double share) {
    return (int) Math.floor(Math.min(1, share + 1e-6) * BAR);
  }

  /** The share of the need that a walk has at a time. */
  static double share(ExplanationWay walk, Instant at) {
    double dose = walk.lampHours();
    for (ExplanationWay.Stretch day : walk.days()) {
      if (!day.to().isAfter(at)) {
        dose = day.doseAtEnd();
      } else if (day.from().isBefore(at)) {
        double hours = Duration.between(day.from(), at).getSeconds() / 3600.0;
        dose += day.rate() * hours;
      }
    }
    return dose / walk.needHours();
  }

  private static String marks(ExplanationWay walk, Instant from, Instant to) {
    return mark("F", walk.floor(), from, to)
        + walk.met().map(met -> mark("N", met, from, to)).orElse("")
        + mark("L", walk.limit(), from, to);
  }

  private static String mark(String sign, Instant at, Instant from, Instant to) {
    return at.isAfter(from) && !at.isAfter(to) ? sign : "";
  }
}
