package curewindow.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The units in which readers think. */
public enum Units {
  /** Degrees Fahrenheit, feet and inches, pounds per square inch. */
  US("us"),
  /** Degrees Celsius, metres and millimetres, bar. */
  METRIC("metric");

  private final String id;

  Units(String id) {
    this.id = id;
  }

  /**
   * The name used in files.
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
  public static Optional<Units> of(String id) {
    return Arrays.stream(values()).filter(v -> v.id.equals(id)).findFirst();
  }

  /**
   * All names used in files.
   *
   * @return the names in their order
   */
  public static List<String> ids() {
    return Arrays.stream(values()).map(Units::id).toList();
  }
}
