package curewindow.why;

import curewindow.cure.ParkingPlan;
import curewindow.cure.Stay;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Another case of a job, tried without a change to any file.
 *
 * @param parking where the car would stand
 * @param place id of the place it would stand in; the work stays when it was
 * @param finished when all of the work would be finished
 * @param pickup when the car would be picked up
 */
public record Trial(
    Optional<ParkingPlan> parking,
    Optional<String> place,
    Optional<Instant> finished,
    Optional<Instant> pickup)
    implements TrialRead {

  /** Nothing is tried. */
  public static final Trial NONE =
      new Trial(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /** Refuses missing parts. */
  public Trial {
    Objects.requireNonNull(parking, "parking");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(finished, "finished");
    Objects.requireNonNull(pickup, "pickup");
  }

  /**
   * Whether anything is tried.
   *
   * @return false where the job stays as it is
   */
  public boolean any() {
    return !equals(NONE);
  }

  /**
   * The job as tried. Where only the finish is tried, the pickup moves along with it, so that the
   * car stands in the bay as long after the last work as the files say.
   *
   * @param job the job as the files have it
   * @return the job as tried; its pickup may be before a finish where both were given so
   */
  public Job on(Job job) {
    return new Job(
        job.id(),
        job.firstName(),
        job.language(),
        job.car(),
        place.orElse(job.place()),
        parking.orElse(job.parking()),
        stays(job),
        finished.map(at -> finishedAt(job, at)).orElse(job.items()),
        job.found(),
        job.seen(),
        job.where());
  }

  /** The last finish of a job. */
  static Instant lastFinish(Job job) {
    return job.items().stream().map(FittedItem::finished).max(Instant::compareTo).orElseThrow();
  }

  /** One stay where all work is finished at once, else those before the tried pickup. */
  private List<Stay> stays(Job job) {
    if (finished.isPresent()) {
      Instant at = finished.get();
      Instant leaves = pickup.orElseGet(() -> at.plus(inBay(job)));
      return List.of(new Stay(leaves.isBefore(at) ? leaves : at, leaves));
    }
    if (pickup.isEmpty()) {
      return job.stays();
    }
    List<Stay> stays = new ArrayList<>(job.stays());
    Instant in;
    do {
      in = stays.remove(stays.size() - 1).in();
    } while (!stays.isEmpty() && !in.isBefore(pickup.get()));
    stays.add(new Stay(in.isBefore(pickup.get()) ? in : pickup.get(), pickup.get()));
    return stays;
  }

  private static Duration inBay(Job job) {
    return Duration.between(lastFinish(job), job.pickup());
  }

  private static List<FittedItem> finishedAt(Job job, Instant at) {
    return job.items().stream().map(i -> i.finishedAt(at)).toList();
  }
}
