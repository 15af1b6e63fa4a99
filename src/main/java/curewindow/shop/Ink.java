package curewindow.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The inks that handouts are printed with. */
public enum Ink {
  /** Red, green and blue, as screens and office printers take them. */
  SCREEN("screen"),
  /** One black ink, as label printers have it. */
  BLACK("black"),
  /** Cyan, magenta, yellow and black, as print shops have them. */
  PROCESS("process"),
  /** Black and one ink of the shop's own color. */
  SPOT("spot");

  private final String id;

  Ink(String id) {
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
   * Whether a print shop makes plates from the file.
   *
   * @return true for process and spot
   */
  public boolean isForPlates() {
    return this == PROCESS || this == SPOT;
  }

  /**
   * The value of a name.
   *
   * @param id the name used in files
   * @return the value, or empty where the name is unknown
   */
  public static Optional<Ink> of(String id) {
    return Arrays.stream(values()).filter(v -> v.id.equals(id)).findFirst();
  }

  /**
   * All names used in files.
   *
   * @return the names in their order
   */
  public static List<String> ids() {
    return Arrays.stream(values()).map(Ink::id).toList();
  }
}
