package curewindow.shop;

import curewindow.cure.Bay;
import curewindow.cure.Lamp;
import curewindow.cure.Stay;
import curewindow.shop.Node.Leaf;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Reads what was fitted on a car, and what was found on it. */
final class ItemReader {

  static final Keys ITEM =
      Keys.needs("service", "film", "spots", "finished")
          .allows("vlt", "glass-vlt", "batch", "warranty-years", "lamp");
  static final Keys LAMP = Keys.needs("surface", "minutes");
  static final Keys FINDING = Keys.needs("kind").allows("spots", "since", "text");

  /** How long a car is in the shop at most where day and month are taken to be swapped. */
  private static final Duration LIKELY_STAY = Duration.ofDays(14);

  private final Known known;
  private final Optional<ZoneId> zone;
  private final List<Stay> stays;
  private final Source source;

  ItemReader(Known known, Optional<ZoneId> zone, List<Stay> stays, Source source) {
    this.known = known;
    this.zone = zone;
    this.stays = stays;
    this.source = source;
  }

  /** All items of a job, at least one, in one stay no spot twice with one service. */
  List<FittedItem> items(Fields job) {
    List<Node> nodes = job.items("items");
    if (nodes.isEmpty() && job.node("items").orElse(null) instanceof Node.Row) {
      source.error(
          "no-items", job.where("items"), "nothing was fitted", "list at least one fitted item");
    }
    List<FittedItem> items = new ArrayList<>();
    Map<String, Integer> fitted = new HashMap<>();
    for (Node node : nodes) {
      item(node)
          .ifPresent(
              item -> {
                items.add(item);
                if (!stays.isEmpty()) {
                  once(item, node, items.size(), fitted);
                }
              });
    }
    return items.size() < nodes.size() ? List.of() : items;
  }

  private void once(FittedItem item, Node node, int number, Map<String, Integer> fitted) {
    long stay = stays.stream().filter(s -> !s.in().isAfter(item.finished())).count();
    for (String spot : item.spots()) {
      Integer first = fitted.putIfAbsent(stay + " " + item.service() + " " + spot, number);
      if (first != null) {
        source.error(
            "fitted-twice",
            node.where(),
            item.service() + " is fitted on " + spot + " twice",
            "keep it in one item");
      }
    }
  }

  private Optional<FittedItem> item(Node node) {
    Optional<Fields> fields = Fields.of(node, ITEM, source);
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    Fields f = fields.get();
    Optional<String> service = f.name("service", known.services());
    Optional<String> film = f.name("film", known.films());
    if (service.isPresent() && film.isPresent()) {
      sameService(f, service.get(), film.get());
    }
    List<String> spots = spots(f, service);
    Optional<Instant> finished =
        f.leaf("finished").flatMap(l -> Times.moment(l, zone, source)).filter(t -> inStay(t, f));
    Optional<Double> vlt = f.number("vlt", 0, 100);
    Optional<Double> glass = glassVlt(f, spots, vlt);
    Optional<String> batch = f.code("batch", 60);
    Optional<Integer> warranty = f.whole("warranty-years", 0, 50);
    Optional<Lamp> lamp = lamp(f);
    if (service.isEmpty() || film.isEmpty() || spots.isEmpty() || finished.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new FittedItem(
            service.get(),
            film.get(),
            spots,
            finished.get(),
            vlt.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
            glass.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
            batch,
            warranty.map(OptionalInt::of).orElse(OptionalInt.empty()),
            lamp));
  }

  private static Optional<Lamp> lamp(Fields f) {
    Optional<Fields> lamp = f.fields("lamp", LAMP);
    Optional<Double> surface =
        lamp.flatMap(l -> l.number("surface", Bay.COOLEST_LAMP, Bay.HOTTEST_LAMP));
    Optional<Double> minutes = lamp.flatMap(l -> l.number("minutes", Lamp.SHORTEST, Lamp.LONGEST));
    return surface.flatMap(s -> minutes.map(m -> new Lamp(s, m)));
  }

