package curewindow.told;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.cure.Release.AtLimit;
import curewindow.cure.Release.BySeason;
import curewindow.words.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;

/** The published ends of a job's holds in words, by the clock where the car is. */
public final class When {

  private static final int TEN_DAYS = 10;

  private static final char NO_BREAK = '\u00A0';

  /** Shares are told to the next twentieth. */
  private static final int STEP = 5;

  private final Words words;
  private final ZoneId zone;

  /**
   * The dates of a job.
   *
   * @param view the job
   */
  public When(JobView view) {
    this(view.words(), view.timeline().zone());
  }

  /**
   * Dates in words of the caller's choice.
   *
   * @param words say in which form
   * @param zone of the place where the car is
   */
  public When(Words words, ZoneId zone) {
    this.words = words;
    this.zone = zone;
  }

  /**
   * The day with its weekday, such as {@code Thursday, December 3}; or the part of a month where
   * only the season is known.
   *
   * @param release one of the job's releases
   * @return the text
   */
  public String day(Release release) {
    return season(release).orElseGet(() -> words.day(at(release), zone));
  }

  /**
   * The day in few letters, such as {@code Thu, Dec 3}; or the part of a month.
   *
   * @param release one of the job's releases
   * @return the text
   */
  public String shortDay(Release release) {
    return season(release).orElseGet(() -> words.shortDay(at(release), zone));
  }

  /**
   * The same for a narrow column: a day is not broken over lines, the part of a month may be.
   *
   * @param release one of the job's releases
   * @return such as {@code Wed, Dec 2}, its spaces unbreakable
   */
  public String unbrokenDay(Release release) {
    return season(release)
        .orElseGet(() -> words.shortDay(at(release), zone).replace(' ', NO_BREAK));
  }

  /**
   * The hour, such as {@code 2 PM}.
   *
   * @param release one of the job's releases
   * @return the text; empty where only the season is known, and for what settles: nobody waits for
   *     its hour
   */
  public String time(Release release) {
    return hasHour(release) ? words.time(at(release), zone) : "";
  }

  /**
   * The day in few letters and the hour.
   *
   * @param release one of the job's releases
   * @return such as {@code Thu, Dec 3, 2 PM}; the day alone, or the part of a month, where no hour
   *     is told
   */
  public String shortDayAndTime(Release release) {
    String day = shortDay(release);
    String time = time(release);
    return time.isEmpty() ? day : words.text("page.comma", Map.of("first", day, "next", time));
  }

  private static boolean hasHour(Release release) {
    return release.kind() == HoldKind.HOLD && !(release.end() instanceof BySeason);
  }

  /**
   * Day and hour, such as {@code Thursday, December 3, 2 PM}; the day alone for what settles; or
   * the part of a month.
   *
   * @param release one of the job's releases
   * @return the text
   */
  public String dayAndTime(Release release) {
    return hasHour(release) ? words.dayAndTime(at(release), zone) : day(release);
  }

  /**
   * The day on which a hold is likely over in few letters, such as {@code Thu, Dec 3}.
   *
   * @param release one of the job's releases
   * @return the text; empty where only the limit or the season is told
   */
  Optional<String> likelyDay(Release release) {
    return release.end() instanceof Release.SafeBy
        ? Optional.of(words.shortDay(release.likely(), zone))
        : Optional.empty();
  }

  /**
   * What is left to be careful with when a hold ends at its limit.
   *
   * @param release one of the job's releases
   * @return a sentence that says what to do, and until when; empty where nothing is
   */
  public Optional<String> gently(Release release) {
    return fullBy(release).map(full -> gently(release, full));
  }

  /**
   * The same with the day in few letters, such as {@code Feb 20}.
   *
   * @param release one of the job's releases
   * @return a sentence; empty where nothing is left to be careful with
   */
  public Optional<String> gentlyInShort(Release release) {
    return release.gentleUntil().map(full -> gently(release, words.monthDay(full, zone)));
  }

  private String gently(Release release, String full) {
    return words.text("hold." + release.hold() + ".gently", Map.of("full", full));
  }

  /**
   * What may be done once a hold is over: gently, where it ended at its limit.
   *
   * @param release one of the job's releases
   * @return a sentence
   */
  public String done(Release release) {
    return gently(release).orElseGet(() -> words.text("hold." + release.hold() + ".done"));
  }

  /**
   * A hold's name in few words.
   *
   * @param release one of a job's releases
   * @param words the words of any language
   * @return the short name, or the name where the language has none
   */
  public static String shortLabel(Release release, Words words) {
    String key = "hold." + release.hold() + ".short";
    return words.text(words.has(key) ? key : "hold." + release.hold() + ".label");
  }

  /**
   * How far a hold is that ends at its limit.
   *
   * @param release one of the job's releases
   * @return a sentence; empty where nothing is left to be careful with
   */
  public Optional<String> setByThen(Release release) {
    return fullBy(release)
        .map(full -> words.text("page.set-by-then", Map.of("share", share(release))));
  }

  /**
   * Until when, to follow "until" in a guide, with what comes after the limit.
   *
   * @param release one of the job's releases
   * @return such as {@code Friday, December 18, 2 PM (fully set about February 20)}
   */
  public String untilInGuide(Release release) {
    return words.text("page.until", Map.of("when", dayAndTimeSet(release)));
  }

  /**
   * Day and hour, and where it ends at its limit when it is fully set, such as {@code Friday,
   * December 18, 2 PM (fully set about February 20)}.
   *
   * @param release one of the job's releases
   * @return the text
   */
  public String dayAndTimeSet(Release release) {
    String when = dayAndTime(release);
    return fullBy(release)
        .map(full -> words.text("page.until-gently", Map.of("when", when, "full", full)))
        .orElse(when);
  }

  /**
   * Why nothing nearer than a season is told.
   *
   * @param release one of the job's releases
   * @return a sentence; empty where a day is told
   */
  public Optional<String> slowly(Release release) {
    return release.end() instanceof BySeason
        ? Optional.of(words.text("hold." + release.hold() + ".season"))
        : Optional.empty();
  }

  /**
   * The day by which a hold that ends at its limit is likely fully set.
   *
   * @param release one of the job's releases
   * @return such as {@code February 20}; empty where nothing is left to be careful with
   */
  public Optional<String> fullBy(Release release) {
    return release.gentleUntil().map(full -> words.fullMonthDay(full, zone));
  }

  /**
   * How far a hold is that ends at its limit, and when it is fully set, in few words.
   *
   * @param release one of the job's releases
   * @return a sentence; empty where nothing is left to be careful with
   */
  public Optional<String> setInShort(Release release) {
    return release
        .gentleUntil()
        .map(full -> Map.of("share", share(release), "day", words.monthDay(full, zone)))
        .map(facts -> words.text("page.full", facts));
  }

  private String share(Release release) {
    AtLimit limit = (AtLimit) release.end();
    long steps = Math.max(1, Math.round(100 * limit.share() / STEP));
    return words.text("page.percent", Map.of("number", words.number(STEP * steps, 0)));
  }

  private Optional<String> season(Release release) {
    return release.end() instanceof BySeason ? Optional.of(season(at(release))) : Optional.empty();
  }

  private String season(Instant at) {
    int day = at.atZone(zone).getDayOfMonth();
    String part = day <= TEN_DAYS ? "start" : day <= 2 * TEN_DAYS ? "middle" : "end";
    return words.text("page.season." + part, Map.of("month", words.month(at, zone)));
  }

  private static Instant at(Release release) {
    return release.end().at();
  }
}
