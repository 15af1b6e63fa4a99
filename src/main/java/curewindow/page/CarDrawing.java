package curewindow.page;

import curewindow.shop.BodyType;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * Our own drawing of a car of one body type, from its left side and from above, in parts. It is
 * read from {@code cars/BODY.svg}, which any browser shows by itself; one unit is 12 to 15 mm of
 * the car. The view from above is drawn as the half over its middle, which lies at y = 0.
 *
 * @param top where the car begins, in the file's units
 * @param bottom where it ends
 * @param width how wide the picture is
 * @param parts all parts, in the order in which they are drawn
 */
record CarDrawing(int top, int bottom, int width, List<Part> parts) {

  /** How a part is drawn. */
  enum Kind {
    /** The outline of the car, always there. */
    BODY,
    /** A thin line, always there. */
    LINE,
    /** The spokes of the wheels: circles that the style breaks up into spokes, always there. */
    SPOKES,
    /** A spot whose edge is a line of the car too, always there. */
    PART,
    /** A spot that is there only where something was fitted on it. */
    ONLY,
    /** The same, inside the car, so that it is dashed. */
    INSIDE
  }

  /** A point of the drawing. */
  record Point(int x, int y) {}

  /**
   * One part.
   *
   * @param above whether it belongs to the view from above, of which it is one half
   * @param spot the id of its spot; empty for lines
   * @param path SVG path data
   * @param mark where the number of what was fitted stands; on one part of a spot only
   * @param at where a line leads from the number, for a spot too small to hold it
   */
  record Part(
      boolean above,
      Kind kind,
      String spot,
      String path,
      Optional<Point> mark,
      Optional<Point> at) {}

  private static final Map<BodyType, CarDrawing> READ = new ConcurrentHashMap<>();

  /** Copies the parts. */
  CarDrawing {
    parts = List.copyOf(parts);
  }

  /** The drawing of a body type; the same one each time. */
  static CarDrawing of(BodyType body) {
    return READ.computeIfAbsent(body, CarDrawing::read);
  }

  /** The parts of a spot; none where this car has no such place. */
  List<Part> spot(String id) {
    return parts.stream().filter(p -> p.spot().equals(id)).toList();
  }

  private static CarDrawing read(BodyType body) {
    Element svg = document("cars/" + body.id() + ".svg").getDocumentElement();
    int[] box = numbers(svg.getAttribute("viewBox"));
    List<Part> parts = new ArrayList<>();
    NodeList paths = svg.getElementsByTagName("path");
    for (int i = 0; i < paths.getLength(); i++) {
      parts.add(part((Element) paths.item(i)));
    }
    return new CarDrawing(box[1], box[1] + box[3], box[2], parts);
  }

  private static Part part(Element path) {
    Element view = (Element) path.getParentNode();
    return new Part(
        view.getAttribute("id").equals("top"),
        Kind.valueOf(path.getAttribute("class").toUpperCase(Locale.ROOT)),
        path.getAttribute("data-spot"),
        path.getAttribute("d"),
        point(path.getAttribute("data-mark")),
        point(path.getAttribute("data-at")));
  }

  private static Optional<Point> point(String text) {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    int[] xy = numbers(text);
    return Optional.of(new Point(xy[0], xy[1]));
  }

  private static int[] numbers(String text) {
    return Arrays.stream(text.split(" ")).mapToInt(Integer::parseInt).toArray();
  }

  private static Document document(String name) {
    try (InputStream in = CarDrawing.class.getResourceAsStream(name)) {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      return factory.newDocumentBuilder().parse(Objects.requireNonNull(in, name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ParserConfigurationException | SAXException e) {
      throw new IllegalStateException(name, e);
    }
  }
}
