package curewindow.page;

import curewindow.page.CarDrawing.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds places for the numbers on a car's drawing, so that none lies on another: where the drawing
 * wants it, or else at the nearest free place.
 */
final class CarMarks {

  /** The radius of a number's circle, in the drawing's units. */
  static final int RADIUS = 11;

  /** The least distance between two numbers. */
  static final int APART = 2 * RADIUS + 2;

  private static final int STEP = 6;
  private static final List<Point> AROUND = around();

  private final int width;
  private final List<Point> taken = new ArrayList<>();

  /** Numbers on a drawing of a width. */
  CarMarks(int width) {
    this.width = width;
  }

  /** A free place at or near the wanted one, from now on taken. */
  Point place(Point wanted) {
    Point free =
        AROUND.stream()
            .map(a -> new Point(wanted.x() + a.x(), wanted.y() + a.y()))
            .filter(this::isFree)
            .findFirst()
            .orElse(wanted);
    taken.add(free);
    return free;
  }

  private boolean isFree(Point p) {
    return p.x() >= RADIUS + 1
        && p.x() <= width - RADIUS - 1
        && taken.stream().allMatch(t -> distance(t, p) >= APART);
  }

  private static double distance(Point a, Point b) {
    return Math.hypot(a.x() - b.x(), a.y() - b.y());
  }

  /** Steps away from a place, the nearest first, sideways before up and down. */
  private static List<Point> around() {
    List<Point> steps = new ArrayList<>();
    for (int x = -30; x <= 30; x++) {
      for (int y = -30; y <= 30; y++) {
        steps.add(new Point(x * STEP, y * STEP));
      }
    }
    Point middle = new Point(0, 0);
    steps.sort(
        Comparator.comparingDouble((Point p) -> distance(middle, p))
            .thenComparingInt(p -> Math.abs(p.y()))
            .thenComparingInt(p -> -p.x())
            .thenComparingInt(Point::y));
    return List.copyOf(steps);
  }
}
