package curewindow.shop;

import curewindow.cure.Driver;
import curewindow.cure.HoldKind;
import curewindow.cure.HoldRule;
import curewindow.problem.Where;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** Reads the holds and what each service needs before they end. */
final class HoldsReader {

  private static final Keys HOLD =
      Keys.needs("kind", "rank")
          .allows("forbids", "brings", "after", "wants", "safety", "main", "sticker", "road");
  private static final Keys RULE =
      Keys.needs("service", "hold", "need", "floor")
          .allows("limit", "horizon", "where", "spots", "except");
  private static final Keys VISIT =
      Keys.needs("service", "earliest", "best", "latest").allows("looks-at");
  private static final Keys NEED = Keys.needs().allows(Driver.ids().toArray(String[]::new));
  private static final int LONGEST = 20_000;
  private static final int LONGEST_DAYS = 365;
  private static final int HOURS_IN_DAY = 24;

  private final Source source;
  private final Names services;
  private final Names spots;
  private final Broken broken;
  private final Map<String, Hold> holds = new LinkedHashMap<>();
  private final List<RuleFor> rules = new ArrayList<>();
  private final List<VisitRule> visits = new ArrayList<>();

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

  List<VisitRule> visits() {
    return visits;
  }

  void read(Fields file) {
    Optional<Fields> all = file.node("holds").flatMap(n -> Fields.anyKeys(n, source));
    // Holds may name each other in after:, so their names are known before any is read.
    Names names = new Names("hold", all.map(Fields::keys).orElse(List.of()), broken);
    all.ifPresent(a -> CatalogueReader.each(a, HOLD, (id, f) -> hold(id, f, names), holds, broken));
    all.ifPresent(a -> HoldFacts.tell(holds, (id, key) -> where(a, id, key), source));
    each(file, "rules", RULE, f -> rule(f).ifPresent(rules::add));
    each(file, "visits", VISIT, f -> visit(f).ifPresent(visits::add));
  }

  private Where where(Fields all, String id, String key) {
    return all.node(id).flatMap(n -> Fields.anyKeys(n, source)).orElse(all).where(key);
  }

  private void each(Fields file, String key, Keys keys, Consumer<Fields> read) {
    file.items(key).forEach(node -> Fields.of(node, keys, source).ifPresent(read));
  }

  private static Optional<Hold> hold(String id, Fields f, Names all) {
    Optional<HoldKind> kind =
        f.name("kind", Names.of("kind of hold", HoldKind.ids())).flatMap(HoldKind::of);
    Optional<Integer> rank = f.whole("rank", 1, 1000);
    Set<String> forbids = Set.copyOf(f.words("forbids"));
    Set<String> brings = Set.copyOf(f.words("brings"));
    Set<String> wants = Set.copyOf(f.words("wants"));
    List<String> after = f.names("after", all);
    Set<Hold.Mark> marks = EnumSet.noneOf(Hold.Mark.class);
    for (Hold.Mark mark : Hold.Mark.values()) {
      f.flag(mark.id()).filter(is -> is).ifPresent(is -> marks.add(mark));
    }
    return kind.flatMap(
        k -> rank.map(r -> new Hold(id, k, r, forbids, brings, after, wants, marks)));
  }

  private Optional<VisitRule> visit(Fields f) {
    Optional<String> service = f.name("service", services);
    Optional<Integer> earliest = f.whole("earliest", 0, LONGEST_DAYS);
    Optional<Integer> best = f.whole("best", 0, LONGEST_DAYS);
    Optional<Integer> latest = f.whole("latest", 0, LONGEST_DAYS);
    List<String> looksAt = f.names("looks-at", new Names("hold", holds.keySet(), broken));
    if (service.isEmpty() || earliest.isEmpty() || best.isEmpty() || latest.isEmpty()) {
      return Optional.empty();
    }
    if (best.get() < earliest.get() || latest.get() < best.get()) {
      source.error(
          "out-of-order",
          f.where("best"),
          "earliest, best and latest are out of order",
          "write them so that none is before the one in front of it");
      return Optional.empty();
    }
    return Optional.of(
        new VisitRule(service.get(), earliest.get(), best.get(), latest.get(), looksAt));
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
    Optional<HoldKind> kind = hold.map(id -> holds.get(id).kind());
    Optional<Double> limit = kind.flatMap(k -> limit(f, k));
    if (service.isEmpty() || need.isEmpty() || floor.isEmpty() || limit.isEmpty()) {
      return Optional.empty();
    }
    if (limit.get() < floor.get()) {
      String key = limitKey(kind.get());
      source.error(
          "out-of-order",
          f.where(key),
          key + " comes before floor: a " + key + " is days, a floor hours",
          "raise " + key + " or lower floor");
      return Optional.empty();
    }
    HoldRule rule = new HoldRule(hold.get(), kind.get(), need, floor.get(), limit.get());
    return Optional.of(new RuleFor(service.get(), fact, only, except, rule));
  }

  private static String limitKey(HoldKind kind) {
    return kind == HoldKind.SETTLE ? "horizon" : "limit";
  }

  /** The limit of a hold, the horizon of a settle: days in the file, hours here. */
  private Optional<Double> limit(Fields f, HoldKind kind) {
    String key = limitKey(kind);
    String other = key.equals("limit") ? "horizon" : "limit";
    if (f.has(other)) {
      source.error(
          "key-of-another-kind",
          f.where(other),
          "a " + kind.id() + " has a " + key + ", not a " + other,
          "write " + key + ": with days");
    } else if (!f.has(key)) {
      source.error("missing-key", f.where(), key + " is missing", "add " + key + ", in days");
    }
    return f.number(key, 0, LONGEST_DAYS).map(days -> days * HOURS_IN_DAY);
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
