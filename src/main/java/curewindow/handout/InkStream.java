package curewindow.handout;

import curewindow.handout.InkColors.Use;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.contentstream.PDContentStream;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdfwriter.ContentStreamWriter;
import org.apache.pdfbox.util.Matrix;

/**
 * Writes a content stream anew with the inks it is printed with. Colors are taken out where they
 * are set, and inks are put in where something is painted, as only there it is known what.
 */
final class InkStream {

  /** Points; type under it is small. */
  static final double SMALL_TYPE = 12;

  /** Points; what is narrower is a line. */
  private static final double LINE = 1;

  private final InkParts parts;
  private final InkColors colors;
  private final InkColorReader reader;
  private final Deque<InkState> outer = new ArrayDeque<>();
  private final List<Object> out = new ArrayList<>();
  private final List<COSBase> operands = new ArrayList<>();

  /** A path is held back until it is painted: no ink may be set within one. */
  private final List<Object> path = new ArrayList<>();

  private Rectangle2D reach = new Rectangle2D.Double();
  private InkState now;
  private AffineTransform text = new AffineTransform();

  private InkStream(InkParts parts, InkColors colors, InkColorReader reader, InkState start) {
    this.parts = parts;
    this.colors = colors;
    this.reader = reader;
    this.now = start;
  }

  /**
   * The stream in its inks.
   *
   * @param content a page, or a part of one
   * @param parts takes the parts that the stream needs
   * @param start what is set where it begins
   */
  static byte[] rewrite(PDContentStream content, InkParts parts, InkColors colors, InkState start)
      throws IOException {
    InkColorReader reader = new InkColorReader(content.getResources());
    InkStream stream = new InkStream(parts, colors, reader, start);
    for (Object token : new PDFStreamParser(content).parse()) {
      if (token instanceof Operator operator) {
        stream.read(operator);
        stream.operands.clear();
      } else {
        stream.operands.add((COSBase) token);
      }
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    new ContentStreamWriter(bytes).writeTokens(stream.out);
    return bytes.toByteArray();
  }

  private void read(Operator operator) throws IOException {
    switch (operator.getName()) {
      case "g", "rg", "k", "cs", "sc", "scn" -> reader.read(operator, operands, now.fill);
      case "G", "RG", "K", "CS", "SC", "SCN" -> reader.read(operator, operands, now.stroke);
      case "m", "l", "c", "v", "y", "re", "h", "W", "W*" -> extend(operator);
      case "f", "F", "f*", "S", "s", "B", "B*", "b", "b*", "n" -> paint(operator);
      case "Tj", "TJ", "'", "\"" -> write(operator);
      case "Do" -> place(operator);
      case "gs" -> parts.state(name()).ifPresent(state -> keep(List.of(state), operator));
      case "sh" -> throw InkColorReader.blend();
      case "BI" ->
          throw new Unprintable(
              "a picture stands within the drawing itself, where it cannot be turned into other inks",
              "place it as a file");
      default -> {
        follow(operator.getName());
        keep(operands, operator);
      }
    }
  }

  private void keep(List<? extends COSBase> before, Operator operator) {
    out.addAll(before);
    out.add(operator);
  }

  /** Keeps up with what is set. */
  private void follow(String operator) {
    switch (operator) {
      case "q" -> outer.push(now.copy());
      case "Q" -> now = outer.isEmpty() ? now : outer.pop();
      case "cm" -> now.toPoints.concatenate(transform());
      case "w" -> now.lineWidth = number(0);
      case "BT" -> text = new AffineTransform();
      case "Tm" -> text = transform();
      case "Tf" -> now.fontSize = number(1);
      case "Tr" -> now.letters = (int) number(0);
      default -> {
        // Changes no color, and no size.
      }
    }
  }

  private void extend(Operator operator) {
    boolean rectangle = operator.getName().equals("re");
    for (int i = 0; i + 1 < operands.size(); i += 2) {
      double x = number(i) + (rectangle && i == 2 ? number(0) : 0);
      double y = number(i + 1) + (rectangle && i == 2 ? number(1) : 0);
      if (path.isEmpty() && i == 0) {
        reach = new Rectangle2D.Double(x, y, 0, 0);
      } else {
        reach.add(x, y);
      }
    }
    path.addAll(operands);
    path.add(operator);
  }

  private void paint(Operator operator) {
    String name = operator.getName();
    if (!name.equals("n") && !name.equalsIgnoreCase("s")) {
      double narrow = Math.min(reach.getWidth(), reach.getHeight()) * now.scale();
      fill(narrow < LINE ? Use.LINE : Use.AREA);
    }
    if (!name.equals("n") && !name.toLowerCase(java.util.Locale.ROOT).startsWith("f")) {
      stroke(now.lineWidth * now.scale() < LINE ? Use.LINE : Use.AREA);
    }
    out.addAll(path);
    path.clear();
    out.add(operator);
  }

  private void write(Operator operator) {
    double turned = Math.sqrt(Math.abs(text.getDeterminant()));
    boolean small = Math.abs(now.fontSize) * turned * now.scale() < SMALL_TYPE;
    Use use = small ? Use.SMALL_TYPE : Use.AREA;
    int letters = now.letters % 4;
    if (letters == 0 || letters == 2) {
      fill(use);
    }
    if (letters == 1 || letters == 2) {
      stroke(use);
    }
    keep(operands, operator);
  }

  private void place(Operator operator) throws IOException {
    if (parts.isShape(name())) {
      fill(Use.AREA);
    }
    keep(List.of(parts.placed(name(), now)), operator);
  }

  private void fill(Use use) {
    set(now.fill, colors.of(now.fill.color, use), false);
  }

  private void stroke(Use use) {
    set(now.stroke, colors.of(now.stroke.color, use), true);
  }

  private void set(InkState.Side side, Paint paint, boolean lines) {
    if (!side.set.equals(Optional.of(paint))) {
      side.set = Optional.of(paint);
      out.addAll(parts.setting(paint, lines));
    }
  }

  private COSName name() {
    return (COSName) operands.get(0);
  }

  private double number(int operand) {
    return ((COSNumber) operands.get(operand)).floatValue();
  }

  private AffineTransform transform() {
    float[] m = new float[6];
    for (int i = 0; i < m.length; i++) {
      m[i] = (float) number(i);
    }
    return new Matrix(m[0], m[1], m[2], m[3], m[4], m[5]).createAffineTransform();
  }
}
