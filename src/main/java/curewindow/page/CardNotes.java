package curewindow.page;

import curewindow.words.Words;
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
        .map(c -> new CustomerView.Note(text(laterKey(c), c), until(c)))
        .toList();
  }

  /** That a date is sooner than the card says. */
  List<CustomerView.Note> sooner() {
    return CardChange.sooner(view).stream()
        .map(
            c ->
                new CustomerView.Note(
                    text("sooner", c), Optional.of(c.printed().at().getEpochSecond())))
        .toList();
  }

  private static String laterKey(CardChange change) {
    if (change.isAsked()) {
      return "later-ask";
    }
    return change.printed().slowed() ? "later-weather" : "later";
  }

  private String text(String key, CardChange change) {
    return words.text(
        "page.card." + key,
        Map.of(
            "card",
            words.dayAndTime(change.printed().at(), view.timeline().zone()),
            "label",
            words.text("hold." + change.now().hold() + ".short"),
            "when",
            when.dayAndTime(change.now())));
  }

  private static Optional<Long> until(CardChange change) {
    return change.isAsked()
        ? Optional.empty()
        : Optional.of(change.now().end().at().getEpochSecond());
  }
}
