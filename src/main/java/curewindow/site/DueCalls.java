package curewindow.site;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.problem.Faults;
import curewindow.problem.Problems;
import curewindow.shop.Job;
import curewindow.told.CardChange;
import curewindow.told.JobView;
import curewindow.told.OtherClock;
import curewindow.told.PrintedDate;
import curewindow.told.Visit;
import curewindow.told.VisitWords;
import curewindow.told.When;
import curewindow.words.Words;
import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Whom the shop should tell that what they were told has moved, each list with the earliest
 * promised date first, as it is the first to be relied on.
 *
 * @param tooEarly the dates that became too early: who goes by them ends a hold before it is safe
 * @param sooner the dates that need not be waited for any more
 * @param visits the visits that moved to another day
 */
public record DueCalls(List<Call> tooEarly, List<Call> sooner, List<Call> visits) {

  /** Copies the lists. */
  public DueCalls {
    tooEarly = sorted(tooEarly);
    sooner = sorted(sooner);
    visits = sorted(visits);
  }

  /**
   * Something to tell.
   *
   * @param job the job's id
   * @param firstName whom to ask for; may be empty
   * @param hold the hold's id; empty for the visit
   * @param about what it is about
   * @param promised what the customer was told last; of a visit the beginning of its day
   * @param told the same in words, by the clock it was told by, which is named where it is not the
   *     shop's
   * @param byCard whether the card that was made first says so; else it was said since
   * @param now the date of today in words
   * @param date the same as ISO 8601: with the offset where the car is, of a visit a day
   */
  public record Call(
      String job,
      String firstName,
      String hold,
      String about,
      Instant promised,
      String told,
      boolean byCard,
      String now,
      String date) {}

  private static List<Call> sorted(List<Call> calls) {
    return calls.stream()
        .sorted(
            Comparator.comparing(Call::promised)
                .thenComparing(Call::job)
                .thenComparing(Call::about))
        .toList();
  }

  /**
   * What still helps to be told: of dates that became too early, those that have not come yet; of
   * the others, those where what was told has not come yet.
   *
   * @param shop a shop folder whose shop.yaml and ledgers are right
   * @param at the time at which the lists are asked for
   * @param problems where faults are told; a job with one is not looked at
   * @return the lists
   */
  public static DueCalls of(LoadedShop shop, Instant at, Problems problems) {
    List<Job> jobs = shop.jobs().stream().filter(shop.ledgers()::hasCard).toList();
    // The lists show no address, so they do not need the job's real token.
    return of(shop, JobViews.of(shop, jobs, "0", problems), at, problems);
  }

  /**
   * What is to be told among some jobs whose views are there already.
   *
   * @param shop a shop folder whose shop.yaml and ledgers are right
   * @param views some of its jobs
   * @param at the time at which the lists are asked for
   * @param problems where faults are told; a job with one is not looked at
   * @return the lists
   */
  public static DueCalls of(LoadedShop shop, List<JobView> views, Instant at, Problems problems) {
    return of(shop, views, at, shop.words().of(shop.shop().orElseThrow().language()), problems);
  }

  /**
   * The same in some language.
   *
   * @param shop a shop folder whose shop.yaml and ledgers are right
   * @param views some of its jobs
   * @param at the time at which the lists are asked for
   * @param words of the language of who reads the lists
   * @param problems where faults are told; a job with one is not looked at
   * @return the lists
   */
  public static DueCalls of(
      LoadedShop shop, List<JobView> views, Instant at, Words words, Problems problems) {
    List<DueCalls> each =
        views.stream()
            .filter(view -> shop.ledgers().hasCard(view.job()))
            .flatMap(
                view ->
                    Faults.guard(
                        view.job().where(),
                        problems,
                        () -> new Moved(shop, view.in(words), at).all())
                        .stream())
            .toList();
    return new DueCalls(
        each.stream().flatMap(d -> d.tooEarly().stream()).toList(),
        each.stream().flatMap(d -> d.sooner().stream()).toList(),
        each.stream().flatMap(d -> d.visits().stream()).toList());
  }

  /**
   * Notes that the customer of a job was told all that these lists have for it; it is on disk when
   * this returns.
   *
   * @param shop the shop folder
   * @param job the job's id
   * @param at when they were told
   * @return what was noted; nothing where there is nothing to tell
   * @throws IOException where it cannot be written; the message is for the user
   */
  public List<Call> called(LoadedShop shop, String job, Instant at) throws IOException {
    return noted(shop, job, all().filter(call -> call.job().equals(job)).toList(), at);
  }

  /** What came of noting that a customer was told one thing. */
  public enum Told {
    /** It is noted, now or since before. */
    NOTED,
    /** What has to be told is another date by now, so nothing was noted. */
    MOVED
  }

