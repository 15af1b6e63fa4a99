package curewindow.told;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import java.util.Comparator;
import java.util.List;

/**
 * A date that a customer was told and that is no longer the date of today. Only holds count: to
 * come in early or to take something for normal too long hurts nothing.
 *
 * @param printed what the customer was told
 * @param now how it is now
 */
public record CardChange(PrintedDate printed, Release now) {

  /**
   * The dates that were promised too early: who goes by them ends a hold before it is safe.
   *
   * @param view the job with its printed dates
   * @return the changes, by the date promised, then by hold
   */
  public static List<CardChange> later(JobView view) {
    return all(view).stream().filter(CardChange::isLater).toList();
  }

  /**
   * The dates that are sooner than the first card says.
   *
   * @param view the job with its printed dates
   * @return the changes, by the date promised, then by hold
   */
  public static List<CardChange> sooner(JobView view) {
    return all(view).stream().filter(CardChange::isSooner).toList();
  }

  private static List<CardChange> all(JobView view) {
    return view.printed().dates().stream()
        .flatMap(p -> view.timeline().of(p.hold()).map(r -> new CardChange(p, r)).stream())
        .filter(c -> c.now().kind() == HoldKind.HOLD)
        .sorted(
            Comparator.comparing((CardChange c) -> c.printed().earliest())
                .thenComparing(c -> c.printed().hold()))
        .toList();
  }

  private boolean isLater() {
    return now.end().at().isAfter(printed.earliest());
  }

  private boolean isSooner() {
    return now.end().at().isBefore(printed.card());
  }
}
