package curewindow.page;

import curewindow.page.CarDrawing.Kind;
import curewindow.shop.BodyType;
import java.util.List;

/**
 * A car of one body type with all its spots, to tap on: the drawing of the customers' pages.
 *
 * @param box the part of the drawing that is seen (W3C SVG 2, {@code viewBox})
 * @param lines what is no spot, as path data; {@code half} is the view from above, one half of it
 * @param half the same of the half that is drawn twice
 * @param spots the parts of the spots, in the order in which they are drawn
 */
public record CarSketch(String box, String lines, String half, List<Part> spots) {

  /** Copies the list. */
  public CarSketch {
    spots = List.copyOf(spots);
  }

  /**
   * A part of a spot.
   *
   * @param spot the spot's id
   * @param path SVG path data
   * @param above whether it belongs to the view from above, so that it is drawn twice
   */
  public record Part(String spot, String path, boolean above) {}

  /**
   * The sketch of a body type.
   *
   * @param body the body type
   * @return the sketch
   */
  public static CarSketch of(BodyType body) {
    CarDrawing car = CarDrawing.of(body);
    return new CarSketch(
        "0 %d %d %d".formatted(car.top(), car.width(), car.bottom() - car.top()),
        lines(car, false),
        lines(car, true),
        car.parts().stream()
            .filter(p -> !p.spot().isEmpty())
            .map(p -> new Part(p.spot(), p.path(), p.above()))
            .toList());
  }

  private static String lines(CarDrawing car, boolean above) {
    StringBuilder path = new StringBuilder();
    car.parts().stream()
        .filter(p -> p.above() == above && (p.kind() == Kind.BODY || p.kind() == Kind.LINE))
        .forEach(p -> path.append(p.path()));
    return path.toString();
  }
}
