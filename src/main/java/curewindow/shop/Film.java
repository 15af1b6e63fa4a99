package curewindow.shop;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A film or a coating that the shop fits.
 *
 * @param id such as {@code harbor-35}
 * @param service id of its service
 * @param name the trade name shown to customers
 * @param material such as {@code PET}, {@code TPU}, {@code PVC}, {@code silica}
 * @param thickness micrometres, above 0 to 1000
 * @param permeance water permeance, g/m2 per day at 38 degrees Celsius and 90 percent, above 0
 * @param vlt visible light transmission of the film alone, percent, 0 to 100
 * @param reflectance visible light that the film throws back on the side of the glass, percent, 0
 *     to 100
 * @param metallised true where it has a metal layer
 * @param finish {@code gloss}, {@code satin} or {@code matte}
 */
public record Film(
    String id,
    String service,
    String name,
    String material,
    OptionalDouble thickness,
    double permeance,
    OptionalDouble vlt,
    OptionalDouble reflectance,
    boolean metallised,
    Optional<String> finish) {

  /** Refuses missing parts. */
  public Film {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(service, "service");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(material, "material");
    Objects.requireNonNull(thickness, "thickness");
    Objects.requireNonNull(vlt, "vlt");
    Objects.requireNonNull(reflectance, "reflectance");
    Objects.requireNonNull(finish, "finish");
  }

  /**
   * A film of whose reflectance nothing is known.
   *
   * @param id such as {@code harbor-35}
   * @param service id of its service
   * @param name the trade name shown to customers
   * @param material what it is made of
   * @param thickness micrometres
   * @param permeance water permeance, g/m2 per day at 38 degrees Celsius and 90 percent
   * @param vlt visible light transmission of the film alone, percent
   * @param metallised true where it has a metal layer
   * @param finish {@code gloss}, {@code satin} or {@code matte}
   */
  public Film(
      String id,
      String service,
      String name,
      String material,
      OptionalDouble thickness,
      double permeance,
      OptionalDouble vlt,
      boolean metallised,
      Optional<String> finish) {
    this(
        id,
        service,
        name,
        material,
        thickness,
        permeance,
        vlt,
        OptionalDouble.empty(),
        metallised,
        finish);
  }
}
