package curewindow.page;

import curewindow.shop.Film;
import curewindow.shop.Finding;
import curewindow.shop.FittedItem;
import curewindow.shop.Service;
import curewindow.words.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What was fitted where, and what was found. */
final class Fittings {

  private final JobView view;
  private final Words words;

  Fittings(JobView view) {
    this.view = view;
    this.words = view.words();
  }

  List<CustomerView.Fitted> fitted() {
    return view.job().items().stream()
        .map(i -> new CustomerView.Fitted(words.text("service." + i.service()), facts(i)))
        .toList();
  }

  private List<Contact.Pair> facts(FittedItem item) {
    List<Contact.Pair> facts = new ArrayList<>();
    Service service = view.catalogue().services().get(item.service());
    Film film = view.catalogue().films().get(item.film());
    boolean isFilm = service == null || service.film();
    facts.add(pair(isFilm ? "film" : "coating", JobFacts.filmName(view, item)));
    facts.add(pair("where", Listing.of(spots(item.spots()), words)));
    if (film != null) {
      film.finish().ifPresent(f -> facts.add(pair("finish", words.text("finish." + f))));
    }
    vltInWords(item, film).ifPresent(v -> facts.add(pair("vlt", v)));
    item.batch().ifPresent(b -> facts.add(pair("batch", b)));
    facts.add(pair("finished", words.dayAndTime(item.finished(), view.timeline().zone())));
    warranty(view, item)
        .map(d -> words.text("page.fitted.warranty-until", Map.of("date", d)))
        .ifPresent(w -> facts.add(pair("warranty", w)));
    return facts;
  }

  private Contact.Pair pair(String key, String text) {
    return new Contact.Pair(words.text("page.fitted." + key), text);
  }

  private List<String> spots(List<String> ids) {
    return ids.stream().map(s -> words.text("spot." + s)).toList();
  }

  private Optional<String> vltInWords(FittedItem item, Film film) {
    if (item.vlt().isPresent()) {
      return Optional.of(vlt("page.fitted.vlt-measured", item.vlt().getAsDouble()));
    }
    if (film != null && film.vlt().isPresent()) {
      return Optional.of(vlt("page.fitted.vlt-film", film.vlt().getAsDouble()));
    }
    return Optional.empty();
  }

  private String vlt(String key, double percent) {
    return words.text(key, Map.of("percent", words.number(percent, 1)));
  }

  /** Light let through, as measured or else of the film alone. */
  static Optional<String> vlt(JobView view, FittedItem item) {
    Film film = view.catalogue().films().get(item.film());
    if (item.vlt().isEmpty() && (film == null || film.vlt().isEmpty())) {
      return Optional.empty();
    }
    double percent = item.vlt().isPresent() ? item.vlt().getAsDouble() : film.vlt().getAsDouble();
    Words words = view.words();
    return Optional.of(words.text("page.percent", Map.of("number", words.number(percent, 1))));
  }

  /** The last day of an item's warranty. */
  static Optional<String> warranty(JobView view, FittedItem item) {
    if (item.warrantyYears().isEmpty()) {
      return Optional.empty();
    }
    LocalDate from = item.finished().atZone(view.timeline().zone()).toLocalDate();
    return Optional.of(view.words().date(from.plusYears(item.warrantyYears().getAsInt())));
  }

  List<Contact.Pair> found() {
    return view.job().found().stream().map(this::found).toList();
  }

  /** What was found, a colon, where and since when, and then what the shop wrote of it. */
  private Contact.Pair found(Finding finding) {
    List<String> facts = new ArrayList<>();
    if (!finding.spots().isEmpty()) {
      facts.add(Listing.of(spots(finding.spots()), words));
    }
    if (finding.since().isPresent()) {
      String year = String.valueOf(finding.since().getAsInt());
      facts.add(words.text("page.found.since", Map.of("year", year)));
    }
    String said = Listing.capital(finding.text().strip());
    String all = String.join("; ", facts);
    if (!said.isEmpty()) {
      all =
          all.isEmpty() ? said : words.text("page.found.said", Map.of("facts", all, "text", said));
    }
    String what = words.text("finding." + finding.kind().id());
    return new Contact.Pair(
        all.isEmpty() ? what : words.text("page.found.what", Map.of("what", what)), all);
  }
}
