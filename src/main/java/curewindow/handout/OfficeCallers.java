package curewindow.handout;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.guide.Questions;
import curewindow.told.JobView;
import curewindow.told.OtherClock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Who may call on a day and what they will ask, the most likely first. How likely is a guess of our
 * own, no source: people call when a date of theirs has come, and in the first days with the car.
 *
 * @param callers the jobs, most likely first
 * @param more how many more jobs could call and are left out
 */
public record OfficeCallers(List<Caller> callers, int more) {

  /** The days after pickup in which everything is still new. */
  private static final int FRESH = 3;

  /** From how many days before its end to how many after it what is normal comes up. */
  private static final int NEAR = 3;

  private static final long FAR = 1_000_000;

  /** Copies the list. */
  public OfficeCallers {
    callers = List.copyOf(callers);
  }

  /** Why somebody may call, the most likely first. */
  public enum Why {
    /** Something ends on this day or the next. */
    DATE("date"),
    /** The car was picked up on this day or within the three before it. */
    FRESH("fresh"),
    /** Something is still to wait for, or what is normal is about to end. */
    WAITING("waiting");

    private final String id;

    Why(String id) {
      this.id = id;
    }

    /**
     * The name used in the words.
     *
     * @return lower case
     */
    public String id() {
      return id;
    }
  }

  /**
   * How many are told.
   *
   * @param jobs how many jobs
   * @param questions how many questions of each
   */
  public record Most(int jobs, int questions) {

    /** What a counter can look through before it opens. */
    public static final Most ON_PAPER = new Most(8, 3);

    /** Everything. */
    public static final Most ALL = new Most(Integer.MAX_VALUE, Integer.MAX_VALUE);
  }

  /**
   * Somebody who may call.
   *
   * @param why why
   * @param job the job's id
   * @param firstName the first name; may be empty
   * @param car the car's text
   * @param language the customer's language, where it is not the shop's; else empty
   * @param reasons what is about to end, when the car was picked up, and whose clock tells the
   *     hours where that is not the shop's
   * @param asked what will be asked
   * @param more how many more questions could be asked and are left out
   */
  public record Caller(
      Why why,
      String job,
      String firstName,
      String car,
      String language,
      List<String> reasons,
      List<Asked> asked,
      int more) {

    /** Copies the lists. */
    public Caller {
      reasons = List.copyOf(reasons);
      asked = List.copyOf(asked);
    }
  }

  /**
   * A question and what to say.
   *
   * @param question as customers put it
   * @param stand how it stands for this car, in few words with its date; may be empty
   * @param answer this car's own answer
   */
  public record Asked(String question, String stand, String answer) {}

  /** A job that may call, with what decides how likely that is. */
  private record Likely(JobView view, Why why, List<Release> near) {}

  /**
   * Who may call.
   *
   * @param jobs the jobs of the shop
   * @param day the day by the shop's clock
   * @param most how many are told
   * @return the callers
   */
  public static OfficeCallers of(OfficeJobs jobs, LocalDate day, Most most) {
    List<Likely> likely = new ArrayList<>();
    jobs.views().forEach(v -> likely(v, jobs, day).ifPresent(likely::add));
    likely.sort(
        Comparator.comparing(Likely::why)
            .thenComparing(l -> l.view().job().pickup(), Comparator.reverseOrder())
            .thenComparing(l -> l.view().job().id()));
    List<Caller> callers =
        likely.stream().limit(most.jobs()).map(l -> caller(l, jobs, day, most)).toList();
    return new OfficeCallers(callers, likely.size() - callers.size());
  }

