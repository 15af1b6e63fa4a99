package curewindow.page;

import curewindow.told.CardChange;
import curewindow.told.JobView;
import curewindow.told.Parkings;
import curewindow.told.PrintedDate;
import curewindow.told.When;
import curewindow.words.Words;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What a page says where its dates are not those of the card. */
final class CardNotes {

  private final JobView view;
  private final Words words;
  private final When when;

  /** The job as the shop noted it, where the page is for another parking. */
  private final Optional<JobView> noted;

  CardNotes(JobView view) {
    this.view = view;
    this.words = view.words();
    this.when = new When(view);
    this.noted = view.parkings().noted().map(Parkings.Case::timeline).map(view::withTimeline);
  }

  /** What has to be said before anything else: it is not safe to go by the card. */
  List<CustomerView.Note> later() {
    return CardChange.later(view).stream()
        .map(c -> new CustomerView.Note(told(c) + " " + later(c), until(c)))
        .toList();
  }

  /**
   * That a date is sooner than the card says; not where only another parking makes it so, as the
   * page then says at its top that the card is for the noted one.
   */
  List<CustomerView.Note> sooner() {
    return CardChange.sooner(view).stream()
        .filter(c -> noted.isEmpty() || holds(CardChange.sooner(noted.get())).contains(hold(c)))
        .map(
            c ->
                new CustomerView.Note(
                    text("sooner", c, card(c)), Optional.of(c.printed().card().getEpochSecond())))
        .toList();
  }

  private String told(CardChange change) {
    String key = change.printed().isOnFirstCard() ? "says" : "said";
    PrintedDate printed = change.printed();
    ZoneId clock = printed.earliestClock(view.timeline().zone());
    return text(key, change, words.dayAndTime(printed.earliest(), clock));
  }

  private String card(CardChange change) {
    PrintedDate printed = change.printed();
    return words.dayAndTime(printed.card(), printed.cardClock(view.timeline().zone()));
  }

  private String later(CardChange change) {
    Map<String, String> until = Map.of("when", when.dayAndTime(change.now()));
    if (isForParking(change)) {
      return words.text("parked.later", until);
    }
    return words.text(
        change.printed().slowed() ? "page.card.later-weather" : "page.card.later", until);
  }

  /** Whether the date would still hold if the car stood as noted. */
  private boolean isForParking(CardChange change) {
    return noted.filter(n -> !holds(CardChange.later(n)).contains(hold(change))).isPresent();
  }

  private static String hold(CardChange change) {
    return change.now().hold();
  }

  private static Set<String> holds(List<CardChange> changes) {
    return changes.stream().map(CardNotes::hold).collect(Collectors.toSet());
  }

  private String text(String key, CardChange change, String date) {
    return words.text(
        "page.card." + key,
        Map.of("card", date, "label", words.text("hold." + change.now().hold() + ".short")));
  }

  private static Optional<Long> until(CardChange change) {
    return Optional.of(change.now().end().at().getEpochSecond());
  }
}
