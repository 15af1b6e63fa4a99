package curewindow.cure;

import curewindow.climate.ObservedHours;
import curewindow.climate.Place;
import curewindow.climate.Weathers;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * Turns what was fitted, when, and where the car stands into dates. Keeps the tables of the places
 * it has seen while there is room; one instance serves all jobs of a run, from any number of
 * threads.
 */
public final class Curing {

  private static final Instant EARLIEST = yearStart(1970);
  private static final Instant LATEST = yearStart(3000);

  private final WhileThereIsRoom<Place, Weathers> weathers;

  /** Tables of places where nothing was measured. */
  private final WhileThereIsRoom<Place, PlaceTables> unmeasured;

  private final WhileThereIsRoom<Place, PlaceTables> measured;
  private final Map<String, ObservedHours> observed;
  private final KnownDates known;

  private Curing(Curing same, Map<String, ObservedHours> observed, KnownDates known) {
    this.weathers = same.weathers;
    this.unmeasured = same.unmeasured;
    this.observed = Map.copyOf(observed);
    this.measured = new WhileThereIsRoom<>(place -> tables(place, this.observed.get(place.id())));
    this.known = known;
  }

  private Curing(Function<Place, Weathers> weathers) {
    this.weathers = new WhileThereIsRoom<>(weathers);
    this.unmeasured = new WhileThereIsRoom<>(place -> tables(place, new ObservedHours(List.of())));
    this.measured = unmeasured;
    this.observed = Map.of();
    this.known = KnownDates.NONE;
  }

  /**
   * A model over given weathers.
   *
   * @param weathers gives the equally likely weathers of a place, the same each time it is asked;
   *     maybe from several threads
   * @return the model
   */
  public static Curing with(Function<Place, Weathers> weathers) {
    Objects.requireNonNull(weathers, "weathers");
    return new Curing(weathers);
  }

  /**
   * A model over the same weathers and what was measured since. Both models share the weathers, and
   * the tables of places where nothing was measured.
   *
   * @param hours measured weather by the place's id; it stands in for all weathers in the hours it
   *     covers
   * @return the model
   */
  public Curing measured(Map<String, ObservedHours> hours) {
    return new Curing(this, hours, known);
  }

  /**
   * The same model, which does not compute what is known already. Where weather was measured or
   * comes from a file, nothing is known.
   *
   * @param dates what is known
   * @return the model
   */
  public Curing knowing(KnownDates dates) {
    return new Curing(this, observed, dates);
  }

  /**
   * When each hold of a job ends. {@code likely} is the end that half of the weathers keep (the
   * lower of the two in the middle), the published end the one that nine of ten keep, at the limit
   * at the latest, rounded up to a whole hour between 8:00 and 20:00 by the place's clocks.
   *
   * @param job the job
   * @return the ends, one for each hold that applies
   * @throws IllegalArgumentException where an item is finished outside all stays, a time is not in
   *     the years 1970 to 2999, or two rules of a hold differ in kind
   */
  public Timeline timeline(CureCase job) {
    check(job);
    Place place = job.place();
    if (place.fileWeather().isPresent() || observed.containsKey(place.id())) {
      return computed(job);
    }
    return known
        .of(job)
        .orElseGet(
            () -> {
              Timeline dates = computed(job);
              known.keep(job, dates);
              return dates;
            });
  }

  private Timeline computed(CureCase job) {
    PlaceTables site = site(job.place());
    Stays stays = Stays.of(job.stays(), site.standardOffset());
    Map<String, List<ItemNeed>> holds = itemNeeds(job, stays, site.standardOffset());
    JobDoses doses = new JobDoses(job, site, stays);
    ExplanationCauses reason = new ExplanationCauses(doses, job.bay());
    List<Release> releases = new ArrayList<>(holds.size());
    holds.forEach(
        (hold, itemNeeds) ->
            releases.add(
                release(
                    new HoldEnds(doses, itemNeeds, site.members(), site.safeRank()),
                    reason,
                    site)));
    return new Timeline(job.pickup(), site.zone(), releases);
  }

