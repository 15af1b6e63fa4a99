package curewindow.shop;

import curewindow.cure.Driver;
import curewindow.cure.HoldKind;
import curewindow.cure.HoldRule;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the holds and what each service needs before they end. */
final class HoldsReader {

  private static final Keys HOLD = Keys.needs("kind", "rank");
  private static final Keys RULE =
      Keys.needs("service", "hold", "need", "floor", "look-by").allows("where", "spots", "except");
  private static final Keys NEED = Keys.needs().allows(Driver.ids().toArray(String[]::new));
  private static final int LONGEST = 20_000;

  private final Source source;
  private final Names services;
  private final Names spots;
  private final Broken broken;
  private final Map<String, Hold> holds = new LinkedHashMap<>();
  private final List<RuleFor> rules = new ArrayList<>();

  HoldsReader(Source source, Names services, Names spots, Broken broken) {
    this.broken = broken;
    this.source = source;
    this.services = services;
    this.spots = spots;
  }

  Map<String, Hold> holds() {
    return holds;
  }

  List<RuleFor> rules() {
    return rules;
  }

  void read(Fields file) {
    file.node("holds")
        .flatMap(n -> Fields.anyKeys(n, source))
        .ifPresent(all -> CatalogueReader.each(all, HOLD, HoldsReader::hold, holds, broken));
    for (Node node : file.items("rules")) {
      int before = source.errors();
      Optional<RuleFor> rule = Fields.of(node, RULE, source).flatMap(this::rule);
      if (source.errors() == before) {
        rule.ifPresent(rules::add);
      }
    }
  }

  private static Optional<Hold> hold(String id, Fields f) {
    Optional<HoldKind> kind =
        f.name("kind", Names.of("kind of hold", HoldKind.ids())).flatMap(HoldKind::of);
    Optional<Integer> rank = f.whole("rank", 1, 1000);
    return kind.flatMap(k -> rank.map(r -> new Hold(id, k, r)));
  }

  private Optional<RuleFor> rule(Fields f) {
    Optional<String> service = f.name("service", services);
    Optional<String> hold = f.name("hold", new Names("hold", holds.keySet(), broken));
    Optional<SpotFact> fact =
        f.name("where", Names.of("spot fact", SpotFact.ids())).flatMap(SpotFact::of);
    List<String> only = f.names("spots", spots);
    List<String> except = f.names("except", spots);
    Map<Driver, Double> need = need(f);
    Optional<Double> floor = f.number("floor", 0, LONGEST);
    Optional<Double> lookBy = f.number("look-by", 0, LONGEST);
    if (service.isEmpty() || hold.isEmpty() || need.isEmpty()) {
      return Optional.empty();
    }
    if (floor.isEmpty() || lookBy.isEmpty() || outOfOrder(f, floor.get(), lookBy.get())) {
      return Optional.empty();
    }
    HoldRule rule =
        new HoldRule(hold.get(), holds.get(hold.get()).kind(), need, floor.get(), lookBy.get());
    return Optional.of(new RuleFor(service.get(), fact, only, except, rule));
  }

  private boolean outOfOrder(Fields f, double floor, double lookBy) {
    if (floor <= lookBy) {
      return false;
    }
    source.error(
        "out-of-order",
        f.where("look-by"),
        "look-by comes before floor",
        "raise look-by or lower floor");
    return true;
  }

  private Map<Driver, Double> need(Fields f) {
    Map<Driver, Double> need = new EnumMap<>(Driver.class);
    Optional<Fields> needs = f.has("need") ? f.fields("need", NEED) : Optional.empty();
    for (Driver driver : Driver.values()) {
      needs.flatMap(n -> n.number(driver.id(), 1, LONGEST)).ifPresent(h -> need.put(driver, h));
    }
    if (needs.isPresent() && needs.get().keys().isEmpty()) {
      source.error(
          "no-need",
          needs.get().where(),
          "need names no driver",
          "write hours for bond, dry-out or crosslink");
    }
    return need;
  }
}
