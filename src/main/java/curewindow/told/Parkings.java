package curewindow.told;

import curewindow.cure.Parking;
import curewindow.cure.ParkingPlan;
import curewindow.cure.Release;
import curewindow.cure.Timeline;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The ways in which a car may really stand, each with its dates. Ways with equal dates are one
 * case, so that nobody has to choose between what makes no difference.
 *
 * @param cases the cases, first the one that the shop noted; none where there is no choice
 * @param index which of them is shown
 */
public record Parkings(List<Case> cases, int index) {

  /** No choice. */
  public static final Parkings NONE = new Parkings(List.of(), 0);

  /** The ways that are worth a question; whoever parks in a garage at all does so at night. */
  private static final List<ParkingPlan> SENSIBLE =
      List.of(
          new ParkingPlan(Parking.OUTSIDE, Parking.OUTSIDE),
          new ParkingPlan(Parking.SHADE, Parking.SHADE),
          new ParkingPlan(Parking.OUTSIDE, Parking.GARAGE),
          new ParkingPlan(Parking.GARAGE, Parking.GARAGE),
          new ParkingPlan(Parking.HEATED, Parking.HEATED));

  /**
   * One case.
   *
   * @param name lasting, such as outside/ or outside-garage/; empty for the noted case itself
   * @param plans where the car may stand, at least one; the dates are those of each of them
   * @param timeline the dates as they are told
   */
  public record Case(String name, List<ParkingPlan> plans, Timeline timeline) {

    /** Refuses a case without a plan. */
    public Case {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(timeline, "timeline");
      plans = List.copyOf(plans);
      if (plans.isEmpty()) {
        throw new IllegalArgumentException("a case needs a parking");
      }
    }
  }

  /** Refuses an index that no case has. */
  public Parkings {
    cases = List.copyOf(cases);
    if (index < 0 || index > 0 && index >= cases.size()) {
      throw new IllegalArgumentException("there is no case " + index);
    }
  }

  /**
   * The ways in which a car may stand other than as its job says. Nobody heats a garage where and
   * when it is as warm outside as a heated one: there it is no choice.
   *
   * @param noted the job as the shop noted it
   * @return the sensible ways without the noted one
   */
  public static List<ParkingPlan> others(JobView noted) {
    return SENSIBLE.stream()
        .filter(plan -> !plan.equals(noted.job().parking()))
        .filter(plan -> plan.night() != Parking.HEATED || isHeatingTime(noted))
        .toList();
  }

  /** Whether the month of the pickup or the next one is colder, in the mean, than with heating. */
  private static boolean isHeatingTime(JobView noted) {
    LocalDate pickup = noted.timeline().pickup().atZone(noted.timeline().zone()).toLocalDate();
    return Stream.of(pickup, pickup.plusMonths(1))
        .map(day -> noted.place().normals().get(day.getMonthValue() - 1))
        .anyMatch(m -> (m.dailyMin() + m.dailyMax()) / 2 < Parking.HEATED_LEAST);
  }

  /**
   * The cases of a job, the noted one shown.
   *
   * @param noted the job as the shop noted it
   * @param dates the dates of each other way to park, as computed
   * @return the cases, or {@link #NONE} where the parking makes no difference
   */
  public static Parkings of(JobView noted, Map<ParkingPlan, Timeline> dates) {
    Map<List<End>, Case> cases = new LinkedHashMap<>();
    add(cases, "", noted.job().parking(), noted.timeline());
    others(noted).stream()
        .filter(dates::containsKey)
        .forEach(plan -> add(cases, name(plan), plan, noted.told(dates.get(plan))));
    return cases.size() < 2 ? NONE : new Parkings(List.copyOf(cases.values()), 0);
  }

  private static void add(
      Map<List<End>, Case> cases, String name, ParkingPlan plan, Timeline told) {
    List<End> ends =
        told.releases().stream().map(r -> new End(r.hold(), r.end())).sorted(End.BY_HOLD).toList();
    Case known = cases.get(ends);
    if (known == null) {
      cases.put(ends, new Case(name, List.of(plan), told));
      return;
    }
    List<ParkingPlan> plans = new ArrayList<>(known.plans());
    plans.add(plan);
    cases.put(ends, new Case(known.name(), plans, known.timeline()));
  }

  /** What is promised of a hold; how likely it is to be over sooner makes no other case. */
  private record End(String hold, Release.End end) {
    static final Comparator<End> BY_HOLD = Comparator.comparing(End::hold);
  }

  private static String name(ParkingPlan plan) {
    return plan.day() == plan.night()
        ? plan.day().id() + "/"
        : plan.day().id() + "-" + plan.night().id() + "/";
  }

  /**
   * The case that is shown.
   *
   * @return one of the cases
   */
  public Case shown() {
    return cases.get(index);
  }

  /**
   * The name of the case that is shown.
   *
   * @return its name; empty for the noted parking
   */
  public String name() {
    return cases.isEmpty() ? "" : shown().name();
  }

  /**
   * What the shop noted, where something else is shown.
   *
   * @return the noted case, or empty where it is the one shown or there is no choice
   */
  public Optional<Case> noted() {
    return index == 0 ? Optional.empty() : Optional.of(cases.get(0));
  }

  /**
   * The same cases, another one shown.
   *
   * @param other the index of the case
   * @return the cases
   */
  public Parkings showing(int other) {
    return new Parkings(cases, other);
  }
}
