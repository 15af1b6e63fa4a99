package curewindow.why;

import java.util.List;
import java.util.Locale;

/**
 * Draws with ink and one warm accent on paper, as SVG. Numbers have one decimal, so that a drawing
 * is the same on every machine.
 */
final class Ink {

  static final String PAPER = "#f7f2e6";
  static final String INK = "#23282e";
  static final String ACCENT = "#ad4a21";

  private final StringBuilder out = new StringBuilder();

  Ink(int width, int height, String title, String description) {
    raw(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\""
            + " aria-labelledby=\"t d\" font-family=\"Georgia, 'Times New Roman', serif\""
            + " font-size=\"13\" fill=\"%s\">",
        width, height, INK);
    raw("<title id=\"t\">%s</title>", escaped(title));
    raw("<desc id=\"d\">%s</desc>", escaped(description));
    raw("<defs>");
    raw(
        "<pattern id=\"rain\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\""
            + " patternTransform=\"rotate(45)\"><path d=\"M0 0V6\" stroke=\"%s\"/></pattern>",
        INK);
    raw(
        "<pattern id=\"rays\" width=\"5\" height=\"5\" patternUnits=\"userSpaceOnUse\">"
            + "<circle cx=\"2.5\" cy=\"2.5\" r=\"1.2\" fill=\"%s\"/></pattern>",
        ACCENT);
    raw("</defs>");
    raw("<rect width=\"%d\" height=\"%d\" fill=\"%s\"/>", width, height, PAPER);
  }

  private void raw(String format, Object... values) {
    out.append(String.format(Locale.ROOT, format, values)).append('\n');
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  void text(double x, double y, String style, String text) {
    raw("<text x=\"%.1f\" y=\"%.1f\" %s>%s</text>", x, y, style, escaped(text));
  }

  void line(double x1, double y1, double x2, double y2, String style) {
    raw(
        "<path d=\"M%.1f %.1fL%.1f %.1f\" stroke=\"%s\" fill=\"none\" %s/>",
        x1, y1, x2, y2, INK, style);
  }

  void box(double x, double y, double width, double height, String style) {
    raw(
        "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" %s/>",
        x, y, width, height, style);
  }

  void path(List<double[]> points, String style) {
    StringBuilder d = new StringBuilder();
    for (double[] point : points) {
      d.append(
          String.format(Locale.ROOT, "%s%.1f %.1f", d.isEmpty() ? "M" : "L", point[0], point[1]));
    }
    raw("<path d=\"%s\" fill=\"none\" stroke-linejoin=\"round\" %s/>", d, style);
  }

  /** A date as from a rubber stamp, its middle at the point. */
  void stamp(double x, double y, String above, String date) {
    raw(
        "<g transform=\"translate(%.1f %.1f) rotate(-3)\" fill=\"%s\" text-anchor=\"middle\">",
        x, y, ACCENT);
    raw(
        "<rect x=\"-82\" y=\"-27\" width=\"164\" height=\"54\" rx=\"4\" fill=\"%s\" stroke=\"%s\""
            + " stroke-width=\"2.5\"/>",
        PAPER, ACCENT);
    raw("<text y=\"-8\" letter-spacing=\"2\">%s</text>", escaped(above));
    raw("<text y=\"15\" font-size=\"19\" font-weight=\"bold\">%s</text></g>", escaped(date));
  }

  String done() {
    return out + "</svg>\n";
  }
}
