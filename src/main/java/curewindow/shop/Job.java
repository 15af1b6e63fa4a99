package curewindow.shop;

import curewindow.cure.ParkingPlan;
import curewindow.cure.Stay;
import curewindow.problem.Where;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * One car's work, in one stay or several.
 *
 * @param id the shop's own number, letters, digits and hyphens
 * @param firstName whom to greet; empty where not given
 * @param language language of the page and card
 * @param car the car
 * @param place id of the place where the car stands
 * @param parking where it stands by day and by night
 * @param stays when the car is in the shop, one stay after the other, at least one
 * @param items what was fitted, at least one
 * @param found what was found on the car
 * @param seen when the shop saw the car again, by day
 * @param where the place in the files that it was read from
 */
public record Job(
    String id,
    String firstName,
    String language,
    Car car,
    String place,
    ParkingPlan parking,
    List<Stay> stays,
    List<FittedItem> items,
    List<Finding> found,
    List<PastVisit> seen,
    Where where) {

  /** Refuses missing parts. */
  public Job {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(firstName, "firstName");
    Objects.requireNonNull(language, "language");
    Objects.requireNonNull(car, "car");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(parking, "parking");
    Objects.requireNonNull(where, "where");
    stays = List.copyOf(stays);
    items = List.copyOf(items);
    found = List.copyOf(found);
    seen = seen.stream().sorted(Comparator.comparing(PastVisit::day)).toList();
  }

  /**
   * When the car leaves the shop for the last time.
   *
   * @return the pickup of the last stay
   */
  public Instant pickup() {
    return stays.get(stays.size() - 1).pickup();
  }

  /**
   * Whether the car has left the shop for the last time.
   *
   * @param now the time
   * @return true where the last pickup is before it
   */
  public boolean hasLeft(Instant now) {
    return pickup().isBefore(now);
  }

  /** Whether the car has left the shop for the first time; until then nobody can see it again. */
  boolean leftBy(Instant time) {
    return !stays.get(0).pickup().isAfter(time);
  }

  /**
   * When the car leaves after some work.
   *
   * @param item one of the job's items
   * @return the pickup of the stay in which it was finished
   */
  public Instant pickupAfter(FittedItem item) {
    return stays.stream()
        .filter(stay -> stay.has(item.finished()))
        .reduce((first, last) -> last)
        .orElseThrow()
        .pickup();
  }

  /**
   * The same job with the car standing elsewhere.
   *
   * @param plan where it stands by day and by night
   * @return the job
   */
  public Job parkedAs(ParkingPlan plan) {
    return new Job(id, firstName, language, car, place, plan, stays, items, found, seen, where);
  }

  /**
   * The same job without stays to come, and without their work: until the car has come back, what
   * was fitted before is all there is to say. The first work counts even before it is done.
   */
  Job asOf(Instant now) {
    Instant first =
        items.stream().map(FittedItem::finished).min(Comparator.naturalOrder()).orElse(now);
    Instant until = now.isBefore(first) ? first : now;
    List<Stay> known = stays.stream().filter(stay -> !stay.in().isAfter(until)).toList();
    return known.size() == stays.size()
        ? this
        : with(
            items.stream()
                .filter(item -> known.stream().anyMatch(stay -> stay.has(item.finished())))
                .toList(),
            known);
  }

  /** The same job without work in whose place other work of its service came in a later stay. */
  Job withoutReplaced() {
    List<FittedItem> left = new ArrayList<>();
    for (FittedItem item : items) {
      List<String> spots =
          item.spots().stream()
              .filter(spot -> items.stream().noneMatch(i -> i.replaces(item, spot)))
              .toList();
      if (spots.size() == item.spots().size()) {
        left.add(item);
      } else if (!spots.isEmpty()) {
        left.add(item.on(spots));
      }
    }
    return with(left, stays);
  }

  /** The same job with other work in other stays. */
  Job with(List<FittedItem> others, List<Stay> times) {
    return new Job(id, firstName, language, car, place, parking, times, others, found, seen, where);
  }

  /**
   * The same job seen again.
   *
   * @param visits when, and what came of it
   * @return the job
   */
  Job seenAgain(List<PastVisit> visits) {
    return new Job(
        id, firstName, language, car, place, parking, stays, items, found, visits, where);
  }
}
