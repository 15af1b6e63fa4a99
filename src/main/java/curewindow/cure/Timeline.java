package curewindow.cure;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The ends of all holds of one job, each hold once, the latest of its items.
 *
 * @param pickup when the car leaves the shop for the last time
 * @param zone the time zone of the place the car is at, in which dates are shown
 * @param releases by published end, then by hold id
 */
public record Timeline(Instant pickup, ZoneId zone, List<Release> releases) {

  private static final Comparator<Release> BY_END =
      Comparator.comparing((Release r) -> r.end().at()).thenComparing(Release::hold);

  /** Sorts the releases by published end. */
  public Timeline {
    Objects.requireNonNull(pickup, "pickup");
    Objects.requireNonNull(zone, "zone");
    Release[] sorted = releases.toArray(Release[]::new);
    Arrays.sort(sorted, BY_END);
    releases = List.of(sorted);
  }

  /**
   * The end of a hold.
   *
   * @param hold the hold's id
   * @return its release, or empty where the hold does not apply to the job
   */
  public Optional<Release> of(String hold) {
    return releases.stream().filter(r -> r.hold().equals(hold)).findFirst();
  }

  /**
   * Whether a date is still to come when the car leaves the shop.
   *
   * @param release one of the releases
   * @return true where its published end is after the pickup
   */
  public boolean isAhead(Release release) {
    return release.end().at().isAfter(pickup);
  }
}
