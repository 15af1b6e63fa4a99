package curewindow.why;

import curewindow.cure.Ends;
import curewindow.cure.Explanation;
import curewindow.cure.ExplanationWay;
import curewindow.cure.Release;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Map;

/** The way to an end as names and values. */
final class ExplanationWayData {

  private final ZoneId zone;

  ExplanationWayData(ZoneId zone) {
    this.zone = zone;
  }

  Map<String, Object> of(Explanation explanation) {
    return WhyData.ordered(
        "way", walk(explanation.safe()),
        "wayLikely", walk(explanation.likely()),
        "ends", ends(explanation.ends()));
  }

  private Map<String, Object> walk(ExplanationWay walk) {
    Map<String, Object> data =
        WhyData.ordered(
            "item", walk.item(),
            "spot", walk.spot(),
            "waitsFor", walk.driver().id(),
            "needReferenceHours", rounded(walk.needHours()),
            "lampReferenceHours", rounded(walk.lampHours()),
            "finished", local(walk.finished(), zone),
            "floor", local(walk.floor(), zone),
            "limit", local(walk.limit(), zone));
    data.put("met", walk.met().map(at -> local(at, zone)).orElse(null));
    data.put("walkedUntil", local(walk.end(), zone));
    data.put("days", walk.days().stream().map(this::day).toList());
    return data;
  }

  private Map<String, Object> day(ExplanationWay.Stretch day) {
    return WhyData.ordered(
        "date", day.date().toString(),
        "from", local(day.from(), zone),
        "to", local(day.to(), zone),
        "inBay", day.inBay(),
        "airC", rounded(day.air()),
        "filmC", rounded(day.film()),
        "dewPointC", rounded(day.dewPoint()),
        "sunKwhPerM2", fine(day.sun()),
        "gainedReferenceHours", fine(day.dose()),
        "referenceHoursAtEnd", fine(day.doseAtEnd()));
  }

  private Map<String, Object> ends(Ends ends) {
    return WhyData.ordered(
        "weathers",
        ends.weathers(),
        "notByLimit",
        ends.open(),
        "met",
        ends.met().stream().map(at -> local(at, zone)).toList(),
        "marks",
        Fan.PERCENTS.stream().map(p -> mark(p, ends)).toList());
  }

  private Map<String, Object> mark(int percent, Ends ends) {
    Map<String, Object> mark = WhyData.ordered("percent", percent);
    mark.put("at", ends.by(percent).map(at -> local(at, zone)).orElse(null));
    return mark;
  }

  /** How far a hold is at its limit and when it is fully set; null for another end. */
  static void putLimit(Map<String, Object> data, Release release, ZoneId zone) {
    data.put("share", null);
    data.put("full", null);
    if (release.end() instanceof Release.AtLimit limit) {
      data.put("share", rounded(limit.share()));
      data.put("full", local(limit.full(), zone));
    }
  }

  static double rounded(double value) {
    return Math.round(value * 100) / 100.0;
  }

  static double fine(double value) {
    return Math.round(value * 1e4) / 1e4;
  }

  static String local(Instant at, ZoneId zone) {
    return OffsetDateTime.ofInstant(at, zone).toString();
  }
}
