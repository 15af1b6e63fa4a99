package curewindow.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Something true of a spot that decides which holds apply. */
public enum SpotFact {
  /** It is glass. */
  GLASS("glass"),
  /** A window that rolls down. */
  ROLLS("rolls"),
  /** It has heating lines. */
  DEFROSTER("defroster"),
  /** Wipers sweep it. */
  WIPERS("wipers"),
  /** It is inside the cabin. */
  CABIN("cabin"),

  /** The driver looks out through it, so that laws say how much light it must let through. */
  SIGHT("sight"),

  /** It stands for every spot on the outside. */
  WHOLE("whole");

  private final String id;

  SpotFact(String id) {
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
  public static Optional<SpotFact> of(String id) {
    return Arrays.stream(values()).filter(v -> v.id.equals(id)).findFirst();
  }

  /**
   * All names used in files.
   *
   * @return the names in their order
   */
  public static List<String> ids() {
    return Arrays.stream(values()).map(SpotFact::id).toList();
  }
}
