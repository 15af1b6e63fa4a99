package curewindow.page;

import curewindow.page.CarDrawing.Kind;
import curewindow.page.CarDrawing.Part;
import curewindow.page.CarDrawing.Point;
import curewindow.shop.FittedItem;
import curewindow.told.JobView;
import curewindow.told.Listing;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The car with what was fitted on it: each service has its own pattern, each fitted item its
 * number, in the picture and in the list beside it. Only the outline and the fitted spots are put
 * into the page.
 */
final class CarPicture {

  /**
   * What fills the spots of a service, as a tile of 6 by 6, the first service's first. Each is
   * strokes only, so that one rule inks them all. Where a film lies under a coating both are seen:
   * the rings of the second stand clear of the lines of all others.
   */
  static final List<String> PATTERNS =
      List.of(
          "M-1 1 1-1M0 6 6 0M5 7 7 5",
          "M.7 1.5a.8.8 0 0 0 1.6 0 .8.8 0 0 0-1.6 0M3.7 4.5a.8.8 0 0 0 1.6 0 .8.8 0 0 0-1.6 0",
          "M0 3h6M3 0v6",
          "M0 0h6M0 3h6M0 6h6",
          "M-1 2 4 7M2-1 7 4",
          "M0 0v6M3 0v6M6 0v6");

  /** Room between a number and the edge of the picture. */
  private static final int EDGE = CarMarks.RADIUS + 2;

  /** A pattern and the name that refers to it. */
  record Pattern(String id, String path) {}

  /** A part of the drawing; {@code kind} is empty where it is drawn like most. */
  record Shape(Optional<String> kind, String path) {}

  /** A number. */
  record Mark(int x, int y) {}

  /**
   * A fitted item.
   *
   * @param number its number
   * @param name service and spots, for who cannot see the picture
   * @param fill the name of its pattern
   * @param side its spots seen from the side
   * @param above its spots seen from above, one half
   * @param lines the lines from numbers to spots that cannot hold them
   */
  record Item(
      int number,
      String name,
      String fill,
      List<Shape> side,
      List<Shape> above,
      Optional<String> lines,
      List<Mark> marks,
      String service,
      String spots,
      List<String> facts) {}

  /** The whole picture with its list. */
  record Picture(
      String box,
      List<Pattern> patterns,
      String outline,
      String lines,
      String spokes,
      String outlineAbove,
      String linesAbove,
      List<Item> items) {}

  private final JobView view;
  private final Words words;
  private final CarDrawing drawing;
  private final CarMarks marks;
  private final List<String> services;
  private final Set<String> fitted = new LinkedHashSet<>();
  private int top;
  private int bottom;

  CarPicture(JobView view) {
    this.view = view;
    this.words = view.words();
    this.drawing = CarDrawing.of(view.job().car().body());
    this.marks = new CarMarks(drawing.width());
    this.services = view.job().items().stream().map(FittedItem::service).distinct().toList();
    view.job().items().forEach(i -> fitted.addAll(i.spots()));
    this.top = drawing.top();
    this.bottom = drawing.bottom();
  }

  Picture picture() {
    List<Item> items = new ArrayList<>();
    for (int i = 0; i < view.job().items().size(); i++) {
      items.add(item(i, view.job().items().get(i)));
    }
    List<Pattern> patterns =
        services.stream()
            .map(this::fill)
            .distinct()
            .map(f -> new Pattern(f, PATTERNS.get(Integer.parseInt(f.substring(1)))))
            .toList();
    return new Picture(
        "0 " + top + " " + drawing.width() + " " + (bottom - top),
        patterns,
        plain(Kind.BODY, false),
        plain(Kind.LINE, false),
        plain(Kind.SPOKES, false),
        plain(Kind.BODY, true),
        plain(Kind.LINE, true),
        items);
  }

  /** The outline, or all thin lines with the spots on which nothing was fitted. */
  private String plain(Kind kind, boolean above) {
    StringBuilder path = new StringBuilder();
    drawing.parts().stream()
        .filter(p -> p.above() == above)
        .filter(
            p ->
                p.kind() == kind
                    || kind == Kind.LINE && p.kind() == Kind.PART && !fitted.contains(p.spot()))
        .forEach(p -> path.append(p.path()));
    return path.toString();
  }

  private String fill(String service) {
    return "k" + services.indexOf(service) % PATTERNS.size();
  }

  private Item item(int position, FittedItem item) {
    List<Part> parts = item.spots().stream().flatMap(s -> drawing.spot(s).stream()).toList();
    List<Mark> numbers = new ArrayList<>();
    StringBuilder lines = new StringBuilder();
    for (Part part : parts) {
      part.mark().ifPresent(m -> numbers.add(mark(m, part.at(), lines)));
    }
    String service = words.text("service." + item.service());
    String spots =
        Listing.of(item.spots().stream().map(s -> words.text("spot." + s)).toList(), words);
    return new Item(
        position + 1,
        words.text(
            "car.name",
            Map.of("number", String.valueOf(position + 1), "service", service, "spots", spots)),
        fill(item.service()),
        shapes(parts, false),
        shapes(parts, true),
        lines.isEmpty() ? Optional.empty() : Optional.of(lines.toString()),
        numbers,
        service,
        spots,
        new Fittings(view).facts(item));
  }

  /** Takes a place for a number, with a line to its spot where it stands beside that. */
  private Mark mark(Point wanted, Optional<Point> at, StringBuilder lines) {
    Point place = marks.place(wanted);
    at.ifPresent(
        a ->
            lines
                .append('M')
                .append(place.x())
                .append(' ')
                .append(place.y())
                .append('L')
                .append(a.x())
                .append(' ')
                .append(a.y()));
    top = Math.min(top, place.y() - EDGE);
    bottom = Math.max(bottom, place.y() + EDGE);
    return new Mark(place.x(), place.y());
  }

  private static List<Shape> shapes(List<Part> parts, boolean above) {
    return parts.stream()
        .filter(p -> p.above() == above)
        .map(
            p ->
                new Shape(p.kind() == Kind.INSIDE ? Optional.of("in") : Optional.empty(), p.path()))
        .toList();
  }
}
