package curewindow.page;

import curewindow.page.CarDrawing.Kind;
import curewindow.page.CarDrawing.Part;
import curewindow.page.CarDrawing.Point;
import curewindow.shop.FittedItem;
import curewindow.told.JobView;
import curewindow.told.Listing;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The car with what was fitted on it: each service has its own pattern, each fitted item its
 * number, in the picture and in the list beside it. The car itself is a file for all, {@link
 * CarOutline}; only the fitted spots are drawn in the page.
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

  /**
   * The whole picture with its list.
   *
   * @param box what is seen of it: the car, and the numbers beside it
   * @param car where the page finds the car itself, which begins at {@code top}
   */
  record Picture(
      String box,
      String car,
      int top,
      int width,
      int height,
      List<Pattern> patterns,
      List<Item> items) {}

  private final JobView view;
  private final SharedFile car;
  private final Words words;
  private final CarDrawing drawing;
  private final CarMarks marks;
  private final List<String> services;
  private int top;
  private int bottom;

  /**
   * The picture of a job.
   *
   * @param car the file of its body type
   */
  CarPicture(JobView view, SharedFile car) {
    this.view = view;
    this.car = car;
    this.words = view.words();
    this.drawing = CarDrawing.of(view.job().car().body());
    this.marks = new CarMarks(drawing.width());
    this.services = view.job().items().stream().map(FittedItem::service).distinct().toList();
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
        car.href(),
        drawing.top(),
        drawing.width(),
        drawing.bottom() - drawing.top(),
        patterns,
        items);
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
