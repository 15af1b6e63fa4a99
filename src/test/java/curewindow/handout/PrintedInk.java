package curewindow.handout;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;

/**
 * The ink of one letter on a page.
 *
 * @param sign the letter
 * @param line where its line of text stands: angle and distance from the page's corner
 * @param along from where to where it reaches along its line, by its advance, points
 * @param box the ink's own box, points from the lower left corner
 */
record PrintedInk(String sign, Line line, Span along, Rectangle2D box) {

  /** Boxes may share a tenth of a point: numbers in the file are rounded. */
  private static final double SHAVE = 0.1;

  /** A line of text; letters on one line belong to one text or to its neighbour. */
  record Line(long angle, long distance) {}

  record Span(double from, double to) {}

  /** The ink of all letters of a page that have any. */
  static List<PrintedInk> of(PrintedCard pdf, int page) throws IOException {
    List<PrintedInk> ink = new ArrayList<>();
    for (TextPosition letter : pdf.letters(page)) {
      Rectangle2D box = box(letter);
      if (!box.isEmpty()) {
        ink.add(of(letter, box));
      }
    }
    return ink;
  }

  /** Whether letters of two texts lie on each other, or two texts of one line run together. */
  boolean disturbs(PrintedInk other) {
    if (line.equals(other.line)) {
      double common = Math.min(along.to, other.along.to) - Math.max(along.from, other.along.from);
      double narrower = Math.min(along.to - along.from, other.along.to - other.along.from);
      return common > 0.6 * narrower;
    }
    Rectangle2D common = box.createIntersection(other.box);
    return common.getWidth() > SHAVE && common.getHeight() > SHAVE;
  }

  /** The letter and where it stands, millimetres from the lower left corner. */
  String text() {
    return String.format(
        Locale.ROOT,
        "%s %.1f,%.1f",
        sign,
        PrintedCard.millimetres(box.getCenterX()),
        PrintedCard.millimetres(box.getCenterY()));
  }

  /** The same letter elsewhere, by points. */
  PrintedInk moved(double right, double up) {
    Rectangle2D at =
        new Rectangle2D.Double(
            box.getX() + right, box.getY() + up, box.getWidth(), box.getHeight());
    return new PrintedInk(
        sign,
        new Line(line.angle, line.distance + Math.round(2 * up)),
        new Span(along.from + right, along.to + right),
        at);
  }

  private static Rectangle2D box(TextPosition letter) {
    if (!(letter.getFont() instanceof PDVectorFont font)) {
      throw new AssertionError(letter.getFont().getName() + " is not drawn with outlines");
    }
    try {
      int code = letter.getCharacterCodes()[0];
      AffineTransform at = letter.getTextMatrix().createAffineTransform();
      at.concatenate(letter.getFont().getFontMatrix().createAffineTransform());
      return at.createTransformedShape(font.getNormalizedPath(code)).getBounds2D();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PrintedInk of(TextPosition letter, Rectangle2D box) {
    Matrix m = letter.getTextMatrix();
    double angle = Math.atan2(m.getShearY(), m.getScaleX());
    double from = Math.cos(angle) * m.getTranslateX() + Math.sin(angle) * m.getTranslateY();
    double off = -Math.sin(angle) * m.getTranslateX() + Math.cos(angle) * m.getTranslateY();
    return new PrintedInk(
        letter.getUnicode(),
        new Line(Math.round(angle * 1000), Math.round(off * 2)),
        new Span(from, from + letter.getWidthDirAdj()),
        box);
  }
}
