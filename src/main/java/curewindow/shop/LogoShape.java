package curewindow.shop;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.util.Optional;

/**
 * How wide a logo is beside its height: one that is a mere line could not be seen where the shop's
 * name stands. The bounds are our own choice.
 *
 * @param width above 0
 * @param height above 0
 */
record LogoShape(double width, double height) {

  private static final double WIDEST = 12;
  private static final double NARROWEST = 0.25;

  static Optional<LogoShape> of(double width, double height, String file, Problems problems) {
    if (width >= height * NARROWEST && width <= height * WIDEST) {
      return Optional.of(new LogoShape(width, height));
    }
    problems.add(
        Problem.error(
            "bad-logo",
            Where.file(file),
            "the logo is "
                + Values.shortest(width)
                + " wide and "
                + Values.shortest(height)
                + " high",
            "use one that is at most 12 times as wide as high, and at most 4 times as high as wide"));
    return Optional.empty();
  }
}