  /**
   * How the end of one hold comes about, for an explanation.
   *
   * @param job the job
   * @param hold the id of a hold that applies to it
   * @return the way there
   * @throws IllegalArgumentException where the hold does not apply, or as {@link #timeline} does
   */
  public Explanation explanation(CureCase job, String hold) {
    check(job);
    PlaceTables site = site(job.place());
    Stays stays = Stays.of(job.stays(), site.standardOffset());
    Map<String, List<ItemNeed>> holds = itemNeeds(job, stays, site.standardOffset());
    if (!holds.containsKey(hold)) {
      throw new IllegalArgumentException("hold " + hold + " does not apply to the job");
    }
    JobDoses doses = new JobDoses(job, site, stays);
    return new ExplanationMaker(doses, new ExplanationCauses(doses, job.bay()), site, job.bay())
        .of(hold, holds.get(hold));
  }

  private PlaceTables site(Place place) {
    return observed.containsKey(place.id()) ? measured.of(place) : unmeasured.of(place);
  }

  private PlaceTables tables(Place place, ObservedHours hours) {
    return new PlaceTables(place.zone(), weathers.of(place), hours);
  }

  private static Release release(HoldEnds ends, ExplanationCauses reason, PlaceTables site) {
    HoldEnds.Decision safe = ends.safe();
    HoldEnds.Decision likely = ends.median();
    HoldRule rule = safe.itemNeed().rule();
    return new Release(
        rule.hold(),
        rule.kind(),
        end(ends, rule.kind(), site),
        instant(Math.min(likely.at(), safe.at()), site),
        reason.of(safe),
        reason.of(likely),
        Optional.empty());
  }

  private static Release.End end(HoldEnds ends, HoldKind kind, PlaceTables site) {
    Instant at = rounded(ends.safe().at(), site);
    return ends.late()
        .<Release.End>map(
            late ->
                kind == HoldKind.SETTLE
                    ? new Release.BySeason(rounded(late.full(), site))
                    : new Release.AtLimit(at, late.share(), instant(late.full(), site)))
        .orElseGet(() -> new Release.SafeBy(at));
  }

  private static Instant rounded(long second, PlaceTables site) {
    return WakingHours.notBefore(instant(second, site), site.zone());
  }

  private static Map<String, List<ItemNeed>> itemNeeds(
      CureCase job, Stays stays, ZoneOffset standard) {
    Map<String, List<ItemNeed>> holds = new LinkedHashMap<>();
    for (CureItem item : job.items()) {
      for (HoldRule rule : item.rules()) {
        add(
            ItemNeed.of(item, rule, stays, standard),
            holds.computeIfAbsent(rule.hold(), hold -> new ArrayList<>()));
      }
    }
    return holds;
  }

  private static void add(ItemNeed itemNeed, List<ItemNeed> others) {
    HoldRule rule = itemNeed.rule();
    for (ItemNeed other : others) {
      if (other.rule().kind() != rule.kind()) {
        throw new IllegalArgumentException(
            "hold "
                + rule.hold()
                + " is both "
                + other.rule().kind().id()
                + " and "
                + rule.kind().id());
      }
    }
    for (ItemNeed other : others) {
      if (itemNeed.endsWith(other)) {
        return;
      }
    }
    others.add(itemNeed);
  }

  private static void check(CureCase job) {
    for (Stay stay : job.stays()) {
      inRange("in", stay.in());
      inRange("pickup", stay.pickup());
    }
    for (CureItem item : job.items()) {
      inRange("finished", item.finished());
      if (!isInShop(job, item.finished())) {
        throw new IllegalArgumentException(
            "item %d on %s is finished at %s, when the car is not in the shop"
                .formatted(item.item(), item.spot(), item.finished()));
      }
    }
  }

  private static boolean isInShop(CureCase job, Instant at) {
    for (Stay stay : job.stays()) {
      if (stay.has(at)) {
        return true;
      }
    }
    return false;
  }

  private static void inRange(String name, Instant at) {
    if (at.isBefore(EARLIEST) || !at.isBefore(LATEST)) {
      throw new IllegalArgumentException(name + " " + at + " is not in the years 1970 to 2999");
    }
  }

  private static Instant yearStart(int year) {
    return LocalDate.ofYearDay(year, 1).atStartOfDay().toInstant(ZoneOffset.UTC);
  }

  private static Instant instant(long second, PlaceTables site) {
    return Instant.ofEpochSecond(second - site.standardOffset().getTotalSeconds());
  }
}