  /**
   * Notes that the customer of a job was told one thing of these lists; it is on disk when this
   * returns.
   *
   * @param shop the shop folder
   * @param row of which job and hold, the hold being empty for the visit; and which date was told,
   *     as in {@link Call#date}
   * @param at when they were told
   * @return what came of it
   * @throws IOException where it cannot be written; the message is for the user
   */
  public Told called(LoadedShop shop, Row row, Instant at) throws IOException {
    List<Call> there =
        all().filter(c -> c.job().equals(row.job()) && c.hold().equals(row.hold())).toList();
    List<Call> same = there.stream().filter(c -> c.date().equals(row.date())).toList();
    noted(shop, row.job(), same, at);
    return same.size() < there.size() ? Told.MOVED : Told.NOTED;
  }

  /**
   * Takes back the last thing that was noted on a day as told to the customer of a job.
   *
   * @param shop the shop folder
   * @param job the job's id
   * @param day the day, by the shop's clock
   * @return whether there was one
   * @throws IOException where the file is broken or cannot be written; the message is for the user
   */
  public static boolean takeBack(LoadedShop shop, String job, LocalDate day) throws IOException {
    try (FolderLock lock = FolderLock.on(shop.files().root())) {
      return CallsMade.CSV.dropLast(lock.folder(), LedgerCsv.ofDay(job, day));
    }
  }

  /**
   * What was told.
   *
   * @param job the job's id
   * @param hold the hold's id; empty for the visit
   * @param date the date, as in {@link Call#date}
   */
  public record Row(String job, String hold, String date) {}

  private Stream<Call> all() {
    return Stream.of(tooEarly, sooner, visits).flatMap(List::stream);
  }

  private static List<Call> noted(LoadedShop shop, String job, List<Call> told, Instant at)
      throws IOException {
    if (!told.isEmpty()) {
      Instant second = at.truncatedTo(ChronoUnit.SECONDS);
      LocalDateTime time = LocalDateTime.ofInstant(second, shop.shop().orElseThrow().zone());
      try (FolderLock lock = FolderLock.on(shop.files().root())) {
        CallsMade calls = Ledgers.calls(lock);
        told.forEach(call -> calls.add(job, time, call.hold(), call.date()));
        calls.save();
      }
    }
    return told;
  }

  /** What moved of one job. */
  private static final class Moved {

    private final JobView view;
    private final List<PrintedDate> cards;
    private final Instant at;
    private final Words words;
    private final When when;

    Moved(LoadedShop shop, JobView view, Instant at) {
      this.words = view.words();
      this.view = view.withPrinted(shop.dates().known(view));
      this.cards = view.printed().dates();
      this.at = at;
      this.when = new When(this.view);
    }

    DueCalls all() {
      return new DueCalls(tooEarly(), sooner(), visit().stream().toList());
    }

    private List<Call> tooEarly() {
      return calls(CardChange.later(view), c -> end(c).isAfter(at));
    }

    /** A later card may have said the sooner date already. */
    private List<Call> sooner() {
      return calls(
          CardChange.sooner(view),
          c -> end(c).isBefore(c.printed().earliest()) && c.printed().earliest().isAfter(at));
    }

    private List<Call> calls(List<CardChange> changes, Predicate<CardChange> helps) {
      return changes.stream().filter(helps).map(this::call).toList();
    }

    private static Instant end(CardChange change) {
      return change.now().end().at();
    }

    private Call call(CardChange change) {
      Instant promised = change.printed().earliest();
      return new Call(
          view.job().id(),
          view.job().firstName(),
          change.now().hold(),
          words.text("hold." + change.now().hold() + ".label"),
          promised,
          told(change.printed()),
          cards.contains(change.printed()) && change.printed().isOnFirstCard(),
          now(change.now()),
          end(change).atZone(view.timeline().zone()).toOffsetDateTime().toString());
    }

    /**
     * A car that lives elsewhere by now has another clock, and its card still says what it said.
     */
    private String told(PrintedDate printed) {
      ZoneId clock = printed.earliestClock(view.timeline().zone());
      Instant promised = printed.earliest();
      return OtherClock.labelled(words.dayAndTime(promised, clock), promised, clock, view);
    }

    /** What settles has no hour, so nobody asks by whose clock. */
    private String now(Release release) {
      String day = when.dayAndTime(release);
      return release.kind() == HoldKind.HOLD
          ? OtherClock.labelled(day, release.end().at(), view)
          : day;
    }

    /** Worth a call until the later of the two days is over. */
    private Optional<Call> visit() {
      LocalDate today = at.atZone(view.shop().zone()).toLocalDate();
      Optional<LocalDate> told = view.printed().visit();
      return view.visit()
          .filter(v -> told.filter(day -> !day.equals(v.day())).isPresent())
          .filter(v -> !v.day().isBefore(today) || !told.orElseThrow().isBefore(today))
          .map(v -> call(v, told.orElseThrow()));
    }

    private Call call(Visit visit, LocalDate told) {
      return new Call(
          view.job().id(),
          view.job().firstName(),
          "",
          VisitWords.title(visit, words),
          told.atStartOfDay(view.shop().zone()).toInstant(),
          VisitWords.shortDay(told, view),
          false,
          VisitWords.shortDay(visit.day(), view),
          visit.day().toString());
    }
  }
}
