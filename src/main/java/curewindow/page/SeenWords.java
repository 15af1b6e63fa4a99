package curewindow.page;

import curewindow.cure.Release;
import curewindow.shop.PastVisit;
import curewindow.told.Contact;
import curewindow.told.JobView;
import curewindow.told.Listing;
import curewindow.told.When;
import curewindow.words.Words;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How it is told that the shop saw the car again. */
final class SeenWords {

  /** For so long it is news. */
  private static final int NEWS_DAYS = 30;

  private final JobView view;
  private final Words words;
  private final ZoneId zone;

  SeenWords(JobView view) {
    this.view = view;
    this.words = view.words();
    this.zone = view.shop().zone();
  }

  /** What came of the last visit; not shown any more once it is old. */
  Optional<CustomerView.Note> note() {
    List<PastVisit> seen = view.job().seen();
    return seen.isEmpty() ? Optional.empty() : Optional.of(note(seen.get(seen.size() - 1)));
  }

  private CustomerView.Note note(PastVisit visit) {
    String day = words.fullMonthDay(visit.day().atStartOfDay(zone).toInstant(), zone);
    String said = words.text("page.seen." + visit.result().id(), Map.of("day", day));
    LocalDate old = visit.day().plusDays(NEWS_DAYS);
    return new CustomerView.Note(
        Stream.concat(Stream.of(of(visit, said)), free(visit)).collect(Collectors.joining(" ")),
        Optional.of(old.atStartOfDay(zone).toEpochSecond()));
  }

  /** What may be done again as that very thing was looked at. */
  private Stream<String> free(PastVisit visit) {
    When when = new When(view);
    return visit.what().stream()
        .flatMap(id -> view.timeline().of(id).stream())
        .filter(release -> release.end() instanceof Release.Seen)
        .map(release -> when.done(release));
  }

  /** All visits for the record: the day, and what came of it. */
  List<Contact.Pair> record() {
    return view.job().seen().stream()
        .map(
            v ->
                new Contact.Pair(
                    words.date(v.day()), of(v, words.text("done.seen." + v.result().id()))))
        .toList();
  }

  /** Before what came of it, of which spots or services; nothing where they are not named. */
  private String of(PastVisit visit, String said) {
    List<String> spots = named(visit, "spot.", view.catalogue().spots().keySet());
    List<String> services = named(visit, "service.", view.catalogue().services().keySet());
    List<String> what = spots.isEmpty() ? services : spots;
    return what.isEmpty()
        ? said
        : words.text(
            "page.found.said",
            Map.of("facts", Listing.capital(Listing.of(what, words)), "text", said));
  }

  private List<String> named(PastVisit visit, String key, Set<String> known) {
    return visit.what().stream().filter(known::contains).map(id -> words.text(key + id)).toList();
  }
}
