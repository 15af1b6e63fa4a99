package curewindow.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Numbers as places on a line from 0 that all rows of a table share. Places are percentages of the
 * width of the drawing, so that its letters and dots keep their size on any screen.
 */
final class CallsPicture {

  /** What stands at the ends, so that the outer numbers have room; percent of the width. */
  private static final double MARGIN = 4;

  private static final int MOST_TICKS = 5;

  /**
   * The line.
   *
   * @param reference where a number stands that all are compared with; empty where there is none
   */
  record Axis(List<Tick> ticks, Optional<String> reference) {}

  /** A number on the line. */
  record Tick(String x, String text) {}

  /**
   * A number with its interval.
   *
   * @param at where the number stands; empty where it is not known
   * @param open whether the interval goes on beyond the line
   */
  record Mark(String low, String high, Optional<String> at, boolean open) {}

  /** A part of a bar. */
  record Part(String kind, String x, String width) {}

  private final int top;
  private final int step;

  private CallsPicture(int top, int step) {
    this.top = top;
    this.step = step;
  }

  /** A line that ends at a round number not below one. */
  static CallsPicture upTo(int most) {
    int step = 1;
    for (int i = 0; (most + step - 1) / step > MOST_TICKS - 1; i++) {
      step = i % 3 == 1 ? step / 2 * 5 : step * 2;
    }
    return new CallsPicture(Math.max(1, (most + step - 1) / step) * step, step);
  }

  /** The line with its numbers. */
  Axis axis(OptionalInt reference) {
    List<Tick> ticks = new ArrayList<>();
    for (int number = 0; number <= top; number += step) {
      ticks.add(new Tick(place(number), String.valueOf(number)));
    }
    Optional<String> at =
        reference.isPresent() ? Optional.of(place(reference.getAsInt())) : Optional.empty();
    return new Axis(ticks, at);
  }

  /** A number with its interval; one without an upper end, or beyond the line, is open. */
  Mark mark(OptionalInt number, int low, OptionalInt high) {
    boolean open = high.isEmpty() || high.getAsInt() > top;
    return new Mark(
        place(low),
        place(open ? top : high.getAsInt()),
        number.isPresent() ? Optional.of(place(number.getAsInt())) : Optional.empty(),
        open);
  }

  /** Part of a bar that begins where others end. */
  Part part(String kind, int before, int count) {
    return new Part(kind, place(before), percent((100 - 2 * MARGIN) * count / top));
  }

  private String place(int number) {
    return percent(MARGIN + (100 - 2 * MARGIN) * Math.min(number, top) / top);
  }

  private static String percent(double number) {
    return String.format(Locale.ROOT, "%.2f%%", number);
  }
}
