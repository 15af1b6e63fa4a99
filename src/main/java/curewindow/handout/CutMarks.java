package curewindow.handout;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Tells where a sheet is cut: in its boxes for machines, by marks for people. */
final class CutMarks {

  private static final double LENGTH = 5;
  private static final double HAIRLINE_POINTS = 0.25;

  private CutMarks() {}

  static void add(PDDocument pdf, CardFormat format) throws IOException {
    for (PDPage page : pdf.getPages()) {
      PDRectangle sheet = box(format, -format.margin());
      page.setMediaBox(sheet);
      page.setCropBox(sheet);
      page.setBleedBox(box(format, -format.bleed()));
      page.setTrimBox(box(format, 0));
      page.setArtBox(box(format, 0));
      try (PDPageContentStream out =
          new PDPageContentStream(pdf, page, AppendMode.APPEND, true, true)) {
        out.setStrokingColor(0f);
        out.setLineWidth((float) HAIRLINE_POINTS);
        marks(out, format);
        out.stroke();
      }
    }
  }

  /** The trimmed card made smaller by so many millimetres on each side. */
  private static PDRectangle box(CardFormat format, double inset) {
    return new PDRectangle(
        CardFormat.points(format.margin() + inset),
        CardFormat.points(format.margin() + inset),
        CardFormat.points(format.width() - 2 * inset),
        CardFormat.points(format.height() - 2 * inset));
  }

  private static void marks(PDPageContentStream out, CardFormat format) throws IOException {
    double near = format.margin() - format.bleed() - 1;
    double[] across = {format.margin(), format.margin() + format.width()};
    double[] up = {format.margin(), format.margin() + format.height()};
    for (double x : across) {
      line(out, x, near, x, near - LENGTH);
      line(out, x, format.sheetHeight() - near, x, format.sheetHeight() - near + LENGTH);
    }
    for (double y : up) {
      line(out, near, y, near - LENGTH, y);
      line(out, format.sheetWidth() - near, y, format.sheetWidth() - near + LENGTH, y);
    }
  }

  private static void line(PDPageContentStream out, double x1, double y1, double x2, double y2)
      throws IOException {
    out.moveTo(CardFormat.points(x1), CardFormat.points(y1));
    out.lineTo(CardFormat.points(x2), CardFormat.points(y2));
  }
}
