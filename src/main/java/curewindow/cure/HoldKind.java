package curewindow.cure;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a hold asks of the customer. */
public enum HoldKind {
  /** Something not to do until the date. */
  HOLD("hold"),
  /** Something that is normal until the date and a matter for the shop after it. */
  SETTLE("settle");

  private final String id;

  HoldKind(String id) {
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
  public static Optional<HoldKind> of(String id) {
    return Arrays.stream(values()).filter(v -> v.id.equals(id)).findFirst();
  }

  /**
   * All names used in files.
   *
   * @return the names in their order
   */
  public static List<String> ids() {
    return Arrays.stream(values()).map(HoldKind::id).toList();
  }
}
