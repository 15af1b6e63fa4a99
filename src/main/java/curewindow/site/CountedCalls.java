package curewindow.site;

import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.tally.Rate;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The handovers that count, their calls, and why the other calls do not. */
final class CountedCalls {

  /** A car that was picked up with its card, and the day of that by the shop's clock. */
  record Handover(Job job, LocalDate day) {

    Set<String> services() {
      return job.items().stream().map(FittedItem::service).collect(Collectors.toSet());
    }
  }

  /** A call that counts, so many days after the pickup, 0 on its day. */
  record Call(CallNote note, Handover handover, long days) {}

  private enum Why {
    GONE,
    NOT_HANDED_OVER,
    EARLIER,
    BEFORE_PICKUP
  }

  private final LoadedShop shop;
  private final ZoneId zone;
  private final Instant at;
  private final LocalDate today;
  private final LocalDate from;
  private final Map<String, Handover> handovers = new TreeMap<>();
  private final List<Call> calls = new ArrayList<>();
  private final Map<Why, Integer> leftOut = new HashMap<>();

  CountedCalls(LoadedShop shop, CallReport.Asked asked) {
    this.shop = shop;
    this.zone = shop.shop().orElseThrow().zone();
    this.at = asked.at();
    this.today = LocalDate.ofInstant(at, zone);
    List<CallNote> noted = shop.ledgers().callbacks().orElseThrow().all();
    this.from = asked.since().orElseGet(() -> first(noted));
    for (Job job : shop.jobs()) {
      LocalDate day = LocalDate.ofInstant(job.pickup(), zone);
      if (isHandedOver(job) && !day.isBefore(from)) {
        handovers.put(job.id(), new Handover(job, day));
      }
    }
    noted.stream().filter(n -> !n.at().atZone(zone).toInstant().isAfter(at)).forEach(this::count);
  }

  private LocalDate first(List<CallNote> noted) {
    return noted.stream()
        .map(n -> n.at().toLocalDate())
        .min(Comparator.naturalOrder())
        .orElse(today);
  }

  private boolean isHandedOver(Job job) {
    return shop.ledgers().withCard().contains(job.id())
        && !job.pickup().isAfter(at)
        && !isReused(job);
  }

  private boolean isReused(Job job) {
    return ReusedIds.of(shop, job).isPresent();
  }

  private void count(CallNote note) {
    Handover handover = handovers.get(note.job());
    if (handover == null) {
      leftOut.merge(why(note), 1, Integer::sum);
      return;
    }
    long days = ChronoUnit.DAYS.between(handover.day(), note.at().toLocalDate());
    if (days < 0) {
      leftOut.merge(Why.BEFORE_PICKUP, 1, Integer::sum);
    } else {
      calls.add(new Call(note, handover, days));
    }
  }

  private Why why(CallNote note) {
    return shop.job(note.job())
        .filter(job -> !isReused(job))
        .map(job -> isHandedOver(job) ? Why.EARLIER : Why.NOT_HANDED_OVER)
        .orElse(Why.GONE);
  }

  CallReport.Basis basis() {
    return new CallReport.Basis(
        from,
        today,
        all(),
        new CallReport.LeftOut(
            left(Why.GONE), left(Why.NOT_HANDED_OVER), left(Why.EARLIER), left(Why.BEFORE_PICKUP)));
  }

  private int left(Why why) {
    return leftOut.getOrDefault(why, 0);
  }

  List<Call> calls() {
    return calls;
  }

  LocalDate from() {
    return from;
  }

  LocalDate today() {
    return today;
  }

  /** All calls of all handovers. */
  Rate all() {
    return new Rate(calls.size(), handovers.size());
  }

  /** The calls of some handovers that some tell of. */
  Rate rate(Predicate<Handover> some, Predicate<Call> told) {
    long of = handovers.values().stream().filter(some).count();
    long events = calls.stream().filter(c -> some.test(c.handover())).filter(told).count();
    return new Rate((int) events, (int) of);
  }

  /** How many handovers have each of some things. */
  Map<String, Integer> handoversBy(Function<Handover, Set<String>> things) {
    Map<String, Integer> count = new TreeMap<>();
    handovers
        .values()
        .forEach(h -> things.apply(h).forEach(thing -> count.merge(thing, 1, Integer::sum)));
    return count;
  }

  /** How many of some calls are about each of some things. */
  static Map<String, Integer> by(List<Call> some, Function<Call, Set<String>> things) {
    Map<String, Integer> count = new TreeMap<>();
    some.forEach(c -> things.apply(c).forEach(thing -> count.merge(thing, 1, Integer::sum)));
    return count;
  }
}
