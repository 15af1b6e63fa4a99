package curewindow.shop;

import curewindow.problem.Nearest;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * How the table of another program is read as jobs, kept by name in the shop folder.
 *
 * @param file where it stands, relative to the shop folder
 * @param columns the headings that fill each column of ours; the cells of several are joined with a
 *     blank
 * @param fixed what stands where the table has no such column, or nothing in it, by our column
 * @param hours at which hour it was where a time has a day alone, such as 17:00, by our column
 * @param dates the order of day, month and year; empty where the table is to tell
 * @param between what stands between several names in one cell; empty for spaces and commas
 * @param names what their names are called here, by our column; one of theirs may stand for several
 */
public record ImportMap(
    String file,
    Map<String, List<PlacedText>> columns,
    Map<String, String> fixed,
    Map<String, String> hours,
    Optional<DateOrder> dates,
    Optional<String> between,
    Map<String, Map<String, List<String>>> names) {

  /** Copies what it is given. */
  public ImportMap {
    Objects.requireNonNull(file, "file");
    columns = copied(columns);
    fixed = copied(fixed);
    hours = copied(hours);
    Objects.requireNonNull(dates, "dates");
    Objects.requireNonNull(between, "between");
    names = copied(names);
  }

  private static <K, V> Map<K, V> copied(Map<K, V> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }

  /**
   * The columns that it does not tell, without which there is no job.
   *
   * @return columns of ours; none where the map is whole
   */
  public List<String> lacking() {
    return JobColumns.required().stream()
        .filter(c -> !columns.containsKey(c) && !fixed.containsKey(c))
        .toList();
  }

  /**
   * Two names that only differ in capitals, accents or the spaces around them are the same.
   *
   * @param name a name of theirs
   * @return the name by which it is found in {@link #names}
   */
  public static String key(String name) {
    return Nearest.fold(name.strip().replaceAll("\\s+", " "));
  }
}
