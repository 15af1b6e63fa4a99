package curewindow.cure;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The physical process that a hold waits for. */
public enum Driver {
  /** Mounting water leaving through the film. */
  DRY_OUT("dry-out"),
  /** The adhesive building its bond. */
  BOND("bond"),
  /** A coating linking up into its final network. */
  CROSSLINK("crosslink");

  private final String id;

  Driver(String id) {
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
   * The driver of a name.
   *
   * @param id the name used in files
   * @return the driver, or empty where the name is unknown
   */
  public static Optional<Driver> of(String id) {
    return Arrays.stream(values()).filter(d -> d.id.equals(id)).findFirst();
  }

  /**
   * All names used in files.
   *
   * @return the names in the order of the drivers
   */
  public static List<String> ids() {
    return Arrays.stream(values()).map(Driver::id).toList();
  }
}
