package curewindow.page;

import curewindow.words.Words;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a page says where its dates are not those of the card. */
final class CardNotes {

  private final JobView view;
  private final Words words;
  private final When when;

  CardNotes(JobView view) {
    this.view = view;
    this.words = view.words();
    this.when = new When(view);
  }

  /** What has to be said before anything else: it is not safe to go by the card. */
  List<CustomerView.Note> later() {
    return CardChange.later(view).stream()
        .map(c -> new CustomerView.Note(told(c) + " " + later(c), until(c)))
        .toList();
  }

  /** That a date is sooner than the card says. */
  List<CustomerView.Note> sooner() {
    return CardChange.sooner(view).stream()
        .map(
            c ->
                new CustomerView.Note(
                    text("sooner", c, c.printed().card()),
                    Optional.of(c.printed().card().getEpochSecond())))
        .toList();
  }

  private String told(CardChange change) {
    String key = change.printed().isOnFirstCard() ? "says" : "said";
    return text(key, change, change.printed().earliest());
  }

  private String later(CardChange change) {
    String key = change.printed().slowed() ? "later-weather" : "later";
    return words.text(
        "page.card." + (change.isAsked() ? "later-ask" : key),
        Map.of("when", when.dayAndTime(change.now())));
  }

  private String text(String key, CardChange change, Instant date) {
    return words.text(
        "page.card." + key,
        Map.of(
            "card",
            words.dayAndTime(date, view.timeline().zone()),
            "label",
            words.text("hold." + change.now().hold() + ".short")));
  }

  private static Optional<Long> until(CardChange change) {
    return change.isAsked()
        ? Optional.empty()
        : Optional.of(change.now().end().at().getEpochSecond());
  }
}
