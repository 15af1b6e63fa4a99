package curewindow.page;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.shop.Service;
import curewindow.words.Words;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;

/**
 * Settles what a drying film and a fresh coating on one car ask of it at the same time: the coating
 * comes first, as water and sun spoil it for good, while a film that dries later is only late.
 */
final class Order {

  private final JobView view;
  private final Words words;

  Order(JobView view) {
    this.view = view;
    this.words = view.words();
  }

  /** What comes first and what then; not shown any more once the film is dry. */
  Optional<CustomerView.Note> note() {
    return text()
        .map(t -> new CustomerView.Note(t, drying().map(film -> film.end().at().getEpochSecond())));
  }

  /** What comes first and what then, or empty where nothing is at odds. */
  Optional<String> text() {
    Optional<Release> dry = view.timeline().of("keep-dry").filter(this::isAfterPickup);
    Optional<Release> film = drying();
    if (dry.isEmpty() || film.isEmpty() || !hasFilm() || !hasCoatingOutside()) {
      return Optional.empty();
    }
    if (!film.get().end().at().isAfter(dry.get().end().at())) {
      return Optional.empty();
    }
    When when = new When(view);
    boolean ask = dry.get().end() instanceof Release.AskUs;
    return Optional.of(
        words.text(
            ask ? "page.order-ask" : "page.order",
            Map.of("first", when.dayAndTime(dry.get()), "then", when.day(film.get()))));
  }

  /** What is normal while mounting water leaves a film; the last of it. */
  private Optional<Release> drying() {
    return view.timeline().releases().stream()
        .filter(r -> r.kind() == HoldKind.SETTLE)
        .max(Comparator.comparing(r -> r.end().at()));
  }

  private boolean isAfterPickup(Release release) {
    return release.end().at().isAfter(view.timeline().pickup());
  }

  private boolean hasFilm() {
    return services().anyMatch(Service::film);
  }

  private boolean hasCoatingOutside() {
    return services().anyMatch(s -> !s.film() && !s.inside());
  }

  private java.util.stream.Stream<Service> services() {
    return view.job().items().stream()
        .map(i -> view.catalogue().services().get(i.service()))
        .filter(s -> s != null);
  }
}
