package curewindow.shop;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * That the shop saw a car again, and what came of it.
 *
 * @param day the day, by the shop's clock
 * @param what ids of the holds, settles and services that were looked at; none where all that was
 *     due was; of the services and spots that were fitted anew
 * @param result what came of it
 * @param note a note for the shop itself; may be empty
 */
public record PastVisit(LocalDate day, List<String> what, Result result, String note) {

  /** What came of a visit. */
  public enum Result {
    /** All was well. */
    FINE("fine"),
    /** Something was put right, and nothing was fitted anew. */
    MENDED("mended"),
    /** Something was fitted anew, so that its dates begin again. */
    REFITTED("refitted");

    private final String id;

    Result(String id) {
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

    static List<String> ids() {
      return Arrays.stream(values()).map(Result::id).toList();
    }

    static Result of(String id) {
      return Arrays.stream(values()).filter(r -> r.id.equals(id)).findFirst().orElseThrow();
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
