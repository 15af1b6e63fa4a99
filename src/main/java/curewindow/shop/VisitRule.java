package curewindow.shop;

import java.util.List;
import java.util.Objects;

/**
 * When a shop would like to look at the work of a service; days after it was finished.
 *
 * @param service id of the service
 * @param earliest never sooner, 0 or more
 * @param best the day it likes best, not before {@code earliest}
 * @param latest never later, not before {@code best}
 * @param looksAt ids of what it looks at: it waits until that is over, if that is before {@code
 *     latest}
 */
public record VisitRule(String service, int earliest, int best, int latest, List<String> looksAt) {

  /** Refuses days out of order. */
  public VisitRule {
    Objects.requireNonNull(service, "service");
    looksAt = List.copyOf(looksAt);
    if (earliest < 0 || best < earliest || latest < best) {
      throw new IllegalArgumentException(
          service + ": " + earliest + ", " + best + " and " + latest + " are out of order");
    }
  }
}
