package curewindow.handout;

import java.awt.geom.AffineTransform;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray;

/** What is set in a content stream where something is painted, as far as inks depend on it. */
final class InkState {

  /** From the stream's own measures to points. */
  final AffineTransform toPoints;

  final Side fill;
  final Side stroke;
  double lineWidth;
  double fontSize;

  /** Whether letters are filled, drawn round, both or neither (PDF Reference 1.4, 5.2.5). */
  int letters;

  /** The color of areas, or that of lines: the one the page was set in, and the inks now set. */
  static final class Side {

    PDColorSpace space = PDDeviceGray.INSTANCE;
    Rgb color = Rgb.BLACK;
    Optional<Paint> set = Optional.empty();

    private Side copy() {
      Side copy = new Side();
      copy.space = space;
      copy.color = color;
      copy.set = set;
      return copy;
    }
  }

  private InkState(AffineTransform toPoints, Side fill, Side stroke) {
    this.toPoints = toPoints;
    this.fill = fill;
    this.stroke = stroke;
  }

  /** As a page begins. */
  static InkState start() {
    InkState state = new InkState(new AffineTransform(), new Side(), new Side());
    state.lineWidth = 1;
    return state;
  }

  InkState copy() {
    InkState copy = new InkState(new AffineTransform(toPoints), fill.copy(), stroke.copy());
    copy.lineWidth = lineWidth;
    copy.fontSize = fontSize;
    copy.letters = letters;
    return copy;
  }

  /** The same within a part of its own, where no ink can be relied on to be set. */
  InkState within(AffineTransform part) {
    InkState inner = copy();
    inner.toPoints.concatenate(part);
    inner.fill.set = Optional.empty();
    inner.stroke.set = Optional.empty();
    return inner;
  }

  /** How many points a length of one is. */
  double scale() {
    return Math.sqrt(Math.abs(toPoints.getDeterminant()));
  }
}
