package curewindow.cure;

import java.util.Objects;

/**
 * Where a car stands by day (8:00 to 18:00 local time) and by night.
 *
 * @param day by day
 * @param night by night
 */
public record ParkingPlan(Parking day, Parking night) {

  /** Refuses missing parts. */
  public ParkingPlan {
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(night, "night");
  }

  /** Whether the car stands at a place by day or by night. */
  boolean uses(Parking parking) {
    return day == parking || night == parking;
  }
}
