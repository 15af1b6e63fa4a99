package curewindow.intake;

import curewindow.shop.DateOrder;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds out from all cells of a column which number is the day. */
final class DateOrders {

  private DateOrders() {}

  /**
   * A cell.
   *
   * @param line where it stands
   * @param text what stands there
   * @param cell what it may mean
   */
  record Placed(int line, String text, DateCell cell) {}

  /** What a column tells. */
  sealed interface Told {}

  /**
   * One order fits.
   *
   * @param by the first cell that fits no other; empty where it makes no difference to any
   */
  record Order(DateOrder order, Optional<Placed> by) implements Told {}

  /** Several orders fit all cells, and give other days. */
  record Unsure(Placed example) implements Told {}

  /** No order fits all cells: one has it one way, one another way. */
  record Mixed(Placed one, Placed other) implements Told {}

  /** What the cells of a column tell; those that are no day in any order say nothing. */
  static Told of(List<Placed> cells) {
    Set<DateOrder> fitting = EnumSet.allOf(DateOrder.class);
    List<Placed> limiting = new ArrayList<>();
    for (Placed one : cells) {
      Set<DateOrder> left = EnumSet.copyOf(fitting);
      left.retainAll(one.cell().days().keySet());
      if (left.isEmpty()) {
        return new Mixed(limiting.get(limiting.size() - 1), one);
      }
      if (left.size() < fitting.size()) {
        limiting.add(one);
      }
      fitting = left;
    }
    boolean unlikely = cells.stream().anyMatch(c -> !c.cell().likely());
    if (fitting.size() > 1 && unlikely) {
      fitting.remove(DateOrder.YEAR_FIRST);
    }
    return told(cells, fitting);
  }

  private static Told told(List<Placed> cells, Set<DateOrder> fitting) {
    DateOrder first = fitting.iterator().next();
    for (Placed one : cells) {
      boolean same = fitting.stream().map(one.cell().days()::get).distinct().limit(2).count() == 1;
      if (!same) {
        return new Unsure(one);
      }
    }
    return new Order(first, decisive(cells, first));
  }

  private static Optional<Placed> decisive(List<Placed> cells, DateOrder order) {
    DateOrder swapped = order == DateOrder.DAY_FIRST ? DateOrder.MONTH_FIRST : DateOrder.DAY_FIRST;
    return cells.stream()
        .filter(c -> c.cell().days().containsKey(order) && !c.cell().days().containsKey(swapped))
        .findFirst();
  }
}
