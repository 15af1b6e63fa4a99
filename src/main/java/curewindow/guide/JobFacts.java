package curewindow.guide;

import curewindow.cure.Release;
import curewindow.shop.Film;
import curewindow.shop.FittedItem;
import curewindow.shop.NetLight;
import curewindow.shop.Service;
import curewindow.shop.Shop;
import curewindow.shop.Spot;
import curewindow.shop.SpotFact;
import curewindow.told.JobView;
import curewindow.told.Listing;
import curewindow.told.ParkingWords;
import curewindow.told.VisitWords;
import curewindow.told.When;
import curewindow.words.Isolates;
import curewindow.words.Quantity;
import curewindow.words.Words;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a guide may ask of one job. Values are in the job's language, dates in the car's zone. */
public final class JobFacts implements GuideFacts {

  private final JobView view;
  private final Words words;
  private final ZoneId zone;

  /**
   * The facts of a job.
   *
   * @param view the job
   */
  public JobFacts(JobView view) {
    this.view = view;
    this.words = view.words();
    this.zone = view.timeline().zone();
  }

  @Override
  public boolean has(String kind, String name) {
    return switch (kind) {
      case "service" -> items().anyMatch(i -> i.service().equals(name));
      case "spot" -> items().anyMatch(i -> i.spots().contains(name));
      case "fact" -> spots().anyMatch(s -> s.facts().stream().anyMatch(f -> f.id().equals(name)));
      case "hold" -> view.timeline().of(name).isPresent();
      case "found" -> view.job().found().stream().anyMatch(f -> f.kind().id().equals(name));
      case "finish" -> view.job().car().finish().orElse("gloss").equals(name);
      case "film-finish" -> films().anyMatch(f -> f.finish().filter(name::equals).isPresent());
      case "material" -> films().anyMatch(f -> material(f).equals(name));
      case "parking" -> parking(name);
      case "body" -> view.job().car().body().id().equals(name);
      case "paint" -> view.job().car().paint().id().equals(name);
      case "over" -> name.equals("film") && overFilm();
      case "visit" -> name.equals("planned") && view.visit().filter(v -> !v.byPhoto()).isPresent();
      default -> false;
    };
  }

  @Override
  public Optional<String> value(String name) {
    Optional<Quantity> quantity = Quantity.of(name);
    if (quantity.isPresent()) {
      return quantity.map(words::quantity);
    }
    String[] parts = name.split("\\.", 3);
    return switch (parts[0]) {
      case "hold" -> parts.length == 3 ? hold(parts[1], parts[2]) : Optional.empty();
      case "visit" -> view.visit().map(v -> VisitWords.shortDay(v.day(), view));
      case "shop" -> parts.length == 2 ? shop(view.shop(), parts[1], words) : Optional.empty();
      case "job" -> parts.length == 2 ? job(parts[1]) : Optional.empty();
      default -> parts.length == 2 ? ofService(parts[0], parts[1]) : Optional.empty();
    };
  }

  @Override
  public Optional<Instant> over(String hold) {
    return view.timeline().of(hold).map(release -> release.end().at());
  }

  @Override
  public Optional<Instant> set(String hold) {
    return view.timeline().of(hold).map(Release::setAt);
  }

  @Override
  public Optional<Instant> invitedUntil() {
    return view.visit().map(visit -> visit.invitedUntil(view.shop().zone()));
  }

  private Optional<String> hold(String id, String what) {
    Optional<Release> release = view.timeline().of(id);
    return switch (what) {
      case "until" -> release.map(new When(view)::untilInGuide);
      case "likely" ->
          release.filter(r -> r.becauseLikely().isMet()).map(r -> words.day(r.likely(), zone));
      case "day" -> release.map(new When(view)::day);
      case "full" -> release.map(r -> words.day(r.setAt(), zone));
      case "done" -> release.map(r -> words.text("hold." + id + ".done"));
      case "gently" -> release.flatMap(new When(view)::gently);
      default -> Optional.empty();
    };
  }

  /**
   * A value of the shop's own, in its own order; the same on every page. A number keeps its plus
   * and a house its street.
   *
   * @param shop the shop
   * @param what such as {@code phone}
   * @param words the words of the language
   * @return the value; empty where there is none
   */
  public static Optional<String> shop(Shop shop, String what, Words words) {
    Optional<String> value =
        switch (what) {
          case "name" -> Optional.of(shop.name());
          case "phone" -> Optional.of(shop.phone());
          case "email" -> shop.email();
          case "address" ->
              Optional.of(shop.street()).filter(s -> !s.isEmpty()).map(s -> String.join(", ", s));
          default -> Optional.empty();
        };
    return value.map(v -> Isolates.own(v, words));
  }

