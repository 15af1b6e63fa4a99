package curewindow.told;

import curewindow.cure.AtPickup;
import curewindow.cure.Bay;
import curewindow.cure.CureCase;
import curewindow.cure.Lamp;
import curewindow.shop.Catalogue;
import curewindow.shop.Hold;
import curewindow.shop.SpotFact;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;

/**
 * What the shop can do before it hands a car over, where a hold is not over by pickup that nobody
 * can keep on the way home: keep the car in the bay, or put it under the lamp.
 *
 * @param lacking the needs that are not met, one for each such hold and fitted item, what takes
 *     longest first; at least one
 * @param bayHours whole hours from the pickup after which all of them are met in the bay; empty
 *     where its air takes longer than anybody would keep a car for it, 72 hours
 * @param warmBay where it does, and the bay is cold, what its heating would do; empty where that
 *     would take too long as well
 * @param lamp what the lamp would have to give each part, its minutes a multiple of 5; empty where
 *     it does not help, or not within three hours
 * @param lampStayHours whole hours from the pickup for which the car stays in all the same where
 *     the lamp is used, as no hold ends before its floor; 0 where the floors are over by then
 */
public record BeforePickup(
    List<AtPickup> lacking,
    Optional<Long> bayHours,
    Optional<WarmBay> warmBay,
    Optional<Lamp> lamp,
    long lampStayHours) {

  /** Nobody keeps a car in for longer, hours; our own estimate, no source. */
  private static final double LONGEST_STAY = 72;

  /** Nobody holds a lamp over one part for longer, minutes; our own estimate, no source. */
  private static final double LONGEST_LAMP = 180;

  /** Nobody heats a bay further, degrees Celsius; our own estimate, no source. */
  private static final double WARMEST_BAY = 30;

  private static final int MINUTES_IN_HOUR = 60;
  private static final int MINUTES_TOLD = 5;

  /**
   * The bay with its heating turned up.
   *
   * @param temperature whole degrees Celsius, 21 to 30
   * @param hours whole hours from the pickup after which all needs are met there
   */
  public record WarmBay(double temperature, long hours) {}

  /** Where needs are looked at together. */
  private record Place(String hold, int item) {}

  /** What rounding may add without another hour or five minutes being told, a share of them. */
  private static final double ROUNDING = 1e-6;

  /** Refuses advice about nothing. */
  public BeforePickup {
    lacking = List.copyOf(lacking);
    if (lacking.isEmpty()) {
      throw new IllegalArgumentException("nothing is lacking");
    }
  }

  /**
   * The advice for a job. No lamp is told of where something in the cabin lacks hours: it hides
   * airbags, and heat harms leather and fabric.
   *
   * @param job the job
   * @param catalogue its holds, and which spots are in the cabin
   * @return the advice; empty where the car can go home in any weather
   */
  public static Optional<BeforePickup> of(CureCase job, Catalogue catalogue) {
    List<AtPickup> unmet =
        AtPickup.of(job).stream()
            .filter(need -> !need.isMet() && catalogue.is(need.hold(), Hold.Mark.ROAD))
            .toList();
    boolean cabin = unmet.stream().anyMatch(n -> catalogue.is(n.spot(), SpotFact.CABIN));
    return unmet.isEmpty() ? Optional.empty() : Optional.of(advice(unmet, job, cabin));
  }

  /**
   * How long one part needs the lamp, where {@link #lamp} is for the one that needs it longest.
   *
   * @param need one of {@link #lacking}
   * @return minutes, a multiple of 5; 0 where the car's stay is enough for it
   */
  public double lampMinutes(AtPickup need) {
    return minutes(need.lampHours(up(most(lacking, AtPickup::floorHours))));
  }

  /**
   * How long one part needs in the bay, where {@link #bayHours} is for the one that needs it
   * longest.
   *
   * @param need one of {@link #lacking}
   * @return whole hours from the pickup
   */
  public long bayHours(AtPickup need) {
    return (long) up(need.bayHours());
  }

  private static double minutes(double hours) {
    return MINUTES_TOLD * up(hours * MINUTES_IN_HOUR / MINUTES_TOLD);
  }

  private static BeforePickup advice(List<AtPickup> unmet, CureCase job, boolean cabin) {
    double floor = up(most(unmet, AtPickup::floorHours));
    double longest = Math.max(LONGEST_STAY, floor);
    double bay = up(most(unmet, AtPickup::bayHours));
    double minutes = minutes(most(unmet, n -> n.lampHours(floor)));
    Optional<Lamp> lamp =
        !cabin && minutes > 0 && minutes <= LONGEST_LAMP
            ? Optional.of(new Lamp(job.bay().lamp(), minutes))
            : Optional.empty();
    return new BeforePickup(
        longestFirst(unmet),
        bay > longest ? Optional.empty() : Optional.of((long) bay),
        bay > longest ? warm(unmet, job, longest) : Optional.empty(),
        lamp,
        floor * MINUTES_IN_HOUR > minutes ? (long) floor : 0);
  }

  /** A cold bay that is warmed as far as others are, or a bit further where that is not enough. */
  private static Optional<WarmBay> warm(List<AtPickup> unmet, CureCase job, double longest) {
    if (job.bay().temperature() >= Bay.USUAL_TEMPERATURE) {
      return Optional.empty();
    }
    return DoubleStream.iterate(Bay.USUAL_TEMPERATURE, t -> t <= WARMEST_BAY, t -> t + 1)
        .mapToObj(
            t -> {
              Bay bay = job.bay().warmedTo(t);
              return new WarmBay(t, (long) up(most(unmet, n -> n.hoursIn(bay, job.bondEnergy()))));
            })
        .filter(warm -> warm.hours() <= longest)
        .findFirst();
  }

  private static double most(List<AtPickup> unmet, ToDoubleFunction<AtPickup> hours) {
    return unmet.stream().mapToDouble(hours).max().orElseThrow();
  }

  /** Rounded up, and never -0.0, which is another key of a map than 0. */
  private static double up(double value) {
    return Math.max(0, Math.ceil(value - ROUNDING));
  }

  /** Of each hold of each item the need that takes longest in the bay. */
  private static List<AtPickup> longestFirst(List<AtPickup> unmet) {
    Map<Place, AtPickup> worst = new LinkedHashMap<>();
    for (AtPickup need : unmet) {
      worst.merge(
          new Place(need.hold(), need.item()), need, (a, b) -> b.bayHours() > a.bayHours() ? b : a);
    }
    List<AtPickup> sorted = new ArrayList<>(worst.values());
    sorted.sort(Comparator.comparingDouble(AtPickup::bayHours).reversed());
    return sorted;
  }
}
