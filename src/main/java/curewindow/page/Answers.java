package curewindow.page;

import curewindow.cure.Release;
import curewindow.told.JobView;
import curewindow.told.Listing;
import curewindow.told.Urgency;
import curewindow.told.When;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The first thing on a customer's page: what must not be done now, and until when. */
final class Answers {

  /** Stands for the date while a sentence is taken apart around it; no text contains it. */
  private static final String DATE = "\uE000";

  /** A date of more letters is stamped smaller, and of still more, smaller again. */
  private static final int MID_DATE = 11;

  private static final int LONG_DATE = 13;

  /**
   * One sentence with its date; {@code at} in seconds since 1970, for each case.
   *
   * @param rank of what is in force, the one of the least rank is shown, and of those the first to
   *     end
   * @param more what the sentence says after its date; may be empty
   */
  record Answer(
      String hold,
      int rank,
      String at,
      String before,
      List<Cases.Text> weekday,
      List<Cases.Text> date,
      List<Cases.Text> time,
      String iso,
      String letters,
      String more,
      boolean hidden) {}

  /** In place of the id of a hold. */
  private static final String ALMOST = "almost";

  private final Cases cases;

  Answers(Cases cases) {
    this.cases = cases;
  }

  /**
   * All holds of the job, the most urgent first and the only one not hidden; last what still needs
   * care once all are over.
   */
  List<Answer> all() {
    List<Release> holds = Urgency.holds(cases.noted());
    return Stream.concat(
            holds.stream().map(r -> answer(r, !r.equals(holds.get(0)))), almost().stream())
        .toList();
  }

  /** What is said once all holds are over, and some, ended at their limit, are not fully set. */
  private Optional<Answer> almost() {
    JobView noted = cases.noted();
    ZoneId there = noted.timeline().zone();
    Instant at = fullySet(noted);
    return cases.views().stream().allMatch(v -> fullySet(v).equals(v.timeline().pickup()))
        ? Optional.empty()
        : Optional.of(
            new Answer(
                ALMOST,
                Integer.MAX_VALUE,
                cases.seconds(Answers::fullySet),
                noted.words().text("page.now.almost"),
                List.of(),
                cases.text(v -> v.words().fullMonthDay(fullySet(v), there)),
                List.of(),
                iso(at, there),
                size(noted.words().fullMonthDay(at, there)),
                noted.words().text("page.now.almost-more"),
                true));
  }

  /** When the last hold is fully set that ended at its limit; the pickup where none did. */
  private static Instant fullySet(JobView view) {
    return view.timeline().releases().stream()
        .flatMap(r -> r.gentleUntil().stream())
        .max(Comparator.naturalOrder())
        .orElse(view.timeline().pickup());
  }

  private Answer answer(Release release, boolean hidden) {
    String hold = release.hold();
    JobView noted = cases.noted();
    ZoneId there = noted.timeline().zone();
    Instant at = release.end().at();
    String[] parts = sentence(noted, hold);
    return new Answer(
        hold,
        Urgency.rank(noted, release),
        cases.seconds(v -> end(v, hold).end().at()),
        parts[0].strip(),
        cases.text(v -> v.words().fullWeekday(end(v, hold).end().at(), there)),
        cases.text(v -> v.words().fullMonthDay(end(v, hold).end().at(), there)),
        cases.text(v -> new When(v).time(end(v, hold))),
        iso(at, there),
        size(noted.words().fullMonthDay(at, there)),
        parts.length == 2 ? more(parts[1]) : "",
        hidden);
  }

  private static Release end(JobView view, String hold) {
    return view.timeline().of(hold).orElseThrow();
  }

  private static String[] sentence(JobView view, String hold) {
    return view.words().text("hold." + hold + ".until", Map.of("when", DATE)).split(DATE, 2);
  }

  private static String more(String afterDate) {
    return Listing.capital(afterDate.replaceFirst("^[\\s.,:;\u060C\u061B]+", ""));
  }

  private static String size(String date) {
    return date.length() > LONG_DATE ? "long" : date.length() > MID_DATE ? "mid" : "";
  }

  /** An instant with its offset, whole seconds (RFC 3339). */
  static String iso(Instant at, ZoneId there) {
    return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at.atZone(there).withNano(0));
  }
}