  /** Only glass lets light through, and a film on it never makes it clearer. */
  private Optional<Double> glassVlt(Fields f, List<String> spots, Optional<Double> net) {
    Optional<Double> glass = f.number("glass-vlt", 1, 100);
    if (glass.isPresent() && !spots.isEmpty() && spots.stream().noneMatch(this::isGlass)) {
      source.error(
          "glass-vlt-without-glass",
          f.where("glass-vlt"),
          "glass-vlt is stated, but none of the spots is glass",
          "delete glass-vlt, or check spots");
    } else if (glass.isPresent() && net.filter(n -> n > glass.get()).isPresent()) {
      source.error(
          "vlt-above-glass-vlt",
          f.where("vlt"),
          "glass and film together let more light through than the glass alone",
          "check vlt and glass-vlt; measure the bare glass before the film is fitted");
    }
    return glass;
  }

  private boolean isGlass(String spot) {
    return known.catalogue().spots().get(spot).facts().contains(SpotFact.GLASS);
  }

  private void sameService(Fields f, String service, String film) {
    Film of = known.catalogue().films().get(film);
    if (!of.service().equals(service)) {
      List<String> right =
          known.catalogue().films().values().stream()
              .filter(o -> o.service().equals(service))
              .map(Film::id)
              .toList();
      source.error(
          "film-of-another-service",
          f.where("film"),
          "the film " + film + " belongs to " + of.service() + ", not to " + service,
          "set service: "
              + of.service()
              + (right.isEmpty() ? "" : ", or use a film such as " + right.get(0)));
    }
  }

  private List<String> spots(Fields f, Optional<String> service) {
    int before = source.errors();
    List<String> spots = f.names("spots", known.spots());
    if (spots.isEmpty() && f.has("spots") && source.errors() == before) {
      source.error("no-spots", f.where("spots"), "no spot is named", "list at least one spot");
    }
    service.ifPresent(s -> canHold(f, known.catalogue().services().get(s)));
    return spots;
  }

  private void canHold(Fields f, Service service) {
    for (Node node : f.node("spots").isPresent() ? f.items("spots") : List.<Node>of()) {
      if (node instanceof Leaf leaf
          && known.catalogue().spots().containsKey(leaf.text())
          && !service.spots().contains(leaf.text())) {
        source.error(
            "spot-not-for-service",
            leaf.where(),
            service.id() + " cannot be fitted on " + leaf.text(),
            source.suggestion(leaf.text(), service.spots())
                + "; or add the spot to the service in "
                + CatalogueReader.SERVICES);
      }
    }
  }

  private boolean inStay(Instant finished, Fields f) {
    if (stays.isEmpty() || stays.stream().anyMatch(stay -> stay.has(finished))) {
      return true;
    }
    Instant pickup = stays.get(stays.size() - 1).pickup();
    boolean after = finished.isAfter(pickup);
    source.error(
        after ? "finished-after-pickup" : "finished-outside-stays",
        f.where("finished"),
        after
            ? "the work is finished after the pickup"
            : "the work is finished while the car is not in the shop",
        after
            ? zone.flatMap(z -> SwappedDay.hint(finished, pickup, z, LIKELY_STAY))
                .orElse("check finished and pickup")
            : "check finished, and in and pickup of the stays");
    return false;
  }

  /** Something found on the car. */
  Optional<Finding> finding(Node node) {
    Optional<Fields> fields = Fields.of(node, FINDING, source);
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    Fields f = fields.get();
    Optional<FindingKind> kind =
        f.name("kind", Names.of("finding", FindingKind.ids())).flatMap(FindingKind::of);
    List<String> spots = f.names("spots", known.spots());
    Optional<Integer> since = f.whole("since", 1950, 2100);
    String text = f.note("text", 300).orElse("");
    OptionalInt year = since.map(OptionalInt::of).orElse(OptionalInt.empty());
    return kind.map(k -> new Finding(k, spots, year, text));
  }
}
