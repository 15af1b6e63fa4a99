package curewindow.cure;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The way of the deciding item through one weather, day by day from its finish to the end of the
 * hold.
 *
 * @param item the fitted item's position in its job, from 0
 * @param spot the spot's id
 * @param driver the item's slowest driver
 * @param needHours reference hours needed of it, as the catalogue has them
 * @param lampHours how many of them a lamp in the bay gave at the finish
 * @param finished when the item was finished
 * @param floor the hold never ends before
 * @param limit the hold ends then at the latest
 * @param met when the need of the driver is met; empty where that is not before the limit
 * @param end the end of the walk: the end of the hold in this weather, or the limit
 * @param days the stretches of time walked, one for each day by the place's clocks, the days on
 *     which the car comes or leaves cut in two
 */
public record ExplanationWay(
    int item,
    String spot,
    Driver driver,
    double needHours,
    double lampHours,
    Instant finished,
    Instant floor,
    Instant limit,
    Optional<Instant> met,
    Instant end,
    List<Stretch> days) {

  /** Refuses missing parts. */
  public ExplanationWay {
    Objects.requireNonNull(spot, "spot");
    Objects.requireNonNull(driver, "driver");
    Objects.requireNonNull(finished, "finished");
    Objects.requireNonNull(floor, "floor");
    Objects.requireNonNull(limit, "limit");
    Objects.requireNonNull(met, "met");
    Objects.requireNonNull(end, "end");
    days = List.copyOf(days);
  }

  /**
   * Whether the floor decides: the need was met before.
   *
   * @return true where the hold ends with the floor
   */
  public boolean floorDecides() {
    return met.isPresent() && met.get().isBefore(end) && end.equals(floor);
  }

  /**
   * The dose at the end of the walk, the lamp's among it.
   *
   * @return reference hours
   */
  public double dose() {
    return days.isEmpty() ? lampHours : days.get(days.size() - 1).doseAtEnd();
  }

  /**
   * A day, or a part of one. Temperatures are means.
   *
   * @param date the date by the place's clocks
   * @param from when it begins
   * @param to when it ends
   * @param inBay whether the car stands in the shop's bay
   * @param air air temperature where the car stands, degrees Celsius
   * @param film temperature of the film or coating, degrees Celsius
   * @param dewPoint dew point of the air, degrees Celsius
   * @param sun sun that reaches the car, on a horizontal plane, kWh/m2 over the stretch
   * @param dose reference hours gained in it
   * @param doseAtEnd reference hours gained by its end, what the lamp gave at the finish among them
   */
  public record Stretch(
      LocalDate date,
      Instant from,
      Instant to,
      boolean inBay,
      double air,
      double film,
      double dewPoint,
      double sun,
      double dose,
      double doseAtEnd) {

    /** Refuses missing parts. */
    public Stretch {
      Objects.requireNonNull(date, "date");
      Objects.requireNonNull(from, "from");
      Objects.requireNonNull(to, "to");
    }

    /**
     * How long it is.
     *
     * @return hours
     */
    public double hours() {
      return Duration.between(from, to).getSeconds() / 3600.0;
    }

    /**
     * The mean rate of the driver.
     *
     * @return reference hours per hour
     */
    public double rate() {
      return dose / hours();
    }
  }
}
