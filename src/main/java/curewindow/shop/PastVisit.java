package curewindow.shop;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * That the shop saw a car again, and what came of it.
 *
 * @param day the day, by the shop's clock
 * @param what ids of the holds, settles and services that were looked at; none where all that was
 *     due was
 * @param result what came of it
 * @param note a note for the shop itself; may be empty
 */
public record PastVisit(LocalDate day, List<String> what, Result result, String note) {

  /** What came of a visit. */
  public enum Result {
    /** All was well. */
    FINE,
    /** Something was put right, and nothing was fitted anew. */
    MENDED;

    /**
     * The name used in files.
     *
     * @return lower case
     */
    public String id() {
      return name().toLowerCase(Locale.ROOT);
    }

    static List<String> ids() {
      return Arrays.stream(values()).map(Result::id).toList();
    }

    static Result of(String id) {
      return valueOf(id.toUpperCase(Locale.ROOT));
    }
  }

  /** Refuses missing parts. */
  public PastVisit {
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(result, "result");
    Objects.requireNonNull(note, "note");
    what = List.copyOf(what);
  }

  /**
   * Whether the work of a service was looked at as a whole.
   *
   * @param service the service's id
   * @return true where the service is named, or nothing is
   */
  public boolean isOf(String service) {
    return what.isEmpty() || what.contains(service);
  }
}
