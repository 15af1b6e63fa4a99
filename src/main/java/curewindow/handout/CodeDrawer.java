package curewindow.handout;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.w3c.dom.Element;

/**
 * Draws QR codes as one filled outline wherever the template has {@code <object
 * type="application/x-code" data-code="0"/>}, its quiet zone within the object's box.
 */
final class CodeDrawer implements FSObjectDrawerFactory, FSObjectDrawer {

  private static final String TYPE = "application/x-code";

  /** Lengths are rounded to a twentieth of a pixel; so much may a module be under its least. */
  private static final double ROUNDING = 0.001;

  private static final double MILLIMETRES_A_PIXEL = 25.4 / 96;

  private final List<QrCode> codes;
  private final BitSet drawn = new BitSet();
  private final Map<Integer, Integer> pages = new TreeMap<>();
  private double smallest = Double.MAX_VALUE;

  CodeDrawer(List<QrCode> codes) {
    this.codes = List.copyOf(codes);
  }

  @Override
  public boolean isReplacedObject(Element e) {
    return e.getAttribute("type").equals(TYPE) && number(e) < codes.size();
  }

  @Override
  public FSObjectDrawer createDrawer(Element e) {
    return this;
  }

  private static int number(Element e) {
    String number = e.getAttribute("data-code");
    return number.matches("\\d{1,6}") ? Integer.parseInt(number) : Integer.MAX_VALUE;
  }

  @Override
  public Map<Shape, String> drawObject(
      Element e,
      double x,
      double y,
      double width,
      double height,
      OutputDevice device,
      RenderingContext context,
      int dotsPerPixel) {
    QrCode code = codes.get(number(e));
    double module = code.module(Math.min(width, height));
    drawn.set(number(e));
    pages.put(context.getPageNo(), number(e));
    smallest = Math.min(smallest, module / dotsPerPixel * MILLIMETRES_A_PIXEL);
    device.setPaint(Color.BLACK);
    device.fill(
        outline(
            code,
            x + (width - module * code.modules()) / 2,
            y + (height - module * code.modules()) / 2,
            module));
    return Map.of();
  }

  /** The smallest module that was drawn, in millimetres, where it is too small to scan safely. */
  OptionalDouble tooSmall() {
    return smallest < QrCode.SMALLEST_MODULE - ROUNDING
        ? OptionalDouble.of(smallest)
        : OptionalDouble.empty();
  }

  /** The number of the code that was drawn on a page, for pages counted from 0. */
  Map<Integer, Integer> pages() {
    return pages;
  }

  /** Whether each code was drawn at least once. */
  boolean hasDrawnAll() {
    return drawn.cardinality() == codes.size();
  }

  /** All dark modules; runs in a row are one rectangle, so that no seams show. */
  private static Path2D outline(QrCode code, double left, double top, double module) {
    Path2D.Double path = new Path2D.Double(Path2D.WIND_NON_ZERO);
    for (int row = 0; row < code.modules(); row++) {
      for (int from = 0; from < code.modules(); from++) {
        int to = from;
        while (code.dark(to, row)) {
          to++;
        }
        if (to > from) {
          path.append(
              new java.awt.geom.Rectangle2D.Double(
                  left + from * module, top + row * module, (to - from) * module, module),
              false);
          from = to;
        }
      }
    }
    return path;
  }
}
