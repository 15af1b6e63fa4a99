package curewindow.handout;

import com.lowagie.text.pdf.PRStream;
import com.lowagie.text.pdf.PRTokeniser;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfContentParser;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfReader;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is painted on the pages of a PDF and with which inks, as OpenPDF reads it: every content
 * stream, in the order in which a printer draws it.
 */
final class PaintedInks {

  /**
   * Something painted.
   *
   * @param what TEXT, FILL, LINE or PICTURE
   * @param size of text: points
   * @param moves of a path: how many separate outlines it has
   * @param inks the color space, and how much of each of its parts
   */
  record Painted(String what, double size, int moves, Inks inks) {}

  /** A color space and the values set in it. */
  record Inks(String space, List<Double> values) {

    /** Black alone, or nothing but paper. */
    boolean isBlackAlone() {
      return space.equals("DeviceGray")
          || space.equals("DeviceCMYK") && values.subList(0, 3).equals(List.of(0.0, 0.0, 0.0));
    }

    /** How much black there is, where it is alone. */
    double black() {
      return space.equals("DeviceGray") ? 1 - values.get(0) : values.get(3);
    }
  }

  private final List<Painted> painted = new ArrayList<>();
  private final Set<String> spaces = new TreeSet<>();
  private final Set<String> forbidden = new TreeSet<>();

  private PaintedInks() {}

  static PaintedInks of(byte[] pdf) throws IOException {
    PaintedInks inks = new PaintedInks();
    try (PdfReader reader = new PdfReader(pdf)) {
      for (int page = 1; page <= reader.getNumberOfPages(); page++) {
        PdfDictionary resources = reader.getPageN(page).getAsDict(PdfName.RESOURCES);
        inks.new Walk(resources, new State()).read(reader.getPageContent(page));
        inks.forbid(reader.getPageN(page).get(PdfName.GROUP) != null, "a transparent page");
      }
    }
    return inks;
  }

  List<Painted> painted() {
    return painted;
  }

  /** All color spaces that are set, or that a picture has. */
  Set<String> spaces() {
    return spaces;
  }

  /** What PDF/X-1a does not allow. */
  Set<String> forbidden() {
    return forbidden;
  }

  private void forbid(boolean found, String what) {
    if (found) {
      forbidden.add(what);
    }
  }

  private static PdfObject read(PdfObject object) {
    return PdfReader.getPdfObject(object);
  }

  /** A name, or of an array its kind and the inks it names. */
  private static String spaceName(PdfObject space) {
    if (read(space) instanceof PdfArray array) {
      String inks = String.valueOf(read(array.getPdfObject(1))).replace("/", "");
      return array.getAsName(0).toString().substring(1) + " " + inks;
    }
    return read(space).toString().substring(1);
  }

  private static final class State {
    private AffineTransform toPoints = new AffineTransform();
    private Inks fill = new Inks("DeviceGray", List.of(0.0));
    private Inks line = fill;
    private double size;

    private State copy() {
      State copy = new State();
      copy.toPoints = new AffineTransform(toPoints);
      copy.fill = fill;
      copy.line = line;
      copy.size = size;
      return copy;
    }
  }

  /** One content stream. */
  private final class Walk {
    private final PdfDictionary resources;
    private final Deque<State> outer = new ArrayDeque<>();
    private State now;
    private AffineTransform text = new AffineTransform();
    private int moves;

    private Walk(PdfDictionary resources, State start) throws IOException {
      this.resources = resources;
      this.now = start;
      for (String kind : List.of("Pattern", "Shading")) {
        forbid(resources.get(new PdfName(kind)) != null, kind);
      }
      fonts();
      states();
      PdfDictionary named = resources.getAsDict(PdfName.COLORSPACE);
      if (named != null) {
        named.getKeys().forEach(key -> spaces.add(spaceName(named.get(key))));
      }
    }

    private void fonts() {
      PdfDictionary fonts = resources.getAsDict(PdfName.FONT);
      for (PdfName key : fonts == null ? Set.<PdfName>of() : fonts.getKeys()) {
        PdfDictionary font = fonts.getAsDict(key);
        PdfArray parts = font.getAsArray(PdfName.DESCENDANTFONTS);
        PdfDictionary outlines = parts == null ? font : parts.getAsDict(0);
        PdfDictionary descriptor = outlines.getAsDict(PdfName.FONTDESCRIPTOR);
        forbid(descriptor == null || descriptor.get(PdfName.FONTFILE2) == null, "a font not here");
      }
    }

