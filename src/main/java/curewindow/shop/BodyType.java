package curewindow.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The shape of a car. */
public enum BodyType {
  /** Four doors and a separate trunk. */
  SEDAN("sedan"),
  /** Two doors. */
  COUPE("coupe"),
  /** A rear door with the back glass in it. */
  HATCHBACK("hatchback"),
  /** A long roof. */
  WAGON("wagon"),
  /** Tall, with a rear door. */
  SUV("suv"),
  /** An open bed. */
  PICKUP("pickup"),
  /** A box with sliding doors. */
  VAN("van");

  private final String id;

  BodyType(String id) {
    this.id = id;
  }

  /**
   * The name used in files.
   *
   * @return lower case with hyphens
   */
  public String id() {
    return id;
  }

  /**
   * The value of a name.
   *
   * @param id the name used in files
   * @return the value, or empty where the name is unknown
   */
  public static Optional<BodyType> of(String id) {
    return Arrays.stream(values()).filter(v -> v.id.equals(id)).findFirst();
  }

  /**
   * All names used in files.
   *
   * @return the names in their order
   */
  public static List<String> ids() {
    return Arrays.stream(values()).map(BodyType::id).toList();
  }
}
