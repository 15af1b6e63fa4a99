package curewindow.page;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.told.JobView;
import curewindow.told.Safety;
import curewindow.told.Urgency;
import curewindow.told.VisitWords;
import curewindow.told.When;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The one list of a job's dates: each hold a row with its day, its hour and its bar on one time
 * line. The line is linear from the pickup to the end of the last hold; what is normal for longer
 * runs off it, and its bar is drawn broken.
 */
final class DateList {

  /**
   * The whole list.
   *
   * @param start the left end of the time line, seconds since 1970
   * @param span its length in seconds, above 0
   * @param days the names of its first and last day
   * @param rows by date
   * @param visit the invitation of each case, with its day
   */
  record Dates(
      long start, long span, List<String> days, List<Row> rows, List<Cases.Said<Visit>> visit) {}

  /**
   * A hold; times in seconds since 1970, for each case.
   *
   * @param kind the kind of hold
   * @param end when it ends
   * @param likely where on the line it is likely over, percent, for each case
   * @param label what it is, in few words, and what may be done once it is over
   * @param state the word before the date, and the one once it is over
   * @param likelyDay a quiet word on what may be sooner
   * @param first whether it is the first answer, which says itself what {@code safety} and {@code
   *     set} say
   * @param safety what ends it at once
   * @param set how far it is set where it ends at its limit
   * @param done what needs care once it is over, until {@code care}; what to do about what should
   *     have settled
   * @param bar where its bar ends, and {@code sure} where it is likely over, percent of the line
   * @param cut whether the break of a bar that runs off the line is drawn; empty where it never is
   */
  record Row(
      String hold,
      String kind,
      boolean first,
      String end,
      String likely,
      String label,
      String freed,
      String state,
      String then,
      String iso,
      List<Cases.Text> day,
      List<Cases.Text> time,
      List<Cases.Text> likelyDay,
      Optional<String> safety,
      List<Cases.Text> set,
      List<Cases.Text> done,
      Optional<String> care,
      String sure,
      String bar,
      Optional<String> cut) {}

  /** What the shop would like to see, and from which day on; said until an instant, in seconds. */
  record Visit(String title, String day, Optional<String> moved, long to) {}

  private final Cases cases;
  private final JobView noted;
  private final ZoneId zone;
  private final Instant start;
  private final Instant last;

  /** The first answer, which says itself what ends it at once. */
  private final Optional<Release> answer;

  DateList(Cases cases) {
    this.cases = cases;
    this.noted = cases.noted();
    this.zone = noted.timeline().zone();
    this.start = noted.timeline().pickup();
    this.answer = Urgency.holds(noted).stream().findFirst();
    Instant end = last(HoldKind.HOLD).or(() -> last(HoldKind.SETTLE)).orElse(start);
    this.last = end.isAfter(start) ? end : start.plus(Duration.ofDays(1));
  }

  private Optional<Instant> last(HoldKind kind) {
    return cases.views().stream()
        .flatMap(v -> v.timeline().releases().stream())
        .filter(r -> r.kind() == kind)
        .map(r -> r.end().at())
        .filter(at -> at.isAfter(start))
        .max(Comparator.naturalOrder());
  }

  Dates dates() {
    Duration span = Duration.between(start, last);
    return new Dates(
        start.getEpochSecond(),
        span.toSeconds(),
        Stream.of(start, last).map(at -> noted.words().monthDay(at, zone)).toList(),
        noted.timeline().releases().stream().map(this::row).toList(),
        visit());
  }

  private Row row(Release release) {
    String hold = release.hold();
    Function<JobView, Release> of = v -> v.timeline().of(hold).orElseThrow();
    String kind = release.kind().id();
    boolean settles = release.kind() == HoldKind.SETTLE;
    return new Row(
        hold,
        kind,
        answer.filter(release::equals).isPresent(),
        cases.seconds(v -> of.apply(v).end().at()),
        cases.joined(v -> onLine(likely(of.apply(v))).replace("%", "")),
        When.shortLabel(release, noted.words()),
        noted.words().text("hold." + hold + ".event"),
        noted.words().text("page.state." + kind),
        noted.words().text("page.state.over"),
        Answers.iso(release.end().at(), zone),
        cases.text(v -> new When(v).unbrokenDay(of.apply(v))),
        cases.text(v -> new When(v).time(of.apply(v))),
        cases.text(v -> likelyDay(v, of.apply(v))),
        Safety.of(release, noted),
        cases.text(v -> new When(v).setInShort(of.apply(v)).orElse("")),
        cases.text(v -> done(v, of.apply(v))),
        settles ? Optional.empty() : Optional.of(cases.seconds(v -> of.apply(v).setAt())),
        onLine(likely(release)),
        onLine(release.end().at()),
        cut(of, release));
  }

  /** Whether the bar runs off the line; nothing where it does so in no case. */
  private Optional<String> cut(Function<JobView, Release> of, Release release) {
    return cases.views().stream().noneMatch(v -> isBeyond(of.apply(v)))
        ? Optional.empty()
        : Optional.of(isBeyond(release) ? "inline" : "none");
  }

  private boolean isBeyond(Release release) {
    return part(release.end().at()) > 1;
  }

  private static String done(JobView view, Release release) {
    When when = new When(view);
    return release.kind() == HoldKind.SETTLE
        ? when.done(release)
        : when.gentlyInShort(release).orElse("");
  }

  private static Instant likely(Release release) {
    Instant end = release.end().at();
    return release.end() instanceof Release.SafeBy && release.likely().isBefore(end)
        ? release.likely()
        : end;
  }

  /** Said only where it tells more than the date does, and of no day that has begun. */
  private static String likelyDay(JobView view, Release release) {
    ZoneId zone = view.timeline().zone();
    LocalDate likely = LocalDate.ofInstant(likely(release), zone);
    boolean tells =
        likely.isBefore(LocalDate.ofInstant(release.end().at(), zone))
            && likely.isAfter(LocalDate.ofInstant(view.timeline().pickup(), zone));
    return tells
        ? view.words()
            .text("page.likely", Map.of("day", view.words().monthDay(likely(release), zone)))
        : "";
  }

  private double part(Instant at) {
    double seconds = Duration.between(start, at).toSeconds();
    return Math.max(0, seconds / Duration.between(start, last).toSeconds());
  }

  /** Where an instant stands on the line, percent; at its end where it is later. */
  private String onLine(Instant at) {
    double percent = 100 * Math.min(1, part(at));
    return String.format(Locale.ROOT, "%.1f%%", percent).replace(".0%", "%");
  }

  private List<Cases.Said<Visit>> visit() {
    return cases.each(
        view ->
            view.visit().stream()
                .map(
                    visit ->
                        new Visit(
                            VisitWords.title(visit, view.words()),
                            VisitWords.firstDay(visit, view),
                            VisitWords.moved(visit, view),
                            visit.invitedUntil(view.shop().zone()).getEpochSecond()))
                .toList());
  }
}
