package curewindow.site;

import curewindow.page.CardChange;
import curewindow.page.JobView;
import curewindow.page.When;
import curewindow.words.Words;
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
   */
  public record Call(
      String job,
      String firstName,
      String hold,
      Instant promised,
      String told,
      boolean byCard,
      String now) {}

  /**
   * The calls that still help: those whose new date has not come yet, and those who should have
   * come in within the last 30 days, as nothing tells that their wait is over.
   *
   * @param shop a shop folder whose shop.yaml and ledgers are right
   * @param at the time at which the list is asked for
   * @return the calls, the earliest promised date first, as it is the first to be relied on
   */
  public static List<Call> of(LoadedShop shop, Instant at) {
    // The list shows no address, so it does not need the job's real token.
    return of(
        shop,
        shop.jobs().parallelStream().filter(shop::hasCard).map(job -> shop.view(job, "0")).toList(),
        at);
  }

  /** The calls among some jobs whose views are there already. */
  static List<Call> of(LoadedShop shop, List<JobView> views, Instant at) {
    List<Call> calls = new ArrayList<>();
    for (JobView view : views) {
      if (shop.hasCard(view.job())) {
        CardChange.later(view).stream()
            .filter(c -> stillHelps(c, at))
            .map(c -> call(view, c, shop))
            .forEach(calls::add);
      }
    }
    calls.sort(
        Comparator.comparing(Call::promised).thenComparing(Call::job).thenComparing(Call::hold));
    return calls;
  }

  private static boolean stillHelps(CardChange change, Instant at) {
    return change.now().end().at().isAfter(at);
  }

  private static Call call(JobView view, CardChange change, LoadedShop shop) {
    Words words = shop.words().of(view.shop().language());
    When when = new When(view);
    Instant promised = change.printed().earliest();
    return new Call(
        view.job().id(),
        view.job().firstName(),
        words.text("hold." + change.now().hold() + ".label"),
        promised,
        words.dayAndTime(promised, view.timeline().zone()),
        change.printed().isOnFirstCard(),
        when.dayAndTime(change.now()));
  }
}
