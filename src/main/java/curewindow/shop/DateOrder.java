package curewindow.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** In which order a table of another program writes day, month and year. */
public enum DateOrder {
  /** As in 24.11.2026. */
  DAY_FIRST("day-first"),
  /** As in 11/24/2026. */
  MONTH_FIRST("month-first"),
  /** As in 26-11-24; a year of four digits tells itself. */
  YEAR_FIRST("year-first");

  private final String id;

  DateOrder(String id) {
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

  static Optional<DateOrder> of(String id) {
    return Arrays.stream(values()).filter(v -> v.id.equals(id)).findFirst();
  }

  static List<String> ids() {
    return Arrays.stream(values()).map(DateOrder::id).toList();
  }
}
