package curewindow.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The paper that handouts are laid on, ready to be cut. */
public enum SheetPaper {
  /** Each handout on a page of its own. */
  NONE("none"),
  /** 210 by 297 mm (ISO 216). */
  A4("a4"),
  /** 8.5 by 11 inches. */
  LETTER("letter");

  private final String id;

  SheetPaper(String id) {
    this.id = id;
  }

  /**
   * The name used in files and commands.
   *
   * @return lower case
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
  public static Optional<SheetPaper> of(String id) {
    return Arrays.stream(values()).filter(v -> v.id.equals(id)).findFirst();
  }

  /**
   * All names used in files.
   *
   * @return the names in their order
   */
  public static List<String> ids() {
    return Arrays.stream(values()).map(SheetPaper::id).toList();
  }
}
