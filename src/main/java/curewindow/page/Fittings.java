package curewindow.page;

import curewindow.cure.Stay;
import curewindow.guide.JobFacts;
import curewindow.shop.Film;
import curewindow.shop.Finding;
import curewindow.shop.FittedItem;
import curewindow.shop.NetLight;
import curewindow.shop.SpotFact;
import curewindow.told.Contact;
import curewindow.told.JobView;
import curewindow.told.LaterCare;
import curewindow.told.Listing;
import curewindow.words.Words;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What was fitted where, and what was found and is due. */
final class Fittings {

  private final JobView view;
  private final Words words;

  Fittings(JobView view) {
    this.view = view;
    this.words = view.words();
  }

  /** The record of the car. */
  CustomerView.Work work() {
    List<LaterCare> due = LaterCare.of(view);
    List<Contact.Pair> facts = new ArrayList<>();
    view.job().items().forEach(item -> facts.add(history(item)));
    facts.addAll(found());
    stays().ifPresent(facts::add);
    facts.addAll(new SeenWords(view).record());
    due.forEach(l -> facts.add(later(l)));
    boolean film = due.stream().anyMatch(l -> l.kind() == LaterCare.Kind.REPLACE);
    return new CustomerView.Work(
        view.job().items().stream().anyMatch(this::isFrontGlass)
            ? Optional.of(words.text("done.law"))
            : Optional.empty(),
        facts,
        film ? Optional.of(words.text("done.removal")) : Optional.empty());
  }

  /** When the car was in the shop, where it came back. */
  private Optional<Contact.Pair> stays() {
    List<Stay> stays = view.job().stays();
    return stays.size() == 1
        ? Optional.empty()
        : Optional.of(
            new Contact.Pair(
                words.text("done.stays"),
                stays.stream()
                    .map(this::days)
                    .collect(Collectors.joining(words.text("page.hours.between")))));
  }

  private String days(Stay stay) {
    ZoneId there = view.timeline().zone();
    String first = words.monthDay(stay.in(), there);
    String last = words.monthDay(stay.pickup(), there);
    return first.equals(last)
        ? first
        : words.text("done.stay-days", Map.of("first", first, "last", last));
  }

  private boolean isFrontGlass(FittedItem item) {
    return item.spots().stream().anyMatch(s -> view.catalogue().is(s, SpotFact.SIGHT))
        && light(item).isPresent();
  }

  private Contact.Pair later(LaterCare due) {
    return new Contact.Pair(due.title(view, words), words.date(due.day()) + due.more(words));
  }

  /** What is to be known of an item at a glance: the film, its finish, and how much light. */
  List<String> facts(FittedItem item) {
    List<String> facts = new ArrayList<>();
    facts.add(JobFacts.filmName(view, item));
    Optional.ofNullable(view.catalogue().films().get(item.film()))
        .flatMap(Film::finish)
        .ifPresent(f -> facts.add(words.text("finish." + f)));
    lightInWords(item).ifPresent(v -> facts.add(fact("vlt", v)));
    return facts;
  }

  /** What an item is known by later: its batch, its term, and when it was finished. */
  private Contact.Pair history(FittedItem item) {
    ZoneId there = view.timeline().zone();
    List<String> facts = new ArrayList<>();
    item.batch().ifPresent(b -> facts.add(fact("batch", b)));
    JobFacts.warranty(view, item).ifPresent(w -> facts.add(fact("warranty", w)));
    String day = words.shortDay(item.finished(), there);
    String time = words.time(item.finished(), there);
    String finished = words.text("page.comma", Map.of("first", day, "next", time));
    facts.add(words.text("car.finished", Map.of("when", finished)));
    return new Contact.Pair(words.text("service." + item.service()), String.join(" · ", facts));
  }

  private String fact(String key, String text) {
    return words.text(
        "page.fitted.fact", Map.of("name", words.text("page.fitted." + key), "text", text));
  }

  private List<String> spots(List<String> ids) {
    return ids.stream().map(s -> words.text("spot." + s)).toList();
  }

  private Optional<NetLight> light(FittedItem item) {
    return JobFacts.light(view, item);
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
