package curewindow.shop;

import curewindow.cure.Driver;
import curewindow.cure.HoldKind;
import curewindow.cure.HoldRule;
import curewindow.problem.Where;
import curewindow.shop.Node.Leaf;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads the holds and what each service needs before they end. */
final class HoldsReader {

  /** What a limit or horizon was called, in hours, before every hold ended with a date. */
  private static final String LOOK_BY = "look-by";

  private static final Keys HOLD =
      Keys.needs("kind", "rank")
          .allows("forbids", "brings", "after", "wants", "safety", "main", "sticker", "road");
  private static final Keys RULE =
      Keys.needs("service", "hold", "need", "floor")
          .allows("limit", "horizon", "where", "spots", "except")
          .tookOnce(LOOK_BY);
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
  private final List<BrokenRule> brokenRules = new ArrayList<>();

  HoldsReader(Source source, Names services, Names spots, Broken broken) {
    this.broken = broken;
    this.source = source;
    // What has an error stands in no good job, so a rule may name it.
    this.services = services.defined();
    this.spots = spots.defined();
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

  /** What cannot be used of the rules and visits. */
  List<BrokenRule> brokenRules() {
    return brokenRules;
  }

  void read(Optional<Fields> file) {
    Optional<Fields> all =
        file.flatMap(f -> f.node("holds")).flatMap(n -> Fields.anyKeys(n, source));
    List<Node> ruleNodes = file.map(f -> f.items("rules")).orElse(List.of());
    List<Node> visitNodes = file.map(f -> f.items("visits")).orElse(List.of());
    if (file.isEmpty() || source.errors() > 0) {
      brokenRules.add(new BrokenRule(Scope.ALL, source.firstAfter(0)));
    }
    all.ifPresentOrElse(this::holds, () -> broken.addAll(source.firstAfter(0)));
    for (Node node : ruleNodes) {
      int before = source.errors();
      Optional<Fields> f = Fields.of(node, RULE, source);
      Scope scope = f.map(this::scope).orElse(Scope.ALL);
      keep(f.flatMap(rule -> rule(rule, scope)), rules, scope, before);
    }
    for (Node node : visitNodes) {
      int before = source.errors();
      Optional<Fields> f = Fields.of(node, VISIT, source);
      Optional<String> service = f.flatMap(v -> v.name("service", services));
      keep(f.flatMap(v -> visit(v, service)), visits, Scope.of(service), before);
    }
  }

  /** Keeps what was read without an error; else those it is for must know. */
  private <T> void keep(Optional<T> read, List<T> into, Scope scope, int before) {
    if (source.errors() > before) {
      brokenRules.add(new BrokenRule(scope, source.firstAfter(before)));
    } else {
      into.add(read.orElseThrow());
    }
  }

  private void holds(Fields all) {
    // Holds may name each other in after:, so their names are known before any is read.
    Names names = new Names("hold", all.keys(), broken);
    Set<String> settles =
        all.keys().stream().filter(id -> isSettle(all, id)).collect(Collectors.toSet());
    CatalogueReader.each(all, HOLD, (id, f) -> hold(id, f, names, settles), holds, broken);
    // A hold with an error may be the one that answers another.
    if (broken.names().isEmpty()) {
      HoldFacts.tell(holds, (id, key) -> where(all, id, key), source);
    }
  }

  private static boolean isSettle(Fields all, String id) {
    return all.branch(id)
        .map(hold -> hold.entries().get("kind"))
        .filter(kind -> kind.value() instanceof Leaf l && l.text().equals(HoldKind.SETTLE.id()))
        .isPresent();
  }

  private Where where(Fields all, String id, String key) {
    return all.node(id).flatMap(n -> Fields.anyKeys(n, source)).orElse(all).where(key);
  }

  private Optional<Hold> hold(String id, Fields f, Names all, Set<String> settles) {
    Optional<HoldKind> kind =
        f.name("kind", Names.of("kind of hold", HoldKind.ids())).flatMap(HoldKind::of);
    Optional<Integer> rank = f.whole("rank", 1, 1000);
    Set<String> forbids = Set.copyOf(f.words("forbids"));
    Set<String> brings = Set.copyOf(f.words("brings"));
    Set<String> wants = Set.copyOf(f.words("wants"));
    List<String> after = after(id, f, all, settles);
    Set<Hold.Mark> marks = EnumSet.noneOf(Hold.Mark.class);
    for (Hold.Mark mark : Hold.Mark.values()) {
      f.flag(mark.id()).filter(is -> is).ifPresent(is -> marks.add(mark));
    }
    return kind.flatMap(
        k -> rank.map(r -> new Hold(id, k, r, forbids, brings, after, wants, marks)));
  }

  private List<String> after(String id, Fields f, Names all, Set<String> settles) {
    List<String> after = f.names("after", all);
    if (after.contains(id)) {
      source.error(
          "after-itself", f.where("after"), id + " waits for itself", "take it out of after:");
    }
    after.stream()
        .filter(settles::contains)
        .forEach(
            other ->
                source.error(
                    "after-a-settle",
                    f.where("after"),
                    other + " is a settle, and no hold waits for one",
                    "name holds only in after:"));
    return after;
  }

  private Optional<VisitRule> visit(Fields f, Optional<String> service) {
    Optional<Integer> earliest = f.whole("earliest", 0, LONGEST_DAYS);
    Optional<Integer> best = f.whole("best", 0, LONGEST_DAYS);
    Optional<Integer> latest = f.whole("latest", 0, LONGEST_DAYS);
    List<String> looksAt =
        f.names("looks-at", new Names("settle", holds.keySet(), broken).defined());
    looksAt.stream().filter(this::isHold).forEach(hold -> looksAtHold(f, hold));
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

  private boolean isHold(String id) {
    return holds.containsKey(id) && holds.get(id).kind() == HoldKind.HOLD;
  }

  private void looksAtHold(Fields f, String hold) {
    source.error(
        "looks-at-a-hold",
        f.where("looks-at"),
        hold + " is a hold, and a visit looks at settles only",
        "name settles only in looks-at:");
  }

  /** Which work a rule is for; what cannot be read of that leaves none out. */
  private Scope scope(Fields f) {
    Optional<SpotFact> fact =
        f.name("where", Names.of("spot fact", SpotFact.ids())).flatMap(SpotFact::of);
    return new Scope(f.name("service", services), fact, spots(f, "spots"), spots(f, "except"));
  }

  private List<String> spots(Fields f, String key) {
    int before = source.errors();
    List<String> read = f.names(key, spots);
    return source.errors() == before ? read : List.of();
  }

  private Optional<RuleFor> rule(Fields f, Scope scope) {
    Optional<String> service = scope.service();
    Optional<String> hold = f.name("hold", new Names("hold", holds.keySet(), broken));
    Map<Driver, Double> need = need(f);
    Optional<Double> floor = f.number("floor", 0, LONGEST);
    Optional<HoldKind> kind = hold.map(id -> holds.get(id).kind());
    Optional<Double> limit = f.has(LOOK_BY) ? lookBy(f, kind) : kind.flatMap(k -> limit(f, k));
    if (service.isEmpty() || need.isEmpty() || floor.isEmpty() || limit.isEmpty()) {
      return Optional.empty();
    }
    if (limit.get() < floor.get()) {
      String key = limitKey(kind.get());
      source.error(
          "limit-before-floor",
          f.where(key),
          key + " comes before floor: a " + key + " is days, a floor hours",
          "raise " + key + " or lower floor");
      return Optional.empty();
    }
    HoldRule rule = new HoldRule(hold.get(), kind.get(), need, floor.get(), limit.get());
    return Optional.of(
        new RuleFor(service.get(), scope.fact(), scope.spots(), scope.except(), rule));
  }

  private static String limitKey(HoldKind kind) {
    return kind == HoldKind.SETTLE ? "horizon" : "limit";
  }

  private Optional<Double> lookBy(Fields f, Optional<HoldKind> kind) {
    String now = limitKey(kind.orElse(HoldKind.HOLD));
    source.error(
        "former-key",
        f.where(LOOK_BY),
        LOOK_BY + " is not used any more",
        f.has(now) ? "delete it: " + now + " takes its place" : "write " + now + ": with days");
    return Optional.empty();
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
      source.missing(f.where(), key, "add " + key + ", in days");
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
