package curewindow.shop;

import java.util.List;
import java.util.Set;

/** The columns of jobs.csv, for those who fill them from a table of another program. */
public final class JobColumns {

  /** The column that tells which rows are one job. */
  public static final String JOB = "job";

  /** The column of what was done, which a film tells where nobody else does. */
  public static final String SERVICE = "service";

  /** The column of the film. */
  public static final String FILM = "film";

  private static final Set<String> TIMES = Set.of("pickup", "finished");
  private static final Set<String> NUMBERS =
      Set.of("car-year", "vlt", "glass-vlt", "warranty-years", "lamp-surface", "lamp-minutes");

  /** A draft of a job has one stay, by the shop's clock, and nothing that was found. */
  private static final Set<String> NOT_OF_A_DRAFT =
      Set.of("zone", "in", "found", "found-spots", "found-since", "found-text");

  private static final Set<String> NAMES =
      Set.of(
          "language",
          "body",
          "paint",
          "paint-finish",
          "lacks",
          "place",
          "parking-day",
          "parking-night",
          "service",
          "film",
          "spots");

  private JobColumns() {}

  /**
   * All that a table of another program can fill.
   *
   * @return the columns, those of the job before those of a fitted item
   */
  public static List<String> all() {
    return CsvJobs.columns().stream().filter(c -> !NOT_OF_A_DRAFT.contains(c)).toList();
  }

  /**
   * Those without which there is no job; a film tells its service.
   *
   * @return the columns
   */
  public static List<String> required() {
    return CsvJobs.REQUIRED.stream().filter(c -> !c.equals(SERVICE)).toList();
  }

  /**
   * Whether a column belongs to a fitted item, so that each row has its own.
   *
   * @param column one of {@link #all}
   * @return false where it belongs to the job
   */
  public static boolean isOfItem(String column) {
    return CsvJobs.isOfItem(column);
  }

  /**
   * Whether a column holds times.
   *
   * @param column one of {@link #all}
   * @return true such as for pickup
   */
  public static boolean isTime(String column) {
    return TIMES.contains(column);
  }

  /**
   * Whether a column holds numbers.
   *
   * @param column one of {@link #all}
   * @return true such as for vlt
   */
  public static boolean isNumber(String column) {
    return NUMBERS.contains(column);
  }

  /**
   * Whether a column holds names that Curewindow knows.
   *
   * @param column one of {@link #all}
   * @return true such as for film
   */
  public static boolean isName(String column) {
    return NAMES.contains(column);
  }

  /**
   * Whether a cell of a column may hold several names.
   *
   * @param column one of {@link #all}
   * @return true such as for spots
   */
  public static boolean isList(String column) {
    return CsvJobs.isList(column);
  }
}
