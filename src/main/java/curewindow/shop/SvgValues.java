package curewindow.shop;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamReader;

/** The attributes of an SVG element that are taken, and their values, which lead nowhere else. */
final class SvgValues {

  /** What is to be done about all that is not taken. */
  static final String FIX =
      "save it as a plain SVG of paths, shapes and gradients, text as paths, styles as attributes";

  private static final Set<String> GEOMETRY =
      Set.of(
          "d",
          "points",
          "transform",
          "gradientTransform",
          "x",
          "y",
          "width",
          "height",
          "rx",
          "ry",
          "cx",
          "cy",
          "r",
          "fx",
          "fy",
          "x1",
          "y1",
          "x2",
          "y2",
          "offset");

  private static final Set<String> PAINT =
      Set.of(
          "fill",
          "fill-rule",
          "fill-opacity",
          "stroke",
          "stroke-width",
          "stroke-opacity",
          "stroke-linecap",
          "stroke-linejoin",
          "stroke-miterlimit",
          "opacity",
          "color",
          "display",
          "visibility",
          "clip-rule",
          "clip-path",
          "stop-color",
          "stop-opacity",
          "gradientUnits",
          "spreadMethod",
          "clipPathUnits");

  /** What would show, and is not taken unless it says that there is nothing. */
  private static final Set<String> REFUSED =
      Set.of(
          "filter",
          "mask",
          "marker",
          "marker-start",
          "marker-mid",
          "marker-end",
          "mix-blend-mode",
          "stroke-dasharray");

  private static final Pattern NOTHING = Pattern.compile("none|normal|0");
  private static final Pattern ID = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_.-]{0,99}");
  private static final Pattern LINK = Pattern.compile("(?i)url\\( *(['\"]?)#([^)'\"]*)\\1 *\\)");
  private static final Pattern PLAIN = Pattern.compile("[-+a-zA-Z0-9.,%#()\\s]*");
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(?:[0-9]+[.]?[0-9]*|[.][0-9]+)(?:[eE][-+]?[0-9]+)?");
  private static final Pattern LENGTH = Pattern.compile("(" + NUMBER + ")(?:px|pt|pc|mm|cm|in)?");

  /** A drawing whose numbers are beyond this is none, and some libraries would not end. */
  private static final double FARTHEST = 1e6;

  private SvgValues() {}

  /**
   * The attributes of an element.
   *
   * @param values those that are taken, alphabetical
   * @param wrong what is wrong with one that shows and is not taken
   */
  record Taken(SortedMap<String, String> values, Optional<String> wrong) {}

  static Taken of(XMLStreamReader in, String element) {
    SortedMap<String, String> values = new TreeMap<>();
    for (Map.Entry<String, String> attribute : all(in).entrySet()) {
      String name = attribute.getKey();
      String value = attribute.getValue().strip().replaceAll("\\s+", " ");
      if (shows(name, value, element)) {
        Optional<String> good = good(name, value);
        if (good.isEmpty()) {
          String wrong = Source.shown(name) + "=\"" + Source.shown(value) + '"';
          return new Taken(values, Optional.of("the logo has " + wrong + ", which is not taken"));
        }
        values.put(name, good.get());
      }
    }
    return new Taken(values, Optional.empty());
  }

  /** All attributes without a namespace and links; what {@code style} says goes before them. */
  private static Map<String, String> all(XMLStreamReader in) {
    Map<String, String> all = new TreeMap<>();
    for (int i = 0; i < in.getAttributeCount(); i++) {
      String space = in.getAttributeNamespace(i);
      String name = in.getAttributeLocalName(i);
      if (space == null || space.isEmpty() || name.equals("href")) {
        all.put(name, in.getAttributeValue(i));
      }
    }
    String style = orEmpty(all.remove("style"));
    for (String declaration : style.split(";")) {
      int colon = declaration.indexOf(':');
      if (colon > 0) {
        all.put(declaration.substring(0, colon).strip(), declaration.substring(colon + 1).strip());
      }
    }
    return all;
  }

  /** Whether an attribute makes any difference to the picture; the size of all is written anew. */
  private static boolean shows(String name, String value, String element) {
    if (GEOMETRY.contains(name)) {
      return !element.equals("svg");
    }
    return name.equals("id")
        || name.equals("href") && element.endsWith("Gradient")
        || PAINT.contains(name)
        || REFUSED.contains(name) && !NOTHING.matcher(value).matches();
  }

  private static Optional<String> good(String name, String value) {
    if (PAINT.contains(name)) {
      return paint(value);
    }
    Optional<String> given = Optional.of(value);
    return switch (name) {
      case "id" -> given.filter(v -> ID.matcher(v).matches());
      case "href" -> given.filter(v -> v.startsWith("#") && ID.matcher(v.substring(1)).matches());
      default -> given.filter(v -> GEOMETRY.contains(name) && isGeometry(v));
    };
  }

  private static boolean isGeometry(String value) {
    if (!PLAIN.matcher(value).matches()) {
      return false;
    }
    Matcher numbers = NUMBER.matcher(value);
    while (numbers.find()) {
      if (Math.abs(Double.parseDouble(numbers.group())) > FARTHEST) {
        return false;
      }
    }
    return true;
  }

  /** A paint or word; what it links to stands in the same file. */
  private static Optional<String> paint(String value) {
    Matcher links = LINK.matcher(value);
    StringBuilder out = new StringBuilder();
    String rest = links.replaceAll("");
    if (!PLAIN.matcher(rest).matches() || rest.toLowerCase(Locale.ROOT).contains("url")) {
      return Optional.empty();
    }
    links.reset();
    while (links.find()) {
      if (!ID.matcher(links.group(2)).matches()) {
        return Optional.empty();
      }
      links.appendReplacement(out, Matcher.quoteReplacement("url(#" + links.group(2) + ")"));
    }
    return Optional.of(links.appendTail(out).toString());
  }

  /** The box that is drawn: x, y, width and height; empty where its size is not known. */
  static Optional<double[]> box(XMLStreamReader in) {
    String box = in.getAttributeValue(null, "viewBox");
    if (box != null) {
      String[] parts = box.strip().split("[\\s,]+");
      return parts.length == 4 ? box(parts[0], parts[1], parts[2], parts[3]) : Optional.empty();
    }
    Matcher width = LENGTH.matcher(orEmpty(in.getAttributeValue(null, "width")).strip());
    Matcher height = LENGTH.matcher(orEmpty(in.getAttributeValue(null, "height")).strip());
    return width.matches() && height.matches()
        ? box("0", "0", width.group(1), height.group(1))
        : Optional.empty();
  }

  private static String orEmpty(String value) {
    return value == null ? "" : value;
  }

  private static Optional<double[]> box(String... parts) {
    double[] box = new double[parts.length];
    for (int i = 0; i < box.length; i++) {
      if (!NUMBER.matcher(parts[i]).matches() || parts[i].length() > 20) {
        return Optional.empty();
      }
      box[i] = Double.parseDouble(parts[i]);
      if (Math.abs(box[i]) > FARTHEST) {
        return Optional.empty();
      }
    }
    return box[2] > 1e-3 && box[3] > 1e-3 ? Optional.of(box) : Optional.empty();
  }
}
