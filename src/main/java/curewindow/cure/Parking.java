package curewindow.cure;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Where a car stands. */
public enum Parking {
  /** Under the open sky. */
  OUTSIDE("outside"),
  /** Outside, but out of the sun: a carport, a tree, a building's shadow. */
  SHADE("shade"),
  /** Under a roof and behind walls, without heating. */
  GARAGE("garage"),
  /** In a heated garage, never below {@link #HEATED_LEAST}. */
  HEATED("heated");

  /** The least temperature in a heated garage, degrees Celsius; common practice, no source. */
  public static final double HEATED_LEAST = 16;

  private final String id;

  Parking(String id) {
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
  public static Optional<Parking> of(String id) {
    return Arrays.stream(values()).filter(v -> v.id.equals(id)).findFirst();
  }

  /**
   * All names used in files.
   *
   * @return the names in their order
   */
  public static List<String> ids() {
    return Arrays.stream(values()).map(Parking::id).toList();
  }
}
