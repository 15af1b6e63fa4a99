package curewindow.shop;

import curewindow.cure.Lamp;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A film or coating on one or several spots of the car.
 *
 * @param service id of the service
 * @param film id of the film or coating
 * @param spots ids of the spots, at least one
 * @param finished when the work on it was finished
 * @param vlt visible light transmission of film and glass together as measured, percent, 0 to 100
 * @param glassVlt visible light transmission of the bare glass, percent, 1 to 100
 * @param batch the batch on the roll or bottle
 * @param warrantyYears years of warranty
 * @param lamp the lamp that was used on it after the finish
 */
public record FittedItem(
    String service,
    String film,
    List<String> spots,
    Instant finished,
    OptionalDouble vlt,
    OptionalDouble glassVlt,
    Optional<String> batch,
    OptionalInt warrantyYears,
    Optional<Lamp> lamp) {

  /** Refuses missing parts. */
  public FittedItem {
    Objects.requireNonNull(service, "service");
    Objects.requireNonNull(film, "film");
    Objects.requireNonNull(finished, "finished");
    Objects.requireNonNull(vlt, "vlt");
    Objects.requireNonNull(glassVlt, "glassVlt");
    Objects.requireNonNull(batch, "batch");
    Objects.requireNonNull(warrantyYears, "warrantyYears");
    Objects.requireNonNull(lamp, "lamp");
    spots = List.copyOf(spots);
  }

  /**
   * An item of whose bare glass nothing is known, and on which no lamp was used.
   *
   * @param service id of the service
   * @param film id of the film or coating
   * @param spots ids of the spots, at least one
   * @param finished when the work on it was finished
   * @param vlt visible light transmission of film and glass together as measured, percent
   * @param batch the batch on the roll or bottle
   * @param warrantyYears years of warranty
   */
  public FittedItem(
      String service,
      String film,
      List<String> spots,
      Instant finished,
      OptionalDouble vlt,
      Optional<String> batch,
      OptionalInt warrantyYears) {
    this(
        service,
        film,
        spots,
        finished,
        vlt,
        OptionalDouble.empty(),
        batch,
        warrantyYears,
        Optional.empty());
  }

  /** Whether this was fitted later on a spot, in place of older work of the same service. */
  boolean replaces(FittedItem older, String spot) {
    return service.equals(older.service)
        && spots.contains(spot)
        && older.spots.contains(spot)
        && finished.isAfter(older.finished);
  }

  /** The same work on other spots. */
  FittedItem on(List<String> others) {
    return new FittedItem(
        service, film, others, finished, vlt, glassVlt, batch, warrantyYears, lamp);
  }

  /** The same work done again, of a batch that nobody noted. */
  FittedItem anew(Instant at) {
    return new FittedItem(
        service, film, spots, at, vlt, glassVlt, Optional.empty(), warrantyYears, Optional.empty());
  }

  /**
   * The same work finished at another time.
   *
   * @param at the time
   * @return the item
   */
  public FittedItem finishedAt(Instant at) {
    return new FittedItem(service, film, spots, at, vlt, glassVlt, batch, warrantyYears, lamp);
  }
}