  private Optional<String> job(String what) {
    return switch (what) {
      case "first-name" -> Optional.of(view.job().firstName()).filter(n -> !n.isEmpty());
      case "car" -> Optional.of(view.car());
      case "place" -> Optional.of(words.place(view.place().name(), view.place().zone()));
      case "parking" -> Optional.of(ParkingWords.of(view.job().parking(), words));
      case "pickup" -> Optional.of(words.dayAndTime(view.timeline().pickup(), zone));
      default -> Optional.empty();
    };
  }

  private Optional<String> ofService(String what, String service) {
    return switch (what) {
      case "film" -> listed(service, i -> Stream.of(filmName(view, i)));
      case "spots" -> listed(service, i -> i.spots().stream().map(s -> words.text("spot." + s)));
      case "vlt" -> listed(service, i -> vlt(view, i).stream());
      case "warranty" -> listed(service, i -> warranty(view, i).stream());
      default -> Optional.empty();
    };
  }

  private Optional<String> listed(String service, Function<FittedItem, Stream<String>> texts) {
    List<String> found = items(service).flatMap(texts).distinct().toList();
    return found.isEmpty() ? Optional.empty() : Optional.of(Listing.of(found, words));
  }

  /**
   * The name of the film of an item.
   *
   * @param view the job
   * @param item one of its items
   * @return the name; the id where the catalogue has no such film
   */
  public static String filmName(JobView view, FittedItem item) {
    Film film = view.catalogue().films().get(item.film());
    return film == null ? item.film() : film.name();
  }

  /**
   * The light that an item lets through.
   *
   * @param view the job
   * @param item one of its items
   * @return how much, and how it is known; empty where it is not
   */
  public static Optional<NetLight> light(JobView view, FittedItem item) {
    return NetLight.of(item, Optional.ofNullable(view.catalogue().films().get(item.film())));
  }

  /** Light let through: as measured, computed, or of the film alone. */
  private static Optional<String> vlt(JobView view, FittedItem item) {
    Words words = view.words();
    return light(view, item)
        .map(light -> words.number(light.percent(), light.how() == NetLight.How.COMPUTED ? 0 : 1))
        .map(number -> words.text("page.percent", Map.of("number", number)));
  }

  /**
   * How long the warranty of an item lasts.
   *
   * @param view the job
   * @param item one of its items
   * @return until which day, in words; empty where it has none
   */
  public static Optional<String> warranty(JobView view, FittedItem item) {
    if (item.warrantyYears().isEmpty()) {
      return Optional.empty();
    }
    LocalDate from = item.finished().atZone(view.timeline().zone()).toLocalDate();
    String last = view.words().date(from.plusYears(item.warrantyYears().getAsInt()));
    return Optional.of(view.words().text("page.fitted.warranty-until", Map.of("date", last)));
  }

  private Stream<FittedItem> items() {
    return view.job().items().stream();
  }

  private Stream<FittedItem> items(String service) {
    return items().filter(i -> i.service().equals(service));
  }

  private Stream<Film> films() {
    return items().map(i -> view.catalogue().films().get(i.film())).filter(f -> f != null);
  }

  /** As guides write materials: lower case with hyphens. */
  private static String material(Film film) {
    return film.material().toLowerCase(Locale.ROOT).replace(' ', '-');
  }

  private boolean parking(String name) {
    return view.job().parking().day().id().equals(name)
        || view.job().parking().night().id().equals(name);
  }

  /** The fitted spots, without the facts that this car lacks. */
  private Stream<Spot> spots() {
    return items()
        .flatMap(i -> i.spots().stream())
        .map(s -> view.catalogue().spots().get(s))
        .filter(s -> s != null)
        .map(
            s ->
                new Spot(
                    s.id(),
                    s.up(),
                    s.facts().stream()
                        .filter(f -> !view.job().car().lacks().contains(f))
                        .collect(Collectors.toSet())));
  }

  /** Whether a coating lies on a film: the film was finished first on a spot that has both. */
  private boolean overFilm() {
    return items()
        .filter(i -> isFilm(i, false))
        .anyMatch(
            coating ->
                items()
                    .filter(i -> isFilm(i, true) && !i.finished().isAfter(coating.finished()))
                    .anyMatch(film -> shareSpot(film, coating)));
  }

  private boolean isFilm(FittedItem item, boolean wanted) {
    Service service = view.catalogue().services().get(item.service());
    return service != null && service.film() == wanted && !service.inside();
  }

  private boolean shareSpot(FittedItem film, FittedItem coating) {
    return film.spots().stream().anyMatch(coating.spots()::contains)
        || Stream.concat(film.spots().stream(), coating.spots().stream())
            .anyMatch(spot -> view.catalogue().is(spot, SpotFact.WHOLE));
  }
}
