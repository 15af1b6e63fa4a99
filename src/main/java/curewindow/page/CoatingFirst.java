package curewindow.page;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.shop.Hold;
import curewindow.told.JobView;
import curewindow.words.Words;
import java.util.Comparator;
import java.util.Optional;
import java.util.Set;

/**
 * Settles what a drying film and a fresh coating on one car ask of it at the same time: the coating
 * comes first, as water and sun spoil it for good, while a film that dries later is only late. Told
 * only of holds whose texts say so.
 */
final class CoatingFirst {

  private final JobView view;
  private final Words words;

  CoatingFirst(JobView view) {
    this.view = view;
    this.words = view.words();
  }

  /** What comes first and what then; not shown any more once the first is over. */
  Optional<CustomerView.Note> note() {
    Optional<Release> coating = drying().flatMap(this::against);
    return text()
        .map(t -> new CustomerView.Note(t, coating.map(c -> c.end().at().getEpochSecond())));
  }

  /** What comes first and what then, or empty where nothing is at odds. */
  Optional<String> text() {
    Optional<Release> film = drying();
    Optional<Release> coating = film.flatMap(this::against);
    if (coating.isEmpty() || !film.get().end().at().isAfter(coating.get().end().at())) {
      return Optional.empty();
    }
    return Optional.of(words.text(key(coating.get())) + " " + words.text(key(film.get())));
  }

  private static String key(Release release) {
    return "hold." + release.hold() + ".order";
  }

  /** Only what has a sentence for it is told: nobody else knows what comes of the order. */
  private boolean isTold(Release release) {
    return words.has(key(release));
  }

  /** The hold that runs longest of those that forbid what helps something to settle. */
  private Optional<Release> against(Release settle) {
    Set<String> wants = hold(settle).map(Hold::wants).orElse(Set.of());
    return view.timeline().releases().stream()
        .filter(r -> view.timeline().isAhead(r) && isTold(r))
        .filter(
            r -> hold(r).filter(h -> h.forbids().stream().anyMatch(wants::contains)).isPresent())
        .max(Comparator.comparing(r -> r.end().at()));
  }

  private Optional<Hold> hold(Release release) {
    return Optional.ofNullable(view.catalogue().holds().get(release.hold()));
  }

  /** What is normal while mounting water leaves a film; the last of it. */
  private Optional<Release> drying() {
    return view.timeline().releases().stream()
        .filter(r -> r.kind() == HoldKind.SETTLE && isTold(r))
        .max(Comparator.comparing(r -> r.end().at()));
  }
}
