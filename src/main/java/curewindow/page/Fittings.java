package curewindow.page;

import curewindow.shop.Film;
import curewindow.shop.Finding;
import curewindow.shop.FittedItem;
import curewindow.shop.NetLight;
import curewindow.shop.Service;
import curewindow.shop.SpotFact;
import curewindow.told.Visit;
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

  /** The whole record. */
  CustomerView.Work work() {
    List<LaterCare> due = LaterCare.of(view);
    List<CustomerView.Later> later = new ArrayList<>();
    view.visit().ifPresent(visit -> later.add(visit(visit)));
    due.forEach(l -> later.add(later(l)));
    boolean film = due.stream().anyMatch(l -> l.kind() == LaterCare.Kind.REPLACE);
    return new CustomerView.Work(
        fitted(),
        view.job().items().stream().anyMatch(this::isFrontGlass)
            ? Optional.of(words.text("done.law"))
            : Optional.empty(),
        found(),
        new SeenWords(view).record(),
        later,
        film ? Optional.of(words.text("done.removal")) : Optional.empty());
  }

  private boolean isFrontGlass(FittedItem item) {
    return item.spots().stream().anyMatch(this::isDriversView) && light(item).isPresent();
  }

  private boolean isDriversView(String spot) {
    return Optional.ofNullable(view.catalogue().spots().get(spot))
        .filter(s -> s.facts().contains(SpotFact.SIGHT))
        .isPresent();
  }

  private CustomerView.Later visit(Visit visit) {
    return new CustomerView.Later(
        VisitWords.title(visit, words),
        CalendarFile.of(CalendarFile.VISIT),
        VisitWords.shortDay(visit.day(), view),
        Optional.empty());
  }

  private CustomerView.Later later(LaterCare due) {
    return new CustomerView.Later(
        due.title(view, words),
        CalendarFile.of(due.name()),
        words.date(due.day()),
        due.again(words));
  }

  private List<CustomerView.Fitted> fitted() {
    return view.job().items().stream()
        .map(i -> new CustomerView.Fitted(words.text("service." + i.service()), facts(i)))
        .toList();
  }

  /** Finish and time are told by the drawing of the car. */
  private List<Contact.Pair> facts(FittedItem item) {
    List<Contact.Pair> facts = new ArrayList<>();
    Service service = view.catalogue().services().get(item.service());
    boolean isFilm = service == null || service.film();
    facts.add(pair(isFilm ? "film" : "coating", JobFacts.filmName(view, item)));
    facts.add(pair("where", Listing.of(spots(item.spots()), words)));
    lightInWords(item).ifPresent(v -> facts.add(pair("vlt", v)));
    item.batch().ifPresent(b -> facts.add(pair("batch", b)));
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

  private Optional<NetLight> light(FittedItem item) {
    return light(view, item);
  }

  private static Optional<NetLight> light(JobView view, FittedItem item) {
    return NetLight.of(item, Optional.ofNullable(view.catalogue().films().get(item.film())));
  }

  private Optional<String> lightInWords(FittedItem item) {
    return light(item)
        .map(
            light ->
                switch (light.how()) {
                  case MEASURED -> light("page.fitted.vlt-measured", light.percent());
                  case FILM -> light("page.fitted.vlt-film", light.percent());
                  case COMPUTED -> computed(light, item);
                });
  }

  private String light(String key, double percent) {
    return words.text(key, Map.of("percent", words.number(percent, 1)));
  }

  /** Whole percents: a sum of data sheets is no measurement. */
  private String computed(NetLight light, FittedItem item) {
    Film film = view.catalogue().films().get(item.film());
    return words.text(
        "done.vlt-computed",
        Map.of(
            "net",
            words.number(light.percent(), 0),
            "film",
            words.number(film.vlt().orElseThrow(), 1),
            "glass",
            words.number(item.glassVlt().orElseThrow(), 1)));
  }

  /** Light let through: as measured, computed, or of the film alone. */
  static Optional<String> vlt(JobView view, FittedItem item) {
    Words words = view.words();
    return light(view, item)
        .map(light -> words.number(light.percent(), light.how() == NetLight.How.COMPUTED ? 0 : 1))
        .map(number -> words.text("page.percent", Map.of("number", number)));
  }

  /** The last day of an item's warranty. */
  static Optional<String> warranty(JobView view, FittedItem item) {
    if (item.warrantyYears().isEmpty()) {
      return Optional.empty();
    }
    LocalDate from = item.finished().atZone(view.timeline().zone()).toLocalDate();
    return Optional.of(view.words().date(from.plusYears(item.warrantyYears().getAsInt())));
  }

  private List<Contact.Pair> found() {
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
