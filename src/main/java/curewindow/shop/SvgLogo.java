package curewindow.shop;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Takes an SVG as a logo: writes anew what is on the list of shapes, and nothing else. What shows
 * but is not on the list is told; what does not show, such as notes of a drawing program, is left
 * out.
 */
final class SvgLogo {

  /** Elements that are kept; drawings by hand have far fewer. */
  private static final int MOST_ELEMENTS = 500;

  private static final int DEEPEST = 20;
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final String CLIP = "clipPath";

  private static final Set<String> GRADIENTS = Set.of("linearGradient", "radialGradient");
  private static final Set<String> SHAPES =
      Set.of(
          "svg",
          "g",
          "defs",
          "path",
          "rect",
          "circle",
          "ellipse",
          "line",
          "polyline",
          "polygon",
          "linearGradient",
          "radialGradient",
          "stop",
          CLIP);
  private static final Set<String> UNSEEN = Set.of("title", "desc", "metadata");

  private final String file;
  private final Problems problems;
  private final StringBuilder out = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();
  private final Set<String> ids = new HashSet<>();

  /** Which gradient a gradient takes its colors from. */
  private final Map<String, String> borrowed = new HashMap<>();

  private int elements;
  private Optional<LogoShape> shape = Optional.empty();

  SvgLogo(String file, Problems problems) {
    this.file = file;
    this.problems = problems;
  }

  /** What stops the reading, said in two sentences. */
  private static final class Refused extends Exception {

    private static final long serialVersionUID = 1;
    private final transient String fix;

    Refused(String message, String fix) {
      super(message, null, false, false);
      this.fix = fix;
    }
  }

  Optional<ShopLogo> read(byte[] bytes) {
    int before = problems.errorCount();
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    try {
      XMLStreamReader in = factory.createXMLStreamReader(new ByteArrayInputStream(bytes));
      try {
        copy(in);
      } catch (Refused e) {
        tell(line(in), e.getMessage(), e.fix);
      }
    } catch (XMLStreamException e) {
      int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNumber());
      tell(line, "the logo is no SVG that can be read", "save it as SVG once more");
    }
    return problems.errorCount() > before
        ? Optional.empty()
        : shape.map(
            s ->
                new ShopLogo(
                    ShopLogo.Kind.SVG,
                    file,
                    s.width(),
                    s.height(),
                    out.append('\n').toString().getBytes(StandardCharsets.UTF_8)));
  }

  private static int line(XMLStreamReader in) {
    return Math.max(1, in.getLocation().getLineNumber());
  }

  private void tell(int line, String message, String fix) {
    Where where = line == 0 ? Where.file(file) : Where.line(file, line, 1);
    problems.add(Problem.error("bad-logo", where, message, fix));
  }

  private void copy(XMLStreamReader in) throws XMLStreamException, Refused {
    while (in.hasNext()) {
      switch (in.next()) {
        case XMLStreamConstants.START_ELEMENT -> start(in);
        case XMLStreamConstants.END_ELEMENT -> out.append("</").append(open.pop()).append('>');
        case XMLStreamConstants.ENTITY_REFERENCE ->
            throw new Refused("the logo has the entity " + in.getLocalName(), SvgValues.FIX);
        default -> {
          // Text, comments and instructions do not show outside of elements that are refused.
        }
      }
    }
  }

  private void start(XMLStreamReader in) throws XMLStreamException, Refused {
    String name = in.getLocalName();
    boolean own = SVG.equals(in.getNamespaceURI());
    if (open.isEmpty()) {
      root(in, own && name.equals("svg"));
    } else if (!own || UNSEEN.contains(name)) {
      skip(in);
    } else if (!SHAPES.contains(name) || name.equals("svg")) {
      throw new Refused(
          "the logo has <" + Source.shown(name) + ">, which is not taken", SvgValues.FIX);
    } else {
      element(in, name);
    }
  }

  /** Passes over an element and all in it. */
  private static void skip(XMLStreamReader in) throws XMLStreamException {
    for (int depth = 1; depth > 0; ) {
      int event = in.next();
      depth += event == XMLStreamConstants.START_ELEMENT ? 1 : 0;
      depth -= event == XMLStreamConstants.END_ELEMENT ? 1 : 0;
    }
  }

  private void root(XMLStreamReader in, boolean svg) throws Refused {
    if (!svg) {
      throw new Refused(
          "the logo does not begin with <svg xmlns=\"" + SVG + "\">", "save it as SVG once more");
    }
    double[] box =
        SvgValues.box(in)
            .orElseThrow(
                () ->
                    new Refused(
                        "the size of the logo is not known",
                        "give its <svg> a viewBox, such as \"0 0 120 40\""));
    shape = LogoShape.of(box[2], box[3], file, problems);
    out.append("<svg xmlns=\"").append(SVG).append("\" viewBox=\"");
    for (int i = 0; i < box.length; i++) {
      out.append(i == 0 ? "" : " ").append(Values.shortest(box[i]));
    }
    out.append("\" width=\"").append(Values.shortest(box[2]));
    out.append("\" height=\"").append(Values.shortest(box[3])).append('"');
    attributes(in, "svg");
  }

  private void element(XMLStreamReader in, String name) throws Refused {
    elements++;
    if (elements > MOST_ELEMENTS || open.size() > DEEPEST) {
      throw new Refused(
          "the logo has more than "
              + MOST_ELEMENTS
              + " shapes, or more than "
              + DEEPEST
              + " inside each other",
          "make it simpler");
    }
    out.append('<').append(name);
    attributes(in, name);
  }

  private void attributes(XMLStreamReader in, String name) throws Refused {
    SvgValues.Taken taken = SvgValues.of(in, name);
    if (taken.wrong().isPresent()) {
      throw new Refused(taken.wrong().get(), SvgValues.FIX);
    }
    SortedMap<String, String> values = taken.values();
    String id = values.getOrDefault("id", "");
    boolean inClip = name.equals(CLIP) || open.contains(CLIP);
    if (!id.isEmpty() && !ids.add(id) || inClip && values.containsKey("clip-path")) {
      throw new Refused(
          inClip ? "the logo has a clip inside of a clip" : "the logo has the id " + id + " twice",
          SvgValues.FIX);
    }
    if (GRADIENTS.contains(name) && values.containsKey("href")) {
      borrow(id, values.get("href").substring(1));
    }
    values.forEach(
        (key, value) -> out.append(' ').append(key).append("=\"").append(value).append('"'));
    out.append('>');
    open.push(name);
  }

  /** A gradient that borrows from itself would be followed for good. */
  private void borrow(String gradient, String lender) throws Refused {
    borrowed.put(gradient, lender);
    int steps = 0;
    for (String from = lender; from != null; from = borrowed.get(from)) {
      steps++;
      if (steps > DEEPEST) {
        throw new Refused("a gradient of the logo is made from itself", SvgValues.FIX);
      }
    }
  }
}