  private static Optional<Likely> likely(JobView view, OfficeJobs jobs, LocalDate day) {
    LocalDate pickup = jobs.day(view.job().pickup());
    if (pickup.isAfter(day)) {
      return Optional.empty();
    }
    List<Release> near =
        view.timeline().releases().stream()
            .filter(r -> r.end().at().isAfter(view.job().pickup()))
            .filter(r -> left(r, jobs, day) == 0 || left(r, jobs, day) == 1)
            .toList();
    boolean waits = view.timeline().releases().stream().anyMatch(r -> waits(r, jobs, day));
    Why why =
        !near.isEmpty()
            ? Why.DATE
            : ChronoUnit.DAYS.between(pickup, day) <= FRESH ? Why.FRESH : Why.WAITING;
    return why == Why.WAITING && !waits
        ? Optional.empty()
        : Optional.of(new Likely(view, why, near));
  }

  private static boolean waits(Release release, OfficeJobs jobs, LocalDate day) {
    long left = left(release, jobs, day);
    return switch (release.kind()) {
      case HOLD -> left >= 0;
      case SETTLE -> Math.abs(left) <= NEAR;
    };
  }

  private static Caller caller(Likely likely, OfficeJobs jobs, LocalDate day, Most most) {
    JobView ours = likely.view().in(jobs.words());
    List<Questions.Told> told = asked(ours, jobs, likely.why(), day);
    List<Asked> shown =
        told.stream()
            .limit(most.questions())
            .map(t -> new Asked(t.question().text(), t.stand(), t.answer()))
            .toList();
    return new Caller(
        likely.why(),
        ours.job().id(),
        ours.job().firstName().strip(),
        ours.car(),
        jobs.speaks(likely.view()),
        reasons(likely, ours, jobs),
        shown,
        told.size() - shown.size());
  }

  private static List<String> reasons(Likely likely, JobView ours, OfficeJobs jobs) {
    List<String> reasons = new ArrayList<>();
    for (Release release : likely.near()) {
      OfficeDay.Said said = OfficePickups.said(ours, release);
      reasons.add(said.what() + " " + said.when());
    }
    String pickup = jobs.shortDay(jobs.day(ours.job().pickup()));
    reasons.add(jobs.words().text("office.callers.pickup", Map.of("when", pickup)));
    OtherClock.of(ours).ifPresent(reasons::add);
    return reasons;
  }

  /**
   * What will be asked: what hangs on a date of this day or the next first, then what looks wrong
   * on a fresh car, then by date; what can wait is not asked yet.
   */
  private static List<Questions.Told> asked(JobView ours, OfficeJobs jobs, Why why, LocalDate day) {
    Instant morning = jobs.start(day);
    boolean fresh = ChronoUnit.DAYS.between(jobs.day(ours.job().pickup()), day) <= FRESH;
    return Questions.told(ours, jobs.guides(), morning).stream()
        .filter(t -> !t.later() && !t.answer().isEmpty())
        .filter(t -> t.question().releases().isEmpty() ? fresh : days(t, jobs, day) < FAR)
        .sorted(
            Comparator.comparing((Questions.Told t) -> days(t, jobs, day) > 1)
                .thenComparing(t -> !(fresh && isNormal(t)))
                .thenComparingLong(t -> days(t, jobs, day)))
        .toList();
  }

  /** Whether it asks about what looks wrong on fresh work and is not. */
  private static boolean isNormal(Questions.Told told) {
    return told.question().releases().stream().anyMatch(r -> r.kind() == HoldKind.SETTLE);
  }

  /** How many days the nearest date of a question is away; {@link #FAR} where all are over. */
  private static long days(Questions.Told told, OfficeJobs jobs, LocalDate day) {
    return told.question().releases().stream()
        .filter(r -> !isOver(r, jobs, day))
        .mapToLong(r -> Math.abs(left(r, jobs, day)))
        .min()
        .orElse(FAR);
  }

  private static boolean isOver(Release release, OfficeJobs jobs, LocalDate day) {
    return left(release, jobs, day) < (release.kind() == HoldKind.SETTLE ? -NEAR : -1);
  }

  private static long left(Release release, OfficeJobs jobs, LocalDate day) {
    return ChronoUnit.DAYS.between(day, jobs.day(release.end().at()));
  }
}
