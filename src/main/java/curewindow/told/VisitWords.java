package curewindow.told;

import curewindow.shop.OpenDays;
import curewindow.words.Words;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;

/**
 * How a job's visit is told: as an invitation for any day we are open from one on, or for a photo.
 */
public final class VisitWords {

  private VisitWords() {}

  /**
   * The invitation.
   *
   * @param view the job, in the language that is to be spoken
   * @return a sentence with its day, and where that day has moved a second one that says so; empty
   *     where the shop need not see the car
   */
  public static Optional<String> invitation(JobView view) {
    return view.visit()
        .map(
            visit ->
                moved(visit, view)
                    .map(told -> invitation(visit, view) + " " + told)
                    .orElseGet(() -> invitation(visit, view)));
  }

  /**
   * A message to somebody who has not come: who asks, for which car, and from when on to come.
   *
   * @param view the job, in the language that is to be spoken
   * @param now when it is asked
   * @return the message with the day of the visit, or with the next one on which the shop is open
   *     where that has passed; empty where the shop need not see the car, or is not open again
   */
  public static Optional<String> reminder(JobView view, Instant now) {
    LocalDateTime today = now.atZone(view.shop().zone()).toLocalDateTime();
    return view.visit()
        .flatMap(
            visit ->
                visit.day().isAfter(today.toLocalDate())
                    ? Optional.of(visit)
                    : new OpenDays(view.shop())
                        .firstOpen(today)
                        .map(at -> at.toLocalDate())
                        .map(day -> new Visit(day, visit.services(), visit.byPhoto())))
        .map(visit -> reminder(invitation(visit, view), view));
  }

  private static String reminder(String invitation, JobView view) {
    String name = view.job().firstName();
    Map<String, String> facts =
        Map.of(
            "name", name, "car", view.car(), "shop", view.shop().name(), "invitation", invitation);
    return name.isBlank()
        ? view.words().text("handout.reminder-nameless", facts)
        : view.words().text("handout.reminder", facts);
  }

  /**
   * Where the shop asked for another day when it handed over the card.
   *
   * @param visit the visit as it is now
   * @param view the job
   * @return a sentence with the day on the card; empty where it is the same
   */
  public static Optional<String> moved(Visit visit, JobView view) {
    return view.printed()
        .visit()
        .filter(told -> !told.equals(visit.day()))
        .map(told -> view.words().text("page.visit.moved", Map.of("day", shortDay(told, view))));
  }

  /**
   * From when on to come.
   *
   * @param visit the visit
   * @param view the job
   * @return such as "any day we are open from Mon, Dec 7"
   */
  public static String firstDay(Visit visit, JobView view) {
    Map<String, String> day = Map.of("day", shortDay(visit.day(), view));
    return view.words().text(visit.byPhoto() ? "page.visit.from-photo" : "page.visit.from", day);
  }

  private static String invitation(Visit visit, JobView view) {
    Words words = view.words();
    String hours = String.join("; ", new Contact(view.shop(), words).openDays());
    Map<String, String> facts = Map.of("day", shortDay(visit.day(), view), "hours", hours);
    String key = visit.byPhoto() ? "photo" : hours.isEmpty() ? "day" : "hours";
    return words.text("page.visit." + key, facts);
  }

  /**
   * What the visit is, in few words.
   *
   * @param visit the visit
   * @param words the words of any language
   * @return such as {@code Come in so we can check it}
   */
  public static String title(Visit visit, Words words) {
    return words.text(visit.byPhoto() ? "page.visit.title-photo" : "page.visit.title");
  }

  /**
   * The day of a visit in few letters.
   *
   * @param day the day, by the shop's clock
   * @param view the job
   * @return such as {@code Mon, Dec 7}
   */
  public static String shortDay(LocalDate day, JobView view) {
    var zone = view.shop().zone();
    return view.words().shortDay(day.atStartOfDay(zone).toInstant(), zone);
  }
}
