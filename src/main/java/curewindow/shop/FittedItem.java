package curewindow.shop;

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
 * @param batch the batch on the roll or bottle
 * @param warrantyYears years of warranty
 */
public record FittedItem(
    String service,
    String film,
    List<String> spots,
    Instant finished,
    OptionalDouble vlt,
    Optional<String> batch,
    OptionalInt warrantyYears) {

  /** Refuses missing parts. */
  public FittedItem {
    Objects.requireNonNull(service, "service");
    Objects.requireNonNull(film, "film");
    Objects.requireNonNull(finished, "finished");
    Objects.requireNonNull(vlt, "vlt");
    Objects.requireNonNull(batch, "batch");
    Objects.requireNonNull(warrantyYears, "warrantyYears");
    spots = List.copyOf(spots);
  }
}
