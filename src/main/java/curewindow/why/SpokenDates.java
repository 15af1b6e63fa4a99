package curewindow.why;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.told.JobView;
import curewindow.told.Visit;
import curewindow.told.VisitWords;
import curewindow.told.When;
import curewindow.words.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Locale;

/** A job's dates in few English words, as people at the shop's counter say them. */
final class SpokenDates {

  /** From it on no year goes without saying. */
  private static final Instant LONG_AGO = Instant.EPOCH;

  private final Words words;
  private final ZoneId zone;
  private final When when;

  private SpokenDates(Words words, ZoneId zone) {
    this.words = words;
    this.zone = zone;
    this.when = new When(words, zone);
  }

  /** Dates that name their year only where they are far from the pickup. */
  static SpokenDates besidePickup(JobView view) {
    return new SpokenDates(view.words(), view.timeline().zone());
  }

  /** Dates that all name their year. */
  static SpokenDates alone(JobView view) {
    return new SpokenDates(view.words().around(LONG_AGO), view.timeline().zone());
  }

  String label(Release release) {
    return words.text("hold." + release.hold() + ".label");
  }

  /** When, and in which sense, such as {@code Sun, Dec 13, 1 PM, at the limit (60 % cured)}. */
  String end(Release release) {
    return release.end() instanceof Release.BySeason
        ? endDay(release)
        : endDay(release)
            + ", "
            + plain(words.time(release.end().at(), zone))
            + ", "
            + state(release);
  }

  /** The day alone, such as {@code Sun, Dec 13}; or the part of a month. */
  String endDay(Release release) {
    return plain(when.shortDay(release));
  }

  private static String state(Release release) {
    if (release.end() instanceof Release.AtLimit limit) {
      return String.format(
          Locale.ROOT, "at the limit (%.0f%% cured)", Math.min(99, 100 * limit.share()));
    }
    if (release.end() instanceof Release.Seen) {
      return "over, seen by us";
    }
    return release.kind() == HoldKind.HOLD ? "safe by then" : "settled by then";
  }

  /** What is left to be careful with, such as {@code , then go easy}; empty where nothing is. */
  String gently(Release release) {
    return release
        .gentleUntil()
        .map(full -> ", then go easy, fully cured about " + plain(words.monthDay(full, zone)))
        .orElse("");
  }

  String label(Visit visit) {
    return VisitWords.title(visit, words);
  }

  String day(Visit visit) {
    String day = plain(words.shortDay(visit.day().atStartOfDay(zone).toInstant(), zone));
    return (visit.byPhoto() ? "starting " : "any day we are open, starting ") + day;
  }

  /** Terminals may not know the blank that does not break. */
  private static String plain(String text) {
    return text.replace('\u00A0', ' ');
  }
}
