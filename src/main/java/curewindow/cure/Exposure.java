package curewindow.cure;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What the film or coating on a spot sees of sun, sky and cabin. */
public enum Exposure {
  /** Film on the inside face of a window. */
  BEHIND_GLASS("behind-glass"),
  /** An outside surface that faces the sky. */
  OUTSIDE_UP("outside-up"),
  /** An outside surface that stands upright. */
  OUTSIDE_SIDE("outside-side"),
  /** A surface inside the cabin, such as a seat. */
  CABIN("cabin");

  private final String id;

  Exposure(String id) {
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
  public static Optional<Exposure> of(String id) {
    return Arrays.stream(values()).filter(v -> v.id.equals(id)).findFirst();
  }

  /**
   * All names used in files.
   *
   * @return the names in their order
   */
  public static List<String> ids() {
    return Arrays.stream(values()).map(Exposure::id).toList();
  }
}
