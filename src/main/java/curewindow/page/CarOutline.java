package curewindow.page;

import curewindow.page.CarDrawing.Kind;
import curewindow.shop.BodyType;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The car on which nothing was fitted, as a picture of its own (W3C SVG 2): one for each body type,
 * for all pages that show one. What was fitted is drawn over it, by the page.
 */
final class CarOutline {

  /** The ink of the pages, by day and in the dark; a picture takes no colour from its page. */
  static final String INK = "#14252c";

  static final String INK_IN_THE_DARK = "#ece9dd";

  private static final String STYLE =
      "path{fill:none;stroke:"
          + INK
          + "}.out{stroke-width:1.8}.spoke{stroke-width:12;stroke-dasharray:1.4 4.88}"
          + "@media(prefers-color-scheme:dark){path{stroke:"
          + INK_IN_THE_DARK
          + "}}@media(forced-colors:active){path{stroke:CanvasText}}";

  private CarOutline() {}

  /** The file of a body type. */
  static SharedFile file(BodyType body) {
    CarDrawing car = CarDrawing.of(body);
    String svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 %d %d %d\"><style>%s</style>\n"
                .formatted(car.top(), car.width(), car.bottom() - car.top(), STYLE)
            + lines(car, false)
            + "\n<g id=\"half\">"
            + lines(car, true)
            + "</g><use href=\"#half\" transform=\"scale(1-1)\"/></svg>\n";
    return new SharedFile("car-" + body.id() + ".svg", svg);
  }

  private static String lines(CarDrawing car, boolean above) {
    return path(car, above, " class=\"out\"", Kind.BODY)
        + path(car, above, "", Kind.LINE, Kind.PART)
        + path(car, above, " class=\"spoke\"", Kind.SPOKES);
  }

  private static String path(CarDrawing car, boolean above, String style, Kind... kinds) {
    String path =
        car.parts().stream()
            .filter(p -> p.above() == above && List.of(kinds).contains(p.kind()))
            .map(CarDrawing.Part::path)
            .collect(Collectors.joining());
    return path.isEmpty() ? "" : "<path" + style + " d=\"" + path + "\"/>";
  }
}
