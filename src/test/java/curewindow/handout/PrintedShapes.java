package curewindow.handout;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** What is drawn on a page beside letters: surfaces and lines that are not white. */
final class PrintedShapes extends PDFGraphicsStreamEngine {

  private final List<Shape> shapes = new ArrayList<>();
  private GeneralPath path = new GeneralPath();

  private PrintedShapes(PDPage page) {
    super(page);
  }

  /** The shapes of a page, points from its lower left corner. */
  static List<Shape> of(PDPage page) throws IOException {
    PrintedShapes found = new PrintedShapes(page);
    found.processPage(page);
    return found.shapes;
  }

  /** The code: of all shapes the one with the most outlines. */
  static Shape code(List<Shape> shapes) {
    return shapes.stream()
        .max(Comparator.comparingInt(PrintedShapes::outlines))
        .filter(shape -> outlines(shape) > 100)
        .orElseThrow(() -> new AssertionError("no code among " + shapes.size() + " shapes"));
  }

  static int outlines(Shape shape) {
    int count = 0;
    double[] points = new double[6];
    for (PathIterator at = shape.getPathIterator(null); !at.isDone(); at.next()) {
      count += at.currentSegment(points) == PathIterator.SEG_MOVETO ? 1 : 0;
    }
    return count;
  }

  private void draw(Shape shape, PDColor color) throws IOException {
    boolean white = color.toRGB() == 0xffffff;
    Rectangle2D box = shape.getBounds2D();
    if (!white && box.getWidth() > 0 && box.getHeight() > 0) {
      shapes.add(shape);
    }
  }

  @Override
  public void fillPath(int rule) throws IOException {
    path.setWindingRule(rule);
    draw(path, getGraphicsState().getNonStrokingColor());
    path = new GeneralPath();
  }

  @Override
  public void strokePath() throws IOException {
    float width = Math.max(0.1f, transformWidth(getGraphicsState().getLineWidth()));
    BasicStroke pen = new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
    draw(pen.createStrokedShape(path), getGraphicsState().getStrokingColor());
    path = new GeneralPath();
  }

  @Override
  public void fillAndStrokePath(int rule) throws IOException {
    GeneralPath same = new GeneralPath(path);
    fillPath(rule);
    path = same;
    strokePath();
  }

  @Override
  public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
    path.moveTo(a.getX(), a.getY());
    path.lineTo(b.getX(), b.getY());
    path.lineTo(c.getX(), c.getY());
    path.lineTo(d.getX(), d.getY());
    path.closePath();
  }

  @Override
  public void moveTo(float x, float y) {
    path.moveTo(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    path.lineTo(x, y);
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    path.curveTo(x1, y1, x2, y2, x3, y3);
  }

  @Override
  public Point2D getCurrentPoint() {
    return path.getCurrentPoint();
  }

  @Override
  public void closePath() {
    path.closePath();
  }

  @Override
  public void endPath() {
    path = new GeneralPath();
  }

  @Override
  public void clip(int rule) {}

  @Override
  public void drawImage(PDImage image) {}

  @Override
  public void shadingFill(COSName name) {}
}
