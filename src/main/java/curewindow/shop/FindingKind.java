package curewindow.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What was found on the car before the work. */
public enum FindingKind {
  /** Old film was taken off. */
  OLD_FILM("old-film"),
  /** A stone chip in paint or glass. */
  CHIP("chip"),
  /** A line of old adhesive that stays visible. */
  GLUE_LINE("glue-line"),
  /** A scratch in paint or glass. */
  SCRATCH("scratch"),
  /** A panel painted again, whose paint may lift with a film. */
  REPAINT("repaint"),
  /** Something else. */
  OTHER("other");

  private final String id;

  FindingKind(String id) {
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
  public static Optional<FindingKind> of(String id) {
    return Arrays.stream(values()).filter(v -> v.id.equals(id)).findFirst();
  }

  /**
   * All names used in files.
   *
   * @return the names in their order
   */
  public static List<String> ids() {
    return Arrays.stream(values()).map(FindingKind::id).toList();
  }
}