    private void states() {
      PdfDictionary states = resources.getAsDict(PdfName.EXTGSTATE);
      for (PdfName key : states == null ? Set.<PdfName>of() : states.getKeys()) {
        for (String name : List.of("CA", "ca", "BM", "SMask", "TR", "TR2")) {
          forbid(states.getAsDict(key).get(new PdfName(name)) != null, name);
        }
      }
    }

    private void read(byte[] content) throws IOException {
      PdfContentParser parser = new PdfContentParser(new PRTokeniser(content));
      List<PdfObject> tokens = new ArrayList<>();
      while (!parser.parse(tokens).isEmpty()) {
        operator(tokens.get(tokens.size() - 1).toString(), tokens);
      }
    }

    private void operator(String name, List<PdfObject> operands) throws IOException {
      switch (name) {
        case "q" -> outer.push(now.copy());
        case "Q" -> now = outer.pop();
        case "cm" -> now.toPoints.concatenate(transform(operands));
        case "BT" -> text = new AffineTransform();
        case "Tm" -> text = transform(operands);
        case "Tf" -> now.size = number(operands, 1);
        case "Tj", "TJ", "'", "\"" -> text();
        case "m", "re" -> moves++;
        case "f", "F", "f*", "S", "s", "B", "B*", "b", "b*", "n" -> path(name);
        case "Do" -> part(resources.getAsDict(PdfName.XOBJECT).get((PdfName) operands.get(0)));
        case "sh", "BI" -> forbid(true, name);
        default -> color(name, operands);
      }
    }

    private void color(String name, List<PdfObject> operands) {
      String space =
          switch (name) {
            case "g", "G" -> "DeviceGray";
            case "rg", "RG" -> "DeviceRGB";
            case "k", "K" -> "DeviceCMYK";
            case "cs", "CS" -> named((PdfName) operands.get(0));
            case "sc", "scn" -> now.fill.space;
            case "SC", "SCN" -> now.line.space;
            default -> "";
          };
      if (!space.isEmpty()) {
        spaces.add(space);
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < operands.size() - 1 && !name.equalsIgnoreCase("cs"); i++) {
          values.add(number(operands, i));
        }
        Inks inks = new Inks(space, values);
        if (Character.isLowerCase(name.charAt(0))) {
          now.fill = inks;
        } else {
          now.line = inks;
        }
      }
    }

    private String named(PdfName name) {
      PdfDictionary named = resources.getAsDict(PdfName.COLORSPACE);
      PdfObject space = named == null ? null : named.get(name);
      return spaceName(space == null ? name : space);
    }

    private void text() {
      double scale = Math.sqrt(Math.abs(text.getDeterminant() * now.toPoints.getDeterminant()));
      painted.add(new Painted("TEXT", now.size * scale, 0, now.fill));
    }

    private void path(String name) {
      if (!name.equals("n") && !name.equalsIgnoreCase("s")) {
        painted.add(new Painted("FILL", 0, moves, now.fill));
      }
      if (!name.equals("n") && !name.equalsIgnoreCase("f") && !name.equals("f*")) {
        painted.add(new Painted("LINE", 0, moves, now.line));
      }
      moves = 0;
    }

    private void part(PdfObject object) throws IOException {
      PRStream part = (PRStream) PaintedInks.read(object);
      forbid(part.get(PdfName.GROUP) != null, "a transparent group");
      forbid(part.get(PdfName.SMASK) != null, "a soft mask");
      if (part.getAsName(PdfName.SUBTYPE).equals(PdfName.IMAGE)) {
        boolean shape = part.get(PdfName.IMAGEMASK) != null;
        String space = shape ? now.fill.space : spaceName(part.get(PdfName.COLORSPACE));
        spaces.add(space);
        painted.add(new Painted("PICTURE", 0, 0, new Inks(space, List.of())));
      } else {
        State inner = now.copy();
        PdfArray matrix = part.getAsArray(PdfName.MATRIX);
        if (matrix != null) {
          inner.toPoints.concatenate(transform(matrix.getElements()));
        }
        new Walk(part.getAsDict(PdfName.RESOURCES), inner).read(PdfReader.getStreamBytes(part));
      }
    }

    private static double number(List<PdfObject> operands, int at) {
      return ((PdfNumber) operands.get(at)).doubleValue();
    }

    private static AffineTransform transform(List<PdfObject> m) {
      double[] numbers = new double[6];
      for (int i = 0; i < numbers.length; i++) {
        numbers[i] = number(m, i);
      }
      return new AffineTransform(numbers);
    }
  }
}
