package curewindow.handout;

import curewindow.handout.PaperFormat.Size;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Tells where a page is cut: in its boxes for machines, by marks for people. */
final class CutMarks {

  /** From the bleed, or from what is cut where nothing bleeds, to a mark. */
  private static final double GAP = 1;

  private static final double LENGTH = 5;
  private static final double HAIRLINE_POINTS = 0.25;

  /** The ink that marks are drawn with. */
  interface Pen {

    /** Black, on screens and office printers. */
    Pen BLACK = out -> out.setStrokingColor(0f);

    /** Makes it the ink of all lines that follow. */
    void takenBy(PDPageContentStream out) throws IOException;
  }

  private final PDPageContentStream out;
  private final Size page;

  private CutMarks(PDPageContentStream out, Size page) {
    this.out = out;
    this.page = page;
  }

  /** Marks pages that carry one handout each. */
  static void single(PDDocument pdf, PaperFormat format, Pen pen) throws IOException {
    for (PDPage page : pdf.getPages()) {
      PDRectangle sheet = box(format, format.margin());
      page.setMediaBox(sheet);
      page.setCropBox(sheet);
      page.setBleedBox(box(format, format.bleed()));
      page.setTrimBox(box(format, 0));
      page.setArtBox(box(format, 0));
      if (format.bleed() > 0) {
        double m = format.margin();
        List<Double> across = List.of(m, m + format.cut().width());
        List<Double> up = List.of(m, m + format.cut().height());
        draw(pdf, page, new Lines(across, up, format.bleed()), format.page(), pen);
      }
    }
  }

  /** The cut handout on its page, made larger by so many millimetres on each side. */
  private static PDRectangle box(PaperFormat format, double more) {
    return new PDRectangle(
        PaperFormat.points(format.margin() - more),
        PaperFormat.points(format.margin() - more),
        PaperFormat.points(format.cut().width() + 2 * more),
        PaperFormat.points(format.cut().height() + 2 * more));
  }

  /**
   * Where a page is cut, in millimetres.
   *
   * @param across from the left edge, ascending
   * @param up from the lower edge, ascending
   * @param bleed how far colour runs over the outermost cuts
   */
  record Lines(List<Double> across, List<Double> up, double bleed) {

    private static double first(List<Double> cuts) {
      return cuts.get(0);
    }

    private static double last(List<Double> cuts) {
      return cuts.get(cuts.size() - 1);
    }
  }

  /** Marks every cut at both of its ends; outside of what is cut where there is room. */
  static void draw(PDDocument pdf, PDPage page, Lines lines, Size size, Pen pen)
      throws IOException {
    try (PDPageContentStream out =
        new PDPageContentStream(pdf, page, AppendMode.APPEND, true, true)) {
      pen.takenBy(out);
      out.setLineWidth((float) HAIRLINE_POINTS);
      CutMarks marks = new CutMarks(out, size);
      double away = lines.bleed() + GAP;
      for (double x : lines.across()) {
        double low = Lines.first(lines.up()) - away;
        double high = Lines.last(lines.up()) + away;
        marks.upright(x, low, high);
      }
      for (double y : lines.up()) {
        double left = Lines.first(lines.across()) - away;
        double right = Lines.last(lines.across()) + away;
        marks.level(y, left, right);
      }
      out.stroke();
    }
  }

  private void upright(double x, double low, double high) throws IOException {
    if (inside(x, page.width())) {
      line(x, end(low), x, low < LENGTH ? 0 : low);
      line(x, page.height() - end(page.height() - high), x, outer(high, page.height()));
    }
  }

  private void level(double y, double left, double right) throws IOException {
    if (inside(y, page.height())) {
      line(end(left), y, left < LENGTH ? 0 : left, y);
      line(page.width() - end(page.width() - right), y, outer(right, page.width()), y);
    }
  }

  /** A cut along the paper's own edge needs no mark. */
  private static boolean inside(double cut, double paper) {
    return cut > GAP && cut < paper - GAP;
  }

  /** How far from the paper's edge a mark ends: in the margin, or on the cut where none is left. */
  private static double end(double margin) {
    return margin < LENGTH ? LENGTH : margin - LENGTH;
  }

  private static double outer(double at, double paper) {
    return paper - at < LENGTH ? paper : at;
  }

  private void line(double x1, double y1, double x2, double y2) throws IOException {
    out.moveTo(PaperFormat.points(x1), PaperFormat.points(y1));
    out.lineTo(PaperFormat.points(x2), PaperFormat.points(y2));
  }
}
