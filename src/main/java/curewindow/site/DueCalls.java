package curewindow.site;

import curewindow.page.CardChange;
import curewindow.page.JobView;
import curewindow.page.When;
import curewindow.problem.Faults;
import curewindow.problem.Problems;
import curewindow.shop.Job;
import curewindow.words.Words;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Whom the shop should call, because a date on a card has become too early. */
public final class DueCalls {

  private DueCalls() {}

  /**
   * A call to make.
   *
   * @param job the job's id
   * @param firstName whom to ask for; may be empty
   * @param hold what it is about, in the shop's language
   * @param promised the earliest date that the customer was promised
   * @param told the same in words, by the clock where the car is
   * @param byCard whether the card that was made first says so; else a page or card made since did
   * @param now until when to wait now, or when to come in, in words
   * @param ask whether the customer should come in, as no date can be promised
   */
  public record Call(
      String job,
      String firstName,
      String hold,
      Instant promised,
      String told,
      boolean byCard,
      String now,
      boolean ask) {}

  /** How long a visit that was asked for and has passed is still worth a call. */
  private static final Duration MISSED_VISITS = Duration.ofDays(30);

  /**
   * The calls that still help: those whose new date has not come yet, and those who should have
   * come in within the last 30 days, as nothing tells that their wait is over.
   *
   * @param shop a shop folder whose shop.yaml and ledgers are right
   * @param at the time at which the list is asked for
   * @param problems where faults are told; a job with one is not looked at
   * @return the calls, the earliest promised date first, as it is the first to be relied on
   */
  public static List<Call> of(LoadedShop shop, Instant at, Problems problems) {
    List<Job> jobs = shop.jobs().stream().filter(shop::hasCard).toList();
    // The list shows no address, so it does not need the job's real token.
    return of(shop, JobViews.of(shop, jobs, "0", problems), at, problems);
  }

  /** The calls among some jobs whose views are there already. */
  static List<Call> of(LoadedShop shop, List<JobView> views, Instant at, Problems problems) {
    List<Call> calls = new ArrayList<>();
    for (JobView view : views) {
      if (shop.hasCard(view.job())) {
        Faults.guard(view.job().where(), problems, () -> of(shop, view, at))
            .ifPresent(calls::addAll);
      }
    }
    calls.sort(
        Comparator.comparing(Call::promised).thenComparing(Call::job).thenComparing(Call::hold));
    return calls;
  }

  private static List<Call> of(LoadedShop shop, JobView view, Instant at) {
    return CardChange.later(view).stream()
        .filter(c -> stillHelps(c, at))
        .map(c -> call(view, c, shop))
        .toList();
  }

  private static boolean stillHelps(CardChange change, Instant at) {
    Instant now = change.now().end().at();
    return now.isAfter(at) || change.isAsked() && now.plus(MISSED_VISITS).isAfter(at);
  }

  private static Call call(JobView view, CardChange change, LoadedShop shop) {
    Words words = shop.words().of(view.shop().language());
    When when = new When(view);
    Instant promised = change.printed().earliest();
    Instant now = change.now().end().at();
    return new Call(
        view.job().id(),
        view.job().firstName(),
        words.text("hold." + change.now().hold() + ".label"),
        promised,
        words.dayAndTime(promised, view.timeline().zone()),
        change.printed().isOnFirstCard(),
        words.dayAndTime(now, when.zone(change.now())),
        change.isAsked());
  }
}
