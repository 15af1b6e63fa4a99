package curewindow.cure;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How much sun the paint takes up. */
public enum PaintTone {
  /** White, silver, pastel. */
  LIGHT("light"),
  /** Red, blue, mid grey. */
  MID("mid"),
  /** Black and near-black. */
  DARK("dark");

  private final String id;

  PaintTone(String id) {
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
  public static Optional<PaintTone> of(String id) {
    return Arrays.stream(values()).filter(v -> v.id.equals(id)).findFirst();
  }

  /**
   * All names used in files.
   *
   * @return the names in their order
   */
  public static List<String> ids() {
    return Arrays.stream(values()).map(PaintTone::id).toList();
  }
}
