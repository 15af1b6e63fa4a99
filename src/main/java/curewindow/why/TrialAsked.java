package curewindow.why;

import curewindow.climate.Place;
import curewindow.cure.Parking;
import curewindow.cure.ParkingPlan;
import curewindow.problem.Nearest;
import curewindow.shop.Job;
import curewindow.shop.Times;
import curewindow.shop.TypedTime;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A trial as typed.
 *
 * @param parking where the car would stand by day, and by night behind a comma if elsewhere
 * @param place id of a place
 * @param finished a time, by the clocks of the place where the car would stand unless an offset
 *     stands behind it
 * @param pickup a time in the same form
 */
public record TrialAsked(
    Optional<String> parking,
    Optional<String> place,
    Optional<String> finished,
    Optional<String> pickup) {

  /** Refuses missing parts. */
  public TrialAsked {
    Objects.requireNonNull(parking, "parking");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(finished, "finished");
    Objects.requireNonNull(pickup, "pickup");
  }

  /**
   * Reads what was typed.
   *
   * @param job the job to be tried
   * @param places the places that may be named, by id
   * @return the trial, or all that is wrong with it
   */
  public TrialRead read(Job job, Map<String, Place> places) {
    List<String> wrong = new ArrayList<>();
    Optional<ParkingPlan> plan = parking.flatMap(text -> plan(text, wrong));
    place
        .filter(id -> !places.containsKey(id))
        .ifPresent(
            id -> wrong.add("--place " + id + ": there is no such place" + near(id, places)));
    Place there = places.getOrDefault(place.orElse(job.place()), places.get(job.place()));
    Optional<Instant> finish = finished.flatMap(t -> time("--finished", t, there.zone(), wrong));
    Optional<Instant> leaving = pickup.flatMap(t -> time("--pickup", t, there.zone(), wrong));
    if (!wrong.isEmpty()) {
      return new TrialRead.Refused(wrong);
    }
    Trial trial = new Trial(plan, place, finish, leaving);
    Job tried = trial.on(job);
    if (tried.pickup().isBefore(Trial.lastFinish(tried))) {
      return new TrialRead.Refused(
          List.of("--pickup is before the work is finished; give a later time, or leave it out"));
    }
    return trial;
  }

  private static String near(String id, Map<String, Place> places) {
    return near(id, places.keySet())
        .orElse(
            "; the command \"places WORD\" finds places by name, \"places near LAT LON\" the"
                + " nearest ones");
  }

  private static Optional<String> near(String typed, Collection<String> known) {
    return Nearest.to(typed, known).map(n -> "; did you mean " + n + "?");
  }

  private static Optional<ParkingPlan> plan(String text, List<String> wrong) {
    String[] parts = text.split(",", -1);
    if (parts.length > 2) {
      wrong.add("--parking " + text + ": give one for the day, or one each for day and night");
      return Optional.empty();
    }
    Optional<Parking> day = parking(parts[0].strip(), wrong);
    Optional<Parking> night = parts.length == 1 ? day : parking(parts[1].strip(), wrong);
    return day.flatMap(d -> night.map(n -> new ParkingPlan(d, n)));
  }

  private static Optional<Parking> parking(String id, List<String> wrong) {
    Optional<Parking> parking = Parking.of(id);
    if (parking.isEmpty()) {
      String shown = id.isEmpty() ? "one is missing" : "there is no " + id;
      String near = near(id, Parking.ids()).orElse("");
      wrong.add("--parking: " + shown + near + "; use " + String.join(", ", Parking.ids()));
    }
    return parking;
  }

  private static Optional<Instant> time(
      String option, String typed, ZoneId zone, List<String> wrong) {
    TypedTime read = Times.read(typed, Optional.of(zone));
    if (read instanceof TypedTime.Wrong problem) {
      wrong.add(option + " " + problem.what() + "; " + problem.fix());
      return Optional.empty();
    }
    return Optional.of(((TypedTime.Moment) read).at());
  }
}
